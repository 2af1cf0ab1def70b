package halfwave.io.evidence;

import halfwave.display.QuantityReader;
import halfwave.forecast.Calendar;
import halfwave.forecast.FlameLog;
import halfwave.forecast.Logged;
import halfwave.io.BadInputException;
import halfwave.io.Typed;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import halfwave.work.Repair;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Entries of a log as people type them: {@code 2025-10-04 2.4uA}, {@code 1200h 2.1uA}, {@code 1200h
 * clean-rod-with-pad}.
 */
public final class LogWords {

  private static final String EXAMPLE = "\"2025-10-04 2.4uA\", \"1200h clean-rod-with-pad\"";

  /** A reading that films can be told from: DC above zero. */
  static final Plausible READ =
      new Plausible(Dimension.CURRENT, Logged.Read.LEAST_AMPS, Logged.Read.MOST_AMPS, 3e-6);

  private LogWords() {}

  /** When: a day, or time with flame. */
  sealed interface When {
    /** A day. */
    record Day(LocalDate date) implements When {}

    /** Time with flame so far (s). */
    record Burnt(double flameSeconds) implements When {}
  }

  /** An entry, and how its time is refused. */
  record Entry(
      When when, Function<Double, Logged> what, Function<Message, BadInputException> refused) {}

  /**
   * The log that was typed.
   *
   * @param burningRatio time with flame over time (1), to count by dates
   * @throws BadInputException naming the place, what was typed and what is allowed there
   */
  public static FlameLog log(Typed where, List<String> texts, double burningRatio) {
    return log(texts.stream().map(text -> entry(where, text)).toList(), burningRatio);
  }

  private static Entry entry(Typed where, String text) {
    String[] words = text.strip().split("\\s+", 2);
    if (words.length < 2) {
      throw where.refused(text, Message.of(MessageKey.ALLOWED_LOGGED, Argument.text(EXAMPLE)));
    }
    When when = when(where, words[0]);
    Optional<Repair> repair =
        Logged.ROD_REPAIRS.stream().filter(r -> r.id().equals(words[1])).findFirst();
    Function<Message, BadInputException> refused = message -> where.refused(words[0], message);
    if (repair.isPresent()) {
      return new Entry(when, seconds -> new Logged.Done(seconds, repair.get()), refused);
    }
    double amps = READ.read(where.then(words[0]), words[1]);
    return new Entry(when, seconds -> new Logged.Read(seconds, amps), refused);
  }

  private static When when(Typed where, String word) {
    Optional<LocalDate> date = date(word);
    if (date.isPresent()) {
      return new When.Day(date.get());
    }
    double seconds = QuantityReader.si(word, Dimension.TIME).orElse(Double.NaN);
    if (!(seconds >= 0 && seconds <= Logged.MOST_SECONDS)) {
      throw where.refused(word, Message.of(MessageKey.ALLOWED_WHEN, Argument.text(EXAMPLE)));
    }
    return new When.Burnt(seconds);
  }

  /** A day as it is typed. */
  static Optional<LocalDate> date(String text) {
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** What work can stand in a log. */
  static Message allowedRepairs() {
    return Message.of(
        MessageKey.ALLOWED_ONE_OF,
        Argument.text(
            Logged.ROD_REPAIRS.stream().map(Repair::id).collect(Collectors.joining(", "))));
  }

  /** All entries with one clock, in order; the first that is not is refused. */
  static FlameLog log(List<Entry> entries, double burningRatio) {
    @Nullable Calendar calendar =
        entries.get(0).when() instanceof When.Day day
            ? new Calendar(day.date(), burningRatio)
            : null;
    List<Logged> all = new ArrayList<>();
    double before = 0;
    for (int k = 0; k < entries.size(); k++) {
      Entry entry = entries.get(k);
      double seconds = seconds(entry, calendar);
      if (!(seconds >= before && seconds <= Logged.MOST_SECONDS)) {
        throw entry.refused().apply(later(entries.get(Math.max(0, k - 1)).when()));
      }
      all.add(entry.what().apply(seconds));
      before = seconds;
    }
    return new FlameLog(all, calendar);
  }

  private static double seconds(Entry entry, @Nullable Calendar calendar) {
    if (calendar != null && entry.when() instanceof When.Day day) {
      return calendar.flameSeconds(day.date());
    }
    if (calendar == null && entry.when() instanceof When.Burnt burnt) {
      return burnt.flameSeconds();
    }
    throw entry.refused().apply(Message.of(MessageKey.ALLOWED_ONE_CLOCK));
  }

  private static Message later(When before) {
    Argument shown =
        before instanceof When.Day day
            ? Argument.text(day.date().toString())
            : Argument.quantity(((When.Burnt) before).flameSeconds(), Dimension.TIME);
    return Message.of(MessageKey.ALLOWED_LATER, shown);
  }
}
