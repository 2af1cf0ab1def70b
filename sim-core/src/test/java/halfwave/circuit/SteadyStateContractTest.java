package halfwave.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import halfwave.circuit.Element.Resistor;
import halfwave.circuit.LumpedCircuit.Ground;
import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.circuit.LumpedCircuit.Readings;
import halfwave.circuit.LumpedCircuit.Source;
import halfwave.quantity.RejectedValueException;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Failures are values, bad arguments are refused, and the standard resolution suffices. */
class SteadyStateContractTest {

  private static final Circuit PLAIN =
      new LumpedCircuit(
              new Source(120, 60, 2.2e6, null, null),
              new Lead(1, 2e8, 1e-10),
              null,
              new SquareRootLaw(2e-7, 6e-7, 5e4),
              null,
              new Ground(1))
          .circuit();

  @Test
  void aShortedSourceIsAFailureThatNamesIt() {
    Circuit shorted = PLAIN.with(new Resistor(Part.JUMPER, Point.EMF, Point.COMMON, 0));
    assertThat(SteadyState.of(shorted))
        .isEqualTo(new SteadyState.Failed(Failure.SOURCE_SHORTED, Part.SOURCE, 0, 0));
  }

  @Test
  void aShortOverSeveralElementsIsFoundToo() {
    Circuit shorted =
        PLAIN.with(
            new Resistor(Part.METER, Point.EMF, Point.FEED, 0),
            new Resistor(Part.SECOND_METER, Point.FEED, Point.CHASSIS, 0),
            new Resistor(Part.JUMPER, Point.CHASSIS, Point.COMMON, 0));
    assertThat(SteadyState.of(shorted)).isInstanceOf(SteadyState.Failed.class);
  }

  @ParameterizedTest
  @ValueSource(ints = {-2, 0, 14, 17, 129, Integer.MIN_VALUE})
  void refusesASampleCountThatIsOddOrTooSmall(int samples) {
    assertThatThrownBy(() -> SteadyState.of(PLAIN, samples))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(Integer.toString(samples));
  }

  @Test
  void waveformsHaveTheSamplesAskedFor() {
    Solved s = (Solved) SteadyState.of(PLAIN, 64);
    assertThat(s.sampleCount()).isEqualTo(64);
    assertThat(s.currentAmps(Part.FLAME)).hasSize(64);
    assertThat(s.stepSeconds() * 64).isCloseTo(1.0 / 60, within(1e-15));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
  void refusesAVoltageThatIsNone(double volts) {
    assertThatThrownBy(() -> new Circuit(volts, 60, List.of()))
        .isInstanceOf(RejectedValueException.class);
  }

  @Test
  void aDeadSourceGivesNothing() {
    Solved s = OracleCircuits.solved(new Circuit(0, 60, PLAIN.elements()));
    assertThat(s.currentMeanAmps(Part.FLAME)).isZero();
    assertThat(s.voltageAlternatingRmsVolts(Point.TERMINAL, Point.COMMON)).isZero();
  }

  @Test
  void nothingButASourceIsACircuit() {
    Solved s = OracleCircuits.solved(new Circuit(120, 60, List.of()));
    assertThat(s.voltageAlternatingRmsVolts(Point.EMF, Point.COMMON)).isCloseTo(120, within(1e-9));
    assertThat(s.currentMeanAmps(Part.SOURCE)).isZero();
  }

  /**
   * The standard number of samples against one 16 times finer: 0.1 % of each value, on all
   * reference circuits and on random ones. A DC that is the small difference of two half-cycles is
   * allowed 0.1 % of a hundredth of the AC beside it (5 nA beside 5 uA).
   */
  @Test
  void standardSamplesServeToATenthOfAPercent() {
    List<LumpedCircuit> circuits = new ArrayList<>();
    OracleCircuits.rows().forEach(row -> circuits.add(row.circuit()));
    RandomCircuits random = new RandomCircuits(new SplittableRandom(8));
    for (int k = 0; k < 300; k++) {
      circuits.add(random.any());
    }
    SoftAssertions soft = new SoftAssertions();
    for (LumpedCircuit c : circuits) {
      double[] standard = OracleCircuits.five(OracleCircuits.readings(c));
      Solved fine = (Solved) SteadyState.of(c.circuit(), 16 * SteadyState.STANDARD_SAMPLES);
      double[] exact = OracleCircuits.five(Readings.of(fine));
      for (int k = 0; k < 5; k++) {
        double beside = k < 2 ? exact[2] : k == 3 ? exact[4] : 0;
        soft.assertThat(standard[k])
            .as("%s of %s", OracleCircuits.NAMES.get(k), c)
            .isCloseTo(exact[k], within(0.001 * Math.abs(exact[k]) + 1e-5 * beside + 1e-15));
      }
    }
    soft.assertAll();
  }
}
