package halfwave.sequence;

import halfwave.instrument.Look;
import halfwave.instrument.Measurement;
import halfwave.instrument.Measuring;
import java.util.Objects;
import java.util.Optional;

/** What the meter shows that is on an appliance. */
public final class MeterDisplay {

  private MeterDisplay() {}

  /** What it shows at that moment, if one is on. */
  public static Optional<Measurement> at(Moment moment) {
    return moment.hooked() == null ? Optional.empty() : Optional.of(of(moment));
  }

  static Measurement of(Moment moment) {
    Hooked hooked = Objects.requireNonNull(moment.hooked());
    double elapsed = (moment.timeMillis() - hooked.sinceMillis()) / 1000.0;
    return Measuring.of(
        hooked.meter(),
        hooked.function(),
        hooked.hookUp(),
        Subjects.at(moment),
        new Look(elapsed, moment.seed(), moment.timeMillis()));
  }
}
