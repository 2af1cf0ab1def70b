package halfwave.io.evidence;

import halfwave.board.Ignition;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Entry;
import halfwave.diagnosis.Outcome;
import halfwave.io.BadInputException;
import halfwave.io.JsonValue;
import halfwave.io.Typed;
import halfwave.io.bench.ChangeWords;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import halfwave.work.Repair;
import halfwave.work.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A line of what was done and found, in words: {@code CHECK[@WHEN]=WHAT} or {@code
 * REPAIR=cured|unchanged|worse}. WHAT is one of the check's findings, several with a bar between
 * them where it is not clear which, {@code none} where it never came to that, or for a meter the DC
 * microamps ({@code 0.4uA}), DC and AC with a slash between them ({@code 0.4uA/3.2uA}), or the AC
 * volts ({@code 84V}).
 */
public final class CallLogWords {

  private static final String NONE = "none";

  /** No sense circuit can give more (A): 300 V across a kilohm is far beyond any. */
  private static final double MOST_AMPS = 1e-3;

  private static final Plausible DIRECT =
      new Plausible(Dimension.CURRENT, -MOST_AMPS, MOST_AMPS, 3e-6);
  private static final Plausible ALTERNATING = new Plausible(Dimension.CURRENT, 0, MOST_AMPS, 7e-6);
  private static final Plausible VOLTS = new Plausible(Dimension.VOLTAGE, 0, 300, 80);

  private static final double MICRO = 1e-6;

  private CallLogWords() {}

  /**
   * Reads a line.
   *
   * @param where where it was typed
   * @param text the line
   * @param ignition of the appliance
   * @throws BadInputException if it is none
   */
  public static Entry entry(Typed where, String text, Ignition ignition) {
    int equals = text.indexOf('=');
    if (equals < 0) {
      throw where.refused(text, Message.of(MessageKey.ALLOWED_LOG_ENTRY));
    }
    String word = text.substring(0, equals).strip();
    String what = text.substring(equals + 1).strip();
    Optional<Repair> repair =
        Stream.of(Repair.values())
            .filter(r -> r.id().equals(word) && r.possibleAt(ignition))
            .findFirst();
    if (repair.isPresent()) {
      return new Entry.Repaired(
          repair.get(), ChangeWords.oneOf(where.then(word), Entry.Result.class, what));
    }
    Check check =
        Check.named(word, ignition).orElseThrow(() -> where.refused(word, checks(word, ignition)));
    return new Entry.Observed(check, outcome(where.then(word), check, what));
  }

  /** Those of the same work where only the moment is missing or wrong, else all. */
  private static Message checks(String word, Ignition ignition) {
    String work = word.replaceAll("@.*", "");
    List<String> all = new ArrayList<>(Check.all(ignition).stream().map(Check::id).toList());
    List<String> near = all.stream().filter(id -> id.replaceAll("@.*", "").equals(work)).toList();
    if (near.isEmpty()) {
      Stream.of(Repair.values())
          .filter(r -> r.possibleAt(ignition))
          .map(Work::id)
          .forEach(all::add);
    }
    return Message.of(
        MessageKey.ALLOWED_ONE_OF, Argument.text(String.join(", ", near.isEmpty() ? all : near)));
  }

  private static Outcome outcome(Typed where, Check check, String what) {
    if (what.equals(NONE)) {
      return new Outcome.NotReached();
    } else if (check instanceof Check.Read read) {
      return metered(where, read, what);
    }
    Set<Enum<?>> found = new TreeSet<>();
    for (String word : what.split("\\|", -1)) {
      found.add(finding(where, check, word.strip()));
    }
    return found.size() == 1
        ? new Outcome.Found(found.iterator().next())
        : new Outcome.Unsure(found);
  }

  private static Enum<?> finding(Typed where, Check check, String word) {
    for (Enum<?> outcome : check.outcomes()) {
      if (JsonValue.spelling(outcome).equals(word)) {
        return outcome;
      }
    }
    String words =
        check.outcomes().stream().map(JsonValue::spelling).collect(Collectors.joining(", "));
    throw where.refused(
        word, Message.of(MessageKey.ALLOWED_FINDING, Argument.text(words + ", " + NONE)));
  }

  private static Outcome metered(Typed where, Check.Read read, String what) {
    if (!read.current()) {
      return new Outcome.Volts(VOLTS.read(where, what));
    }
    int slash = what.indexOf('/');
    if (slash < 0) {
      return Outcome.Amps.ofMean(DIRECT.read(where, what));
    }
    String direct = what.substring(0, slash).strip();
    double alternating = ALTERNATING.read(where, what.substring(slash + 1).strip());
    return new Outcome.Amps(
        direct.isEmpty() ? Double.NaN : DIRECT.read(where, direct), alternating);
  }

  /** The line in words. */
  public static String text(Entry entry) {
    if (entry instanceof Entry.Repaired repaired) {
      return repaired.repair().id() + "=" + JsonValue.spelling(repaired.result());
    } else if (entry instanceof Entry.Observed observed) {
      return observed.check().id() + "=" + what(observed.outcome());
    }
    throw new IllegalStateException("no words for " + entry);
  }

  private static String what(Outcome outcome) {
    if (outcome instanceof Outcome.Found found) {
      return JsonValue.spelling(found.what());
    } else if (outcome instanceof Outcome.Unsure unsure) {
      return unsure.what().stream()
          .map(JsonValue::spelling)
          .sorted()
          .collect(Collectors.joining("|"));
    } else if (outcome instanceof Outcome.Amps amps) {
      return amps(amps);
    } else if (outcome instanceof Outcome.Volts volts) {
      return volts.alternatingRmsVolts() + "V";
    }
    return NONE;
  }

  private static String amps(Outcome.Amps amps) {
    String direct = Double.isNaN(amps.meanAmps()) ? "" : amps.meanAmps() / MICRO + "uA";
    return Double.isNaN(amps.alternatingRmsAmps())
        ? direct
        : direct + "/" + amps.alternatingRmsAmps() / MICRO + "uA";
  }
}
