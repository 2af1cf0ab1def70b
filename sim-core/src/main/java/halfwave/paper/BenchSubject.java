package halfwave.paper;

import halfwave.explain.MomentAnswer;
import halfwave.message.Message;
import halfwave.sequence.Moment;
import java.util.List;

/**
 * What a bench report is about.
 *
 * @param answer a moment, solved and explained
 * @param causes why the board went where it is, in order of time
 */
public record BenchSubject(MomentAnswer answer, List<Message> causes) {

  /** Takes a copy. */
  public BenchSubject {
    causes = List.copyOf(causes);
  }

  /** Solves and explains a moment; takes up to a second. */
  public static BenchSubject of(Moment moment, List<Message> causes) {
    return new BenchSubject(MomentAnswer.of(moment), causes);
  }
}
