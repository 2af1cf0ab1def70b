package halfwave.io.sequence;

import halfwave.circuit.Point;
import halfwave.instrument.HookUp;
import halfwave.instrument.HookUp.Across;
import halfwave.instrument.HookUp.AcrossSupply;
import halfwave.instrument.HookUp.InSenseLead;
import halfwave.instrument.LeadEnd;
import halfwave.instrument.SupplyPoint;
import halfwave.io.BadInputException;
import halfwave.io.JsonValue;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Where the leads of a meter are, in one word: {@code series-board}, {@code series-rod}, or {@code
 * RED:BLACK} with two points of the sense circuit or two of the supply.
 */
public final class LeadWords {

  private static final InSenseLead AT_BOARD = new InSenseLead(LeadEnd.BOARD, true);
  private static final InSenseLead AT_ROD = new InSenseLead(LeadEnd.ROD, true);
  private static final String SERIES_BOARD = "series-board";
  private static final String SERIES_ROD = "series-rod";

  private LeadWords() {}

  /** The place of that word. */
  public static Optional<HookUp> hookUp(String word) {
    if (word.equals(SERIES_BOARD)) {
      return Optional.of(AT_BOARD);
    } else if (word.equals(SERIES_ROD)) {
      return Optional.of(AT_ROD);
    }
    String[] ends = word.split(":", -1);
    if (ends.length != 2) {
      return Optional.empty();
    }
    Optional<HookUp> sense = point(ends[0]).flatMap(r -> point(ends[1]).map(b -> new Across(r, b)));
    return sense.isPresent()
        ? sense
        : supply(ends[0]).flatMap(r -> supply(ends[1]).map(b -> new AcrossSupply(r, b)));
  }

  /**
   * The place of the word that a file has.
   *
   * @throws BadInputException if no place is called so
   */
  public static HookUp hookUp(JsonValue value) {
    return hookUp(value.text()).orElseThrow(() -> value.refused(allowedHere()));
  }

  /**
   * The word of that place.
   *
   * @throws IllegalArgumentException where no word says it: a wire in the flame, leads swapped in
   *     series
   */
  public static String word(HookUp hookUp) {
    if (hookUp.equals(AT_BOARD)) {
      return SERIES_BOARD;
    } else if (hookUp.equals(AT_ROD)) {
      return SERIES_ROD;
    } else if (hookUp instanceof Across across) {
      return JsonValue.spelling(across.red()) + ":" + JsonValue.spelling(across.black());
    } else if (hookUp instanceof AcrossSupply across) {
      return JsonValue.spelling(across.red()) + ":" + JsonValue.spelling(across.black());
    }
    throw new IllegalArgumentException("hookUp = " + hookUp + ": no word for it");
  }

  /** The point of the sense circuit that a lead reaches, of that word. */
  public static Optional<Point> point(String word) {
    return HookUp.REACHABLE.stream().filter(p -> JsonValue.spelling(p).equals(word)).findFirst();
  }

  private static Optional<SupplyPoint> supply(String word) {
    return Stream.of(SupplyPoint.values())
        .filter(p -> JsonValue.spelling(p).equals(word))
        .findFirst();
  }

  /**
   * What may stand there, also {@code wire:POINT} where a command takes it.
   *
   * @param there whether a bench has a point
   */
  public static Message allowed(Predicate<Point> there) {
    return Message.of(
        MessageKey.ALLOWED_LEADS,
        Argument.text(words(HookUp.REACHABLE.stream().filter(there).sorted())),
        Argument.text(words(Stream.of(SupplyPoint.values()))));
  }

  /** The same without the wire. */
  static Message allowedHere() {
    return Message.of(
        MessageKey.ALLOWED_FIXED_LEADS,
        Argument.text(words(HookUp.REACHABLE.stream().sorted())),
        Argument.text(words(Stream.of(SupplyPoint.values()))));
  }

  private static String words(Stream<? extends Enum<?>> constants) {
    return constants.map(JsonValue::spelling).collect(Collectors.joining(", "));
  }
}
