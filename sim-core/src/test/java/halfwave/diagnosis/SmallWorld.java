package halfwave.diagnosis;

import halfwave.board.Ignition;
import halfwave.board.StatusCode;
import halfwave.evidence.Course;
import halfwave.fault.FaultKind;
import halfwave.quantity.Noise;
import halfwave.work.Hazard;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A table of cases that no furnace ever had, small enough to be counted out. */
final class SmallWorld {

  static final Cause FOULED = Cause.of(FaultKind.ROD_FOULED);
  static final Cause GROUND = Cause.of(FaultKind.GROUND_LOST);
  static final Cause BOTH = Cause.of(FaultKind.ROD_FOULED, FaultKind.GROUND_LOST);
  static final List<Cause> CAUSES = List.of(Cause.HEALTHY, FOULED, GROUND, BOTH);
  static final List<Check> CHECKS = Check.all(Ignition.HOT_SURFACE).subList(0, 8);

  private SmallWorld() {}

  static Priors priors(double misread) {
    Map<FaultKind, Double> kinds = new EnumMap<>(FaultKind.class);
    for (FaultKind kind : FaultKind.values()) {
      kinds.put(kind, 1.0);
    }
    kinds.put(FaultKind.ROD_FOULED, 5.0);
    Map<Hazard, Double> hazards = new EnumMap<>(Hazard.class);
    for (Hazard hazard : Hazard.values()) {
      hazards.put(hazard, 0.5);
    }
    Map<Cause, Double> pairs = new LinkedHashMap<>();
    pairs.put(BOTH, 0.5);
    return new Priors(2, kinds, pairs, hazards, 30, misread, misread, 0.01, 0.02);
  }

  /** What is seen is drawn by chance, but the same on a bench with the same cause. */
  static CaseTable table(long seed) {
    List<Case> cases = new ArrayList<>();
    for (int c = 0; c < CAUSES.size(); c++) {
      for (int draw = 0; draw < CaseTable.DRAWS; draw++) {
        List<Outcome> outcomes = new ArrayList<>();
        for (int k = 0; k < CHECKS.size(); k++) {
          outcomes.add(outcome(CHECKS.get(k), seed, (c * 100L + draw) * 100 + k));
        }
        cases.add(new Case(CAUSES.get(c), draw, outcomes));
      }
    }
    return new CaseTable(CHECKS, CAUSES, cases);
  }

  private static Outcome outcome(Check check, long seed, long index) {
    double u = Noise.uniform(seed, Noise.Purpose.READING, index);
    if (check instanceof Check.Call) {
      return new Outcome.Found(u < 0.3 ? Course.RUNS : Course.GOES_OUT);
    } else if (check instanceof Check.Light) {
      return new Outcome.Found(u < 0.5 ? StatusCode.FLAME : StatusCode.NO_IGNITION);
    }
    List<Enum<?>> all = check.outcomes();
    int at = (int) (u * (all.size() + 1));
    return at == all.size() ? new Outcome.NotReached() : new Outcome.Found(all.get(at));
  }
}
