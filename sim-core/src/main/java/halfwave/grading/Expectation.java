package halfwave.grading;

import halfwave.diagnosis.Check;
import halfwave.diagnosis.Outcome;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * Something that a check may find, for a learner to expect before it is done.
 *
 * @param label in words
 * @param holds whether an outcome is that
 */
public record Expectation(Message label, Predicate<Outcome> holds) {

  /** Bands of readings: common practice, no source. */
  private static final double GOOD_AMPS = 1.5e-6;

  private static final double LOST_AMPS = 0.5e-6;
  private static final double FULL_VOLTS = 70;
  private static final double LOST_VOLTS = 10;

  /** All that a check may find, each outcome in one of them. */
  public static List<Expectation> of(Check check) {
    List<Expectation> all = new ArrayList<>();
    for (Enum<?> what : check.outcomes()) {
      all.add(
          new Expectation(
              Message.of(MessageKey.NAMED, Argument.name(what)),
              o -> o.equals(new Outcome.Found(what))));
    }
    if (check instanceof Check.Read read) {
      all.addAll(read.current() ? currents() : voltages());
    }
    all.add(
        new Expectation(
            Message.of(MessageKey.OUTCOME_NOT_REACHED), o -> o instanceof Outcome.NotReached));
    return all;
  }

  private static List<Expectation> currents() {
    return List.of(
        amps(MessageKey.EXPECT_GOOD_CURRENT, GOOD_AMPS, Double.POSITIVE_INFINITY),
        amps(MessageKey.EXPECT_WEAK_CURRENT, LOST_AMPS, GOOD_AMPS),
        amps(MessageKey.EXPECT_NO_CURRENT, Double.NEGATIVE_INFINITY, LOST_AMPS));
  }

  private static Expectation amps(MessageKey key, double from, double to) {
    return new Expectation(
        Message.of(key),
        o -> o instanceof Outcome.Amps a && a.meanAmps() >= from && a.meanAmps() < to);
  }

  private static List<Expectation> voltages() {
    return List.of(
        volts(MessageKey.EXPECT_FULL_VOLTS, FULL_VOLTS, Double.POSITIVE_INFINITY),
        volts(MessageKey.EXPECT_LOW_VOLTS, LOST_VOLTS, FULL_VOLTS),
        volts(MessageKey.EXPECT_NO_VOLTS, 0, LOST_VOLTS));
  }

  private static Expectation volts(MessageKey key, double from, double to) {
    return new Expectation(
        Message.of(key),
        o ->
            o instanceof Outcome.Volts v
                && v.alternatingRmsVolts() >= from
                && v.alternatingRmsVolts() < to);
  }
}
