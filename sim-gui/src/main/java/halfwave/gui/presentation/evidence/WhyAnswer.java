package halfwave.gui.presentation.evidence;

import halfwave.explain.MomentAccount;
import halfwave.instrument.Measurement;
import halfwave.instrument.Shown;
import java.util.Optional;

/**
 * An explanation, in no language yet.
 *
 * @param question what it answers
 * @param measured what the meter showed then, if one was on
 * @param account the explanation
 */
public record WhyAnswer(
    WhyQuestion question, Optional<Measurement> measured, MomentAccount account) {

  /** A board's signal is read to this (A). */
  private static final double DIGIT_AMPS = 1e-8;

  /** Whether the same numbers are to be read. */
  boolean reads(WhyAnswer other) {
    return shown().equals(other.shown()) && digits() == other.digits();
  }

  /** The same explanation with what is read now: the headline is the number on the meter. */
  WhyAnswer as(WhyAnswer other) {
    return new WhyAnswer(other.question, other.measured, account);
  }

  private Optional<Shown> shown() {
    return measured.map(Measurement::shown);
  }

  private long digits() {
    return Math.round(question.moment().filter().meanAmps() / DIGIT_AMPS);
  }
}
