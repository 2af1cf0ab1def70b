package halfwave.gui.presentation.evidence;

import halfwave.bench.Stages;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Outcome;
import halfwave.gui.presentation.bench.State;
import halfwave.instrument.Figure;
import halfwave.instrument.Look;
import halfwave.instrument.Meter;
import halfwave.instrument.ShippedMeters;
import halfwave.instrument.Shown;
import halfwave.sequence.Moment;
import halfwave.sequence.Scenes;
import halfwave.work.Scene;

/** What a check finds on the bench as it is at this moment, with a good meter used well. */
final class EvidenceLook {

  private EvidenceLook() {}

  static Outcome at(Check check, State state) {
    Stages stages = new Stages();
    Moment moment = state.moment();
    Scene scene = Scenes.of(stages, moment);
    if (check instanceof Check.Light) {
      return new Outcome.Found(scene.code());
    } else if (check instanceof Check.Looked looked) {
      return looked.look().needsFlame() && !moment.furnace().burning()
          ? new Outcome.NotReached()
          : new Outcome.Found(looked.look().at(scene));
    } else if (check instanceof Check.Read read) {
      return read.test().needsFlame() && !moment.furnace().burning()
          ? new Outcome.NotReached()
          : read(read, moment, stages);
    }
    // how a whole call goes is not seen in a moment
    return new Outcome.NotReached();
  }

  private static Outcome read(Check.Read read, Moment moment, Stages stages) {
    double kelvin = Math.max(280, moment.furnace().rodKelvin());
    var now = moment.benchNow();
    Shown shown =
        read.test()
            .of(
                stages,
                now.with(now.condition().withRodKelvin(kelvin)),
                Meter.fresh(ShippedMeters.service()),
                Look.settled(moment.seed()))
            .shown();
    if (shown instanceof Shown.Both both) {
      return new Outcome.Amps(si(both.direct()), si(both.alternating()));
    }
    return shown instanceof Shown.Alternating alternating
        ? new Outcome.Volts(si(alternating.figure()))
        : new Outcome.NotReached();
  }

  private static double si(Figure figure) {
    return figure instanceof Figure.Value value ? value.quantity().si() : Double.NaN;
  }
}
