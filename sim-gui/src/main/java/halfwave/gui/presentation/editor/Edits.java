package halfwave.gui.presentation.editor;

import halfwave.lesson.Draft;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A draft with what it was before, and what was undone. What is typed in one go is one edit.
 *
 * @param past what it was, oldest first
 * @param now what it is
 * @param future what was undone, the next to redo last
 * @param run what the last edit belonged to, or null: the next one stands for itself
 * @param saved as it lies in its file, or as it was begun
 */
public record Edits(
    List<Version> past, Version now, List<Version> future, @Nullable String run, Draft saved) {

  private static final int MOST = 500;

  /**
   * A draft and where in it somebody works.
   *
   * @param draft the draft
   * @param step the chosen step, or {@link halfwave.lesson.DraftPlace#WHOLE}
   */
  public record Version(Draft draft, int step) {}

  /** Takes copies. */
  public Edits {
    past = List.copyOf(past);
    future = List.copyOf(future);
  }

  /** Nothing was changed yet. */
  public static Edits of(Draft draft, int step) {
    return new Edits(List.of(), new Version(draft, step), List.of(), null, draft);
  }

  /**
   * One edit more.
   *
   * @param draft what comes of it
   * @param step the step that is chosen then
   * @param go what it belongs to: edits of the same go are undone as one; null: to nothing
   */
  public Edits then(Draft draft, int step, @Nullable String go) {
    if (draft.equals(now.draft())) {
      return at(step);
    }
    Version next = new Version(draft, step);
    if (go != null && go.equals(run)) {
      return new Edits(past, next, List.of(), go, saved);
    }
    List<Version> longer = new ArrayList<>(past);
    longer.add(now);
    if (longer.size() > MOST) {
      longer.remove(0);
    }
    return new Edits(longer, next, List.of(), go, saved);
  }

  /** Somebody works elsewhere. */
  public Edits at(int step) {
    return step == now.step()
        ? this
        : new Edits(past, new Version(now.draft(), step), future, null, saved);
  }

  /** Whether there is anything to undo. */
  public boolean mayUndo() {
    return !past.isEmpty();
  }

  /** Whether there is anything to redo. */
  public boolean mayRedo() {
    return !future.isEmpty();
  }

  /** Without the last edit; the same where there was none. */
  public Edits undone() {
    if (!mayUndo()) {
      return this;
    }
    int last = past.size() - 1;
    List<Version> more = new ArrayList<>(future);
    more.add(now);
    return new Edits(past.subList(0, last), past.get(last), more, null, saved);
  }

  /** With the edit that was undone; the same where there was none. */
  public Edits redone() {
    if (!mayRedo()) {
      return this;
    }
    int last = future.size() - 1;
    List<Version> more = new ArrayList<>(past);
    more.add(now);
    return new Edits(more, future.get(last), future.subList(0, last), null, saved);
  }

  /** The same, now that it lies in a file under that name. */
  public Edits saved(String name) {
    Draft named = now.draft().withName(name);
    return new Edits(past, new Version(named, now.step()), future, null, named);
  }

  /** Whether anything would be lost. */
  public boolean unsaved() {
    return !now.draft().withName(saved.name()).equals(saved);
  }
}
