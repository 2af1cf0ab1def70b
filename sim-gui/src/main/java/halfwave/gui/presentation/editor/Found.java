package halfwave.gui.presentation.editor;

import halfwave.board.Board;
import halfwave.board.Stage;
import halfwave.board.StatusCode;
import halfwave.instrument.HookUp;
import halfwave.instrument.LeadEnd;
import halfwave.instrument.MeterFunction;
import halfwave.lesson.Claim;
import halfwave.lesson.Reading;
import halfwave.quantity.Dimension;
import halfwave.sequence.Event;
import halfwave.sequence.Moment;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What the bench shows, as far as it can be claimed.
 *
 * @param now readings that there are now, SI
 * @param before the same where the step begins; empty where that is not known
 * @param stage where the board stands
 * @param code what its light says
 * @param entered how often stages were entered since the step began
 * @param begun whether the beginning of the step is known
 */
public record Found(
    Map<Reading, Double> now,
    Map<Reading, Double> before,
    Stage stage,
    StatusCode code,
    Map<Stage, Integer> entered,
    boolean begun) {

  private static final List<Reading> READINGS =
      List.of(
          new Reading.Display(Dimension.CURRENT),
          new Reading.Display(Dimension.VOLTAGE),
          new Reading.Display(Dimension.RESISTANCE),
          new Reading.Metered(
              MeterFunction.DC_MICROAMPS, new HookUp.InSenseLead(LeadEnd.BOARD, true)),
          new Reading.Signal(),
          new Reading.Burners());

  /** Takes copies. */
  public Found {
    now = new LinkedHashMap<>(now);
    before = new LinkedHashMap<>(before);
    entered = entered.isEmpty() ? Map.of() : new EnumMap<>(entered);
  }

  /**
   * Reads a moment; takes as long as some circuits take to solve.
   *
   * @param now the moment
   * @param begin where the step begins, or null where that is not known
   * @param events what happened since
   * @param further a reading that is wanted besides the usual ones, or null
   */
  public static Found of(
      Moment now, @Nullable Moment begin, List<Event> events, @Nullable Reading further) {
    List<Reading> wanted = new ArrayList<>(READINGS);
    if (further != null && !wanted.contains(further)) {
      wanted.add(0, further);
    }
    Map<Stage, Integer> entered = new EnumMap<>(Stage.class);
    for (Event event : events) {
      for (Stage stage : Stage.values()) {
        if (event.enters(stage)) {
          entered.merge(stage, 1, Integer::sum);
        }
      }
    }
    return new Found(
        read(now, wanted),
        begin == null ? Map.of() : read(begin, wanted),
        now.board().stage(),
        Board.code(now.board(), now.filter().signal()),
        entered,
        begin != null);
  }

  private static Map<Reading, Double> read(Moment moment, List<Reading> wanted) {
    Map<Reading, Double> found = new LinkedHashMap<>();
    wanted.forEach(r -> r.at(moment).ifPresent(si -> found.put(r, si)));
    return found;
  }

  /** Whether a claim is so; nothing where that cannot be told without the beginning. */
  public Optional<Boolean> holds(Claim claim) {
    if (claim instanceof Claim.At at) {
      return Optional.of(at.stage() == stage);
    } else if (claim instanceof Claim.Shows shows) {
      return Optional.of(shows.code() == code);
    } else if (claim instanceof Claim.Enters enters) {
      int count = entered.getOrDefault(enters.stage(), 0);
      return begun
          ? Optional.of(count >= enters.leastCount() && count <= enters.mostCount())
          : Optional.empty();
    } else if (claim instanceof Claim.Compared compared) {
      return begun ? Optional.of(holds(compared)) : Optional.empty();
    }
    Claim.Between between = (Claim.Between) claim;
    Double si = now.get(between.reading());
    return Optional.of(
        si != null
            && (between.least() == null || si >= between.least().si())
            && (between.most() == null || si <= between.most().si()));
  }

  private boolean holds(Claim.Compared claim) {
    Double after = now.get(claim.reading());
    Double was = before.get(claim.reading());
    return after != null
        && was != null
        && was != 0
        && after / was >= claim.leastRatio()
        && after / was <= claim.mostRatio();
  }
}
