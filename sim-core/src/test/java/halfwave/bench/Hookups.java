package halfwave.bench;

import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.circuit.LumpedCircuit.Source;
import halfwave.circuit.Solved;
import halfwave.flame.FlameCalibration;
import halfwave.flame.FlameSheets;
import halfwave.instrument.MeterReading;
import halfwave.instrument.MeterReading.Amps;
import halfwave.instrument.MeterReading.Volts;

/** What the bench tests hook up and read, and the benches they change. */
final class Hookups {

  static final Bench STANDARD = ShippedBenches.standard();
  static final Condition HEALTHY = Condition.HEALTHY;
  static final double OPEN = Double.POSITIVE_INFINITY;

  private Hookups() {}

  static Readings readings(Bench bench) {
    return Readings.of(new Stages(), bench);
  }

  static Amps amps(MeterReading reading) {
    return (Amps) reading;
  }

  static Volts volts(MeterReading reading) {
    return (Volts) reading;
  }

  /** The series meter (A). */
  static Amps series(Bench bench) {
    return amps(readings(bench).series());
  }

  /** DC of the series meter (A). */
  static double dc(Bench bench) {
    return series(bench).meanAmps();
  }

  /** DC of the series meter on the standard bench in another condition (A). */
  static double dc(Condition condition) {
    return dc(STANDARD.with(condition));
  }

  static Solved undisturbed(Bench bench) {
    return (Solved) Readings.undisturbed(new Stages(), bench);
  }

  static FlameSheets sheets(Bench bench) {
    return new Stages().flame(bench).field().sheets();
  }

  /** The standard bench with its rod shifted (m). */
  static Bench shifted(double across, double up, double along) {
    return STANDARD.with(HEALTHY.withRodPosition(RodPosition.shifted(across, up, along)));
  }

  static Bench withSourceVolts(Bench bench, double rmsVolts) {
    Source s = bench.design().source();
    return bench.with(
        bench
            .design()
            .withSource(
                new Source(
                    rmsVolts,
                    s.frequencyHertz(),
                    s.resistanceOhms(),
                    s.couplingFarads(),
                    s.returnOhms())));
  }

  /** A resistance in the lead at the rod: behind insulation and cable, as seen from the board. */
  static Bench withOhmsAtRod(double ohms) {
    Lead lead = STANDARD.design().lead();
    return STANDARD.with(
        STANDARD
            .design()
            .withLead(
                new Lead(
                    lead.resistanceOhms() + ohms,
                    lead.insulationOhms(),
                    lead.capacitanceFarads())));
  }

  /** The standard bench with that clear gap between metal and flame (m). */
  static Bench withGap(double gapMeters) {
    FlameCalibration d = STANDARD.design().flame();
    double rest = gapMeters * (1 - sheets(STANDARD).stretchRatio());
    return STANDARD.with(
        STANDARD
            .design()
            .withFlame(
                new FlameCalibration(
                    d.ionMultiplierRatio(),
                    d.rootMultiplierRatio(),
                    rest,
                    d.columnOhms(),
                    d.electronMobilitySquareMetersPerVoltSecond(),
                    d.burnerFaceKelvin())));
  }
}
