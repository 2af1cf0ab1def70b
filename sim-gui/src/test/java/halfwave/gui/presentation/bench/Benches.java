package halfwave.gui.presentation.bench;

import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.board.ShippedBoards;
import halfwave.sequence.Deed;
import java.util.List;

/** States of the standard bench. */
public final class Benches {

  private static final Effects EFFECTS = new Effects();

  private Benches() {}

  /** A running furnace with a meter in the sense lead. */
  public static State opened() {
    Bench bench = ShippedBenches.standard();
    return EFFECTS.opened(
        new Intent.Open(bench, ShippedBoards.standard(bench.design().ignition()), null));
  }

  public static State after(State state, Intent intent) {
    return EFFECTS.after(state, intent);
  }

  public static State after(State state, Deed... deeds) {
    return after(state, new Intent.Act(List.of(deeds), 0));
  }

  public static State with(State state, Parameter parameter, double value) {
    return after(state, new Deed.Alter(Change.Turned.to(parameter, value)));
  }

  /** A second later. */
  public static State later(State state) {
    return later(state, 1000);
  }

  public static State later(State state, long millis) {
    return after(state, new Intent.StepOn(millis));
  }
}
