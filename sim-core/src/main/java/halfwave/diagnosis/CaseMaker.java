package halfwave.diagnosis;

import halfwave.bench.Bench;
import halfwave.bench.BenchCircuit;
import halfwave.bench.Stages;
import halfwave.bench.Trigger;
import halfwave.board.BoardSettings;
import halfwave.evidence.HeatingCall;
import halfwave.evidence.SymptomTable;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.instrument.MeterReading;
import halfwave.instrument.Microammeter;
import halfwave.quantity.RejectedValueException;
import halfwave.work.Finding;
import halfwave.work.Recollection;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.apache.commons.math3.util.FastMath;

/**
 * Makes the cases. To play a heating call takes a hundred times longer than to solve its circuits;
 * so some draws of a cause are played, and each of the others takes what the board did from the
 * played one that is most like it.
 */
final class CaseMaker {

  /** Currents well below this are all alike to a board (A). */
  private static final double CURRENT_AMPS = 0.3e-6;

  /** A whole range of severity counts like a factor of e in current. */
  private static final double SEVERITY_WEIGHT = 1;

  private final Bench bench;
  private final BoardSettings settings;
  private final List<Check> checks;

  CaseMaker(Bench bench, BoardSettings settings) {
    this.bench = bench;
    this.settings = settings;
    checks = Check.all(bench.design().ignition());
  }

  Optional<CaseTable> table(List<Cause> causes, SymptomTable.Watch watch) {
    List<Cause> possible = causes.stream().filter(c -> faulty(c, 0).isPresent()).toList();
    AtomicBoolean ended = new AtomicBoolean();
    AtomicInteger done = new AtomicInteger();
    List<List<Case>> cases =
        IntStream.range(0, possible.size())
            .parallel()
            .mapToObj(
                k -> {
                  List<Case> made = ended.get() ? List.<Case>of() : cases(possible.get(k));
                  tell(watch, done, possible.size(), ended);
                  return made;
                })
            .toList();
    return ended.get()
        ? Optional.empty()
        : Optional.of(
            new CaseTable(checks, possible, cases.stream().flatMap(List::stream).toList()));
  }

  private static synchronized void tell(
      SymptomTable.Watch watch, AtomicInteger done, int all, AtomicBoolean ended) {
    if (!ended.get() && !watch.goOn(done.incrementAndGet(), all)) {
      ended.set(true);
    }
  }

  private List<Case> cases(Cause cause) {
    List<Bench> benches = new ArrayList<>();
    for (int draw = 0; draw < Draws.COUNT; draw++) {
      benches.add(faulty(cause, draw).orElseThrow());
    }
    double[] currents = benches.stream().mapToDouble(CaseMaker::feature).toArray();
    Likeness likeness = (one, other) -> distance(cause, currents, one, other);
    Map<Integer, HeatingCall> played = new TreeMap<>();
    for (int draw : spread(likeness, Draws.played(cause))) {
      played.put(draw, HeatingCall.of(benches.get(draw), settings, draw));
    }
    List<Case> cases = new ArrayList<>();
    for (int draw = 0; draw < Draws.COUNT; draw++) {
      int like = nearest(likeness, draw, List.copyOf(played.keySet()));
      HeatingCall call = Objects.requireNonNull(played.get(like));
      Bench faulty = benches.get(draw);
      Appearance seen = new Appearance(faulty, call, remembered(cause, draw, faulty));
      cases.add(new Case(cause, draw, seen.of(checks)));
    }
    return cases;
  }

  /** How unlike two draws are. */
  private interface Likeness {
    double distance(int one, int other);
  }

  /** Draws that stand as far from each other as possible: always the one farthest from all. */
  private static List<Integer> spread(Likeness likeness, int count) {
    List<Integer> chosen = new ArrayList<>(List.of(0));
    while (chosen.size() < count) {
      int farthest = 0;
      double most = -1;
      for (int draw = 0; draw < Draws.COUNT; draw++) {
        double distance = likeness.distance(draw, nearest(likeness, draw, chosen));
        if (distance > most) {
          most = distance;
          farthest = draw;
        }
      }
      chosen.add(farthest);
    }
    return chosen;
  }

  private static int nearest(Likeness likeness, int draw, List<Integer> chosen) {
    return chosen.stream()
        .min(Comparator.comparingDouble(other -> likeness.distance(draw, other)))
        .orElseThrow();
  }

  private static double distance(Cause cause, double[] currents, int one, int other) {
    double distance = Math.abs(currents[one] - currents[other]);
    for (FaultKind kind : cause.kinds()) {
      distance += SEVERITY_WEIGHT * Math.abs(rank(kind, one) - rank(kind, other));
    }
    return distance;
  }

  private static double rank(FaultKind kind, int draw) {
    return kind.dimension().isEmpty() ? 0 : Draws.rank(kind, draw);
  }

  /** Nobody remembers how a furnace differs from others of its kind. */
  private Finding remembered(Cause cause, int draw, Bench otherwise) {
    Bench plain = faulty(cause, draw, Variation.NONE).orElse(otherwise);
    return Recollection.sinceWhen(plain.condition());
  }

  /**
   * The bench of a draw with all faults of a cause; nothing where it cannot have them. Where this
   * very bench has no room for them, the one it is like may have.
   */
  private Optional<Bench> faulty(Cause cause, int draw) {
    return faulty(cause, draw, Draws.variation(draw)).or(() -> faulty(cause, draw, Variation.NONE));
  }

  private Optional<Bench> faulty(Cause cause, int draw, Variation variation) {
    try {
      Bench faulty = variation.on(bench);
      for (FaultKind kind : cause.kinds()) {
        faulty = Fault.of(kind, Draws.severity(kind, draw)).on(faulty);
      }
      return Optional.of(faulty);
    } catch (RejectedValueException e) {
      return Optional.empty();
    }
  }

  /** The DC with everything that comes and goes, on a scale on which a board sees it. */
  private static double feature(Bench bench) {
    Bench worst = bench.under(EnumSet.allOf(Trigger.class));
    Stages stages = new Stages();
    MeterReading reading = Microammeter.SERVICE.read(BenchCircuit.of(worst, stages.flame(worst)));
    double amps = reading instanceof MeterReading.Amps a ? a.meanAmps() : 0;
    return FastMath.asinh(amps / CURRENT_AMPS);
  }
}
