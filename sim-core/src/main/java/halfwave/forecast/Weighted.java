package halfwave.forecast;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Numbers that count more or less. */
final class Weighted {

  private record Item(double valueRatio, double weightRatio) {}

  private Weighted() {}

  /**
   * The number below which a share of the weight lies.
   *
   * @param values the numbers, in any unit
   * @param weights as many, together one
   * @param share from 0 to 1
   */
  static double quantile(double[] values, double[] weights, double share) {
    List<Item> items =
        IntStream.range(0, values.length)
            .mapToObj(n -> new Item(values[n], weights[n]))
            .sorted(Comparator.comparingDouble(Item::valueRatio))
            .toList();
    double below = 0;
    for (Item item : items) {
      below += item.weightRatio();
      if (below >= share) {
        return item.valueRatio();
      }
    }
    return items.get(items.size() - 1).valueRatio();
  }
}
