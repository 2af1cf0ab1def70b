package halfwave.benchmark;

import halfwave.circuit.LumpedCircuit;
import halfwave.circuit.LumpedCircuit.Readings;
import halfwave.circuit.Ngspice;
import halfwave.circuit.OracleCircuits;
import halfwave.circuit.Solved;
import halfwave.circuit.SteadyState;
import halfwave.io.bench.SpiceDeck;
import java.util.List;

/**
 * The reference circuits by ngspice and by the library in one run: accuracy and ratio of times.
 *
 * <p>The program's time is taken three ways: whole processes, one circuit each; the time steps of
 * these, as the difference between 20 periods and one; and many copies of a circuit in one deck, as
 * the difference between many copies and one. It starts in the library's own steady state, and 20
 * periods are what it is given to show that the state stays; so the ratio is printed per period as
 * well, which is the least that any time stepping needs.
 */
public final class NgspiceRatio {

  /** Periods that {@link SpiceDeck} runs. */
  private static final int PERIODS = 20;

  private static final int COPIES = 21;

  private NgspiceRatio() {}

  /** Prints the comparison. */
  public static void main(String[] arguments) {
    List<OracleCircuits.Row> rows = OracleCircuits.rows();
    double ours = librarySeconds(rows);
    double worstPart = 0;
    double shortSeconds = 0;
    double longSeconds = 0;
    double perCopySeconds = 0;
    for (OracleCircuits.Row row : rows) {
      Solved solved = OracleCircuits.solved(row.circuit().circuit());
      String deck = SpiceDeck.of(solved);
      double hertz = row.circuit().source().frequencyHertz();
      shortSeconds += timed(row, solved, Ngspice.firstPeriod(deck, hertz)).seconds;
      Timed one = timed(row, solved, deck);
      Timed many = timed(row, solved, Copies.of(deck, COPIES));
      longSeconds += one.seconds;
      double perCopy = (many.seconds - one.seconds) / (COPIES - 1);
      perCopySeconds += perCopy;
      worstPart = Math.max(worstPart, Math.max(one.worstPart, many.worstPart));
      System.out.printf("one process %.3f s, one more copy %.4f s%n", one.seconds, perCopy);
    }
    System.out.printf(
        "circuits %d, largest part of the tolerance used %.3f%n", rows.size(), worstPart);
    System.out.printf("library, all circuits: %.1f us%n", 1e6 * ours);
    System.out.printf("ngspice for all circuits, %d periods; ratio; ratio per period%n", PERIODS);
    double stepping = (longSeconds - shortSeconds) * PERIODS / (PERIODS - 1);
    print("separate processes", longSeconds, ours);
    print("separate processes, time steps only", stepping, ours);
    print("one more copy, of " + COPIES + " in one deck", perCopySeconds, ours);
  }

  private static void print(String name, double seconds, double ours) {
    System.out.printf(
        "%s: %.2f s, %.0f, %.0f%n", name, seconds, seconds / ours, seconds / ours / PERIODS);
  }

  private record Timed(double seconds, double worstPart) {}

  /** Runs a deck; says how long it took and how much of the tolerance the library used. */
  private static Timed timed(OracleCircuits.Row row, Solved solved, String deck) {
    long begin = System.nanoTime();
    double[] expected = Ngspice.five(deck);
    double seconds = 1e-9 * (System.nanoTime() - begin);
    double[] ours = OracleCircuits.five(Readings.of(solved));
    double worst = 0;
    for (int k = 0; k < 5; k++) {
      double allowed = OracleCircuits.tolerance(k, expected[k], row.circuit());
      worst = Math.max(worst, Math.abs(ours[k] - expected[k]) / allowed);
    }
    return new Timed(seconds, worst);
  }

  /** Seconds for one pass over all circuits, once the virtual machine has compiled the code. */
  private static double librarySeconds(List<OracleCircuits.Row> rows) {
    int passes = 3000;
    double sum = 0;
    long begin = 0;
    for (int pass = -passes; pass < passes; pass++) {
      begin = pass == 0 ? System.nanoTime() : begin;
      for (OracleCircuits.Row row : rows) {
        LumpedCircuit c = row.circuit();
        sum += Readings.of((Solved) SteadyState.of(c.circuit())).rodEndMeanAmps();
      }
    }
    double seconds = 1e-9 * (System.nanoTime() - begin) / passes;
    if (Double.isNaN(sum)) {
      throw new AssertionError("a reading is not a number");
    }
    return seconds;
  }
}
