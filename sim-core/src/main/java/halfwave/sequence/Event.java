package halfwave.sequence;

import halfwave.board.Transition;
import halfwave.message.Message;
import org.jspecify.annotations.Nullable;

/**
 * Something that happened, and why.
 *
 * @param timeMillis when (ms)
 * @param subject to what
 * @param message what, and its cause
 * @param transition the board's transition, or null where it was none
 */
public record Event(
    long timeMillis, Subject subject, Message message, @Nullable Transition transition) {

  /** What events happen to. */
  public enum Subject {
    /** Someone did something. */
    ACT,
    /** The board made a transition. */
    BOARD,
    /** Igniter or spark. */
    IGNITER,
    /** Flame at the burners. */
    FLAME,
    /** A fault that comes and goes. */
    FAULT
  }
}
