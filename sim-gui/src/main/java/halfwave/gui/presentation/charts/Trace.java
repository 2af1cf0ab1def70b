package halfwave.gui.presentation.charts;

import java.util.Arrays;

/**
 * A curve in a chart, with no more points than its picture can show.
 *
 * @param at places along the axis across, 0 to 1
 * @param levels heights along the upright axis, 0 to 1; NaN where there is nothing
 */
public record Trace(double[] at, double[] levels) {

  /**
   * A curve with at most four points in a column: the first, the lowest, the highest, the last.
   * What stands out for a moment is never lost.
   *
   * @param at places, 0 to 1, in order
   * @param levels heights
   * @param columns how many points across can be told apart
   */
  public static Trace reduced(double[] at, double[] levels, int columns) {
    if (at.length <= 2 * columns) {
      return new Trace(at, levels);
    }
    double[] x = new double[at.length];
    double[] y = new double[at.length];
    int count = 0;
    int start = 0;
    for (int k = 1; k <= at.length; k++) {
      if (k < at.length && column(at[k], columns) == column(at[start], columns)) {
        continue;
      }
      int low = start;
      int high = start;
      for (int i = start; i < k; i++) {
        low = levels[i] < levels[low] ? i : low;
        high = levels[i] > levels[high] ? i : high;
      }
      for (int i = start; i < k; i++) {
        if (i == start || i == low || i == high || i == k - 1) {
          x[count] = at[i];
          y[count] = levels[i];
          count++;
        }
      }
      start = k;
    }
    return new Trace(Arrays.copyOf(x, count), Arrays.copyOf(y, count));
  }

  private static int column(double at, int columns) {
    return (int) Math.floor(at * columns);
  }

  /** The largest distance of two curves of the same places; gaps on both sides count as none. */
  static double apart(double[] a, double[] b) {
    double most = 0;
    for (int k = 0; k < Math.min(a.length, b.length); k++) {
      double away = Math.abs(a[k] - b[k]);
      most = away > most ? away : most;
    }
    return most;
  }
}
