package halfwave.gui.presentation.desk;

import halfwave.bench.Bench;
import halfwave.bench.ShippedBenches;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.FaultCard;
import halfwave.lesson.Words;
import halfwave.quantity.RejectedValueException;
import halfwave.quiz.Hidden;
import halfwave.quiz.Level;
import halfwave.quiz.Objective;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Variant;
import halfwave.work.Finding;
import halfwave.work.Look;
import halfwave.work.MeterTest;
import halfwave.work.Work;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A call as it stands in the form of an instructor.
 *
 * @param english title and complaint in English
 * @param spanish the same in Spanish; blank: the English ones are read
 * @param bench the furnace as it should be
 * @param alternatives what may be wrong: none, one or two faults in each; every learner meets one
 *     of them
 * @param closed looks and readings that may not be used
 * @param minutes how long it may take (min)
 * @param partsUnits what parts may cost (units)
 * @param objective what it asks for
 * @param level how much it asks for
 * @param since what the customer answers when asked since when; null: what fits the fault
 */
public record CallDraft(
    Told english,
    Told spanish,
    Bench bench,
    List<List<Typed>> alternatives,
    Set<Work> closed,
    int minutes,
    int partsUnits,
    Objective objective,
    Level level,
    @Nullable Finding since) {

  /** Longest call, in simulated minutes, and dearest parts, in units: as files have it. */
  public static final int MOST_MINUTES = 1440;

  public static final int MOST_UNITS = 10_000;

  /** More alternatives than furnaces of a call would never be met. */
  public static final int MOST_ALTERNATIVES = Variant.COUNT;

  private static final int USUAL_MINUTES = 90;
  private static final int USUAL_UNITS = 20;
  private static final String SPANISH = "es";

  /**
   * What is read of a call.
   *
   * @param title gives nothing away
   * @param complaint what the customer says
   */
  public record Told(String title, String complaint) {}

  /**
   * A fault in the form.
   *
   * @param kind what it is
   * @param severity as it was typed; blank: it is drawn for each learner
   */
  public record Typed(FaultKind kind, String severity) {}

  /** Takes copies. */
  public CallDraft {
    alternatives = alternatives.stream().map(List::copyOf).toList();
    closed = Set.copyOf(closed);
  }

  /** All that can be closed. */
  public static List<Work> closable() {
    return Stream.<Work[]>of(Look.values(), MeterTest.values()).flatMap(Arrays::stream).toList();
  }

  /** What is in the form for a call. */
  public static CallDraft of(ServiceCall call, Wording words) {
    return new CallDraft(
        told(call, Words.FALLBACK),
        told(call, SPANISH),
        call.bench(),
        call.hidden().stream()
            .map(h -> h.faults().stream().map(p -> typed(p, words)).toList())
            .toList(),
        call.closed(),
        call.minutes(),
        call.partsUnits(),
        call.objective(),
        call.level(),
        call.since());
  }

  private static Told told(ServiceCall call, String tag) {
    return new Told(
        call.title().texts().getOrDefault(tag, ""), call.complaint().texts().getOrDefault(tag, ""));
  }

  private static Typed typed(Hidden.Part part, Wording words) {
    Fault fixed = part.fixed();
    return new Typed(
        part.kind(),
        fixed == null ? "" : FaultCard.of(part.kind(), words).severity(fixed.severity(), words));
  }

  /** A call to begin with. */
  static ServiceCall fresh(String name, Wording words) {
    return new ServiceCall(
        name,
        words(words.text("desk.new-title"), ""),
        words(words.text("desk.new-complaint"), ""),
        ShippedBenches.standard(),
        null,
        List.of(new Hidden(List.of(new Hidden.Part(FaultKind.ROD_SILICA, null)))),
        Set.of(),
        USUAL_MINUTES,
        USUAL_UNITS,
        Objective.ROD,
        Level.BASIC,
        null);
  }

  static Words words(String english, String spanish) {
    Map<String, String> texts = new TreeMap<>(Map.of(Words.FALLBACK, english.strip()));
    if (!spanish.isBlank()) {
      texts.put(SPANISH, spanish.strip());
    }
    return new Words(texts);
  }

  /** What is wrong in the form, in a sentence; empty where nothing is. */
  public String trouble(Wording words) {
    if (english.title().isBlank() || english.complaint().isBlank()) {
      return words.text("desk.needs-english");
    }
    for (int k = 0; k < alternatives.size(); k++) {
      String wrong = trouble(alternatives.get(k), words);
      if (!wrong.isEmpty()) {
        return alternatives.size() == 1 ? wrong : words.text("desk.in-alternative", k + 1, wrong);
      }
    }
    return "";
  }

  private String trouble(List<Typed> faults, Wording words) {
    if (faults.size() == 2 && faults.get(0).kind() == faults.get(1).kind()) {
      return words.text("desk.same-kind");
    }
    for (Typed fault : faults) {
      FaultCard card = FaultCard.of(fault.kind(), words);
      if (!fault.severity().isBlank() && card.scale() == null) {
        return words.text("desk.no-severity", card.name());
      }
      if (!fault.severity().isBlank() && severity(fault, words).isEmpty()) {
        return words.text("desk.bad-severity", fault.severity(), card.name(), card.range(words));
      }
    }
    return fits(faults) ? "" : words.text("desk.no-such-fault");
  }

  /** Whether the furnace has what the faults are of. */
  private boolean fits(List<Typed> faults) {
    try {
      Bench faulty = bench;
      for (Typed fault : faults) {
        faulty = Fault.typical(fault.kind()).on(faulty);
      }
      return true;
    } catch (RejectedValueException e) {
      return false;
    }
  }

  private static OptionalDouble severity(Typed fault, Wording words) {
    return FaultCard.of(fault.kind(), words).typed(fault.severity(), fault.kind().typical(), words);
  }

  /**
   * The call, where there is no {@link #trouble}.
   *
   * @param old what it was: its board stays
   * @param name what files call it
   */
  ServiceCall made(ServiceCall old, String name, Wording words) {
    List<Hidden> hidden =
        alternatives.stream()
            .map(a -> new Hidden(a.stream().map(f -> part(f, old, words)).toList()))
            .toList();
    return new ServiceCall(
        name,
        merged(old.title(), english.title(), spanish.title()),
        merged(old.complaint(), english.complaint(), spanish.complaint()),
        bench,
        bench.equals(old.bench()) ? old.board() : null,
        hidden,
        closed,
        minutes,
        partsUnits,
        objective,
        level,
        since);
  }

  /** Languages that are not in the form stay. */
  static Words merged(Words old, String english, String spanish) {
    Map<String, String> texts = new TreeMap<>(old.texts());
    texts.remove(SPANISH);
    texts.putAll(words(english, spanish).texts());
    return new Words(texts);
  }

  /** What was not typed anew is not rounded to what the field shows. */
  private static Hidden.Part part(Typed fault, ServiceCall before, Wording words) {
    for (Hidden hidden : before.hidden()) {
      for (Hidden.Part part : hidden.faults()) {
        if (typed(part, words).equals(fault)) {
          return part;
        }
      }
    }
    @Nullable Fault fixed =
        fault.severity().isBlank()
            ? null
            : Fault.of(fault.kind(), severity(fault, words).orElseThrow());
    return new Hidden.Part(fault.kind(), fixed);
  }
}
