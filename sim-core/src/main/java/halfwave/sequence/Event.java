package halfwave.sequence;

import halfwave.board.Stage;
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

  /** Whether the board goes into that stage from another. */
  public boolean enters(Stage stage) {
    return transition != null && transition.to() == stage && transition.from() != stage;
  }

  /** Whether the board leaves that stage for another. */
  public boolean leaves(Stage stage) {
    return transition != null && transition.from() == stage && transition.to() != stage;
  }

  /** Whether the board shuts off the gas. */
  public boolean shutsGas() {
    return transition != null && transition.from().gas() && !transition.to().gas();
  }

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
