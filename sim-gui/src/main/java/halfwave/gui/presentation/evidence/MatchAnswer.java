package halfwave.gui.presentation.evidence;

import halfwave.bench.Bench;
import halfwave.matching.Matched;
import halfwave.matching.TakenReading;
import halfwave.matching.Unknown;
import java.util.List;
import java.util.Set;

/**
 * What came of a fit, and of what.
 *
 * @param start the bench that it started from
 * @param unknowns what was fitted
 * @param readings what was read
 * @param matched what came of it
 */
public record MatchAnswer(
    Bench start, Set<Unknown> unknowns, List<TakenReading> readings, Matched matched) {}
