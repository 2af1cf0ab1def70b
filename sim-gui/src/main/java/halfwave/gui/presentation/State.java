package halfwave.gui.presentation;

import halfwave.bench.Bench;
import halfwave.instrument.Meter;
import halfwave.sequence.Moment;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Everything that the window knows about the bench on it. Each panel shows a view of it.
 *
 * @param moment the present
 * @param readout what instruments and eyes find at it
 * @param recording what has happened
 * @param history where undo and redo lead
 * @param meter the meter in hand, also while it is not on
 * @param playing whether the clock runs
 * @param timesReal simulated over real time
 * @param file where the bench lies, or null
 * @param saved the bench as it lies there, or as it was shipped
 * @param refusal why the last act could not be done, or null
 */
public record State(
    Moment moment,
    Readout readout,
    Recording recording,
    History history,
    Meter meter,
    boolean playing,
    double timesReal,
    @Nullable Path file,
    Bench saved,
    @Nullable Refusal refusal) {

  /** Whether anything would be lost by leaving this bench. */
  public boolean unsaved() {
    return !moment.bench().equals(saved);
  }

  State with(Consumer<Draft> change) {
    Draft draft = new Draft(this);
    change.accept(draft);
    return draft.made();
  }

  /** The components, to change some of them. */
  static final class Draft {
    Moment moment;
    Readout readout;
    Recording recording;
    History history;
    Meter meter;
    boolean playing;
    double timesReal;
    @Nullable Path file;
    Bench saved;
    @Nullable Refusal refusal;

    private Draft(State from) {
      moment = from.moment;
      readout = from.readout;
      recording = from.recording;
      history = from.history;
      meter = from.meter;
      playing = from.playing;
      timesReal = from.timesReal;
      file = from.file;
      saved = from.saved;
      refusal = from.refusal;
    }

    private State made() {
      return new State(
          moment, readout, recording, history, meter, playing, timesReal, file, saved, refusal);
    }
  }
}
