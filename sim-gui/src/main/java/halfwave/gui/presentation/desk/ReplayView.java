package halfwave.gui.presentation.desk;

import halfwave.diagnosis.Outcome;
import halfwave.display.DisplayUnit;
import halfwave.display.OutcomeText;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.MeterView;
import halfwave.picture.scene.DrawnBench;
import halfwave.quiz.Glimpse;
import halfwave.quiz.Moves;
import halfwave.sequence.Hooked;
import java.util.ArrayList;
import java.util.List;

/**
 * One move of a call that is played again, as the window shows it.
 *
 * @param bench the drawing
 * @param move which of how many, and what was done
 * @param standing the minute, and how switch and cock stood after it
 * @param reading what the meter showed; empty where none was on the furnace
 * @param place where its leads were, or that none was on the furnace
 */
public record ReplayView(
    DrawnBench bench, String move, String standing, String reading, String place) {

  private static final int AMPS_DECIMALS = 2;
  private static final int VOLTS_DECIMALS = 1;

  /** The view of a move, counted from zero. */
  public static ReplayView of(DeskReplay replay, int index, Wording words) {
    DeskReplay.Act act = replay.acts().get(index);
    Glimpse seen = act.glimpse();
    Hooked hooked = seen.moment().hooked();
    Outcome outcome = seen.done().outcome();
    return new ReplayView(
        new DrawnBench(
            seen.moment(),
            act.flame(),
            seen.code(),
            act.arrows(),
            hooked == null || outcome == null ? "" : figure(outcome, words)),
        words.text(
            "desk.replay-move",
            index + 1,
            replay.acts().size(),
            Wording.capital(words.sentences().text(Moves.said(seen.done().move())))),
        standing(seen, words),
        hooked == null || outcome == null ? "" : OutcomeText.of(outcome, words.sentences()),
        hooked == null
            ? words.text("desk.replay-no-meter")
            : MeterView.place(hooked.hookUp(), words));
  }

  /** As much as stands on the meter of the drawing. */
  private static String figure(Outcome outcome, Wording words) {
    var numbers = words.sentences().quantities();
    if (outcome instanceof Outcome.Amps amps && !Double.isNaN(amps.meanAmps())) {
      return numbers.fixed(amps.meanAmps(), DisplayUnit.MICROAMP, AMPS_DECIMALS);
    } else if (outcome instanceof Outcome.Volts volts
        && !Double.isNaN(volts.alternatingRmsVolts())) {
      return numbers.fixed(volts.alternatingRmsVolts(), DisplayUnit.VOLT, VOLTS_DECIMALS);
    }
    return "";
  }

  private static String standing(Glimpse seen, Wording words) {
    List<String> told = new ArrayList<>();
    told.add(words.text("visit.minute", seen.done().minute()));
    told.add(words.text(seen.power() ? "desk.replay-power-on" : "desk.replay-power-off"));
    told.add(words.text(seen.gas() ? "desk.replay-gas-on" : "desk.replay-gas-off"));
    if (seen.signal()) {
      told.add(words.text("desk.replay-signal"));
    }
    told.add(words.text("desk.replay-parts", seen.partsUnits()));
    return String.join(" · ", told);
  }
}
