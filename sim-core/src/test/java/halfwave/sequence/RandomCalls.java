package halfwave.sequence;

import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Coat;
import halfwave.bench.Condition;
import halfwave.bench.Disorder;
import halfwave.bench.Intermittent;
import halfwave.bench.Parameter;
import halfwave.bench.Trigger;
import halfwave.board.BoardSettings;
import halfwave.board.ShippedBoards;
import halfwave.circuit.Point;
import halfwave.instrument.HookUp;
import halfwave.instrument.HookUp.Across;
import halfwave.instrument.HookUp.InSenseLead;
import halfwave.instrument.LeadEnd;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.ShippedMeters;
import halfwave.work.Handling;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/**
 * Random acts on shipped benches, from a seed. Values come from a palette, so that currents once
 * computed serve many runs.
 */
final class RandomCalls {

  private static final List<Deed> PALETTE = palette();

  private final Random random;

  RandomCalls(long seed) {
    random = new Random(seed);
  }

  private static List<Deed> palette() {
    List<Deed> deeds = new ArrayList<>();
    for (Disorder disorder : Disorder.values()) {
      deeds.add(new Deed.Alter(new Change.Upset(disorder, true)));
      deeds.add(new Deed.Alter(new Change.Upset(disorder, false)));
      deeds.add(new Deed.Alter(new Change.Upset(disorder, false)));
    }
    deeds.add(turned(Parameter.CONNECTOR, Double.POSITIVE_INFINITY));
    deeds.add(turned(Parameter.CONNECTOR, 20e6));
    deeds.add(turned(Parameter.CONNECTOR, 0));
    deeds.add(turned(Parameter.JUMPER, 0));
    deeds.add(turned(Parameter.JUMPER, Double.POSITIVE_INFINITY));
    deeds.add(turned(Parameter.LEAKAGE, 2e6));
    deeds.add(turned(Parameter.LEAKAGE, Double.POSITIVE_INFINITY));
    deeds.add(turned(Parameter.GAS_PRESSURE, 0.2));
    deeds.add(turned(Parameter.GAS_PRESSURE, 1));
    deeds.add(hooked(MeterFunction.DC_MICROAMPS, new InSenseLead(LeadEnd.BOARD, true)));
    deeds.add(hooked(MeterFunction.DC_MICROAMPS, new Across(Point.TERMINAL, Point.COMMON)));
    deeds.add(hooked(MeterFunction.AC_VOLTS, new Across(Point.TERMINAL, Point.COMMON)));
    deeds.add(hooked(MeterFunction.OHMS, new Across(Point.ROD, Point.CHASSIS)));
    deeds.add(new Deed.TakeOff());
    deeds.add(new Deed.TakeOff());
    deeds.add(new Deed.Touch());
    deeds.add(new Deed.Damp(true));
    deeds.add(new Deed.Damp(false));
    deeds.add(new Deed.Alter(new Change.CarriedOver(Double.POSITIVE_INFINITY)));
    deeds.add(new Deed.Alter(new Change.CarriedOver(0.3)));
    deeds.add(
        new Deed.Lurk(
            new Intermittent(
                Trigger.VIBRATION,
                Change.Turned.to(Parameter.CONNECTOR, Double.POSITIVE_INFINITY))));
    deeds.add(
        new Deed.Lurk(
            new Intermittent(Trigger.BLOWER, Change.Turned.to(Parameter.BURNER_ATTACHMENT, 0.02))));
    deeds.add(new Deed.Become(Condition.HEALTHY));
    deeds.add(new Deed.Become(Condition.HEALTHY));
    deeds.add(new Deed.PutRight(Repair.CLEAN_ROD_WITH_PAD));
    deeds.add(new Deed.PutRight(Repair.REPLACE_LEAD));
    deeds.add(new Deed.Mishandle(Handling.SPREADING_CONNECTOR));
    deeds.add(new Deed.Become(Condition.HEALTHY.withRodCoat(Coat.even(1e-6, 1000))));
    return deeds;
  }

  private static Deed hooked(MeterFunction function, HookUp hookUp) {
    return new Deed.HookOn(Meter.fresh(ShippedMeters.service()), function, hookUp);
  }

  private static Deed turned(Parameter parameter, double si) {
    return new Deed.Alter(Change.Turned.to(parameter, si));
  }

  Moment start() {
    List<BoardSettings> boards = ShippedBoards.all();
    BoardSettings settings = boards.get(random.nextInt(boards.size()));
    Bench bench = Calls.benchFor(settings);
    return Moment.cold(bench, settings, random.nextLong());
  }

  /** Power and call mostly on, and up to six other deeds, some at one instant. */
  List<Act> acts(long untilMillis) {
    List<Act> acts = new ArrayList<>();
    acts.add(new Act(0, new Deed.Supply(true)));
    acts.add(new Act(random.nextInt(5000), new Deed.Call(true)));
    int count = random.nextInt(7);
    for (int k = 0; k < count; k++) {
      long time = (long) (random.nextDouble() * untilMillis);
      int kind = random.nextInt(10);
      if (kind == 0) {
        acts.add(new Act(time, new Deed.Call(false)));
        acts.add(new Act(soon(time, untilMillis), new Deed.Call(true)));
      } else if (kind == 1) {
        acts.add(new Act(time, new Deed.Supply(false)));
        acts.add(new Act(soon(time, untilMillis), new Deed.Supply(true)));
      } else {
        acts.add(new Act(time, PALETTE.get(random.nextInt(PALETTE.size()))));
      }
    }
    acts.sort(Comparator.comparingLong(Act::timeMillis));
    return acts;
  }

  /** Times to cut a run at, in order; some on the grid of the paces, some on acts. */
  List<Long> cuts(long untilMillis, List<Act> acts) {
    List<Long> cuts = new ArrayList<>();
    for (int k = 0; k < 5; k++) {
      long any = (long) (random.nextDouble() * untilMillis);
      cuts.add(k == 0 ? any - any % Sequence.PACE_MILLIS : any);
    }
    cuts.add(acts.get(random.nextInt(acts.size())).timeMillis());
    cuts.sort(Comparator.naturalOrder());
    return cuts;
  }

  private long soon(long time, long untilMillis) {
    return Math.min(untilMillis - 1, time + random.nextInt(20_000));
  }
}
