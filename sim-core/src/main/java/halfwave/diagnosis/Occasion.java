package halfwave.diagnosis;

import halfwave.evidence.HeatingCall;
import halfwave.sequence.Moment;
import halfwave.work.Look;
import halfwave.work.MeterTest;
import halfwave.work.Work;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** When something is checked. The minutes are those of waiting [common practice, no source]. */
public enum Occasion {
  /** Power on, no call for heat. */
  STANDBY(0),
  /** Ten seconds into a call, before any trial. */
  START(1),
  /** At the end of the first trial. */
  TRIAL(1),
  /** As a proved flame is lost. */
  LOSS(4),
  /** After ten minutes, the blower running. */
  WARM(8);

  private final int waitMinutes;

  Occasion(int waitMinutes) {
    this.waitMinutes = waitMinutes;
  }

  /** Minutes until it comes. */
  int waitMinutes() {
    return waitMinutes;
  }

  /** The moment of it in a heating call; empty where the call does not come to it. */
  public Optional<Moment> in(HeatingCall call) {
    return switch (this) {
      case STANDBY -> Optional.of(call.standby());
      case START -> Optional.of(call.start());
      case TRIAL -> call.trial();
      case LOSS -> call.loss();
      case WARM -> call.warm();
    };
  }

  /** Name in commands and files. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** When a look may be worth having. */
  static List<Occasion> of(Look look) {
    return look == Look.LIMIT ? List.of(STANDBY, LOSS) : of((Work) look);
  }

  /** When a reading may be worth taking. */
  static List<Occasion> of(MeterTest test) {
    return test.needsFlame() ? List.of(TRIAL, WARM) : List.of(STANDBY);
  }

  private static List<Occasion> of(Work work) {
    if (work.needsFlame()) {
      return List.of(TRIAL, LOSS, WARM);
    }
    return work.needsCall() ? List.of(START, TRIAL, WARM) : List.of(STANDBY);
  }
}
