package halfwave.gui.presentation.bench;

import halfwave.board.Stage;
import halfwave.instrument.HookUp;
import halfwave.sequence.Event;
import halfwave.sequence.Hooked;
import java.util.List;

/** Whether the meter on the bench has cost it the flame. */
final class SenseLead {

  /** A board that has lost its signal shuts the gas well within this (ms). */
  private static final long NOTICED_MILLIS = 10_000;

  private SenseLead() {}

  /**
   * Whether the sense lead was opened for the meter that is in it while gas burned, and no flame
   * was proved since.
   */
  static boolean openedWhileBurning(State state) {
    Hooked on = state.moment().hooked();
    if (on == null || !(on.hookUp() instanceof HookUp.InSenseLead)) {
      return false;
    }
    if (on.opening() && state.moment().furnace().burning()) {
      return true;
    }
    List<Event> events = state.recording().events();
    boolean lost = false;
    for (int k = events.size() - 1; k >= 0; k--) {
      Event event = events.get(k);
      if (event.timeMillis() < on.sinceMillis() || event.enters(Stage.RUN)) {
        break;
      }
      lost |= event.shutsGas() && event.timeMillis() < on.sinceMillis() + NOTICED_MILLIS;
    }
    return lost;
  }
}
