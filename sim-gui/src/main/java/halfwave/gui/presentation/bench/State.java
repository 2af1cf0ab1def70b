package halfwave.gui.presentation.bench;

import halfwave.bench.Bench;
import halfwave.lesson.Stretch;
import halfwave.sequence.Moment;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * Everything that the window knows about the bench on it. Each panel shows a view of it.
 *
 * @param standing what undo returns to
 * @param readout what instruments and eyes find at the present
 * @param history where undo and redo lead
 * @param clock how time runs
 * @param paper where the bench lies
 * @param showing what a demonstration plays, or null
 * @param refusal why the last act could not be done, or null
 * @param seal the bench that a class has to diagnose, or null
 */
public record State(
    Standing standing,
    Readout readout,
    History history,
    Clock clock,
    Paper paper,
    @Nullable Stretch showing,
    @Nullable Refusal refusal,
    @Nullable Seal seal) {

  /**
   * How time runs.
   *
   * @param running whether it does
   * @param timesReal simulated over real time, 0.1 to 1000
   */
  public record Clock(boolean running, double timesReal) {}

  /**
   * Where a bench lies.
   *
   * @param file the file, or null for a shipped bench
   * @param bench as it lies there, or as it was shipped
   */
  public record Paper(@Nullable Path file, Bench bench) {}

  /** The present. */
  public Moment moment() {
    return standing.moment();
  }

  /** What has happened. */
  public Recording recording() {
    return standing.recording();
  }

  /** Whether anything would be lost by leaving this bench. */
  public boolean unsaved() {
    return seal == null ? !moment().bench().equals(paper.bench()) : seal.before().unsaved();
  }

  /** The bench that belongs to whoever works here: not one that a class has to diagnose. */
  State own() {
    return seal == null ? this : seal.before();
  }

  /** Whether what is wrong with the bench is hidden. */
  public boolean sealed() {
    return seal != null && seal.closed();
  }

  State with(@Nullable Seal other) {
    return new State(standing, readout, history, clock, paper, showing, refusal, other);
  }

  State with(Clock other) {
    return new State(standing, readout, history, other, paper, showing, refusal, seal);
  }

  State with(Paper other) {
    return new State(standing, readout, history, clock, other, showing, refusal, seal);
  }

  State with(Standing other, Readout found) {
    return new State(other, found, history, clock, paper, showing, refusal, seal);
  }

  State with(History other) {
    return new State(standing, readout, other, clock, paper, showing, null, seal);
  }

  State showing(@Nullable Stretch other) {
    return new State(standing, readout, history, clock, paper, other, refusal, seal);
  }

  State with(Refusal other) {
    return new State(standing, readout, history, clock, paper, showing, other, seal);
  }
}
