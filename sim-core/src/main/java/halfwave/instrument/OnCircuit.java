package halfwave.instrument;

import halfwave.circuit.Circuit;
import halfwave.circuit.Part;
import halfwave.circuit.Solved;
import halfwave.circuit.SteadyState;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A meter on the sense circuit, which every meter loads. */
final class OnCircuit {

  private final Meter meter;
  private final MeterModel model;
  private final MeterFunction function;
  private final Leads leads;
  private final Digits digits;
  private final List<Message> cautions;

  OnCircuit(
      Meter meter, MeterFunction function, Leads leads, Digits digits, List<Message> cautions) {
    this.meter = meter;
    this.model = meter.model();
    this.function = function;
    this.leads = leads;
    this.digits = digits;
    this.cautions = cautions;
  }

  Measurement measured() {
    return switch (function.input()) {
      case VOLTAGE -> volts(model.voltage());
      case LOW_IMPEDANCE -> volts(model.lowImpedance());
      case MICROAMPS, MILLIAMPS -> meter.fuseIntact() ? amps() : noCurrent();
      case TEST_SOURCE -> ohms();
    };
  }

  private Measurement volts(Voltmeter input) {
    if (leads.together()) {
      return unchanged(digits.shown(function, 0, 0), leads.circuit());
    }
    Circuit loaded = leads.joinedBy(input);
    SteadyState state = SteadyState.of(loaded);
    return state instanceof Solved solved
        ? unchanged(digits.shown(function, meanVolts(solved), alternatingVolts(solved)), loaded)
        : unsolved((SteadyState.Failed) state, loaded);
  }

  private Measurement amps() {
    if (leads.together()) {
      return unchanged(digits.shown(function, 0, 0), leads.circuit());
    }
    if (function.input() == MeterFunction.Input.MICROAMPS) {
      Circuit loaded = leads.joinedBy(model.microamps().burdenOhms());
      SteadyState state = SteadyState.of(loaded);
      if (state instanceof SteadyState.Failed failed) {
        return unsolved(failed, loaded);
      }
      if (largestVolts((Solved) state) <= model.clampVolts()) {
        return amps((Solved) state);
      }
    }
    Circuit loaded = leads.joinedBy(model.milliamps().burdenOhms());
    SteadyState state = SteadyState.of(loaded);
    return state instanceof Solved solved
        ? amps(solved)
        : unsolved((SteadyState.Failed) state, loaded);
  }

  private Measurement amps(Solved solved) {
    double mean = solved.currentMeanAmps(Part.METER);
    double rms = solved.currentAlternatingRmsAmps(Part.METER);
    if (Math.sqrt(mean * mean + rms * rms) > model.fuseAmps()) {
      List<Message> all = new ArrayList<>(cautions);
      all.add(Message.of(MessageKey.METER_FUSE_BLOWN));
      return new Measurement(
          digits.noCurrent(function), leads.circuit(), meter.withBlownFuse(), all);
    }
    double alternating =
        model.method() == AlternatingMethod.TRUE_RMS
            ? rms
            : model.method().of(solved.currentAmps(Part.METER));
    return unchanged(digits.shown(function, mean, alternating), solved.circuit());
  }

  private double largestVolts(Solved solved) {
    return Arrays.stream(solved.voltageVolts(leads.red(), leads.black()))
        .map(Math::abs)
        .max()
        .orElse(0);
  }

  private Measurement noCurrent() {
    return unchanged(digits.noCurrent(function), leads.circuit());
  }

  private Measurement ohms() {
    return new OhmTest(model.ohmmeter(), leads)
        .result(
            new OhmTest.Answer<>() {
              @Override
              public Measurement ohms(double ohms) {
                return OnCircuit.this.ohms(ohms);
              }

              @Override
              public Measurement failed(SteadyState.Failed reason) {
                return unsolved(reason, leads.circuit());
              }
            });
  }

  private Measurement ohms(double deadOhms) {
    if (leads.together()) {
      return unchanged(digits.ohms(function, deadOhms), leads.circuit());
    }
    Ohmmeter test = model.ohmmeter();
    Circuit loaded = leads.joinedBy(test.sourceOhms());
    if (!leads.circuit().live()) {
      return unchanged(digits.ohms(function, deadOhms), loaded);
    }
    SteadyState state = SteadyState.of(loaded);
    double testVolts =
        deadOhms == Double.POSITIVE_INFINITY
            ? test.testVolts()
            : test.testVolts() * deadOhms / (deadOhms + test.sourceOhms());
    return state instanceof Solved solved
        ? unchanged(
            digits.liveOhms(function, testVolts, meanVolts(solved), alternatingVolts(solved)),
            loaded)
        : unsolved((SteadyState.Failed) state, loaded);
  }

  private double meanVolts(Solved solved) {
    return solved.voltageMeanVolts(leads.red(), leads.black());
  }

  private double alternatingVolts(Solved solved) {
    return model.method() == AlternatingMethod.TRUE_RMS
        ? solved.voltageAlternatingRmsVolts(leads.red(), leads.black())
        : model.method().of(solved.voltageVolts(leads.red(), leads.black()));
  }

  private Measurement unchanged(Shown shown, Circuit loaded) {
    return new Measurement(shown, loaded, meter, cautions);
  }

  private Measurement unsolved(SteadyState.Failed reason, Circuit loaded) {
    return unchanged(new Shown.Unsolved(reason), loaded);
  }
}
