package halfwave.instrument;

import halfwave.instrument.HookUp.Across;
import halfwave.instrument.HookUp.AcrossSupply;
import halfwave.instrument.HookUp.InSenseLead;
import halfwave.instrument.HookUp.WireInFlame;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.ArrayList;
import java.util.List;

/** Puts a meter somewhere and looks at it. No mistake with a meter is an exception. */
public final class Measuring {

  private Measuring() {}

  /**
   * Measures.
   *
   * @param meter the meter before
   * @param function what its dial is set to
   * @param hookUp where its leads are
   * @param subject what they are on
   * @param look when somebody looks
   */
  public static Measurement of(
      Meter meter, MeterFunction function, HookUp hookUp, Subject subject, Look look) {
    List<Message> cautions = MeterCautions.of(function, hookUp, subject);
    if (!meter.alive()) {
      return nothing(meter, hookUp, subject, cautions);
    }
    if (subject.sparking() && subject.sparksAt(hookUp)) {
      // ten kilovolts and more against an input that stands one [practice]
      List<Message> all = new ArrayList<>(cautions);
      all.add(Message.of(MessageKey.METER_DESTROYED));
      return nothing(meter.destroyed(), hookUp, subject, all);
    }
    Digits digits = new Digits(meter.model(), look);
    if (hookUp instanceof AcrossSupply supply) {
      return OnSupply.of(meter, function, supply, subject, digits, cautions);
    }
    return new OnCircuit(meter, function, leads(hookUp, subject), digits, cautions).measured();
  }

  /** A dead meter is an open circuit [practice]. */
  private static Measurement nothing(
      Meter meter, HookUp hookUp, Subject subject, List<Message> cautions) {
    return new Measurement(
        new Shown.Nothing(),
        hookUp instanceof AcrossSupply ? subject.circuit() : leads(hookUp, subject).circuit(),
        meter,
        cautions);
  }

  private static Leads leads(HookUp hookUp, Subject subject) {
    if (hookUp instanceof Across across) {
      return Leads.of(across, subject.circuit());
    } else if (hookUp instanceof InSenseLead series) {
      return Leads.of(series, subject.circuit());
    } else if (hookUp instanceof WireInFlame wired) {
      return Leads.of(wired, subject.circuit());
    }
    throw new IllegalStateException("no place for " + hookUp);
  }
}
