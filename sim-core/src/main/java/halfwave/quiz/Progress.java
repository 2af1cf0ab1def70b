package halfwave.quiz;

import halfwave.quantity.Guard;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How far a learner has come by practice, objective by objective.
 *
 * @param practised what was practised, in the order of the objectives; the rest was not yet
 */
public record Progress(Map<Objective, Practised> practised) {

  /** Nothing was practised yet. */
  public static final Progress NONE = new Progress(Map.of());

  /** So many of the latest marks are kept. */
  public static final int KEPT = 10;

  /** Marks that let the help fade [judgement]. */
  private static final double GOOD_RATIO = 0.7;

  /**
   * What was practised of one objective.
   *
   * @param calls how many service calls; one or more
   * @param marks their marks, the latest last (1), each zero to one; at least one, at most {@link
   *     #KEPT}
   * @param help how much a coach did at the latest
   */
  public record Practised(int calls, List<Double> marks, Help help) {

    /** Checks the domain and takes a copy. */
    public Practised {
      marks = List.copyOf(marks);
      if (marks.isEmpty() || marks.size() > KEPT || calls < marks.size()) {
        throw new IllegalArgumentException(
            "calls = " + calls + ", marks = " + marks.size() + ": 1 to " + KEPT + " of the calls");
      }
      marks.forEach(m -> Guard.inRange("marks", m, 0, 1));
    }

    /** How much help is wanted next: less after good marks, the same after others. */
    public Help next() {
      return marks.get(marks.size() - 1) >= GOOD_RATIO ? help.faded() : help;
    }
  }

  /** Takes a copy in order. */
  public Progress {
    Map<Objective, Practised> ordered = new EnumMap<>(Objective.class);
    ordered.putAll(practised);
    practised = Collections.unmodifiableMap(ordered);
  }

  /**
   * With one more call.
   *
   * @param objective what it asked for
   * @param ratio its marks (1), zero to one
   * @param help how much a coach did
   */
  public Progress after(Objective objective, double ratio, Help help) {
    Practised before = practised.get(objective);
    List<Double> marks = new ArrayList<>(before == null ? List.of() : before.marks());
    marks.add(ratio);
    Map<Objective, Practised> all = new EnumMap<>(Objective.class);
    all.putAll(practised);
    int calls = before == null ? 0 : before.calls();
    List<Double> latest = marks.subList(Math.max(0, marks.size() - KEPT), marks.size());
    all.put(objective, new Practised(calls + 1, latest, help));
    return new Progress(all);
  }

  /** How much help is wanted with that objective: all of it at first. */
  public Help next(Objective objective) {
    Practised before = practised.get(objective);
    return before == null ? Help.WORKED : before.next();
  }

  /** Calls practised altogether. */
  public int calls() {
    return practised.values().stream().mapToInt(Practised::calls).sum();
  }
}
