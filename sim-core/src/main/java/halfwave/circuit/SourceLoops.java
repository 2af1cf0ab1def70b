package halfwave.circuit;

import java.util.Arrays;

/**
 * Which points lie on a loop with the source. All that hangs on the rest of the circuit at a single
 * point, or at none, has nothing to drive it: in a steady state it carries no current at all.
 *
 * <p>A search in depth from common, the source being the way it came by. A branch of the search
 * that does not reach back beyond the point it started from is cut off by that point (Hopcroft and
 * Tarjan, Commun. ACM 16 (1973) 372; from memory).
 */
final class SourceLoops {

  private final int elements;
  private final int[] from;
  private final int[] to;

  /** Order in which the search met each point; −1 not met. */
  private final int[] order;

  private final boolean[] onLoop;
  private int met;

  /**
   * Searches.
   *
   * @param points number of points
   * @param elements number of elements that can carry current
   * @param from one end of each
   * @param to its other end
   */
  SourceLoops(int points, int elements, int[] from, int[] to, int common, int source) {
    this.elements = elements;
    this.from = from;
    this.to = to;
    order = new int[points];
    onLoop = new boolean[points];
    Arrays.fill(order, -1);
    order[source] = met++;
    onLoop[source] = true;
    reach(common);
  }

  boolean contain(int point) {
    return onLoop[point];
  }

  /** The earliest point that can be reached from here without going back. */
  private int reach(int point) {
    int here = met++;
    order[point] = here;
    onLoop[point] = true;
    int earliest = here;
    for (int k = 0; k < elements; k++) {
      int next = from[k] == point ? to[k] : to[k] == point ? from[k] : point;
      if (order[next] < 0) {
        int first = met;
        int beyond = reach(next);
        if (beyond >= here) {
          cutOffFrom(first);
        }
        earliest = Math.min(earliest, beyond);
      } else {
        earliest = Math.min(earliest, order[next]);
      }
    }
    return earliest;
  }

  private void cutOffFrom(int first) {
    for (int n = 0; n < order.length; n++) {
      if (order[n] >= first) {
        onLoop[n] = false;
      }
    }
  }
}
