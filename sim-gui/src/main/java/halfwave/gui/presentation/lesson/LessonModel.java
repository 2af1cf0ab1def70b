package halfwave.gui.presentation.lesson;

import halfwave.gui.presentation.Listeners;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Playthrough;
import java.util.concurrent.Executor;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A demonstration on its way. What has to be played to get somewhere is played on the engine's
 * thread; the workbench is then put at that moment.
 */
public final class LessonModel {

  private final Workbench workbench;
  private final Executor engine;
  private final Executor screen;
  private final Listeners listeners = new Listeners();
  private @Nullable Playthrough at;
  private boolean preparing;

  /** What was on the bench before: it comes back afterwards. */
  private @Nullable State before;

  /** Counts what was begun and ended: what is prepared for one that is over comes too late. */
  private long current;

  /**
   * No demonstration yet.
   *
   * @param workbench shows it
   * @param engine the workbench's own
   * @param screen runs what touches panels
   */
  public LessonModel(Workbench workbench, Executor engine, Executor screen) {
    this.workbench = workbench;
    this.engine = engine;
    this.screen = screen;
  }

  /** Is told whenever something changed. */
  public Runnable subscribe(Runnable watcher) {
    return listeners.add(watcher);
  }

  /** Where it stands, or null: none is shown. */
  public @Nullable Playthrough at() {
    return at;
  }

  /** Whether a step is being prepared: until then nothing else is taken. */
  public boolean preparing() {
    return preparing;
  }

  /** Begins a demonstration. */
  public void begin(Demonstration demonstration) {
    begin(demonstration, 0);
  }

  /** Begins a demonstration in the middle. */
  public void begin(Demonstration demonstration, int step) {
    if (at == null && workbench.ready()) {
      before = workbench.shown();
    }
    go(() -> Playthrough.begin(demonstration).jump(step));
  }

  /** One vote more. */
  public void vote(int answer) {
    if (at != null && !preparing && at.takesVotes() && answer < at.tally().size()) {
      set(at.vote(answer));
    }
  }

  /** One vote less. */
  public void takeBackVote(int answer) {
    if (at != null && !preparing && at.takesVotes() && answer < at.tally().size()) {
      set(at.takeBackVote(answer));
    }
  }

  /** Without the votes of this step. */
  public void clearVotes() {
    if (at != null && !preparing) {
      set(at.clearVotes());
    }
  }

  /** What the space bar does: shows what was held back, or goes on. */
  public void forward() {
    if (at == null || preparing) {
      return;
    }
    if (at.revealed()) {
      if (at.hasNext()) {
        move(Playthrough::next);
      }
    } else {
      set(at.reveal());
      show();
    }
  }

  /** This step asked anew where its answer is out, else the step before. */
  public void back() {
    if (at != null && at.hasBack()) {
      move(Playthrough::back);
    }
  }

  /** Any step. */
  public void jump(int step) {
    move(p -> p.jump(step));
  }

  /** After an excursion on the bench: back to where this step begins, or its play once more. */
  public void comeBack() {
    if (at == null || preparing) {
      return;
    }
    if (at.revealed()) {
      show();
    } else {
      workbench.want(new Intent.Enter(at.moment()));
    }
  }

  /** Ends it; the bench is as it was before. */
  public void end() {
    if (before != null) {
      workbench.want(new Intent.Restore(before));
      before = null;
    }
    current++;
    preparing = false;
    set(null);
  }

  private void show() {
    Playthrough here = at;
    if (here != null && here.step().play().lasts()) {
      workbench.want(new Intent.Show(here.stretch()));
    }
  }

  private void move(UnaryOperator<Playthrough> step) {
    Playthrough here = at;
    if (here != null && !preparing) {
      go(() -> step.apply(here));
    }
  }

  /** Gets somewhere. */
  private interface Way {
    Playthrough there();
  }

  private void go(Way way) {
    preparing = true;
    long asked = ++current;
    listeners.tell();
    engine.execute(
        () -> {
          Playthrough there = way.there();
          screen.execute(
              () -> {
                if (asked != current) {
                  return;
                }
                preparing = false;
                at = there;
                workbench.want(new Intent.Enter(there.moment()));
                listeners.tell();
              });
        });
  }

  private void set(@Nullable Playthrough other) {
    at = other;
    listeners.tell();
  }
}
