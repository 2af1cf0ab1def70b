package halfwave.explain;

import halfwave.board.Stage;
import halfwave.message.Message;
import halfwave.sequence.Event;
import java.util.ArrayList;
import java.util.List;

/** Why a board is where it is, from what happened. */
public final class Causes {

  private Causes() {}

  /**
   * Why the board last shut the gas, where it has not burnt since, and why it went where it is.
   *
   * @param stage where it is
   * @param events what happened, in order
   */
  public static List<Message> of(Stage stage, List<Event> events) {
    List<Message> causes = new ArrayList<>();
    boolean entered = false;
    for (int k = events.size() - 1; k >= 0; k--) {
      Event event = events.get(k);
      boolean shut = event.shutsGas();
      if ((!entered && event.enters(stage)) || shut) {
        causes.add(0, event.message());
        entered = true;
      }
      // a flame that burns is no more to be explained by the one before, nor a call by the last one
      boolean begins = event.leaves(Stage.STANDBY) || event.leaves(Stage.OFF);
      if (entered && (shut || stage == Stage.RUN || begins)) {
        break;
      }
    }
    return causes;
  }
}
