package halfwave.gui.presentation.editor;

import halfwave.gui.presentation.Inquiry;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Draft;
import halfwave.lesson.Rehearsal;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/** Plays a draft to the end, away from the screen, to find out what the model has against it. */
public final class DraftCheck {

  /** What is rehearsed; the draft without its words is kept to compare. */
  private record Asked(Draft wordless, Demonstration demonstration) {}

  /** What came of it. */
  private record Judged(Draft wordless, Rehearsal rehearsal) {}

  private final Inquiry<Asked, Judged> inquiry;
  private boolean wanted;

  DraftCheck(Executor background, Executor screen, Runnable changed, Consumer<Throwable> failed) {
    inquiry = new Inquiry<>(background, screen, DraftCheck::rehearse, changed, failed);
  }

  private static void rehearse(Asked asked, Inquiry.Hearing<Judged> hearing) {
    Rehearsal.of(
            asked.demonstration(),
            doneRatio -> {
              hearing.done(doneRatio);
              return hearing.wanted();
            })
        .ifPresent(rehearsal -> hearing.tell(new Judged(asked.wordless(), rehearsal)));
  }

  void ask(Draft draft) {
    wanted = true;
    inquiry.ask(new Asked(draft.wordless(), draft.demonstration()));
  }

  void cancel() {
    inquiry.cancel();
  }

  /** Another draft is none that was checked. */
  void forget() {
    inquiry.cancel();
    wanted = false;
  }

  /** Whether it is going on. */
  public boolean busy() {
    return inquiry.busy();
  }

  /** How much of it is done, 0 to 1. */
  public double share() {
    return inquiry.share();
  }

  /** Whether anyone asked for it: before that nobody wants to hear of gaps. */
  public boolean wanted() {
    return wanted;
  }

  /** What it found; nothing where the draft was changed since in more than words. */
  public Optional<Rehearsal> of(Draft draft) {
    Judged judged = wanted ? inquiry.answer() : null;
    return judged != null && judged.wordless().equals(draft.wordless())
        ? Optional.of(judged.rehearsal())
        : Optional.empty();
  }
}
