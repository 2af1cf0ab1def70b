package halfwave.sequence;

import halfwave.circuit.Circuit;
import halfwave.circuit.Part;
import halfwave.instrument.HookUp;
import halfwave.instrument.HookUp.InSenseLead;
import halfwave.instrument.Look;
import halfwave.instrument.Measuring;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.Subject;
import org.jspecify.annotations.Nullable;

/**
 * A meter that is on the appliance.
 *
 * @param meter the meter
 * @param function what its dial is set to
 * @param hookUp where its leads are
 * @param sinceMillis since when (ms)
 * @param opening whether the sense lead is still open on the way to standing in series
 */
public record Hooked(
    Meter meter, MeterFunction function, HookUp hookUp, long sinceMillis, boolean opening) {

  /** So long a lead is open between pulling it off and having the meter in it (ms) [practice]. */
  static final long OPENING_MILLIS = 3000;

  /**
   * A meter that is put there. Where it stood there already its leads stay and only its dial is
   * turned: then the sense lead is not opened.
   *
   * @param before what was on the appliance, or null
   */
  static Hooked at(
      long timeMillis,
      Meter meter,
      MeterFunction function,
      HookUp hookUp,
      @Nullable Hooked before) {
    boolean stays =
        before != null
            && before.hookUp.equals(hookUp)
            && before.meter.model().equals(meter.model());
    if (before != null && stays && before.opening) {
      return new Hooked(meter, function, hookUp, before.sinceMillis, true);
    }
    boolean opens = !stays && hookUp instanceof InSenseLead;
    return new Hooked(meter, function, hookUp, timeMillis, opens);
  }

  Hooked inPlace() {
    return new Hooked(meter, function, hookUp, sinceMillis, false);
  }

  /** The same meter after something has happened to it. */
  Hooked with(Meter other) {
    return new Hooked(other, function, hookUp, sinceMillis, opening);
  }

  /** The circuit with this meter in it. */
  Circuit on(Circuit circuit) {
    if (opening) {
      return circuit.without(Part.CONNECTOR);
    }
    Subject subject = Subject.of(circuit);
    return Measuring.of(meter, function, hookUp, subject, Look.settled(0)).loaded();
  }

  /** What changes the circuit: when it was put there does not. */
  Hooked load() {
    return new Hooked(meter, function, hookUp, 0, opening);
  }
}
