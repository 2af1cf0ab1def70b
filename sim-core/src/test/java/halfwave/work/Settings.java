package halfwave.work;

import halfwave.bench.Bench;
import halfwave.bench.Stages;
import halfwave.bench.Trigger;
import halfwave.board.BoardOutputs;
import halfwave.board.StatusCode;
import halfwave.flame.FlameState;
import java.util.EnumSet;
import java.util.Set;

/** Scenes for tests that stand still: all else as in a furnace that heats. */
final class Settings {

  static final Set<Trigger> ALL = EnumSet.allOf(Trigger.class);

  /** Everything on at once: no board does so, and every look sees what it can. */
  static final BoardOutputs EVERYTHING = new BoardOutputs(true, true, true, true, true, true);

  private Settings() {}

  /** Power and no call. */
  static Scene still(Bench bench) {
    FlameState flame = new Stages().flame(bench).field().sheets().state();
    return new Scene(
        bench, Set.of(), true, 0, StatusCode.READY, BoardOutputs.NONE, flame, false, false);
  }

  /** The same while that brings out faults. */
  static Scene with(Scene s, Set<Trigger> triggers) {
    return new Scene(
        s.bench(),
        triggers,
        s.supply(),
        s.litCount(),
        s.code(),
        s.outputs(),
        s.flame(),
        s.draftProved(),
        s.overheated());
  }

  static Scene heating(Bench bench, Set<Trigger> triggers) {
    return new Scene(
        bench,
        triggers,
        true,
        bench.design().burnerCount(),
        StatusCode.FLAME,
        EVERYTHING,
        new Stages().flame(bench.under(triggers)).field().sheets().state(),
        true,
        false);
  }
}
