package halfwave.diagnosis;

import halfwave.quantity.Noise;
import halfwave.work.Look;
import halfwave.work.MeterTest;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Ways of going about a call. */
enum Policy {
  /** What the engine advises. */
  ADVISED {
    @Override
    void go(Visit visit, Adviser adviser, long seed) {
      while (!visit.ended()) {
        Advice advice = adviser.advice(visit.belief());
        if (advice.nextCheck().isPresent()) {
          visit.check(advice.nextCheck().get().check());
        } else {
          repairOrEnd(visit, advice);
        }
      }
    }
  },
  /** Any check, until one cause is nine to one. */
  RANDOM {
    @Override
    void go(Visit visit, Adviser adviser, long seed) {
      List<Check> checks = new ArrayList<>(visit.belief().outlook().table().checks());
      for (int turn = 0; !visit.ended(); turn++) {
        checks.removeAll(visit.belief().done());
        boolean clear = visit.belief().now().values().iterator().next() > 0.9;
        if (clear || checks.isEmpty()) {
          repairOrEnd(visit, adviser.advice(visit.belief()));
        } else {
          double u = Noise.uniform(seed, Noise.Purpose.READING, 7_000_000 + turn);
          visit.check(checks.get((int) (u * checks.size())));
        }
      }
    }
  },
  /** Look, clean, series microamps, terminal volts, bond, replace rod, replace board. */
  ROUTINE {
    @Override
    void go(Visit visit, Adviser adviser, long seed) {
      visit.check(new Check.Looked(Look.ROD, Occasion.STANDBY));
      repair(visit, Repair.CLEAN_ROD_WITH_PAD);
      check(visit, new Check.Read(MeterTest.SERIES_CURRENT, Occasion.TRIAL));
      check(visit, new Check.Read(MeterTest.TERMINAL_VOLTS_LEAD_OFF, Occasion.STANDBY));
      check(visit, new Check.Looked(Look.BOND_RESISTANCE, Occasion.STANDBY));
      repair(visit, Repair.RESTORE_BOND);
      repair(visit, Repair.REPLACE_ROD);
      repair(visit, Repair.REPLACE_BOARD);
      // the routine ends here; whoever is still there replaces the most suspected
      SUSPECTED.go(visit, adviser, seed);
    }

    private void check(Visit visit, Check check) {
      if (!visit.ended()) {
        visit.check(check);
      }
    }

    private void repair(Visit visit, Repair repair) {
      if (!visit.ended()) {
        visit.repair(repair);
      }
    }
  },
  /** Without any check, the repair of the most probable cause. */
  SUSPECTED {
    @Override
    void go(Visit visit, Adviser adviser, long seed) {
      while (!visit.ended()) {
        Map.Entry<Cause, Double> first = visit.belief().now().entrySet().iterator().next();
        if (first.getKey().healthy()) {
          visit.end();
        } else {
          visit.repair(
              Repair.curing(first.getKey().kinds().get(0)).stream()
                  .min((a, b) -> Integer.compare(a.minutes(), b.minutes()))
                  .orElseThrow());
        }
      }
    }
  };

  abstract void go(Visit visit, Adviser adviser, long seed);

  private static void repairOrEnd(Visit visit, Advice advice) {
    if (advice.nextRepair().isEmpty()) {
      visit.end();
    } else {
      visit.repair(advice.nextRepair().get().repair());
    }
  }
}
