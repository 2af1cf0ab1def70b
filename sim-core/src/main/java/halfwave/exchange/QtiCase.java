package halfwave.exchange;

import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Outcome;
import halfwave.fault.FaultGroup;
import halfwave.fault.FaultKind;
import halfwave.grading.Assessor;
import halfwave.grading.ExpertPath;
import halfwave.grading.MarkedMove;
import halfwave.quiz.Appearances;
import halfwave.quiz.AsFound;
import halfwave.quiz.Move;
import halfwave.quiz.Variant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A furnace as a question: what is read on it, and what may be wrong.
 *
 * @param variant the furnace
 * @param found what the checks find that come to something, in their order
 * @param choices what may be wrong, the truth among them, in the order of their names
 * @param path how an expert goes about it
 */
record QtiCase(Variant variant, Map<Check, Outcome> found, List<Cause> choices, ExpertPath path) {

  /** Wrong answers: so many are offered where there are [judgement]. */
  private static final int DISTRACTORS = 5;

  /** Of them, those of the same group as the truth [judgement]. */
  private static final int NEIGHBOURS = 2;

  /**
   * What is as likely as this over the truth, after all readings, could be argued for: it is not
   * offered [judgement].
   */
  private static final double ARGUABLE_RATIO = 0.05;

  QtiCase {
    found = Collections.unmodifiableMap(new LinkedHashMap<>(found));
    choices = List.copyOf(choices);
  }

  static QtiCase of(Assessor assessor, Variant variant, Appearances appearances) {
    Map<Check, Outcome> found = new LinkedHashMap<>(AsFound.of(variant, appearances));
    found.values().removeIf(o -> o instanceof Outcome.NotReached);
    ExpertPath path = ExpertPath.of(assessor, variant, appearances);
    List<Cause> choices = distractors(variant.cause(), path, assessor.knowing(found).now());
    choices.add(variant.cause());
    choices.sort(Comparator.comparing(Cause::id));
    return new QtiCase(variant, found, choices, path);
  }

  /** Neighbours of the truth, and what an expert held possible longest. */
  private static List<Cause> distractors(
      Cause truth, ExpertPath path, Map<Cause, Double> afterAll) {
    Map<Cause, Double> held = new HashMap<>();
    for (MarkedMove move : path.search()) {
      move.before().forEach((cause, probability) -> held.merge(cause, probability, Double::sum));
    }
    List<Cause> all = new ArrayList<>(held.keySet());
    double arguable = ARGUABLE_RATIO * afterAll.getOrDefault(truth, 0.0);
    all.removeIf(c -> c.equals(truth) || afterAll.getOrDefault(c, 0.0) > arguable);
    all.sort(
        Comparator.comparingDouble((Cause c) -> -Objects.requireNonNull(held.get(c)))
            .thenComparing(Cause::id));
    Set<FaultGroup> groups = groups(truth);
    List<Cause> chosen = new ArrayList<>();
    all.stream()
        .filter(c -> groups(c).stream().anyMatch(groups::contains))
        .limit(NEIGHBOURS)
        .forEach(chosen::add);
    all.stream()
        .filter(c -> !chosen.contains(c))
        .limit(DISTRACTORS - chosen.size())
        .toList()
        .forEach(chosen::add);
    return chosen;
  }

  private static Set<FaultGroup> groups(Cause cause) {
    Set<FaultGroup> groups = EnumSet.noneOf(FaultGroup.class);
    cause.kinds().stream().map(FaultKind::group).forEach(groups::add);
    return groups;
  }

  /** The check of the search that told most for the truth; null where none did. */
  @Nullable MarkedMove telling() {
    MarkedMove best = null;
    double most = 0;
    List<MarkedMove> moves = path.moves();
    for (int k = 0; k < path.search().size() && k + 1 < moves.size(); k++) {
      double before = moves.get(k).before().getOrDefault(variant.cause(), 0.0);
      double after = moves.get(k + 1).before().getOrDefault(variant.cause(), 0.0);
      if (moves.get(k).done().move() instanceof Move.Checked && after - before > most) {
        most = after - before;
        best = moves.get(k);
      }
    }
    return best;
  }

  /** The name of an answer: letters, digits and hyphens, as the schema allows. */
  static String identifier(Cause cause) {
    return cause.id().replace('+', '_');
  }
}
