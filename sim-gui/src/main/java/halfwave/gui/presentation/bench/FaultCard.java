package halfwave.gui.presentation.bench;

import halfwave.bench.Bench;
import halfwave.bench.Condition;
import halfwave.bench.Intermittent;
import halfwave.bench.Trigger;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.gui.presentation.Wording;
import halfwave.message.Quantity;
import halfwave.quantity.Dimension;
import halfwave.quantity.RejectedValueException;
import halfwave.sequence.Deed;
import halfwave.work.Aspect;
import halfwave.work.Repair;
import java.text.Collator;
import java.text.Normalizer;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A kind of fault, ready to be put on the bench.
 *
 * @param kind which
 * @param name its name
 * @param group what it is a fault of
 * @param repairs what puts it right
 * @param scale how its severity is spread, or null where it has none
 */
public record FaultCard(
    FaultKind kind, String name, String group, String repairs, @Nullable KnobScale scale) {

  /** All kinds whose name, group or identifier holds what was typed, in order of group and name. */
  public static List<FaultCard> found(String typed, Wording words) {
    String sought = plain(typed);
    Collator collator = Collator.getInstance(words.locale());
    return Stream.of(FaultKind.values())
        .map(kind -> of(kind, words))
        .filter(card -> plain(card.name + ' ' + card.group + ' ' + card.kind.id()).contains(sought))
        .sorted(
            Comparator.comparing((FaultCard c) -> c.kind.group())
                .thenComparing(FaultCard::name, collator))
        .toList();
  }

  public static FaultCard of(FaultKind kind, Wording words) {
    KnobScale scale =
        kind.dimension()
            .filter(d -> kind.most() > kind.least())
            .map(d -> scale(kind, d))
            .orElse(null);
    String repairs =
        Repair.curing(kind).stream().map(words.sentences()::name).collect(Collectors.joining(", "));
    return new FaultCard(kind, words.heading(kind), words.heading(kind.group()), repairs, scale);
  }

  private static KnobScale scale(FaultKind kind, Dimension dimension) {
    boolean open = kind.most() == Double.POSITIVE_INFINITY;
    if (open) {
      return new KnobScale(kind.least(), kind.most(), KnobScale.Spread.ZERO_DECADES_OPEN);
    }
    return KnobScale.of(kind.least(), kind.most(), false, dimension);
  }

  /** Without accents and capitals. */
  private static String plain(String text) {
    return Normalizer.normalize(text.strip(), Normalizer.Form.NFD)
        .replaceAll("\\p{M}", "")
        .toLowerCase(Locale.ROOT);
  }

  /** A severity in words, or empty where there is none. */
  public String severity(double si, Wording words) {
    return kind.dimension().map(d -> words.sentences().text(new Quantity(si, d))).orElse("");
  }

  /**
   * The severity that was typed, if it can be read and is in the range. A bare number is in the
   * unit that stands in the field.
   *
   * @param text what was typed
   * @param shown the severity that stood in the field (SI)
   * @param words the words
   */
  public OptionalDouble typed(String text, double shown, Wording words) {
    Optional<Dimension> dimension = kind.dimension();
    if (dimension.isEmpty()) {
      return OptionalDouble.empty();
    }
    // an open circuit has no unit: what is usual has
    double unitOf = Double.isInfinite(shown) ? kind.typical() : shown;
    OptionalDouble si = Knob.read(text, dimension.get(), unitOf, words);
    boolean fits =
        si.isPresent() && si.getAsDouble() >= kind.least() && si.getAsDouble() <= kind.most();
    return fits ? si : OptionalDouble.empty();
  }

  /**
   * What to know before it is put on a bench that has something of the kind already, or empty.
   *
   * @param bench the bench as it is
   * @param words the words
   */
  public String again(Bench bench, Wording words) {
    Bench sound = bench.with(Condition.HEALTHY);
    Fault fault = Fault.typical(kind);
    try {
      Bench faulty = fault.on(sound);
      boolean there =
          !Collections.disjoint(Aspect.amiss(faulty.condition()), Aspect.amiss(bench.condition()));
      boolean most = fault.on(bench).equals(bench);
      return there ? words.text(most ? "fault.there" : "fault.again") : "";
    } catch (RejectedValueException e) {
      // it does not fit on this bench; who adds it is told why
      return "";
    }
  }

  /** What it may be. */
  public String range(Wording words) {
    return words.text(
        "fault.range",
        severity(kind.least(), words),
        severity(kind.most(), words),
        severity(kind.typical(), words));
  }

  /** What brings it out by its nature, or null. */
  public @Nullable Trigger trigger() {
    return kind.trigger().orElse(null);
  }

  /**
   * Puts it on the bench.
   *
   * @param severity in SI
   * @param trigger what brings it out, or null: it is there all the time
   */
  public List<Deed> deeds(double severity, @Nullable Trigger trigger) {
    return Fault.of(kind, severity).changes().stream()
        .map(
            change ->
                trigger == null
                    ? new Deed.Alter(change)
                    : (Deed) new Deed.Lurk(new Intermittent(trigger, change)))
        .toList();
  }

  /** Its name: lists are searched by typing. */
  @Override
  public String toString() {
    return name;
  }
}
