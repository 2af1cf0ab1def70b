package halfwave.forecast;

import halfwave.bench.Coat;

/**
 * A rod after some use.
 *
 * @param renewed whether it is a new one, which stands as fitted
 * @param coat what has settled on it
 * @param thinnedMeters radius that it has lost (m)
 * @param droopedRadians how far its outer half has bent down (rad)
 */
record Worn(boolean renewed, Coat coat, double thinnedMeters, double droopedRadians) {}
