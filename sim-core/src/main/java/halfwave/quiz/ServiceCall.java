package halfwave.quiz;

import halfwave.bench.Bench;
import halfwave.board.BoardSettings;
import halfwave.board.Ignition;
import halfwave.board.ShippedBoards;
import halfwave.diagnosis.Check;
import halfwave.lesson.Words;
import halfwave.work.Finding;
import halfwave.work.Recollection;
import halfwave.work.Work;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One task of a quiz.
 *
 * @param name what files and answer sheets call it
 * @param title what a list of calls says; it gives nothing away
 * @param complaint what the customer says
 * @param bench the furnace as it should be
 * @param board name of its shipped board, or null: the standard one
 * @param hidden what may be wrong: one of these, drawn for each learner; at least one
 * @param closed looks and readings that may not be used
 * @param minutes how long it may take, in simulated minutes; above zero
 * @param partsUnits what the parts may cost, in units without a currency; zero or above
 * @param objective what it asks for
 * @param level how much it asks for
 * @param since what the customer answers when asked since when, one of {@link
 *     Recollection#ANSWERS}; null: what fits the hidden fault
 */
public record ServiceCall(
    String name,
    Words title,
    Words complaint,
    Bench bench,
    @Nullable String board,
    List<Hidden> hidden,
    Set<Work> closed,
    int minutes,
    int partsUnits,
    Objective objective,
    Level level,
    @Nullable Finding since) {

  /** Checks the domain and takes copies. */
  public ServiceCall {
    hidden = List.copyOf(hidden);
    closed = Collections.unmodifiableSet(new LinkedHashSet<>(closed));
    if (name.isBlank()) {
      throw new IllegalArgumentException("name is blank");
    }
    if (hidden.isEmpty()) {
      throw new IllegalArgumentException("hidden: at least one");
    }
    if (!(minutes > 0) || !(partsUnits >= 0)) {
      throw new IllegalArgumentException("minutes = " + minutes + ", partsUnits = " + partsUnits);
    }
    if (since != null && !Recollection.ANSWERS.contains(since)) {
      throw new IllegalArgumentException("since = " + since);
    }
    ShippedBoards.chosen(board, bench.design().ignition());
  }

  /** The settings of its board. */
  public BoardSettings settings() {
    return ShippedBoards.chosen(board, bench.design().ignition());
  }

  /** How its gas is lit. */
  public Ignition ignition() {
    return bench.design().ignition();
  }

  /** What may be looked at and measured. */
  public List<Check> checks() {
    return Check.all(ignition()).stream().filter(this::open).toList();
  }

  /** Whether a check may be used. */
  public boolean open(Check check) {
    return check.work().map(w -> !closed.contains(w)).orElse(true);
  }
}
