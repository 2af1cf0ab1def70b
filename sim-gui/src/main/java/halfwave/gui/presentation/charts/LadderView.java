package halfwave.gui.presentation.charts;

import halfwave.circuit.Solved;
import halfwave.explain.VoltageLadder;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.State;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where the volts of the source go, part by part, at the crest of each half-cycle.
 *
 * @param volts the axis of both half-cycles, from zero to the source's volts
 * @param positive while the rod is positive
 * @param negative while it is negative
 * @param summary the ladder in a sentence
 * @param spoken the same for who hears the screen
 * @param table the numbers, for a spreadsheet
 */
public record LadderView(
    ChartAxis volts, Side positive, Side negative, String summary, String spoken, String table) {

  /**
   * One half-cycle.
   *
   * @param name which
   * @param source the source's volts and the current then
   * @param steps the parts, in the order of the path; each begins where the one before ends
   */
  public record Side(String name, String source, List<Step> steps) {
    /** Takes a copy. */
    public Side {
      steps = List.copyOf(steps);
    }
  }

  /**
   * The volts that one part takes.
   *
   * @param name the part
   * @param from where the step begins on the axis
   * @param to where it ends
   * @param healthyFrom where it begins on the healthy bench; NaN where that is not known
   * @param healthyTo where it ends there
   * @param volts its volts
   * @param share its share of the source's volts
   * @param largest whether it takes most of all
   * @param tip all of it in words
   */
  public record Step(
      String name,
      double from,
      double to,
      double healthyFrom,
      double healthyTo,
      String volts,
      String share,
      boolean largest,
      String tip) {}

  /**
   * The view of a state.
   *
   * @param state the state
   * @param healthy the healthy bench, or null while it is not known
   * @param words the words
   * @param mostSteps for how many steps there is room; the smallest are put together
   * @return nothing where no current flows, since then no part takes volts
   */
  public static @Nullable LadderView of(
      State state, @Nullable Healthy healthy, Wording words, int mostSteps) {
    boolean flows =
        state.readout().rodPositivePeakAmps() + state.readout().rodNegativePeakAmps() > 0;
    if (!flows || !(state.readout().steady() instanceof Solved solved)) {
      return null;
    }
    var path = state.readout().flame().path();
    Solved other = healthy != null && healthy.steady() instanceof Solved h ? h : null;
    return new LadderMaker(
            words,
            VoltageLadder.rodPositive(solved, path),
            VoltageLadder.rodNegative(solved, path),
            healthy == null || other == null
                ? null
                : VoltageLadder.rodPositive(other, healthy.path()),
            healthy == null || other == null
                ? null
                : VoltageLadder.rodNegative(other, healthy.path()))
        .make(Math.max(2, mostSteps));
  }
}
