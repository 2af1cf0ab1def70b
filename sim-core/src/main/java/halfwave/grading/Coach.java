package halfwave.grading;

import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.CheckAdvice;
import halfwave.diagnosis.Entry;
import halfwave.diagnosis.Reasons;
import halfwave.diagnosis.Step;
import halfwave.fault.FaultGroup;
import halfwave.grading.Assessor.Thought;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quiz.Done;
import halfwave.quiz.Move;
import halfwave.quiz.Moves;
import halfwave.quiz.Visit;
import halfwave.work.Work;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Helps a learner on a service call, as much as is wanted. */
public final class Coach {

  private static final int DIRECTION = 1;
  private static final int PLACE = 2;

  private final Assessor assessor;
  private final Expert expert;

  /** On one call. */
  public Coach(Assessor assessor) {
    this.assessor = assessor;
    expert = new Expert(assessor);
  }

  /** What an expert would do, and at which stage a visit is. */
  public Expert expert() {
    return expert;
  }

  /** Why a move is the next one, in words. */
  public Message why(Visit visit, Move move) {
    if (move instanceof Move.Power || move instanceof Move.Gas || move instanceof Move.Signal) {
      return Message.of(MessageKey.COACH_PREPARES);
    } else if (move instanceof Move.Suspects) {
      return Message.of(MessageKey.COACH_LISTS);
    } else if (move instanceof Move.Repaired repaired) {
      return Message.of(
          MessageKey.COACH_REPAIRS,
          Argument.nested(Reasons.name(likeliest(visit))),
          Argument.name(repaired.repair()));
    } else if (move instanceof Move.Checked checked) {
      return why(visit, checked.check());
    }
    return Message.of(MessageKey.COACH_CONCLUDES);
  }

  private Message why(Visit visit, Check check) {
    if (visit.repaired() && (Entries.watched(check) || check instanceof Check.Read)) {
      return Message.of(MessageKey.COACH_PROVES);
    } else if (Entries.watched(check)) {
      return Message.of(MessageKey.COACH_DESCRIBES);
    }
    double bits = expert.thought(visit).check(check).map(CheckAdvice::gainBits).orElse(0.0);
    return Message.of(
        MessageKey.COACH_TESTS,
        Argument.nested(Moves.groups(Expert.groups(expert.thought(visit)))),
        Argument.text(String.format(Locale.ROOT, "%.1f", bits)),
        Argument.count(check.minutes()));
  }

  private Cause likeliest(Visit visit) {
    return expert.thought(visit).belief().now().keySet().iterator().next();
  }

  /**
   * A hint.
   *
   * @param visit as it stands
   * @param grade one: a direction; two: where; three: what to do
   */
  public Message hint(Visit visit, int grade) {
    Optional<Move> next = expert.next(visit);
    if (next.isEmpty()) {
      return Message.of(MessageKey.COACH_CONCLUDES);
    } else if (grade == DIRECTION) {
      return Message.of(
          MessageKey.HINT_DIRECTION,
          Argument.name(expert.phase(visit)),
          Argument.nested(Moves.groups(Expert.groups(expert.thought(visit)))));
    } else if (grade == PLACE) {
      return place(next.get());
    }
    return Message.of(
        MessageKey.HINT_MOVE,
        Argument.nested(Moves.said(next.get())),
        Argument.nested(why(visit, next.get())));
  }

  private static Message place(Move move) {
    Work work =
        move instanceof Move.Checked checked
            ? checked.check().work().orElse(null)
            : move instanceof Move.Repaired repaired ? repaired.repair() : null;
    return work == null
        ? Message.of(MessageKey.HINT_FURNACE)
        : Message.of(MessageKey.HINT_PLACE, Argument.name(work.part()));
  }

  /** What the last result told, the most telling first; nothing where it was none. */
  public List<Message> told(Visit visit) {
    if (visit.log().isEmpty()) {
      return List.of();
    }
    Done last = visit.last();
    List<Entry> entries = Entries.of(visit.log());
    if (last.outcome() == null || entries.isEmpty()) {
      return List.of();
    }
    List<Step> steps = assessor.after(entries).belief().steps();
    return Reasons.of(steps.get(steps.size() - 1));
  }

  /** Groups that the last result ruled out. */
  public Set<FaultGroup> ruledOut(Visit visit) {
    List<Entry> entries = Entries.of(visit.log());
    Set<FaultGroup> out = EnumSet.noneOf(FaultGroup.class);
    if (!entries.isEmpty()) {
      out.addAll(Expert.groups(assessor.after(entries.subList(0, entries.size() - 1))));
      out.removeAll(Expert.groups(assessor.after(entries)));
    }
    return out;
  }

  /** How probable each of the things is that a check may find, as things stand. */
  public double probability(Visit visit, Check check, Expectation expectation) {
    Thought thought = expert.thought(visit);
    return thought.belief().probability(check, expectation.holds());
  }

  /** How much of what is possible these groups hold (1). */
  public double held(Visit visit, Set<FaultGroup> groups) {
    double held = 0;
    for (Map.Entry<Cause, Double> e : expert.thought(visit).belief().now().entrySet()) {
      boolean hit =
          e.getKey().healthy()
              ? groups.isEmpty()
              : e.getKey().kinds().stream().anyMatch(k -> groups.contains(k.group()));
      held += hit ? e.getValue() : 0;
    }
    return Math.min(1, held);
  }
}
