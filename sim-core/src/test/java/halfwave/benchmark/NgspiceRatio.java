package halfwave.benchmark;

import halfwave.circuit.LumpedCircuit;
import halfwave.circuit.LumpedCircuit.Readings;
import halfwave.circuit.Ngspice;
import halfwave.circuit.OracleCircuits;
import halfwave.circuit.Solved;
import halfwave.circuit.SteadyState;
import halfwave.io.SpiceDeck;
import java.util.List;

/**
 * The reference circuits by ngspice and by the library in one run: accuracy and ratio of times.
 *
 * <p>The program's time without its start is the difference between 20 periods and one; 20 periods,
 * started in the library's own steady state, are what it needs to show that the state stays.
 */
public final class NgspiceRatio {

  private NgspiceRatio() {}

  /** Prints the comparison. */
  public static void main(String[] arguments) {
    List<OracleCircuits.Row> rows = OracleCircuits.rows();
    double worstPart = 0;
    double shortSeconds = 0;
    double longSeconds = 0;
    for (OracleCircuits.Row row : rows) {
      Solved solved = OracleCircuits.solved(row.circuit().circuit());
      String deck = SpiceDeck.of(solved);
      String one = Ngspice.firstPeriod(deck, row.circuit().source().frequencyHertz());
      long t0 = System.nanoTime();
      Ngspice.five(one);
      long t1 = System.nanoTime();
      double[] expected = Ngspice.five(deck);
      long t2 = System.nanoTime();
      shortSeconds += 1e-9 * (t1 - t0);
      longSeconds += 1e-9 * (t2 - t1);
      double[] ours = OracleCircuits.five(Readings.of(solved));
      for (int k = 0; k < 5; k++) {
        double allowed = OracleCircuits.tolerance(k, expected[k], row.circuit());
        worstPart = Math.max(worstPart, Math.abs(ours[k] - expected[k]) / allowed);
      }
    }
    double ours = librarySeconds(rows);
    double stepping = (longSeconds - shortSeconds) * 20 / 19;
    System.out.printf(
        "circuits %d, largest part of the tolerance used %.3f%n", rows.size(), worstPart);
    System.out.printf("library, all circuits: %.1f us%n", 1e6 * ours);
    System.out.printf(
        "ngspice with process: %.2f s, ratio %.0f%n", longSeconds, longSeconds / ours);
    System.out.printf("ngspice stepping only: %.2f s, ratio %.0f%n", stepping, stepping / ours);
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
