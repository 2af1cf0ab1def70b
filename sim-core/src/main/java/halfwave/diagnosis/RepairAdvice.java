package halfwave.diagnosis;

import halfwave.work.Repair;

/**
 * A repair in the order in which to try.
 *
 * @param repair the repair
 * @param curesProbability that it makes the furnace whole where those before it did not
 * @param effortSeconds its time, the proof after it, and time for its hazards and parts (s)
 * @param spoiltBits information that can no longer be had after it (bits)
 */
public record RepairAdvice(
    Repair repair, double curesProbability, double effortSeconds, double spoiltBits) {}
