package halfwave.diagnosis;

import java.util.LinkedHashMap;
import java.util.Map;

/** Weights of what was and is, added up where several ways lead to the same. */
final class Strands {

  private record Strand(int origin, int now) {}

  private final Map<Strand, Double> sums = new LinkedHashMap<>();

  void add(int origin, int now, double weight) {
    sums.merge(new Strand(origin, now), weight, Double::sum);
  }

  int[] origins() {
    return sums.keySet().stream().mapToInt(Strand::origin).toArray();
  }

  int[] nows() {
    return sums.keySet().stream().mapToInt(Strand::now).toArray();
  }

  double[] weights() {
    return sums.values().stream().mapToDouble(Double::doubleValue).toArray();
  }
}
