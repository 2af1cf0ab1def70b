package halfwave.gui.presentation;

import halfwave.io.BadInputException;
import halfwave.paper.Watch;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;

/**
 * Work that is done away from the screen's thread, one piece at a time: while one is being done no
 * other is begun. It may say how far it is, and can be given up: then nobody waits for it, and what
 * comes of it is dropped. Belongs to the screen's thread.
 */
public final class OneByOne {

  /** What is done away from the screen's thread. */
  public interface Work {

    /**
     * Does it, and tells what is to be done with it on the screen's thread.
     *
     * @param watch is told how far it is; whoever is told to end throws a {@link
     *     CancellationException}
     */
    Runnable done(Watch watch);
  }

  private final Executor background;
  private final Executor screen;
  private final Consumer<Throwable> failed;
  private final Listeners listeners;
  private final AtomicInteger turn = new AtomicInteger();
  private boolean busy;
  private int done;
  private int all;
  private Saying said = Saying.NOTHING;

  /**
   * Nothing is done yet.
   *
   * @param background does it
   * @param screen runs what touches panels
   * @param failed is told of an error in the program itself
   * @param listeners are told when something changed
   */
  public OneByOne(
      Executor background, Executor screen, Consumer<Throwable> failed, Listeners listeners) {
    this.background = background;
    this.screen = screen;
    this.failed = failed;
    this.listeners = listeners;
  }

  /** Begins it, where nothing is being done. */
  public void begin(Work work) {
    if (busy) {
      return;
    }
    busy = true;
    done = 0;
    all = 0;
    said = Saying.NOTHING;
    int mine = turn.incrementAndGet();
    listeners.tell();
    background.execute(() -> ended(mine, result(mine, work)));
  }

  private Runnable result(int mine, Work work) {
    try {
      return work.done((part, parts) -> told(mine, part, parts));
    } catch (BadInputException e) {
      return () -> said = words -> e.line(words.sentences());
    } catch (CancellationException e) {
      return () -> said = words -> words.text("work.given-up");
    } catch (RuntimeException | Error e) {
      return () -> failed.accept(e);
    }
  }

  private boolean told(int mine, int part, int parts) {
    screen.execute(
        () -> {
          if (turn.get() == mine) {
            done = part;
            all = parts;
            listeners.tell();
          }
        });
    return turn.get() == mine;
  }

  private void ended(int mine, Runnable then) {
    screen.execute(
        () -> {
          if (turn.get() == mine) {
            busy = false;
            then.run();
            listeners.tell();
          }
        });
  }

  /** Gives it up. */
  public void giveUp() {
    if (busy) {
      turn.incrementAndGet();
      busy = false;
      say(words -> words.text("work.given-up"));
    }
  }

  /** Whether something is being done. */
  public boolean busy() {
    return busy;
  }

  /** How far it is, in words. */
  public String progress(Wording words) {
    return all > 0 ? words.text("desk.so-far", done, all) : words.text("desk.working");
  }

  /**
   * Tells from within a work how far it is.
   *
   * @throws CancellationException if it has been given up
   */
  public static void goOn(Watch watch, int done, int all) {
    if (!watch.goOn(done, all)) {
      throw new CancellationException();
    }
  }

  /** What there is to say of the last work or wish. */
  public String said(Wording words) {
    return said.in(words);
  }

  /** The work that was done says this. */
  public void told(Saying what) {
    said = what;
  }

  /** Says something at once. */
  public void say(Saying what) {
    said = what;
    listeners.tell();
  }
}
