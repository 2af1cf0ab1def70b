package halfwave.paper;

import halfwave.bench.Bench;
import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.board.ShippedBoards;
import halfwave.explain.Causes;
import halfwave.instrument.HookUp;
import halfwave.instrument.LeadEnd;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.ShippedMeters;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import halfwave.sequence.Moment;
import halfwave.sequence.Segment;
import halfwave.sequence.Sequence;
import java.util.List;

/** Benches that tests report on. */
final class Reported {

  private Reported() {}

  /** The standard bench, running, with a microammeter in series. */
  static BenchSubject healthy() {
    return after(ShippedBenches.standard(), 150_000);
  }

  /** The same with so thick a film that it locks out. */
  static BenchSubject fouled() {
    Bench bench = Parameter.ROD_FILM.with(ShippedBenches.standard(), 400e-6);
    return after(Parameter.ROD_CRACKS.with(bench, 100e6), 400_000);
  }

  /** Nobody has switched it on. */
  static BenchSubject cold() {
    Bench bench = ShippedBenches.standard();
    Moment cold = Moment.cold(bench, ShippedBoards.standard(bench.design().ignition()), 1);
    return BenchSubject.of(cold, List.of());
  }

  private static BenchSubject after(Bench bench, long millis) {
    Moment cold = Moment.cold(bench, ShippedBoards.standard(bench.design().ignition()), 1);
    Deed meter =
        new Deed.HookOn(
            Meter.fresh(ShippedMeters.service()),
            MeterFunction.DC_MICROAMPS,
            new HookUp.InSenseLead(LeadEnd.BOARD, true));
    Segment all =
        new Sequence()
            .advance(
                cold,
                millis,
                List.of(
                    new Act(0, meter),
                    new Act(0, new Deed.Supply(true)),
                    new Act(5000, new Deed.Call(true))));
    return BenchSubject.of(all.end(), Causes.of(all.end().board().stage(), all.events()));
  }
}
