package halfwave.gui.presentation.quiz;

import halfwave.diagnosis.Outcome;
import halfwave.diagnosis.Reasons;
import halfwave.fault.FaultGroup;
import halfwave.grading.Coach;
import halfwave.grading.Expectation;
import halfwave.gui.presentation.Saying;
import halfwave.message.Message;
import halfwave.quiz.Done;
import halfwave.quiz.Help;
import halfwave.quiz.Move;
import halfwave.quiz.Moves;
import halfwave.quiz.Phase;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Visit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Moves of a practised call, with what a coach says to each. Away from the screen's thread. */
final class CoachedMoves {

  /** A coach who begins does no more than this [judgement]. */
  private static final int MOST_BEGUN = 12;

  private final ServiceCall call;
  private final Coach coach;
  private final Help help;

  CoachedMoves(ServiceCall call, Coach coach, Help help) {
    this.call = call;
    this.coach = coach;
    this.help = help;
  }

  /**
   * What a learner expects of a check.
   *
   * @param found what it will find, or null: no idea
   * @param groups where the fault may be after it
   */
  record Expected(@Nullable Expectation found, Set<FaultGroup> groups) {
    /** Takes a copy in order. */
    Expected {
      Set<FaultGroup> ordered = EnumSet.noneOf(FaultGroup.class);
      ordered.addAll(groups);
      groups = Collections.unmodifiableSet(ordered);
    }
  }

  /** At the beginning; one that is to be completed is begun. */
  PracticePoint first(Attempt attempt) {
    PracticePoint at = point(attempt, List.of());
    if (help == Help.COMPLETING) {
      boolean tested = false;
      for (int k = 0; k < MOST_BEGUN && at.next().isPresent() && !tested; k++) {
        tested = at.phase() == Phase.TEST && at.next().get() instanceof Move.Checked;
        if (at.phase() == Phase.REPAIR || at.phase() == Phase.PROVE) {
          break;
        }
        at = after(at, at.next().get(), null);
      }
    }
    return at;
  }

  /** One move further. */
  PracticePoint after(PracticePoint at, Move move, @Nullable Expected expected) {
    Visit before = visit(at.attempt());
    Attempt next = at.attempt().after(call, move, 0);
    List<List<Saying>> remarks = new ArrayList<>(at.remarks());
    remarks.add(remarks(before, move, visit(next), expected));
    return point(next, remarks);
  }

  private Visit visit(Attempt attempt) {
    return attempt.at(call);
  }

  private PracticePoint point(Attempt attempt, List<List<Saying>> remarks) {
    Visit visit = visit(attempt);
    Optional<Move> next = coach.expert().next(visit);
    return new PracticePoint(
        attempt,
        remarks,
        coach.expert().phase(visit),
        next,
        next.map(m -> coach.why(visit, m)).orElse(null));
  }

  private List<Saying> remarks(Visit before, Move move, Visit after, @Nullable Expected expected) {
    List<Saying> said = new ArrayList<>();
    if (move instanceof Move.Hint hint) {
      said.add(saying(coach.hint(before, hint.grade())));
    } else if (help != Help.NONE) {
      if (expected != null && move instanceof Move.Checked checked) {
        compare(before, checked, after, expected, said);
      }
      coach.told(after).forEach(m -> said.add(saying(m)));
      Set<FaultGroup> out = after.log().isEmpty() ? Set.of() : ruledOut(after);
      if (!out.isEmpty()) {
        Message groups = Moves.groups(out);
        said.add(w -> w.text("practice.ruled-out", w.sentences().text(groups)));
      }
    }
    return List.copyOf(said);
  }

  private Set<FaultGroup> ruledOut(Visit after) {
    Done last = after.last();
    return last.outcome() == null ? Set.of() : coach.ruledOut(after);
  }

  private void compare(
      Visit before, Move.Checked checked, Visit after, Expected expected, List<Saying> said) {
    Expectation found = expected.found();
    Outcome outcome = after.last().outcome();
    if (found != null && outcome != null) {
      double likely = coach.probability(before, checked.check(), found);
      String key = found.holds().test(outcome) ? "practice.expected" : "practice.not-expected";
      said.add(
          w ->
              w.text(
                  key,
                  w.sentences().text(found.label()),
                  w.sentences().text(Reasons.percent(likely))));
    }
    double held = coach.held(after, expected.groups());
    Message named = Moves.groups(expected.groups());
    said.add(
        w ->
            w.text(
                "practice.held",
                w.sentences().text(named),
                w.sentences().text(Reasons.percent(held))));
  }

  private static Saying saying(Message message) {
    return words -> words.sentences().sentence(message);
  }
}
