package halfwave.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.work.Repair;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Formulas against worked numbers from outside: Cover and Thomas, Elements of Information Theory
 * (2nd ed., 2006), and the worked check of the project's founders, made with another program.
 */
class InformationReferenceTest {

  /** Half a unit of the last digit that the source prints. */
  private static final double PRINTED_3 = 5e-4;

  private static final double PRINTED_1 = 0.05;

  /** Rod, ground, wire, position, flame, insulator, board: invented priors, costs in minutes. */
  private static final double[] P = {0.45, 0.15, 0.10, 0.08, 0.10, 0.05, 0.07};

  private static final double[] C = {10, 8, 6, 6, 15, 6, 60};

  /** Cover and Thomas, section 1.1: eight horses, two bits. */
  @Test
  void aHorseRaceHasTwoBits() {
    double[] horses = {1 / 2.0, 1 / 4.0, 1 / 8.0, 1 / 16.0, 1 / 64.0, 1 / 64.0, 1 / 64.0, 1 / 64.0};
    // only rounding
    assertThat(Information.entropyBits(horses)).isCloseTo(2, within(1e-12));
  }

  /** Cover and Thomas, example 2.2.1: H(X) = 7/4, H(Y) = 2, H(X|Y) = 11/8, H(Y|X) = 13/8 bits. */
  @Test
  void jointOfTheTextbook() {
    double[][] joint = {
      {1 / 8.0, 1 / 16.0, 1 / 32.0, 1 / 32.0},
      {1 / 16.0, 1 / 8.0, 1 / 32.0, 1 / 32.0},
      {1 / 16.0, 1 / 16.0, 1 / 16.0, 1 / 16.0},
      {1 / 4.0, 0, 0, 0}
    };
    double[] x = new double[4];
    double[] y = new double[4];
    double[][] turned = new double[4][4];
    for (int r = 0; r < 4; r++) {
      for (int c = 0; c < 4; c++) {
        x[c] += joint[r][c];
        y[r] += joint[r][c];
        turned[c][r] = joint[r][c];
      }
    }
    assertThat(Information.entropyBits(x)).isCloseTo(7 / 4.0, within(1e-12));
    assertThat(Information.entropyBits(y)).isCloseTo(2, within(1e-12));
    assertThat(Information.expectedEntropyBits(joint)).isCloseTo(11 / 8.0, within(1e-12));
    assertThat(Information.expectedEntropyBits(turned)).isCloseTo(13 / 8.0, within(1e-12));
  }

  @Test
  void entropyOfTheWorkedCheck() {
    assertThat(Information.entropyBits(P)).isCloseTo(2.369, within(PRINTED_3));
  }

  /** A test that splits .45/.55 gives 0.993 bit, one that splits .07/.93 only 0.366. */
  @Test
  void gainOfASplit() {
    assertThat(gain(0)).isCloseTo(0.993, within(PRINTED_3));
    assertThat(gain(6)).isCloseTo(0.366, within(PRINTED_3));
  }

  private static double gain(int alone) {
    double[][] joint = new double[2][P.length];
    for (int k = 0; k < P.length; k++) {
      joint[k == alone ? 0 : 1][k] = P[k];
    }
    return Information.entropyBits(P) - Information.expectedEntropyBits(joint);
  }

  /** Seven suspects, each cured by a repair of its own; what repair stands for it is no matter. */
  private static Repairing suspects() {
    long[] each = new long[P.length];
    for (int k = 0; k < each.length; k++) {
      each[k] = 1L << k;
    }
    return new Repairing(List.of(Repair.values()).subList(0, P.length), each, C, each);
  }

  private static int[] bestOrder() {
    return suspects().turns(P).stream().mapToInt(t -> t.repair().ordinal()).toArray();
  }

  private static double expected(int[] order) {
    List<Repairing.Turn> turns =
        Arrays.stream(order)
            .mapToObj(k -> new Repairing.Turn(Repair.values()[k], P[k], C[k]))
            .toList();
    return Repairing.expectedSeconds(turns, 1);
  }

  /** Rod, ground, wire, position, insulator, flame, board: 26.7 min. */
  @Test
  void bestOrderOfTheWorkedCheck() {
    assertThat(bestOrder()).containsExactly(0, 1, 2, 3, 5, 4, 6);
    assertThat(expected(bestOrder())).isCloseTo(26.7, within(PRINTED_1));
    assertThat(suspects().expectedSeconds(P)).isCloseTo(26.7, within(PRINTED_1));
  }

  /** By probability alone 30.0 min, of equals the cheaper first; board first 78.9 min. */
  @Test
  void otherOrdersOfTheWorkedCheck() {
    assertThat(expected(new int[] {0, 1, 2, 4, 3, 6, 5})).isCloseTo(30.0, within(PRINTED_1));
    assertThat(expected(new int[] {6, 0, 1, 2, 3, 5, 4})).isCloseTo(78.9, within(PRINTED_1));
  }

  /** All orders of the worked check: none is better than falling p/C (Kadane and Simon 1977). */
  @Test
  void noOrderIsBetter() {
    double best = expected(bestOrder());
    int[] order = {0, 1, 2, 3, 4, 5, 6};
    assertThat(least(order, 0)).isCloseTo(best, within(1e-9));
  }

  private static double least(int[] order, int from) {
    if (from == order.length) {
      return expected(order);
    }
    double least = Double.POSITIVE_INFINITY;
    for (int k = from; k < order.length; k++) {
      swap(order, from, k);
      least = Math.min(least, least(order, from + 1));
      swap(order, from, k);
    }
    return least;
  }

  private static void swap(int[] order, int a, int b) {
    int kept = order[a];
    order[a] = order[b];
    order[b] = kept;
  }
}
