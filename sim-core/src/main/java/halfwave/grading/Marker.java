package halfwave.grading;

import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Outcome;
import halfwave.diagnosis.Reasons;
import halfwave.evidence.Course;
import halfwave.fault.FaultGroup;
import halfwave.fault.FaultKind;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quiz.Conclusion;
import halfwave.quiz.Done;
import halfwave.quiz.Ending;
import halfwave.quiz.Move;
import halfwave.quiz.Moves;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Visit;
import halfwave.quiz.Weights;
import halfwave.work.FurnacePart;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Gives the marks of one visit. Process and result are marked apart. */
final class Marker {

  /** What is left of the credit for a test after a hint of each grade [judgement]. */
  private static final double[] HINTED_RATIOS = {1, 0.8, 0.5, 0};

  /** Below this something is ruled out [judgement]. */
  private static final double RULED_OUT_PROBABILITY = 0.01;

  /** Shares of the marks for cause and for repair [judgement]. */
  private static final double CAUSE_SHARE = 0.7;

  private static final double GROUP_SHARE = 0.4;
  private static final double WHOLE_SHARE = 0.6;
  private static final double PROOF_SHARE = 0.2;

  /** Needless parts count in full from this beyond the call's budget (units) [judgement]. */
  private static final double NEEDLESS_UNITS = 10;

  private final Visit visit;
  private final @Nullable Conclusion conclusion;
  private final Cause truth;
  private final List<MarkedMove> moves;
  private final Proof proof;

  Marker(Assessor assessor, Visit visit, @Nullable Conclusion conclusion) {
    this.visit = visit;
    this.conclusion = conclusion;
    truth = visit.variant().cause();
    moves = Walk.through(assessor, visit.log());
    proof = Proof.of(visit.sinceRepair());
  }

  CallMarks marks(Weights weights, List<Message> remarks) {
    List<Mark> marks = new ArrayList<>();
    for (Criterion criterion : Criterion.values()) {
      List<Message> reasons = new ArrayList<>();
      double ratio =
          switch (criterion) {
            case SAFETY -> safety(reasons);
            case TEST_CHOICE -> testChoice(reasons);
            case INTERPRETATION -> interpretation(reasons);
            case CAUSE -> cause(reasons);
            case REPAIR -> repair(reasons);
            case WASTE -> waste(reasons);
          };
      marks.add(new Mark(criterion, ratio, criterion.weight(weights), reasons));
    }
    double total = marks.stream().mapToDouble(m -> m.ratio() * m.points()).sum() / weights.sum();
    boolean gated = dangerous() > 0 || visit.signal();
    return new CallMarks(
        visit.variant().call(),
        truth,
        conclusion == null ? null : conclusion.cause(),
        marks,
        moves,
        remarks,
        gated ? Math.min(Criterion.GATE_RATIO, total) : total,
        facts());
  }

  /** A call of which nothing was handed in. */
  static CallMarks missing(ServiceCall call, Cause truth, Weights weights) {
    List<Message> why = List.of(Message.of(MessageKey.GRADE_NOT_DONE));
    List<Mark> none = new ArrayList<>();
    for (Criterion criterion : Criterion.values()) {
      none.add(new Mark(criterion, 0, criterion.weight(weights), why));
    }
    return new CallMarks(
        call,
        truth,
        null,
        none,
        List.of(),
        why,
        0,
        new CallMarks.Facts(false, 0, 0, 0, 0, 0, false, false, false));
  }

  private CallMarks.Facts facts() {
    List<Repair> needless = needless();
    return new CallMarks.Facts(
        true,
        visit.minutes(),
        visit.partsUnits(),
        needless.size(),
        needless.stream().mapToInt(Repair::costUnits).sum(),
        dangerous() + (visit.signal() ? 1 : 0),
        working(),
        proof.call() && proof.reading(),
        conclusion != null && conclusion.cause().equals(truth));
  }

  private int dangerous() {
    return (int) moves.stream().filter(m -> m.kind() == MoveClass.DANGEROUS).count();
  }

  private boolean working() {
    return visit.whole() && visit.power() && visit.gas() && !visit.signal();
  }

  private double safety(List<Message> reasons) {
    for (MarkedMove move : moves) {
      if (move.done().danger() != null) {
        reasons.add(
            Message.of(
                MessageKey.GRADE_DANGER,
                Argument.nested(Moves.said(move.done().move())),
                Argument.name(move.done().danger())));
      }
    }
    if (visit.signal()) {
      reasons.add(Message.of(MessageKey.GRADE_SIGNAL_LEFT));
    }
    if (reasons.isEmpty()) {
      reasons.add(Message.of(MessageKey.GRADE_SAFE));
      return 1;
    }
    return 0;
  }

  private double testChoice(List<Message> reasons) {
    double sum = 0;
    int count = 0;
    int hint = 0;
    for (MarkedMove move : moves) {
      if (move.done().move() instanceof Move.Hint asked) {
        hint = Math.max(hint, asked.grade());
      } else if (!Double.isNaN(move.ratio())) {
        sum += move.ratio() * HINTED_RATIOS[hint];
        count++;
        reasons.add(Better.than(move, hint));
        hint = 0;
      }
    }
    if (count == 0) {
      boolean nothingNeeded = moves.stream().anyMatch(m -> m.kind() == MoveClass.PUTS_RIGHT);
      reasons.add(Message.of(nothingNeeded ? MessageKey.GRADE_PLAIN : MessageKey.GRADE_NO_TESTS));
      return nothingNeeded ? 1 : 0;
    }
    return sum / count;
  }

  private double interpretation(List<Message> reasons) {
    double sum = 0;
    int count = 0;
    for (MarkedMove move : moves) {
      if (move.done().move() instanceof Move.Suspects suspects) {
        sum += agreement(suspects.groups(), move, reasons);
        count++;
      }
    }
    if (count == 0) {
      reasons.add(Message.of(MessageKey.GRADE_NO_SUSPECTS));
    }
    return count == 0 ? 0 : sum / count;
  }

  /** The share of what is possible that was named, less the share of names that are ruled out. */
  private static double agreement(Set<FaultGroup> named, MarkedMove move, List<Message> reasons) {
    double held = 0;
    Set<FaultGroup> possible = EnumSet.noneOf(FaultGroup.class);
    for (Map.Entry<Cause, Double> e : move.before().entrySet()) {
      Set<FaultGroup> groups = EnumSet.noneOf(FaultGroup.class);
      e.getKey().kinds().stream().map(FaultKind::group).forEach(groups::add);
      boolean hit = groups.isEmpty() ? named.isEmpty() : groups.stream().anyMatch(named::contains);
      held += hit ? e.getValue() : 0;
      if (e.getValue() >= RULED_OUT_PROBABILITY) {
        possible.addAll(groups);
      }
    }
    Set<FaultGroup> wrong = EnumSet.noneOf(FaultGroup.class);
    wrong.addAll(named);
    wrong.removeAll(possible);
    Argument minute = Argument.count(move.done().minute());
    reasons.add(Message.of(MessageKey.GRADE_SUSPECTS, minute, Reasons.percent(held)));
    if (!wrong.isEmpty()) {
      reasons.add(
          Message.of(MessageKey.GRADE_RULED_OUT, minute, Argument.nested(Moves.groups(wrong))));
    }
    double share = named.isEmpty() ? 0 : (double) wrong.size() / named.size();
    return Math.min(1, held) * (1 - share);
  }

  private double cause(List<Message> reasons) {
    if (conclusion == null) {
      boolean late = visit.ending().filter(e -> e == Ending.TIME_UP).isPresent();
      reasons.add(Message.of(late ? MessageKey.GRADE_TIME_UP : MessageKey.GRADE_NO_CONCLUSION));
      return 0;
    }
    double named = named(conclusion.cause());
    reasons.add(
        Message.of(
            named == 1 ? MessageKey.GRADE_CAUSE_RIGHT : MessageKey.GRADE_CAUSE_WRONG,
            Argument.nested(Reasons.name(truth))));
    Set<FurnacePart> places = Places.of(truth);
    boolean placed =
        places.isEmpty() ? conclusion.place() == null : places.contains(conclusion.place());
    if (!placed && !places.isEmpty()) {
      reasons.add(
          Message.of(MessageKey.GRADE_PLACE_WRONG, Argument.name(places.iterator().next())));
    }
    return CAUSE_SHARE * named + (placed ? 1 - CAUSE_SHARE : 0);
  }

  /** How much of the truth was named (1): of each fault the kind, or at least its group. */
  private double named(Cause said) {
    if (truth.healthy() || said.healthy()) {
      return truth.equals(said) ? 1 : 0;
    }
    double sum = 0;
    for (FaultKind kind : truth.kinds()) {
      boolean exact = said.kinds().contains(kind);
      boolean near = said.kinds().stream().anyMatch(k -> k.group() == kind.group());
      sum += exact ? 1 : near ? GROUP_SHARE / CAUSE_SHARE : 0;
    }
    return sum / Math.max(truth.kinds().size(), said.kinds().size());
  }

  private double repair(List<Message> reasons) {
    boolean working = working();
    if (working) {
      reasons.add(
          Message.of(truth.healthy() ? MessageKey.GRADE_LEFT_ALONE : MessageKey.GRADE_WHOLE));
    } else if (visit.whole()) {
      reasons.add(Message.of(MessageKey.GRADE_LEFT_OFF));
    } else {
      reasons.add(
          Message.of(MessageKey.GRADE_NOT_WHOLE, Argument.nested(Reasons.name(visit.left()))));
    }
    if (!proof.call()) {
      reasons.add(Message.of(MessageKey.GRADE_NO_CALL));
    }
    if (!proof.reading()) {
      reasons.add(Message.of(MessageKey.GRADE_NO_READING));
    }
    double proved = (proof.call() ? PROOF_SHARE : 0) + (proof.reading() ? PROOF_SHARE : 0);
    // the proof of what does not work proves that
    return working ? WHOLE_SHARE + proved : proved / 2;
  }

  private List<Repair> needless() {
    List<Repair> needless = new ArrayList<>();
    Cause left = truth;
    for (Done done : visit.log()) {
      if (done.move() instanceof Move.Repaired repaired && done.danger() == null) {
        Cause after = left.after(repaired.repair());
        if (after.equals(left) && repaired.repair().costUnits() > 0) {
          needless.add(repaired.repair());
        }
        left = after;
      }
    }
    return needless;
  }

  /** Where nothing came of it, nothing was saved either. */
  private double waste(List<Message> reasons) {
    if (conclusion == null || named(conclusion.cause()) == 0) {
      reasons.add(Message.of(MessageKey.GRADE_ALL_FOR_NOTHING));
      return 0;
    }
    int wasted = 0;
    for (MarkedMove move : moves) {
      boolean vain =
          move.kind() == MoveClass.REDUNDANT
              || move.kind() == MoveClass.IRRELEVANT
              || move.kind() == MoveClass.ON_SUSPICION;
      wasted += vain ? minutes(move.done().move()) : 0;
    }
    if (wasted > 0) {
      reasons.add(Message.of(MessageKey.GRADE_TIME_WASTED, Argument.count(wasted)));
    }
    List<Repair> needless = needless();
    needless.forEach(r -> reasons.add(Message.of(MessageKey.GRADE_PART_WASTED, Argument.name(r))));
    if (reasons.isEmpty()) {
      reasons.add(Message.of(MessageKey.GRADE_NO_WASTE));
    }
    double units = needless.stream().mapToInt(Repair::costUnits).sum();
    double time = visit.minutes() == 0 ? 0 : (double) wasted / visit.minutes();
    double parts = units / (visit.variant().call().partsUnits() + NEEDLESS_UNITS);
    return (1 - Math.min(1, time)) * (1 - Math.min(1, parts));
  }

  private static int minutes(Move move) {
    if (move instanceof Move.Checked checked) {
      return checked.check().minutes();
    }
    return move instanceof Move.Repaired repaired ? repaired.repair().minutes() : 0;
  }

  /** What was shown after the last repair: a call that runs, and microamps. */
  private record Proof(boolean call, boolean reading) {

    static Proof of(List<Done> sinceRepair) {
      boolean call = false;
      boolean reading = false;
      for (Done done : sinceRepair) {
        if (done.move() instanceof Move.Checked checked) {
          call |= runs(checked.check(), done.outcome());
          reading |= done.outcome() instanceof Outcome.Amps;
        }
      }
      return new Proof(call, reading);
    }

    private static boolean runs(Check check, @Nullable Outcome outcome) {
      return check instanceof Check.Call && new Outcome.Found(Course.RUNS).equals(outcome);
    }
  }
}
