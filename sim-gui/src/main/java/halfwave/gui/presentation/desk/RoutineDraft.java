package halfwave.gui.presentation.desk;

import halfwave.board.Ignition;
import halfwave.diagnosis.Check;
import halfwave.grading.Routine;
import halfwave.gui.presentation.Wording;
import halfwave.io.quiz.RoutineFile.Unfinished;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * An order of work as an instructor writes it: other than a {@link Routine} it may have no name and
 * no steps yet, and a step may say nothing yet.
 *
 * @param name what it is called
 * @param steps in their order
 */
public record RoutineDraft(String name, List<Routine.Step> steps) {

  /** Nothing yet. */
  static final RoutineDraft EMPTY = new RoutineDraft("", List.of());

  /** A step that says nothing yet. */
  private static final Routine.Step BLANK =
      new Routine.Step(null, Set.of(), Double.NaN, Double.NaN, null);

  /** Takes a copy. */
  public RoutineDraft {
    steps = List.copyOf(steps);
  }

  /** One that is there. */
  static RoutineDraft of(Unfinished routine) {
    return new RoutineDraft(routine.name(), routine.steps());
  }

  /** As files have it. */
  Unfinished unfinished() {
    return new Unfinished(name, steps);
  }

  /** Everything that can be looked at or measured on any appliance, once each. */
  public static List<Check> checks() {
    Set<Check> all = new LinkedHashSet<>();
    Stream.of(Ignition.values()).forEach(i -> all.addAll(Check.all(i)));
    return List.copyOf(all);
  }

  /** The order of work; nothing where there is {@link #trouble}. */
  Optional<Routine> routine() {
    return name.isBlank() || steps.isEmpty() || firstBlank() > 0
        ? Optional.empty()
        : Optional.of(new Routine(name.strip(), steps));
  }

  /** What is missing, in a sentence; empty where nothing is. */
  public String trouble(Wording words) {
    if (name.isBlank()) {
      return words.text("routine.needs-name");
    } else if (steps.isEmpty()) {
      return words.text("routine.needs-steps");
    }
    return firstBlank() > 0 ? words.text("routine.blank-step", firstBlank()) : "";
  }

  /** Number of the first step that says nothing, from one; zero where each says something. */
  private int firstBlank() {
    for (int k = 0; k < steps.size(); k++) {
      if (steps.get(k).check() == null && steps.get(k).repair() == null) {
        return k + 1;
      }
    }
    return 0;
  }

  /** Under another name. */
  public RoutineDraft withName(String other) {
    return new RoutineDraft(other, steps);
  }

  /** With a step that says nothing yet after that of an index; below zero: as the last. */
  public RoutineDraft withStepAfter(int index) {
    List<Routine.Step> all = new ArrayList<>(steps);
    all.add(index < 0 ? all.size() : index + 1, BLANK);
    return new RoutineDraft(name, all);
  }

  /** With another step in the place of one. */
  public RoutineDraft with(int index, Routine.Step step) {
    List<Routine.Step> all = new ArrayList<>(steps);
    all.set(index, step);
    return new RoutineDraft(name, all);
  }

  /** Without a step. */
  public RoutineDraft without(int index) {
    List<Routine.Step> all = new ArrayList<>(steps);
    all.remove(index);
    return new RoutineDraft(name, all);
  }

  /** With two steps in each other's place. */
  public RoutineDraft swapped(int index, int other) {
    List<Routine.Step> all = new ArrayList<>(steps);
    Collections.swap(all, index, other);
    return new RoutineDraft(name, all);
  }

  /** Whether a step may be followed by a repair only below what is read. */
  public static boolean reads(Routine.Step step) {
    return step.check() instanceof Check.Read;
  }

  /** Whether what is read is a current: then the number is one of microamps. */
  public static boolean readsCurrent(Routine.Step step) {
    return step.check() instanceof Check.Read read && read.current();
  }

  /** The same step with another check: what was to be found goes with the old one. */
  public static Routine.Step withCheck(Routine.Step step, @Nullable Check check) {
    return new Routine.Step(check, Set.of(), Double.NaN, Double.NaN, step.repair());
  }

  /** The same step with another repair. */
  public static Routine.Step withRepair(Routine.Step step, @Nullable Repair repair) {
    return new Routine.Step(
        step.check(), step.found(), step.belowAmps(), step.belowVolts(), repair);
  }

  /** The same step with other findings after which to repair. */
  public static Routine.Step withFound(Routine.Step step, Set<String> found) {
    return new Routine.Step(
        step.check(), found, step.belowAmps(), step.belowVolts(), step.repair());
  }

  /** What a reading has to be below, as it is shown (µA or V); zero: it may be anything. */
  public static double below(Routine.Step step) {
    if (readsCurrent(step)) {
      return Double.isNaN(step.belowAmps()) ? 0 : Math.rint(step.belowAmps() * 1e9) / 1e3;
    }
    return Double.isNaN(step.belowVolts()) ? 0 : step.belowVolts();
  }

  /** The same step with another such number. */
  public static Routine.Step withBelow(Routine.Step step, double shown) {
    boolean current = readsCurrent(step);
    double amps = current && shown > 0 ? shown / 1e6 : Double.NaN;
    double volts = !current && shown > 0 ? shown : Double.NaN;
    return new Routine.Step(step.check(), Set.of(), amps, volts, step.repair());
  }
}
