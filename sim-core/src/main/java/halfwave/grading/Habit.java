package halfwave.grading;

import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.CheckAdvice;
import halfwave.diagnosis.Entry;
import halfwave.diagnosis.Occasion;
import halfwave.diagnosis.RepairAdvice;
import halfwave.evidence.Course;
import halfwave.grading.Assessor.Thought;
import halfwave.quiz.Move;
import halfwave.work.Look;
import halfwave.work.MeterTest;
import halfwave.work.Repair;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * How a simulated learner goes about a call once it was watched. What they know of causes is the
 * same; they differ in what they do with it.
 */
public enum Habit {
  /** Any test, in any order, until one cause stands out. */
  RANDOM_TESTER {
    @Override
    Optional<Move> wanted(Thought thought, Course seen, Set<Check> done, double chance) {
      List<CheckAdvice> left = left(thought, done);
      if (clear(thought) || left.isEmpty()) {
        return mend(thought);
      }
      return test(left.get((int) (chance * left.size())).check());
    }
  },
  /** A new part, and the next one, without a test; what is no part when none is left. */
  PARTS_SWAPPER {
    @Override
    Optional<Move> wanted(Thought thought, Course seen, Set<Check> done, double chance) {
      Optional<Move> next =
          parts(seen).stream()
              .filter(part -> possible(thought, part) && !repaired(thought, part))
              .findFirst()
              .map(Move.Repaired::new);
      return next.isPresent() ? next : mend(thought);
    }
  },
  /** The same tests in the same order wherever the sequence stops alike. */
  ROUTINE_FOLLOWER {
    @Override
    Optional<Move> wanted(Thought thought, Course seen, Set<Check> done, double chance) {
      List<CheckAdvice> left = left(thought, done);
      Optional<Move> next =
          routine(seen)
              .filter(c -> left.stream().anyMatch(a -> a.check().equals(c)))
              .findFirst()
              .map(Move.Checked::new);
      return clear(thought) || next.isEmpty() ? mend(thought) : next;
    }
  },
  /** The test that tells most, whatever it takes. */
  HALF_SPLITTER {
    @Override
    Optional<Move> wanted(Thought thought, Course seen, Set<Check> done, double chance) {
      return most(thought, done, CheckAdvice::gainBits);
    }
  },
  /** The test that tells most for its time, as long as it saves more than it takes. */
  EVIDENCE_ENGINE {
    @Override
    Optional<Move> wanted(Thought thought, Course seen, Set<Check> done, double chance) {
      Optional<CheckAdvice> next = thought.advice().nextCheck();
      return next.isPresent() ? test(next.get().check()) : mend(thought);
    }
  };

  /** One cause stands out [judgement]. */
  private static final double CLEAR_PROBABILITY = 0.8;

  /** What has to happen before gas flows. */
  private static final List<Check> STARTING =
      List.of(
          new Check.Looked(Look.INDUCER, Occasion.START),
          new Check.Looked(Look.PRESSURE_SWITCH, Occasion.START),
          new Check.Looked(Look.LIMIT, Occasion.STANDBY));

  /** What has to happen before it burns. */
  private static final List<Check> LIGHTING =
      List.of(
          new Check.Looked(Look.IGNITER, Occasion.START),
          new Check.Looked(Look.VALVE_VOLTAGE, Occasion.TRIAL),
          new Check.Looked(Look.MANIFOLD_PRESSURE, Occasion.TRIAL));

  /** What has to happen before the flame is seen. */
  private static final List<Check> SENSING =
      List.of(
          new Check.Looked(Look.ROD, Occasion.STANDBY),
          new Check.Read(MeterTest.SERIES_CURRENT, Occasion.TRIAL),
          new Check.Looked(Look.CONNECTOR_TUG, Occasion.STANDBY),
          new Check.Looked(Look.BOND_RESISTANCE, Occasion.STANDBY),
          new Check.Looked(Look.INSULATOR, Occasion.STANDBY),
          new Check.Read(MeterTest.TERMINAL_VOLTS_LEAD_OFF, Occasion.STANDBY),
          new Check.Looked(Look.LEAD_CONTINUITY, Occasion.STANDBY),
          new Check.Looked(Look.POLARITY, Occasion.STANDBY),
          new Check.Looked(Look.BURNER_FACE, Occasion.STANDBY),
          new Check.Looked(Look.FLAME_PICTURE, Occasion.TRIAL));

  /** It begins where the sequence stops: common practice, no source. */
  private static Stream<Check> routine(Course seen) {
    List<List<Check>> order =
        switch (seen) {
          case DOES_NOT_START -> List.of(STARTING, LIGHTING, SENSING);
          case DOES_NOT_LIGHT -> List.of(LIGHTING, SENSING, STARTING);
          default -> List.of(SENSING, LIGHTING, STARTING);
        };
    return order.stream().flatMap(List::stream);
  }

  /** What is replaced on suspicion where the sequence stops: common practice, no source. */
  private static List<Repair> parts(Course seen) {
    return switch (seen) {
      case DOES_NOT_START ->
          List.of(Repair.REPLACE_PRESSURE_SWITCH, Repair.REPLACE_BOARD, Repair.REPLACE_INDUCER);
      case DOES_NOT_LIGHT ->
          List.of(Repair.REPLACE_IGNITER, Repair.REPLACE_GAS_VALVE, Repair.REPLACE_BOARD);
      default -> List.of(Repair.REPLACE_ROD, Repair.REPLACE_LEAD, Repair.REPLACE_BOARD);
    };
  }

  /** A furnace without the part has no such repair. */
  private static boolean possible(Thought thought, Repair repair) {
    return thought.advice().repairs().stream().anyMatch(r -> r.repair() == repair);
  }

  private static boolean repaired(Thought thought, Repair repair) {
    return thought.belief().steps().stream()
        .anyMatch(s -> s.entry() instanceof Entry.Repaired r && r.repair() == repair);
  }

  /**
   * What it does next.
   *
   * @param thought what is thought
   * @param seen how the last call went that was watched
   * @param done checks since the last repair
   * @param chance from zero up to one
   * @return nothing where it takes the furnace for whole
   */
  abstract Optional<Move> wanted(Thought thought, Course seen, Set<Check> done, double chance);

  private static Optional<Move> test(Check check) {
    return Optional.of(new Move.Checked(check));
  }

  private static List<CheckAdvice> left(Thought thought, Set<Check> done) {
    return thought.advice().checks().stream().filter(c -> !done.contains(c.check())).toList();
  }

  private static boolean clear(Thought thought) {
    return likeliest(thought).getValue() > CLEAR_PROBABILITY;
  }

  private static Map.Entry<Cause, Double> likeliest(Thought thought) {
    return thought.belief().now().entrySet().iterator().next();
  }

  private static Optional<Move> most(
      Thought thought, Set<Check> done, ToDoubleFunction<CheckAdvice> by) {
    Optional<CheckAdvice> next =
        left(thought, done).stream()
            .filter(c -> c.gainBits() >= Walk.EVIDENCE_BITS)
            .max(Comparator.comparingDouble(by));
    return clear(thought) || next.isEmpty() ? mend(thought) : test(next.get().check());
  }

  /** The repair of the likeliest cause; nothing where that is that nothing is wrong. */
  private static Optional<Move> mend(Thought thought) {
    if (likeliest(thought).getKey().healthy()) {
      return Optional.empty();
    }
    Optional<Repair> repair =
        thought.advice().repairs().stream().findFirst().map(RepairAdvice::repair);
    return repair.map(Move.Repaired::new);
  }
}
