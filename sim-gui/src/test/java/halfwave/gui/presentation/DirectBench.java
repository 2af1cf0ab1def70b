package halfwave.gui.presentation;

import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.board.ShippedBoards;
import halfwave.display.UnitSystem;
import halfwave.sequence.Deed;
import halfwave.sequence.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A workbench that computes at once, and short words for what its tests want. */
final class DirectBench {

  static final Wording ENGLISH = Wording.of(Locale.ENGLISH, UnitSystem.METRIC);
  static final Wording SPANISH = Wording.of(Locale.forLanguageTag("es"), UnitSystem.METRIC);

  /** What went wrong in the program itself; a test that ends well leaves it empty. */
  final List<Throwable> mistakes = new ArrayList<>();

  final Workbench workbench = new Workbench(Runnable::run, Runnable::run, mistakes::add);

  /** The standard bench, with its clock standing: only a test lets time pass. */
  /** The standard bench, once for all tests that change nothing. */
  static State untouched() {
    return Untouched.STATE;
  }

  /** Opened only if someone asks. */
  private static final class Untouched {
    static final State STATE = standing().shown();
  }

  static DirectBench standing() {
    DirectBench made = new DirectBench();
    made.want(opens(ShippedBenches.standard()));
    made.want(new Intent.Play(false));
    return made;
  }

  static Intent.Open opens(Bench bench) {
    return new Intent.Open(bench, ShippedBoards.standard(bench.design().ignition()), null);
  }

  static Intent.Act act(Deed... deeds) {
    return new Intent.Act(List.of(deeds), 0);
  }

  static Deed turn(Parameter parameter, double si) {
    return new Deed.Alter(Change.Turned.to(parameter, si));
  }

  /** One event of a drag. */
  static Intent.Act drag(long gesture, Parameter parameter, double si) {
    return new Intent.Act(List.of(turn(parameter, si)), gesture);
  }

  void want(Intent... intents) {
    for (Intent intent : intents) {
      workbench.want(intent);
    }
  }

  State shown() {
    return workbench.shown();
  }

  Moment moment() {
    return shown().moment();
  }

  double of(Parameter parameter) {
    return parameter.of(moment().bench());
  }
}
