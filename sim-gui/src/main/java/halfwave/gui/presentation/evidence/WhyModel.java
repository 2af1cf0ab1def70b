package halfwave.gui.presentation.evidence;

import halfwave.explain.MomentAccount;
import halfwave.gui.presentation.Listeners;
import halfwave.gui.presentation.bench.State;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Explains the bench as it is now, away from the screen's thread. One explanation is in the making,
 * begun at most twice a second; of the questions that wait only the newest counts. The old answer
 * stands until the new one is there. Belongs to the screen's thread.
 */
public final class WhyModel {

  /** From one beginning to the next (ms). */
  static final long PACE_MILLIS = 500;

  /** Who waits longer than this is told so (ms). */
  static final long PATIENCE_MILLIS = 500;

  private static final MomentAccount NOTHING =
      new MomentAccount(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

  private final Executor background;
  private final Executor screen;
  private final Function<WhyQuestion, WhyAnswer> explain;
  private final Listeners listeners = new Listeners();
  private @Nullable WhyQuestion waiting;
  private @Nullable WhyQuestion asked;
  private @Nullable WhyAnswer answer;

  /** What the instruments show just now, without an explanation. */
  private @Nullable WhyAnswer newest;

  private boolean computing;
  private boolean slow;
  private boolean failed;
  private @Nullable Long begunMillis;

  /**
   * Nothing was asked yet.
   *
   * @param background runs what takes long
   * @param screen runs what touches panels
   */
  public WhyModel(Executor background, Executor screen) {
    this(background, screen, WhyQuestion::answer);
  }

  WhyModel(Executor background, Executor screen, Function<WhyQuestion, WhyAnswer> explain) {
    this.background = background;
    this.screen = screen;
    this.explain = explain;
  }

  /** Is told whenever something changed. */
  public Runnable subscribe(Runnable watcher) {
    return listeners.add(watcher);
  }

  /** The last explanation, or null: there is none yet. */
  public @Nullable WhyAnswer answer() {
    return answer;
  }

  /** Whether the next one has been in the making for longer than anyone likes to wait. */
  public boolean slow() {
    return slow;
  }

  /** Whether the program could not make the last one. */
  public boolean failed() {
    return failed;
  }

  /** Somebody looks, and the bench is so. */
  public void want(State state) {
    WhyQuestion question = WhyQuestion.of(state);
    newest = new WhyAnswer(question, state.readout().measured(), NOTHING);
    if (answer != null && !answer.reads(newest) && answer.question().sameAs(question)) {
      answer = answer.as(newest);
      listeners.tell();
    }
    waiting = question.sameAs(asked) ? null : question;
  }

  /** Nobody looks any more: what waits need not be answered. */
  public void rest() {
    waiting = null;
  }

  /**
   * Time has passed on the wall.
   *
   * @param nowMillis any clock that does not go back (ms)
   */
  public void tick(long nowMillis) {
    long since = begunMillis == null ? Long.MAX_VALUE : nowMillis - begunMillis;
    if (computing && !slow && since > PATIENCE_MILLIS) {
      slow = true;
      listeners.tell();
    }
    WhyQuestion next = waiting;
    if (!computing && next != null && since >= PACE_MILLIS) {
      waiting = null;
      asked = next;
      computing = true;
      begunMillis = nowMillis;
      background.execute(() -> compute(next));
    }
  }

  private void compute(WhyQuestion question) {
    WhyAnswer made;
    try {
      made = explain.apply(question);
    } catch (RuntimeException | Error e) {
      // the bench goes on without its explanation, and the panel says so
      screen.execute(() -> done(null));
      return;
    }
    screen.execute(() -> done(made));
  }

  private void done(@Nullable WhyAnswer made) {
    computing = false;
    slow = false;
    failed = made == null;
    if (made != null) {
      var last = newest;
      answer = last != null && last.question().sameAs(made.question()) ? made.as(last) : made;
    }
    listeners.tell();
  }
}
