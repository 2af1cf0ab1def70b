package halfwave.gui.presentation.bench;

import halfwave.bench.Bench;
import halfwave.board.BoardSettings;
import halfwave.fault.FaultKind;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.lesson.Stretch;
import halfwave.sequence.Deed;
import halfwave.sequence.Moment;
import halfwave.work.Work;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a hand at the window wants.
 *
 * <pre>
 * Intent = Pass | Play | Speed | StepOn | Act | Measure | Turn | Lead | Labor | Undo | Redo | Open
 *        | BringBack | Enter | Show | Saved | HandOver | Sealing
 * </pre>
 */
public sealed interface Intent {

  /**
   * Time has passed in front of the screen.
   *
   * @param wallMillis how much (ms)
   */
  record Pass(long wallMillis) implements Intent {}

  /**
   * The clock of the bench runs, or stands.
   *
   * @param on whether it runs
   */
  record Play(boolean on) implements Intent {}

  /**
   * The clock runs at another speed.
   *
   * @param timesReal simulated over real time, 0.1 to 1000
   */
  record Speed(double timesReal) implements Intent {}

  /**
   * One step with the clock standing.
   *
   * @param millis how long (ms), or null: until the next thing happens
   */
  record StepOn(@Nullable Long millis) implements Intent {}

  /**
   * Something is done to the bench. What belongs to one gesture of the hand, such as a drag, is one
   * act and is undone as one.
   *
   * @param deeds what is done, at one instant
   * @param gesture number of the gesture; acts of one gesture share it
   */
  record Act(List<Deed> deeds, long gesture) implements Intent {
    /** Takes a copy. */
    public Act {
      deeds = List.copyOf(deeds);
    }
  }

  /**
   * The meter is put somewhere with its dial set.
   *
   * @param function what the dial is set to
   * @param placing where the leads go
   */
  record Measure(MeterFunction function, Placing placing) implements Intent {}

  /**
   * The dial of the meter is turned; the leads stay where they are.
   *
   * @param function what to
   */
  record Turn(MeterFunction function) implements Intent {}

  /**
   * The leads go somewhere; the dial stays as it is.
   *
   * @param placing where they go
   * @param usual what the dial is set to if nobody has turned it yet
   */
  record Lead(Placing placing, MeterFunction usual) implements Intent {}

  /**
   * Someone looks at something, repairs or mishandles it.
   *
   * @param work what
   */
  record Labor(Work work) implements Intent {}

  /** Back to before the last act. */
  record Undo() implements Intent {}

  /** The act that was undone is done again. */
  record Redo() implements Intent {}

  /**
   * Another bench; undo does not lead back to the one before.
   *
   * @param bench the bench
   * @param board its board
   * @param file where it lies, or null for a shipped one
   */
  record Open(Bench bench, BoardSettings board, @Nullable Path file) implements Intent {}

  /**
   * A bench that was changed and not saved before the program was lost; it still is.
   *
   * @param open the bench as it was
   * @param saved the bench as it was last saved, or shipped
   */
  record BringBack(Open open, Bench saved) implements Intent {}

  /**
   * A moment of a demonstration takes the place of the present one.
   *
   * @param moment the moment
   */
  record Enter(Moment moment) implements Intent {}

  /**
   * A stretch of a demonstration is played, from its beginning, at its pace.
   *
   * @param stretch what
   */
  record Show(Stretch stretch) implements Intent {}

  /**
   * All is as it was before a demonstration.
   *
   * @param state as it was
   */
  record Restore(State state) implements Intent {}

  /**
   * The bench was saved.
   *
   * @param bench what was saved
   * @param file where
   */
  record Saved(Bench bench, Path file) implements Intent {}

  /**
   * Another meter, or the same with a new fuse, is taken in hand.
   *
   * @param meter the meter
   */
  record HandOver(Meter meter) implements Intent {}

  /**
   * Something about a bench that a class has to diagnose.
   *
   * <pre>Sealing = Hide | Draw | Reveal | LookBack | Unseal</pre>
   */
  sealed interface Sealing extends Intent {}

  /** The condition of the bench is hidden, as it stands. */
  record Hide() implements Sealing {}

  /**
   * A fault that nobody has chosen is put on the hidden bench, and heat is called for.
   *
   * @param seed decides which
   */
  record Draw(long seed) implements Sealing {}

  /**
   * The condition is revealed.
   *
   * @param answer what the class believes, or null
   */
  record Reveal(@Nullable FaultKind answer) implements Sealing {}

  /**
   * The bench as it was after a step of the way that was gone.
   *
   * @param step which, from zero; their number: as it is at the end
   */
  record LookBack(int step) implements Sealing {}

  /** The bench that was there before comes back. */
  record Unseal() implements Sealing {}
}
