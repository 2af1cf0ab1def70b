package halfwave.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.io.bench.SpiceDeck;
import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Validated;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Random circuits against ngspice (a general-purpose circuit simulator), which starts in our steady
 * state and runs 20 periods: the state must stay, and the five values of the last period agree.
 */
@Validated(Area.CIRCUIT)
class NgspiceReferenceTest {

  private static final Reference NGSPICE =
      Reference.program("ngspice, general-purpose circuit simulator, run anew");

  private static final int COUNT = Boolean.getBoolean("halfwave.deep") ? 300 : 50;

  /** More than needed: ngspice itself gives up a time step in a few of the extreme circuits. */
  private static final int DRAWN = COUNT * 13 / 10;

  /** How many of a hundred circuits ngspice may be too slow for; more would hide a mistake. */
  private static final int MOST_PER_CENT_TOO_LONG = 2;

  private enum End {
    FINISHED,
    GAVE_UP,
    TOOK_TOO_LONG
  }

  private record Run(
      LumpedCircuit circuit, End end, double[] ours, double[] first, double[] last) {}

  @BeforeAll
  static void needsNgspice() {
    boolean present = Ngspice.present();
    if (Boolean.getBoolean("halfwave.requireTools")) {
      assertThat(present).as("ngspice is required (halfwave.requireTools) and missing").isTrue();
    }
    if (!present) {
      Assumptions.abort("ngspice is not installed: " + NgspiceReferenceTest.class.getSimpleName());
    }
  }

  @Test
  void randomCircuitsStayInOurSteadyStateAndAgree() {
    RandomCircuits random = new RandomCircuits(new SplittableRandom(50));
    List<LumpedCircuit> circuits = IntStream.range(0, DRAWN).mapToObj(k -> random.any()).toList();
    assertThat(circuits).anyMatch(c -> c.source().couplingFarads() != null);
    assertThat(circuits).anyMatch(NgspiceReferenceTest::hasEqualElectrodes);
    assertThat(circuits).anyMatch(c -> Double.isInfinite(c.lead().resistanceOhms()));
    assertThat(circuits).anyMatch(c -> c.lead().resistanceOhms() == 0);
    List<Run> runs = circuits.parallelStream().map(NgspiceReferenceTest::run).toList();
    List<Run> finished = ended(runs, End.FINISHED);
    List<Run> tooLong = ended(runs, End.TOOK_TOO_LONG);
    System.out.printf(
        "ngspice: of %d circuits %d finished, %d given up by it, %d stopped after %d s%n",
        DRAWN,
        finished.size(),
        ended(runs, End.GAVE_UP).size(),
        tooLong.size(),
        Ngspice.LONGEST_SECONDS);
    tooLong.forEach(run -> System.out.println("stopped: " + run.circuit));
    assertThat(finished).as("circuits that ngspice finished").hasSizeGreaterThanOrEqualTo(COUNT);
    assertThat(tooLong)
        .as("circuits that ngspice was too slow for")
        .hasSizeLessThanOrEqualTo(DRAWN * MOST_PER_CENT_TOO_LONG / 100);
    SoftAssertions soft = new SoftAssertions();
    for (Run run : finished) {
      for (int k = 0; k < 5; k++) {
        double allowed = OracleCircuits.tolerance(k, run.last[k], run.circuit);
        String name = OracleCircuits.WORDS.get(k);
        agrees(soft, "random circuits: " + name, k, run, run.ours[k], allowed);
        // the program's own first period: our steady state, from which it starts, does not move
        agrees(soft, "random circuits, its first period: " + name, k, run, run.first[k], allowed);
      }
    }
    soft.assertAll();
  }

  private static void agrees(
      SoftAssertions soft, String subject, int k, Run run, double computed, double allowed) {
    soft.check(
        () -> {
          try {
            NGSPICE
                .check(subject, OracleCircuits.UNITS.get(k), computed)
                .isCloseTo(run.last[k], allowed, OracleCircuits.ALLOWED);
          } catch (AssertionError differs) {
            throw new AssertionError(differs.getMessage() + "\n  of " + run.circuit, differs);
          }
        });
  }

  private static boolean hasEqualElectrodes(LumpedCircuit c) {
    return c.flame() instanceof SquareRootLaw law
        && law.rodIonAmpsPerRootVolt() == law.burnerIonAmpsPerRootVolt();
  }

  private static List<Run> ended(List<Run> runs, End end) {
    return runs.stream().filter(run -> run.end == end).toList();
  }

  private static Run run(LumpedCircuit circuit) {
    Solved solved = OracleCircuits.solved(circuit.circuit());
    String deck = SpiceDeck.of(solved);
    double[] none = new double[0];
    try {
      return new Run(
          circuit,
          End.FINISHED,
          OracleCircuits.five(LumpedCircuit.Readings.of(solved)),
          Ngspice.five(Ngspice.firstPeriod(deck, circuit.source().frequencyHertz())),
          Ngspice.five(deck));
    } catch (Ngspice.GaveUp gaveUp) {
      return new Run(circuit, End.GAVE_UP, none, none, none);
    } catch (Ngspice.TookTooLong tookTooLong) {
      return new Run(circuit, End.TOOK_TOO_LONG, none, none, none);
    }
  }
}
