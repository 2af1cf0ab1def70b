package halfwave.gui.presentation.evidence;

import halfwave.board.Stage;
import halfwave.explain.Causes;
import halfwave.explain.MomentAccount;
import halfwave.explain.MomentAnswer;
import halfwave.gui.presentation.bench.State;
import halfwave.message.Message;
import halfwave.sequence.Furnace;
import halfwave.sequence.Moment;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What is to be explained.
 *
 * @param moment the present of the bench
 * @param causes why the board last shut the gas, where it has not burnt since, and why it went
 *     where it is
 */
public record WhyQuestion(Moment moment, List<Message> causes) {

  /** A rod that is warmer by less changes no figure that anyone reads (K). */
  private static final double SAME_KELVIN = 3;

  /** The same of a flame's growth (1). */
  private static final double SAME_GROWTH_RATIO = 0.01;

  /** Takes a copy. */
  public WhyQuestion {
    causes = List.copyOf(causes);
  }

  /** The question that a state raises. */
  public static WhyQuestion of(State state) {
    Stage stage = state.moment().board().stage();
    return new WhyQuestion(state.moment(), Causes.of(stage, state.recording().events()));
  }

  /** Whether the same answer serves: only the clock has moved, or hardly anything else. */
  boolean sameAs(@Nullable WhyQuestion other) {
    if (other == null || !causes.equals(other.causes)) {
      return false;
    }
    Moment a = moment;
    Moment b = other.moment;
    return a.supply() == b.supply()
        && a.board().stage() == b.board().stage()
        && a.outputs().spark() == b.outputs().spark()
        && a.settings().equals(b.settings())
        && a.triggers().equals(b.triggers())
        && Objects.equals(a.hooked(), b.hooked())
        && near(a.furnace(), b.furnace())
        && a.bench().equals(b.bench());
  }

  private static boolean near(Furnace a, Furnace b) {
    return a.burning() == b.burning()
        && (a.growthRatio() > 0) == (b.growthRatio() > 0)
        && Math.abs(a.growthRatio() - b.growthRatio()) <= SAME_GROWTH_RATIO
        && Math.abs(a.rodKelvin() - b.rodKelvin()) <= SAME_KELVIN;
  }

  /** The answer; takes a while. */
  public WhyAnswer answer() {
    MomentAnswer answer = MomentAnswer.of(moment);
    return new WhyAnswer(this, answer.measured(), MomentAccount.of(answer, causes));
  }
}
