package halfwave.gui.presentation.editor;

import halfwave.board.Ignition;
import halfwave.board.ShippedBoards;
import halfwave.gui.presentation.bench.State;
import halfwave.instrument.Meter;
import halfwave.io.lesson.DemonstrationText;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Draft;
import halfwave.lesson.DraftStep;
import halfwave.lesson.DraftText;
import halfwave.lesson.Play;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import halfwave.sequence.Hooked;
import halfwave.sequence.Moment;
import java.util.ArrayList;
import java.util.List;

/** Drafts to begin with. */
public final class NewDraft {

  /** A furnace is up and running so long after power came (ms). */
  private static final long UP_MILLIS = 150_000;

  private static final long CALL_MILLIS = 5000;

  /** A meter on an electrode that sparks would not live to see the flame (ms). */
  private static final long AFTER_SPARK_MILLIS = UP_MILLIS - 30_000;

  /** What commands call it until it lies in a file. */
  private static final String NAME = "demonstration";

  private NewDraft() {}

  /**
   * A demonstration that begins with the bench as it stands: its design and condition, its board,
   * power, call, air and meter. It starts cold and is left alone until a sound furnace runs.
   */
  public static Draft of(State state) {
    Moment now = state.moment();
    List<Act> acts = new ArrayList<>();
    Hooked hooked = now.hooked();
    boolean sparks = now.bench().design().ignition() == Ignition.SPARK_AND_SENSE;
    if (hooked != null) {
      Meter fresh = Meter.fresh(hooked.meter().model());
      Deed on = new Deed.HookOn(fresh, hooked.function(), hooked.hookUp());
      if (DemonstrationText.says(on)) {
        acts.add(new Act(sparks ? AFTER_SPARK_MILLIS : 0, on));
      }
    }
    if (now.damp()) {
      acts.add(new Act(0, new Deed.Damp(true)));
    }
    if (now.supply()) {
      acts.add(new Act(0, new Deed.Supply(true)));
    }
    if (now.call()) {
      acts.add(new Act(CALL_MILLIS, new Deed.Call(true)));
    }
    var standard = ShippedBoards.standard(now.bench().design().ignition());
    String board = now.settings().name().equals(standard.name()) ? null : now.settings().name();
    return new Draft(
        NAME,
        DraftText.EMPTY,
        DraftText.EMPTY,
        now.bench(),
        board,
        now.seed(),
        new Play(acts, UP_MILLIS, 1),
        List.of(DraftStep.EMPTY));
  }

  /** A copy of a finished one, under another name. */
  public static Draft copy(Demonstration demonstration) {
    Draft draft = Draft.of(demonstration);
    return draft.withName(draft.name() + "-" + NAME);
  }
}
