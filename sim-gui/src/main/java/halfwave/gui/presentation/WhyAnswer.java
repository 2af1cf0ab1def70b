package halfwave.gui.presentation;

import halfwave.explain.MomentAccount;
import halfwave.instrument.Measurement;
import java.util.Optional;

/**
 * An explanation, in no language yet.
 *
 * @param question what it answers
 * @param measured what the meter showed then, if one was on
 * @param account the explanation
 */
public record WhyAnswer(
    WhyQuestion question, Optional<Measurement> measured, MomentAccount account) {}
