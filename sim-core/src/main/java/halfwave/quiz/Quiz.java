package halfwave.quiz;

import halfwave.lesson.Words;
import halfwave.quantity.Guard;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Service calls to examine with.
 *
 * @param name what files call it
 * @param title its title
 * @param about what it is for
 * @param seed of all chance in it
 * @param passRatio share of the marks that passes (1)
 * @param weights what each mark counts
 * @param rules how it is taken
 * @param blueprint how much of it is about what; empty: every call counts the same
 * @param calls its calls, each name once; at least one
 */
public record Quiz(
    String name,
    Words title,
    Words about,
    long seed,
    double passRatio,
    Weights weights,
    Rules rules,
    List<BlueprintRow> blueprint,
    List<ServiceCall> calls) {

  /** Checks the domain and takes copies. */
  public Quiz {
    Guard.inRange("passRatio", passRatio, 0, 1);
    blueprint = List.copyOf(blueprint);
    calls = List.copyOf(calls);
    if (name.isBlank()) {
      throw new IllegalArgumentException("name is blank");
    }
    if (calls.isEmpty()) {
      throw new IllegalArgumentException("calls: at least one");
    }
    Set<String> names = new HashSet<>();
    for (ServiceCall call : calls) {
      if (!names.add(call.name())) {
        throw new IllegalArgumentException("calls: " + call.name() + " stands twice");
      }
    }
  }

  /** The same under other rules. */
  public Quiz with(Rules other) {
    return new Quiz(name, title, about, seed, passRatio, weights, other, blueprint, calls);
  }

  /** The call of that name. */
  public Optional<ServiceCall> call(String wanted) {
    return calls.stream().filter(c -> c.name().equals(wanted)).findFirst();
  }

  /** What a call counts in the whole quiz (1): the weight of its row, shared with its like. */
  public double weight(ServiceCall call) {
    return blueprint.stream()
        .filter(r -> r.objective() == call.objective() && r.level() == call.level())
        .mapToDouble(r -> r.weightRatio() / like(call))
        .findFirst()
        .orElse(blueprint.isEmpty() ? 1 : 0);
  }

  private long like(ServiceCall call) {
    return calls.stream()
        .filter(c -> c.objective() == call.objective() && c.level() == call.level())
        .count();
  }
}
