package halfwave.work;

import halfwave.bench.Bench;
import halfwave.bench.Stages;
import halfwave.instrument.Figure;
import halfwave.instrument.Look;
import halfwave.instrument.Meter;
import halfwave.instrument.ShippedMeters;
import halfwave.instrument.Shown;

/**
 * The figure that a technician takes down: DC microamps in series, AC volts at the terminal (SI).
 */
final class MeterShows {

  private MeterShows() {}

  /** Off a service meter that has settled, always with the same error of its last digits. */
  static double si(MeterTest test, Stages stages, Bench bench) {
    Meter meter = Meter.fresh(ShippedMeters.service());
    return si(test.of(stages, bench, meter, Look.settled(1)).shown());
  }

  private static double si(Shown shown) {
    if (shown instanceof Shown.Both both) {
      return si(both.direct());
    } else if (shown instanceof Shown.Alternating alternating) {
      return si(alternating.figure());
    }
    throw new AssertionError(shown);
  }

  private static double si(Figure figure) {
    if (figure instanceof Figure.Value value) {
      return value.quantity().si();
    }
    throw new AssertionError(figure);
  }
}
