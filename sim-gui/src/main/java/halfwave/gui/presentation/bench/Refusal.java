package halfwave.gui.presentation.bench;

import halfwave.quantity.RejectedValueException;

/**
 * An act that cannot be done.
 *
 * @param number counts refusals, so that the same one twice is told twice
 * @param reason why
 */
public record Refusal(long number, RejectedValueException reason) {}
