package halfwave.gui.presentation;

import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * A question that takes long to answer, and changes while it is being answered. Questions come in
 * on the screen's thread; of those that wait only the newest is kept, and the one being worked on
 * is given up as soon as another is asked. Answers come back bit by bit, each better than the one
 * before.
 *
 * @param <Q> what is asked
 * @param <A> what is answered
 */
public final class Inquiry<Q, A> {

  /** Works on one question, away from the screen's thread. */
  @FunctionalInterface
  public interface Worker<Q, A> {
    /**
     * Answers.
     *
     * @param question what is asked
     * @param hearing who waits for it
     */
    void answer(Q question, Hearing<A> hearing);
  }

  /** Waits for an answer. */
  public interface Hearing<A> {
    /** Whether the answer is still wanted. */
    boolean wanted();

    /** An answer, as good as there is one yet. */
    void tell(A answer);

    /** How much of the work is done, 0 to 1. */
    void done(double share);
  }

  /** Finer steps of progress are not seen. */
  private static final double STEP = 0.01;

  private final Executor background;
  private final Executor screen;
  private final Worker<Q, A> worker;
  private final Runnable changed;
  private final Consumer<Throwable> failed;

  private final Object lock = new Object();
  private @Nullable Q waiting;
  private boolean working;
  private volatile long number;

  /** These belong to the screen's thread. */
  private @Nullable A answer;

  private boolean busy;
  private double share;

  /**
   * Nothing is asked yet.
   *
   * @param background runs the work; a test passes {@code Runnable::run}
   * @param screen runs what touches panels
   * @param worker does the work
   * @param changed is called on the screen's thread when answer or progress changed
   * @param failed is told of an error in the program itself, on the screen's thread
   */
  public Inquiry(
      Executor background,
      Executor screen,
      Worker<Q, A> worker,
      Runnable changed,
      Consumer<Throwable> failed) {
    this.background = background;
    this.screen = screen;
    this.worker = worker;
    this.changed = changed;
    this.failed = failed;
  }

  /** Asks; what was asked before is not wanted any more. */
  public void ask(Q question) {
    busy = true;
    share = 0;
    synchronized (lock) {
      number++;
      waiting = question;
      if (working) {
        return;
      }
      working = true;
    }
    background.execute(this::work);
  }

  /** Gives the question up; the last answer stays. */
  public void cancel() {
    synchronized (lock) {
      number++;
      waiting = null;
    }
    busy = false;
  }

  /** The last answer, or null before the first. */
  public @Nullable A answer() {
    return answer;
  }

  /** Whether a question is being worked on. */
  public boolean busy() {
    return busy;
  }

  /** How much of it is done, 0 to 1. */
  public double share() {
    return share;
  }

  private void work() {
    Q question;
    long mine;
    synchronized (lock) {
      question = waiting;
      mine = number;
      waiting = null;
      if (question == null) {
        working = false;
        return;
      }
    }
    try {
      worker.answer(question, new Ear(mine));
    } catch (RuntimeException | Error e) {
      screen.execute(() -> failed.accept(e));
    }
    screen.execute(() -> finished(mine));
    synchronized (lock) {
      if (waiting == null) {
        working = false;
        return;
      }
    }
    // back into the line, so that other work has its turn
    background.execute(this::work);
  }

  private void finished(long mine) {
    if (number == mine) {
      busy = false;
      share = 1;
      changed.run();
    }
  }

  /** Hears the answer to one question. */
  private final class Ear implements Hearing<A> {
    private final long mine;
    private double told;

    Ear(long mine) {
      this.mine = mine;
    }

    @Override
    public boolean wanted() {
      return number == mine;
    }

    @Override
    public void tell(A told) {
      screen.execute(
          () -> {
            if (wanted()) {
              answer = told;
              changed.run();
            }
          });
    }

    @Override
    public void done(double newShare) {
      if (newShare - told >= STEP) {
        told = newShare;
        screen.execute(
            () -> {
              if (wanted()) {
                share = newShare;
                changed.run();
              }
            });
      }
    }
  }
}
