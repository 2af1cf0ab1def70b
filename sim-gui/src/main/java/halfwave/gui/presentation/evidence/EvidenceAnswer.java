package halfwave.gui.presentation.evidence;

import halfwave.diagnosis.Advice;
import halfwave.diagnosis.Belief;

/**
 * What follows from what was found.
 *
 * @param belief what is probable
 * @param advice what to do next
 */
public record EvidenceAnswer(Belief belief, Advice advice) {}
