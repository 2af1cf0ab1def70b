package halfwave.gui.presentation.charts;

import java.util.List;

/**
 * What a chart says at one place of it.
 *
 * @param at the place, 0 to 1 along the axis across
 * @param levels heights of the curves there, 0 to 1, in the order of the chart
 * @param words the numbers with their units
 */
public record Probe(double at, List<Double> levels, String words) {
  /** Takes a copy. */
  public Probe {
    levels = List.copyOf(levels);
  }
}
