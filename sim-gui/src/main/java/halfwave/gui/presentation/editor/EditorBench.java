package halfwave.gui.presentation.editor;

import halfwave.gui.presentation.Inquiry;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.Seal;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Performance;
import halfwave.lesson.Reading;
import halfwave.lesson.StepMoments;
import halfwave.sequence.Event;
import halfwave.sequence.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * What an editor of demonstrations does with the bench: puts it where a step begins or ends,
 * records what is done there, reads what it shows. What was on it before comes back afterwards.
 */
public final class EditorBench {

  /** Where the bench is wanted. */
  private enum Goal {
    BEGIN,
    END,
    RECORD
  }

  /** What is asked of the thread that plays; the number tells the same way twice apart. */
  private record Way(Demonstration demonstration, int step, Goal goal, long number) {}

  /** What it answers: for the beginning a performance in which nothing happens yet. */
  private record There(Way way, Performance performance) {}

  private final Workbench workbench;
  private final Executor background;
  private final Executor screen;
  private final Runnable changed;
  private final Inquiry<Way, There> ways;
  private final StepMoments moments = new StepMoments();
  private @Nullable There handled;
  private @Nullable State before;
  private @Nullable Placed placed;

  /** Where the bench is to stand, as soon as it does. */
  private @Nullable There arriving;

  private boolean recording;
  private long asked;

  /** Whether a recording came to nothing because the bench was taken away. */
  private boolean lost;

  /**
   * Does nothing yet.
   *
   * @param workbench the bench
   * @param background plays what leads to a step
   * @param screen runs what touches panels
   * @param changed is called when there is something new to show
   * @param failed is told of an error in the program itself
   */
  EditorBench(
      Workbench workbench,
      Executor background,
      Executor screen,
      Runnable changed,
      Consumer<Throwable> failed) {
    this.workbench = workbench;
    this.background = background;
    this.screen = screen;
    this.changed = changed;
    ways = new Inquiry<>(background, screen, this::play, this::arrive, failed);
  }

  private void play(Way way, Inquiry.Hearing<There> hearing) {
    Optional<Performance> found =
        way.goal() == Goal.END
            ? moments.step(way.demonstration(), way.step(), slice -> hearing.wanted())
            : moments
                .begin(way.demonstration(), way.step(), slice -> hearing.wanted())
                .map(moment -> new Performance(moment, List.of(), moment));
    found.ifPresent(performance -> hearing.tell(new There(way, performance)));
  }

  private void arrive() {
    There there = ways.answer();
    if (there != null && !there.equals(handled)) {
      handled = there;
      if (before == null) {
        before = workbench.shown();
      }
      placed = null;
      arriving = there;
      workbench.want(new Intent.Enter(there.performance().after()));
    }
    changed.run();
  }

  /** The bench shows another state. */
  void see(State state) {
    There there = arriving;
    if (there != null && stands(state, there)) {
      arriving = null;
      placed = new Placed(there.way().step(), there.performance(), Take.begin(state));
      recording = there.way().goal() == Goal.RECORD;
      lost = false;
      if (recording) {
        workbench.want(new Intent.Play(true));
      }
      changed.run();
    } else if (placed != null && !placed.take().goesOn(state)) {
      lost = recording;
      recording = false;
      placed = null;
      changed.run();
    } else if (recording) {
      changed.run();
    }
  }

  /** Where it was put the clock stands, so that the moment is still that very one. */
  @SuppressWarnings("ReferenceEquality")
  private static boolean stands(State state, There there) {
    return state.moment() == there.performance().after();
  }

  /** Puts the bench where a step begins and records from there. */
  void record(Demonstration demonstration, int step) {
    go(demonstration, step, Goal.RECORD);
  }

  /** Puts the bench where a step begins. */
  void toBegin(Demonstration demonstration, int step) {
    go(demonstration, step, Goal.BEGIN);
  }

  /** Puts the bench where a step ends. */
  void toEnd(Demonstration demonstration, int step) {
    go(demonstration, step, Goal.END);
  }

  private void go(Demonstration demonstration, int step, Goal goal) {
    recording = false;
    arriving = null;
    ways.ask(new Way(demonstration, step, goal, ++asked));
    changed.run();
  }

  /** Whether the bench is on its way somewhere. */
  public boolean going() {
    return ways.busy() || arriving != null;
  }

  /** Nobody wants to get there any more. */
  void cancel() {
    ways.cancel();
    arriving = null;
    changed.run();
  }

  /** Whether what is done is being recorded. */
  public boolean recording() {
    return recording;
  }

  /** Whether the last recording came to nothing because the bench was taken away. */
  public boolean lost() {
    return lost;
  }

  /** What was recorded up to now; nothing where nothing is recorded. */
  public Optional<Take.Taken> taken() {
    Placed here = placed;
    return recording && here != null
        ? Optional.of(here.take().taken(workbench.shown()))
        : Optional.empty();
  }

  /** Ends the recording; the clock stands. */
  Optional<Take.Taken> stop() {
    Optional<Take.Taken> taken = taken();
    recording = false;
    workbench.want(new Intent.Play(false));
    return taken;
  }

  /**
   * Reads what the bench shows.
   *
   * @param step the step for which it is read: where the bench was put there, its beginning counts
   * @param further a reading that is wanted besides the usual ones, or null
   * @param then is told, on the screen's thread
   */
  void find(int step, @Nullable Reading further, Consumer<Found> then) {
    State state = workbench.shown();
    Placed here = placed;
    boolean known = here != null && here.step() == step && here.take().goesOn(state);
    Moment begin = known && here != null ? here.begun().before() : null;
    List<Event> events = known && here != null ? here.events(state) : List.of();
    background.execute(
        () -> {
          Found found = Found.of(state.moment(), begin, events, further);
          screen.execute(() -> then.accept(found));
        });
  }

  /**
   * The bench is as it was before.
   *
   * @param then is done once it is
   */
  void leave(Runnable then) {
    ways.cancel();
    arriving = null;
    recording = false;
    placed = null;
    State was = before;
    before = null;
    if (was == null) {
      then.run();
      return;
    }
    Seal seal = workbench.shown().seal();
    if (seal != null) {
      // a class is looking for what was hidden meanwhile: that goes on
      afterwards(seal.before().paper(), was);
      then.run();
      return;
    }
    List<Runnable> ends = new ArrayList<>();
    ends.add(
        workbench.subscribe(
            state -> {
              if (isBack(state, was) && !ends.isEmpty()) {
                ends.remove(0).run();
                then.run();
              }
            }));
    workbench.want(new Intent.Restore(was));
  }

  /** When the seal has ended, the bench of the editor goes and the one before it comes back. */
  @SuppressWarnings("ReferenceEquality") // the same bench opened once more is another one
  private void afterwards(State.Paper paper, State was) {
    List<Runnable> ends = new ArrayList<>();
    ends.add(
        workbench.subscribe(
            state -> {
              if (state.seal() == null && !ends.isEmpty()) {
                ends.remove(0).run();
                if (state.paper() == paper) {
                  workbench.want(new Intent.Restore(was));
                }
              }
            }));
  }

  /** Time may have passed on it already. */
  @SuppressWarnings("ReferenceEquality")
  private static boolean isBack(State state, State was) {
    return state.paper() == was.paper();
  }
}
