package halfwave.gui.presentation.editor;

import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.presentation.lesson.LessonModel;
import halfwave.io.lesson.DraftRecoveryFile;
import halfwave.lesson.Claim;
import halfwave.lesson.Draft;
import halfwave.lesson.DraftActs;
import halfwave.lesson.DraftPlace;
import halfwave.lesson.Play;
import halfwave.lesson.Reading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * A demonstration being made: the draft and its undo, the bench it is recorded from, and what the
 * model has against it. Belongs to the screen's thread.
 */
public final class EditorModel {

  private final LessonModel lesson;
  private final EditorBench bench;
  private final DraftCheck check;
  private final List<Runnable> watchers = new ArrayList<>();
  private final Workbench workbench;
  private @Nullable Edits edits;
  private @Nullable Path file;
  private DraftActs.@Nullable Blocked stopped;
  private int recordedStep;
  private boolean sealed;

  /**
   * Nothing is being made yet.
   *
   * @param workbench the bench to record from
   * @param lesson the player in which a draft is tried
   * @param background plays and rehearses
   * @param screen runs what touches panels
   * @param failed is told of an error in the program itself
   */
  public EditorModel(
      Workbench workbench,
      LessonModel lesson,
      Executor background,
      Executor screen,
      Consumer<Throwable> failed) {
    this.workbench = workbench;
    this.lesson = lesson;
    bench = new EditorBench(workbench, background, screen, this::tell, failed);
    check = new DraftCheck(background, screen, this::tell, failed);
    workbench.subscribe(this::see);
  }

  private void see(State state) {
    bench.see(state);
    if (sealed != state.sealed()) {
      sealed = state.sealed();
      tell();
    }
  }

  /**
   * Whether the condition of the bench is hidden from a class. Until it is revealed no
   * demonstration begins with that bench, for the editor and the file would tell, and no step is
   * recorded or tried, for that would end what the class looks for.
   */
  public boolean sealed() {
    return sealed;
  }

  /** Is told whenever something changed. */
  public Runnable subscribe(Runnable watcher) {
    watchers.add(watcher);
    return () -> watchers.remove(watcher);
  }

  private void tell() {
    List.copyOf(watchers).forEach(Runnable::run);
  }

  /** Whether a demonstration is being made. */
  public boolean open() {
    return edits != null;
  }

  /** The draft with its undo. */
  public Edits edits() {
    if (edits == null) {
      throw new IllegalStateException("no demonstration is being made");
    }
    return edits;
  }

  /** The draft. */
  public Draft draft() {
    return edits().now().draft();
  }

  /** The chosen step, or {@link DraftPlace#WHOLE}. */
  public int step() {
    return edits().now().step();
  }

  /** Where it lies, or null: nowhere yet. */
  public @Nullable Path file() {
    return file;
  }

  /** What it does with the bench. */
  public EditorBench bench() {
    return bench;
  }

  /** Another demonstration is being made. */
  public void begin(Draft draft, @Nullable Path from) {
    begin(Edits.of(draft, DraftPlace.WHOLE), from);
  }

  /** One that was being made when the program ended goes on, unsaved as it was. */
  public void bringBack(DraftRecoveryFile left) {
    begin(
        Edits.of(left.saved(), DraftPlace.WHOLE).then(left.draft(), DraftPlace.WHOLE, null),
        left.file());
  }

  private void begin(Edits begun, @Nullable Path from) {
    check.forget();
    if (bench.recording()) {
      bench.stop();
    }
    bench.cancel();
    stopped = null;
    edits = begun;
    file = from;
    tell();
  }

  /** Whether there is a bench to begin with. */
  public boolean ready() {
    return workbench.ready();
  }

  /** A demonstration that begins with the bench as it stands, unless that is sealed. */
  public void create() {
    if (!sealed) {
      begin(NewDraft.of(workbench.shown()), null);
    }
  }

  /** It begins with the bench as it stands now, unless that is sealed. */
  public void rebench() {
    if (!sealed) {
      change(draft().withBenchOf(NewDraft.of(workbench.shown())), step(), null);
    }
  }

  /**
   * One edit more.
   *
   * @param draft what comes of it
   * @param step the step that is chosen then
   * @param go what it belongs to, or null
   */
  public void change(Draft draft, int step, @Nullable String go) {
    edits = edits().then(draft, step, go);
    stopped = null;
    tell();
  }

  /** Chooses a step. */
  public void choose(int step) {
    int last = draft().steps().size() - 1;
    edits = edits().at(Math.max(DraftPlace.WHOLE, Math.min(last, step)));
    tell();
  }

  /** Takes the last edit back. */
  public void undo() {
    edits = edits().undone();
    tell();
  }

  /** Does again what was taken back. */
  public void redo() {
    edits = edits().redone();
    tell();
  }

  /** It lies in a file now. */
  public void saved(Path where, String name) {
    edits = edits().saved(name);
    file = where;
    tell();
  }

  /** The act that stands in the way of playing it, or nothing. */
  public Optional<DraftActs.Blocked> blocked() {
    return DraftActs.blocked(draft());
  }

  /** Puts the bench where the chosen step begins and records from there. */
  public void record() {
    if (step() >= 0 && mayUseBench()) {
      lesson.end();
      recordedStep = step();
      bench.record(draft().demonstration(), step());
    }
  }

  /** What was recorded becomes what the step shows. */
  public void keep() {
    Optional<Take.Taken> taken = bench.stop();
    if (taken.isPresent() && recordedStep < draft().steps().size()) {
      Draft now = draft();
      var step = now.steps().get(recordedStep).with(taken.get().play());
      change(now.with(recordedStep, step), recordedStep, null);
    } else {
      tell();
    }
  }

  /** What was recorded is forgotten; the step shows what it did. */
  public void discard() {
    bench.stop();
    tell();
  }

  /** Puts the bench where the chosen step begins. */
  public void toBegin() {
    if (step() >= 0 && mayUseBench()) {
      bench.toBegin(draft().demonstration(), step());
    }
  }

  /** Puts the bench where the chosen step ends. */
  public void toEnd() {
    if (step() >= 0 && mayUseBench()) {
      bench.toEnd(draft().demonstration(), step());
    }
  }

  /** While a class looks for what is hidden there, the bench is its own. */
  private boolean mayUseBench() {
    return !sealed && mayPlay();
  }

  private boolean mayPlay() {
    stopped = blocked().orElse(null);
    if (stopped != null) {
      tell();
    }
    return stopped == null;
  }

  /** Why the last thing that was wanted could not be played; nothing where it could. */
  public Optional<DraftActs.Blocked> stopped() {
    return Optional.ofNullable(stopped);
  }

  /** Nobody wants the bench elsewhere any more. */
  public void stay() {
    bench.cancel();
  }

  /** Reads what the bench shows, for a claim of the chosen step. */
  public void find(@Nullable Reading further, Consumer<Found> then) {
    bench.find(step(), further, then);
  }

  /** Shows it in the player, from the chosen step on; tells whether it can. */
  public boolean tryIt() {
    if (!mayUseBench()) {
      return false;
    }
    lesson.begin(draft().demonstration(), Math.max(0, step()));
    return true;
  }

  /** Checks the draft against the model. */
  public void check() {
    if (mayPlay()) {
      check.ask(draft());
      tell();
    }
  }

  /**
   * The chosen step, or the start where none is, waits less or more: what is claimed is checked.
   */
  public void changeWaits(Play play) {
    int at = step();
    Draft now = draft();
    change(at < 0 ? now.withStart(play) : now.with(at, now.steps().get(at).with(play)), at, null);
    check();
  }

  /** Gives the check up. */
  public void cancelCheck() {
    check.cancel();
    tell();
  }

  /** What the model has against it. */
  public DraftCheck checked() {
    return check;
  }

  /** With other claims of the chosen step, or of one of its answers. */
  public void changeClaims(@Nullable Integer answer, List<Claim> claims) {
    change(draft().withClaims(step(), answer, claims), step(), null);
  }

  /**
   * Nothing is being made any more, and the bench is as it was before.
   *
   * @param then is done once it is
   */
  public void leave(Runnable then) {
    check.forget();
    edits = null;
    file = null;
    bench.leave(then);
  }
}
