package halfwave.bench;

import halfwave.flame.Rod;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;
import java.util.List;
import java.util.Set;

/**
 * The whole set-up being simulated: what was built, and in what condition it is.
 *
 * @param name short name in lower-case-hyphen form
 * @param design what was built
 * @param condition how worn, dirty, misplaced or broken each part is
 */
public record Bench(String name, Design design, Condition condition) {

  /** Checks that the rod does not stand where metal already is. */
  public Bench {
    if (!name.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
      throw rejected("name", name, Allowed.NAME);
    }
    double clearance =
        new BurnerMetal(design.burner())
            .clearanceMeters(condition.rodPosition().place(design.rod()));
    if (clearance < 0) {
      throw rejected("design.rod.path", "inside the burner tube", Allowed.CLEAR_OF_BURNER);
    }
    for (Intermittent intermittent : condition.appliance().intermittents()) {
      // refuses now what could not be later
      intermittent.change().on(steady(name, design, condition));
    }
  }

  private static Bench steady(String name, Design design, Condition condition) {
    return new Bench(name, design, condition.withAppliance(condition.appliance().steady()));
  }

  /** The bench as it is while some triggers are there: what comes and goes has come, or gone. */
  public Bench under(Set<Trigger> triggers) {
    List<Intermittent> intermittents = condition.appliance().intermittents();
    if (intermittents.isEmpty()) {
      return this;
    }
    Bench now = steady(name, design, condition);
    for (Intermittent intermittent : intermittents) {
      now = triggers.contains(intermittent.trigger()) ? intermittent.change().on(now) : now;
    }
    return now;
  }

  private static RejectedValueException rejected(String field, String value, Allowed allowed) {
    return new RejectedValueException(field, value, allowed, Double.NaN, Double.NaN);
  }

  /** The rod where it stands now. */
  public Rod rod() {
    return condition.rodPosition().place(design.rod());
  }

  /** Distance between the rod and the burner's metal (m); zero where they touch. */
  public double rodClearanceMeters() {
    return new BurnerMetal(design.burner()).clearanceMeters(rod());
  }

  /** The same bench in another condition. */
  public Bench with(Condition other) {
    return new Bench(name, design, other);
  }

  /** The same bench of another design. */
  public Bench with(Design other) {
    return new Bench(name, other, condition);
  }
}
