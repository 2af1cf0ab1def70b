package halfwave.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import halfwave.circuit.Circuit;
import halfwave.circuit.Element.Capacitor;
import halfwave.circuit.Element.Resistor;
import halfwave.circuit.Failure;
import halfwave.circuit.LumpedCircuit;
import halfwave.circuit.LumpedCircuit.Ground;
import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.circuit.LumpedCircuit.Source;
import halfwave.circuit.Part;
import halfwave.circuit.Point;
import halfwave.circuit.SquareRootLaw;
import halfwave.instrument.MeterReading.Amps;
import halfwave.instrument.MeterReading.None;
import halfwave.instrument.MeterReading.Volts;
import halfwave.quantity.RejectedValueException;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** What meters show and what they do to the circuit they hang on. */
class MeterReadingTest {

  private static final Source BOARD = new Source(120, 60, 2.2e6, null, null);

  private static Circuit board(Lead lead, boolean flame) {
    return new LumpedCircuit(
            BOARD,
            lead,
            null,
            flame ? new SquareRootLaw(0.35e-6, 1.1e-6, 5e4) : null,
            null,
            new Ground(0.3))
        .circuit();
  }

  private static Volts atTerminal(Voltmeter meter) {
    Circuit open = board(new Lead(Double.POSITIVE_INFINITY, null, null), false);
    return (Volts) meter.read(open, Point.TERMINAL, Point.COMMON);
  }

  /** Source: closed form, 120 V behind 2.2 MΩ; the digits given there. */
  @Test
  void loading() {
    assertThat(atTerminal(new Voltmeter(10e6, 0)).alternatingRmsVolts())
        .isCloseTo(98.4, within(0.05));
    assertThat(atTerminal(Voltmeter.HIGH_IMPEDANCE).alternatingRmsVolts())
        .isCloseTo(98.1, within(0.05));
    assertThat(atTerminal(Voltmeter.LOW_IMPEDANCE).alternatingRmsVolts())
        .isCloseTo(0.163, within(0.0005));
  }

  /** The same as a formula, to rounding: |V| = E·|Z/(Z + R)|, Z = R_m parallel to C_m. */
  @Test
  void loadingAsAFormula() {
    for (double farads : new double[] {0, 30e-12, 100e-12, 1e-9}) {
      double w = 2 * Math.PI * 60 * farads;
      double real = 1 + 2.2e6 / 10e6;
      double expected = 120 / Math.hypot(real, 2.2e6 * w);
      Volts volts = atTerminal(new Voltmeter(10e6, farads));
      // 128 samples of a sine give its rms to rounding
      assertThat(volts.alternatingRmsVolts()).isCloseTo(expected, within(1e-9 * expected));
      assertThat(volts.meanVolts()).isCloseTo(0, within(1e-9));
    }
  }

  @Test
  void swappedLeadsSwapTheSign() {
    Circuit circuit = board(new Lead(1, 200e6, 80e-12), true);
    Volts one = (Volts) Voltmeter.HIGH_IMPEDANCE.read(circuit, Point.TERMINAL, Point.COMMON);
    Volts other = (Volts) Voltmeter.HIGH_IMPEDANCE.read(circuit, Point.COMMON, Point.TERMINAL);
    assertThat(one.meanVolts()).isNegative().isCloseTo(-other.meanVolts(), within(1e-9));
    assertThat(one.alternatingRmsVolts()).isCloseTo(other.alternatingRmsVolts(), within(1e-9));
  }

  /** A burden of 0.1 to 10 kΩ against megohms: less than the last digit of a meter, 0.01 µA. */
  @Test
  void seriesBurdenIsNegligible() {
    Circuit circuit = board(new Lead(1, 200e6, 80e-12), true);
    Amps ideal = (Amps) new Microammeter(0).read(circuit);
    assertThat(ideal.meanAmps()).isBetween(1e-6, 10e-6);
    for (double burden : new double[] {100, 1500, 10_000}) {
      Amps amps = (Amps) new Microammeter(burden).read(circuit);
      assertThat(amps.meanAmps()).isCloseTo(ideal.meanAmps(), within(0.01e-6));
      assertThat(amps.alternatingRmsAmps()).isCloseTo(ideal.alternatingRmsAmps(), within(0.03e-6));
    }
  }

  @Test
  void seriesMeterInAPulledLeadReadsNothing() {
    Circuit pulled =
        board(new Lead(1, null, null), true)
            .without(Part.CONNECTOR)
            .with(
                new Resistor(Part.CONNECTOR, Point.TERMINAL, Point.LEAD, Double.POSITIVE_INFINITY));
    Amps amps = (Amps) Microammeter.SERVICE.read(pulled);
    assertThat(amps.meanAmps()).isZero();
    assertThat(amps.alternatingRmsAmps()).isZero();
  }

  /** A circuit without a solution gives no number. */
  @Test
  void noSolutionNoNumber() {
    Circuit shorted =
        board(new Lead(1, null, null), false)
            .with(new Resistor(Part.JUMPER, Point.EMF, Point.COMMON, 0));
    assertThat(Voltmeter.HIGH_IMPEDANCE.read(shorted, Point.TERMINAL, Point.COMMON))
        .isInstanceOfSatisfying(
            None.class,
            none -> assertThat(none.reason().failure()).isEqualTo(Failure.SOURCE_SHORTED));
    assertThat(Microammeter.SERVICE.read(shorted)).isInstanceOf(None.class);
  }

  @Test
  void metersAreAddedAsTheyAre() {
    Circuit circuit = board(new Lead(1, null, null), true);
    Circuit with = Voltmeter.HIGH_IMPEDANCE.across(circuit, Point.ROD, Point.CHASSIS);
    assertThat(with.elements())
        .containsAll(circuit.elements())
        .contains(
            new Resistor(Part.METER, Point.ROD, Point.CHASSIS, 10e6),
            new Capacitor(Part.METER_CAPACITANCE, Point.ROD, Point.CHASSIS, 100e-12));
  }

  @Test
  void badMeters() {
    for (double bad : new double[] {Double.NaN, -1, Double.POSITIVE_INFINITY}) {
      refused(() -> new Microammeter(bad));
      refused(() -> new Voltmeter(bad, 0));
      refused(() -> new Voltmeter(1e7, bad));
    }
    refused(() -> new Voltmeter(0, 0));
  }

  private static void refused(ThrowingCallable making) {
    assertThatThrownBy(making).isInstanceOf(RejectedValueException.class);
  }
}
