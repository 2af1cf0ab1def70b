package halfwave.quiz;

import halfwave.bench.Condition;
import halfwave.bench.Disorder;
import halfwave.board.Board;
import halfwave.board.StatusCode;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Occasion;
import halfwave.diagnosis.Outcome;
import halfwave.evidence.Course;
import halfwave.evidence.HeatingCall;
import halfwave.instrument.Meter;
import halfwave.instrument.ShippedMeters;
import halfwave.sequence.Hooked;
import halfwave.sequence.Moment;
import halfwave.work.Look;
import halfwave.work.MeterTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What somebody had before him as he did something: the furnace as it really is, with all that is
 * wrong and the meter where it was.
 *
 * @param done what was done
 * @param moment the furnace: at rest, or the moment of a heating call at which it was looked at
 * @param code what its status light says
 * @param power whether the furnace switch is on after it
 * @param gas whether the gas cock is open after it
 * @param signal whether a test signal is in place after it
 * @param partsUnits what parts have cost so far (units)
 */
public record Glimpse(
    Done done,
    Moment moment,
    StatusCode code,
    boolean power,
    boolean gas,
    boolean signal,
    int partsUnits) {

  /** One for each thing that was done on a visit, in order. */
  public static List<Glimpse> of(Visit visit) {
    List<Glimpse> all = new ArrayList<>();
    Visit before = visit.again();
    Moment seen = atRest(before);
    for (Done done : visit.log()) {
      Visit after = before.after(done.move());
      StatusCode told = null;
      if (done.danger() == null && done.move() instanceof Move.Checked checked) {
        seen = seen(before, checked.check(), done.outcome());
        told = told(before, checked.check());
      } else if (!says(done.move())) {
        seen = atRest(after);
      }
      all.add(
          new Glimpse(
              done,
              seen,
              told == null ? Board.code(seen.board(), seen.filter().signal()) : told,
              after.power(),
              after.gas(),
              after.signal(),
              after.partsUnits()));
      before = after;
    }
    return List.copyOf(all);
  }

  /** Nothing changes before somebody who only says or writes something. */
  private static boolean says(Move move) {
    return move instanceof Move.Suspects || move instanceof Move.Hint || move instanceof Move.Note;
  }

  /** The furnace between two pieces of work: no call for heat. */
  private static Moment atRest(Visit visit) {
    Moment rest =
        visit.power()
            ? visit.heatingCall(new Check.Looked(Look.ROD, Occasion.STANDBY)).standby()
            : Moment.cold(visit.bench(), visit.variant().call().settings(), visit.variant().seed());
    return changed(visit, rest);
  }

  /** With what the visitor has changed: a cock that is shut, a lead that has made way. */
  private static Moment changed(Visit visit, Moment moment) {
    Condition c = moment.bench().condition();
    if (visit.signal()) {
      // the signal is no fault of the furnace: only what gives way to it is seen
      c = visit.bench().condition().withConnector(Double.POSITIVE_INFINITY);
    }
    if (!visit.gas()) {
      c = c.withAppliance(c.appliance().with(Disorder.GAS_SHUT, true));
    }
    return moment.seenWith(c);
  }

  private static Moment seen(Visit before, Check check, @Nullable Outcome outcome) {
    HeatingCall call = before.heatingCall(check);
    boolean whole = check instanceof Check.Call || check instanceof Check.Light;
    if (!before.power() || (!before.gas() && !whole)) {
      Moment rest = atRest(before);
      return check instanceof Check.Read read ? measured(rest, read.test()) : rest;
    } else if (check instanceof Check.Looked looked) {
      return changed(before, at(looked.occasion(), call));
    } else if (check instanceof Check.Read read && !(outcome instanceof Outcome.NotReached)) {
      return measured(changed(before, at(read.occasion(), call)), read.test());
    }
    return changed(before, end(call));
  }

  /** What the light said of a call that was watched; null: what it says at the moment. */
  private static @Nullable StatusCode told(Visit before, Check check) {
    boolean whole = check instanceof Check.Call || check instanceof Check.Light;
    return whole && before.power() ? before.heatingCall(check).code() : null;
  }

  private static Moment at(Occasion occasion, HeatingCall call) {
    return occasion.in(call).orElseGet(() -> end(call));
  }

  /** Where a call that is watched has come to when it is plain how it goes. */
  private static Moment end(HeatingCall call) {
    Optional<Moment> lost = call.course() == Course.IS_LOST ? call.loss() : Optional.empty();
    return lost.or(call::warm).or(call::trial).orElse(call.start());
  }

  private static Moment measured(Moment m, MeterTest test) {
    Condition condition = m.bench().condition();
    Moment seen =
        test == MeterTest.TERMINAL_VOLTS_LEAD_OFF
            ? m.seenWith(condition.withConnector(Double.POSITIVE_INFINITY))
            : m;
    return seen.seenWith(
        new Hooked(
            Meter.fresh(ShippedMeters.service()),
            test.function(),
            test.hookUp(),
            m.timeMillis(),
            false));
  }
}
