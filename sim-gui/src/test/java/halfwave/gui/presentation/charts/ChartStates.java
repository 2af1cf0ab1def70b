package halfwave.gui.presentation.charts;

import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.board.ShippedBoards;
import halfwave.display.UnitSystem;
import halfwave.gui.presentation.Inquiry;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.sequence.Deed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** States to make charts of. */
final class ChartStates {

  static final Wording ENGLISH = Wording.of(Locale.ENGLISH, UnitSystem.METRIC);

  private ChartStates() {}

  /** A workbench that computes at once, with the standard bench running on it. */
  static Workbench workbench() {
    Workbench workbench =
        new Workbench(
            Runnable::run,
            Runnable::run,
            e -> {
              throw new AssertionError(e);
            });
    Bench bench = ShippedBenches.standard();
    workbench.want(new Intent.Open(bench, ShippedBoards.standard(bench.design().ignition()), null));
    return workbench;
  }

  static State running() {
    return workbench().shown();
  }

  /** Some of the numbers turned, one after the other. */
  static State turned(Parameter parameter, double... values) {
    Workbench workbench = workbench();
    for (double value : values) {
      workbench.want(act(parameter, value));
      workbench.want(new Intent.StepOn(1000L));
    }
    return workbench.shown();
  }

  static Intent act(Parameter parameter, double value) {
    return new Intent.Act(List.of(new Deed.Alter(Change.Turned.to(parameter, value))), 0);
  }

  static Healthy healthy(State state) {
    return Healthy.of(Healthy.bench(state));
  }

  /** Hears everything, until it has heard enough. */
  static final class Ear<A> implements Inquiry.Hearing<A> {
    final List<A> told = new ArrayList<>();
    private final int enough;

    Ear(int enough) {
      this.enough = enough;
    }

    @Override
    public boolean wanted() {
      return told.size() < enough;
    }

    @Override
    public void tell(A answer) {
      told.add(answer);
    }

    @Override
    public void done(double share) {}

    A last() {
      return told.get(told.size() - 1);
    }
  }
}
