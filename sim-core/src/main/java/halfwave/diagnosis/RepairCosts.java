package halfwave.diagnosis;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Cost of repairing one suspect after the other until it works: one fault, costs that do not depend
 * on each other, perfect repairs. Then falling p/C is the best order (Kadane and Simon, Cognitive
 * Psychology 9 (1977) 380); otherwise it is a rule of thumb.
 */
public final class RepairCosts {

  private RepairCosts() {}

  /**
   * Expected cost Σ C_i (1 − Σ_{j before i} p_j).
   *
   * @param probabilities p_i; together at most one
   * @param costs C_i, in any unit; above zero
   * @param order which comes first, second, ...
   */
  public static double expected(double[] probabilities, double[] costs, int[] order) {
    double left = 1;
    double cost = 0;
    for (int i : order) {
      cost += costs[i] * left;
      left -= probabilities[i];
    }
    return cost;
  }

  /** Falling p/C; equals stay as they are. */
  public static int[] bestOrder(double[] probabilities, double[] costs) {
    return IntStream.range(0, costs.length)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> -probabilities[i] / costs[i]))
        .mapToInt(Integer::intValue)
        .toArray();
  }
}
