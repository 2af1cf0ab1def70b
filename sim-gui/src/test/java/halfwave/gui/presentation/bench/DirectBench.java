package halfwave.gui.presentation.bench;

import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.board.ShippedBoards;
import halfwave.display.UnitSystem;
import halfwave.gui.presentation.Wording;
import halfwave.sequence.Deed;
import halfwave.sequence.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A workbench that computes at once, and short words for what its tests want. */
public final class DirectBench {

  public static final Wording ENGLISH = Wording.of(Locale.ENGLISH, UnitSystem.METRIC);
  public static final Wording SPANISH = Wording.of(Locale.forLanguageTag("es"), UnitSystem.METRIC);

  /** What went wrong in the program itself; a test that ends well leaves it empty. */
  public final List<Throwable> mistakes = new ArrayList<>();

  public final Workbench workbench = new Workbench(Runnable::run, Runnable::run, mistakes::add);

  /** The standard bench, once for all tests that change nothing. */
  public static State untouched() {
    return Untouched.STATE;
  }

  /** Opened only if someone asks. */
  private static final class Untouched {
    static final State STATE = standing().shown();
  }

  /** The standard bench, with its clock standing: only a test lets time pass. */
  public static DirectBench standing() {
    DirectBench made = new DirectBench();
    made.want(opens(ShippedBenches.standard()));
    made.want(new Intent.Play(false));
    return made;
  }

  public static Intent.Open opens(Bench bench) {
    return new Intent.Open(bench, ShippedBoards.standard(bench.design().ignition()), null);
  }

  public static Intent.Act act(Deed... deeds) {
    return new Intent.Act(List.of(deeds), 0);
  }

  public static Deed turn(Parameter parameter, double si) {
    return new Deed.Alter(Change.Turned.to(parameter, si));
  }

  /** One event of a drag. */
  public static Intent.Act drag(long gesture, Parameter parameter, double si) {
    return new Intent.Act(List.of(turn(parameter, si)), gesture);
  }

  public void want(Intent... intents) {
    for (Intent intent : intents) {
      workbench.want(intent);
    }
  }

  public State shown() {
    return workbench.shown();
  }

  public Moment moment() {
    return shown().moment();
  }

  public double of(Parameter parameter) {
    return parameter.of(moment().bench());
  }
}
