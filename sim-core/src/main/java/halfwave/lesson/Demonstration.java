package halfwave.lesson;

import halfwave.bench.Bench;
import halfwave.board.BoardSettings;
import halfwave.board.ShippedBoards;
import halfwave.sequence.Moment;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A scripted series of changes of a bench, with a question at each step: predict, observe, explain.
 *
 * @param name what commands and files call it
 * @param title its title
 * @param about what it teaches, in a sentence or two
 * @param bench the bench at its beginning
 * @param board name of the shipped board, or null: the standard one for the bench
 * @param seed seed of all chance
 * @param start what is played before the first step, from a cold appliance without power
 * @param steps the steps, in order; at least one
 */
public record Demonstration(
    String name,
    Words title,
    Words about,
    Bench bench,
    @Nullable String board,
    long seed,
    Play start,
    List<Step> steps) {

  /** Checks that there is a step and a board that fits, and takes a copy. */
  public Demonstration {
    steps = List.copyOf(steps);
    if (name.isBlank()) {
      throw new IllegalArgumentException("name is blank");
    }
    if (steps.isEmpty()) {
      throw new IllegalArgumentException("steps: at least one");
    }
    ShippedBoards.chosen(board, bench.design().ignition());
  }

  /** The settings of its board. */
  public BoardSettings settings() {
    return ShippedBoards.chosen(board, bench.design().ignition());
  }

  /** The moment before anything is played. */
  public Moment cold() {
    return Moment.cold(bench, settings(), seed);
  }
}
