package halfwave.quiz;

import halfwave.lesson.Words;
import halfwave.quantity.Noise;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Puts a quiz together from a bank of calls.
 *
 * @param row what is asked for, and what it weighs
 * @param count how many calls of the bank; one or more
 */
public record Assembly(BlueprintRow row, int count) {

  /** Checks the domain. */
  public Assembly {
    if (count < 1) {
      throw new IllegalArgumentException("count = " + count + ": at least one");
    }
  }

  /** Calls of a bank that fit a row. */
  public static List<ServiceCall> fitting(Quiz bank, BlueprintRow row) {
    return bank.calls().stream()
        .filter(c -> c.objective() == row.objective() && c.level() == row.level())
        .toList();
  }

  /** The first row for which a bank has too few calls, if there is one. */
  public static Optional<Assembly> lacking(Quiz bank, List<Assembly> rows) {
    return rows.stream().filter(a -> fitting(bank, a.row()).size() < a.count()).findFirst();
  }

  /**
   * Draws the calls by seed.
   *
   * @param bank where from; it has enough for every row
   * @param name name of the quiz
   * @param title its title
   * @param rows what is asked for
   * @param seed of the draw, and of all chance in the quiz
   */
  public static Quiz drawn(Quiz bank, String name, Words title, List<Assembly> rows, long seed) {
    List<ServiceCall> calls = new ArrayList<>();
    for (Assembly wanted : rows) {
      List<ServiceCall> fitting = new ArrayList<>(fitting(bank, wanted.row()));
      fitting.sort(Comparator.comparingDouble(c -> chance(seed, bank.calls().indexOf(c))));
      calls.addAll(fitting.subList(0, wanted.count()));
    }
    return of(bank, name, title, rows.stream().map(Assembly::row).toList(), calls, seed);
  }

  /** A quiz of these calls with everything else as the bank has it. */
  public static Quiz of(
      Quiz bank,
      String name,
      Words title,
      List<BlueprintRow> rows,
      List<ServiceCall> calls,
      long seed) {
    return new Quiz(
        name,
        title,
        bank.about(),
        seed,
        bank.passRatio(),
        bank.weights(),
        bank.rules(),
        rows,
        calls);
  }

  private static double chance(long seed, int place) {
    return Noise.uniform(seed, Noise.Purpose.VARIANT, place);
  }
}
