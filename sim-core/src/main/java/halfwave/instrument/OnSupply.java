package halfwave.instrument;

import halfwave.instrument.HookUp.AcrossSupply;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.ArrayList;
import java.util.List;

/** A meter across two points of the supply, which no meter can load. */
final class OnSupply {

  private OnSupply() {}

  static Measurement of(
      Meter meter,
      MeterFunction function,
      AcrossSupply hookUp,
      Subject subject,
      Digits digits,
      List<Message> cautions) {
    MeterModel model = meter.model();
    Supply supply = subject.supply();
    double rmsVolts = Math.abs(supply.rmsVolts(hookUp.red()) - supply.rmsVolts(hookUp.black()));
    Meter after = meter;
    List<Message> all = new ArrayList<>(cautions);
    Shown shown;
    if (function.isResistance()) {
      // ideal sources are no resistance, but what is switched off is copper
      double dead = Supply.deadOhms(hookUp.red(), hookUp.black());
      shown =
          rmsVolts > 0 ? digits.liveOhms(function, 0, 0, rmsVolts) : digits.ohms(function, dead);
    } else if (!function.isCurrent()) {
      shown = digits.shown(function, 0, rmsVolts);
    } else if (meter.fuseIntact()) {
      double rmsAmps = throughRmsAmps(model, function, rmsVolts);
      if (rmsAmps > model.fuseAmps()) {
        after = meter.withBlownFuse();
        all.add(Message.of(MessageKey.METER_FUSE_BLOWN));
        shown = digits.noCurrent(function);
      } else {
        shown = digits.shown(function, 0, rmsAmps);
      }
    } else {
      shown = digits.noCurrent(function);
    }
    return new Measurement(shown, subject.circuit(), after, all);
  }

  private static double throughRmsAmps(MeterModel model, MeterFunction function, double rmsVolts) {
    boolean burdened =
        function.input() == MeterFunction.Input.MICROAMPS
            && Math.sqrt(2) * rmsVolts <= model.clampVolts();
    return rmsVolts / (burdened ? model.microamps() : model.milliamps()).burdenOhms();
  }
}
