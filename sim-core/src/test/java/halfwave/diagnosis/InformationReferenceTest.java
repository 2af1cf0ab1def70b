package halfwave.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
import halfwave.work.Repair;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Formulas against worked numbers from outside: Cover and Thomas, Elements of Information Theory
 * (2nd ed., 2006), and the worked check of the project's founders, made with another program.
 */
@Validated(Area.EVIDENCE)
class InformationReferenceTest {

  private static final double PRINTED_3 = 5e-4;
  private static final double PRINTED_1 = 0.05;
  private static final String DIGITS = "half of the last digit printed";
  private static final Reference TEXTBOOK =
      Reference.seen("Cover and Thomas, Elements of Information Theory, 2nd ed. 2006");
  private static final Reference WORKED =
      Reference.calc("worked check of the project's founders, made with another program");
  private static final Reference ALL_ORDERS =
      Reference.calc("all 5040 orders tried; Kadane and Simon 1977");

  private static void bits(Reference source, String subject, double computed, double expected) {
    source
        .check(subject, Unit.BITS, computed)
        .isCloseTo(
            expected,
            source == TEXTBOOK ? 1e-12 : PRINTED_3,
            source == TEXTBOOK ? "rounding" : DIGITS);
  }

  private static void minutes(String subject, double computed, double expected) {
    WORKED.check(subject, Unit.MINUTES, computed).isCloseTo(expected, PRINTED_1, DIGITS);
  }

  /** Rod, ground, wire, position, flame, insulator, board: invented priors, costs in minutes. */
  private static final double[] P = {0.45, 0.15, 0.10, 0.08, 0.10, 0.05, 0.07};

  private static final double[] C = {10, 8, 6, 6, 15, 6, 60};

  /** Cover and Thomas, section 1.1: eight horses, two bits. */
  @Test
  void aHorseRaceHasTwoBits() {
    double[] horses = {1 / 2.0, 1 / 4.0, 1 / 8.0, 1 / 16.0, 1 / 64.0, 1 / 64.0, 1 / 64.0, 1 / 64.0};
    bits(TEXTBOOK, "eight horses (section 1.1)", Information.entropyBits(horses), 2);
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
    bits(TEXTBOOK, "H(X) (example 2.2.1)", Information.entropyBits(x), 7 / 4.0);
    bits(TEXTBOOK, "H(Y) (example 2.2.1)", Information.entropyBits(y), 2);
    bits(
        TEXTBOOK, "H(X given Y) (example 2.2.1)", Information.expectedEntropyBits(joint), 11 / 8.0);
    bits(
        TEXTBOOK,
        "H(Y given X) (example 2.2.1)",
        Information.expectedEntropyBits(turned),
        13 / 8.0);
  }

  @Test
  void entropyOfTheWorkedCheck() {
    bits(WORKED, "seven suspects: entropy", Information.entropyBits(P), 2.369);
  }

  /** A test that splits .45/.55 gives 0.993 bit, one that splits .07/.93 only 0.366. */
  @Test
  void gainOfASplit() {
    bits(WORKED, "seven suspects: gain of a split .45/.55", gain(0), 0.993);
    bits(WORKED, "seven suspects: gain of a split .07/.93", gain(6), 0.366);
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
    minutes("seven suspects: best order", expected(bestOrder()), 26.7);
    minutes("seven suspects: best order as planned", suspects().expectedSeconds(P), 26.7);
  }

  /** By probability alone 30.0 min, of equals the cheaper first; board first 78.9 min. */
  @Test
  void otherOrdersOfTheWorkedCheck() {
    int[] byProbability = {0, 1, 2, 4, 3, 6, 5};
    int[] boardFirst = {6, 0, 1, 2, 3, 5, 4};
    minutes("seven suspects: by probability alone", expected(byProbability), 30.0);
    minutes("seven suspects: board first", expected(boardFirst), 78.9);
  }

  /** All orders of the worked check: none is better than falling p/C (Kadane and Simon 1977). */
  @Test
  void noOrderIsBetter() {
    double best = expected(bestOrder());
    int[] order = {0, 1, 2, 3, 4, 5, 6};
    ALL_ORDERS
        .check("seven suspects: the least of all orders", Unit.MINUTES, least(order, 0))
        .isCloseTo(best, 1e-9, "rounding");
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
