package halfwave.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A table in plain text: words to the left, numbers to the right. */
final class TextTable {

  private final List<List<String>> rows = new ArrayList<>();
  private final int words;

  /** A table of numbers. */
  TextTable(List<String> heading) {
    this(heading, 0);
  }

  /** A table whose first columns hold words. */
  TextTable(List<String> heading, int words) {
    rows.add(List.copyOf(heading));
    this.words = words;
  }

  void add(List<String> cells) {
    if (cells.size() != rows.get(0).size()) {
      throw new IllegalArgumentException("cells = " + cells.size() + ": " + rows.get(0).size());
    }
    rows.add(List.copyOf(cells));
  }

  @Override
  public String toString() {
    int columns = rows.get(0).size();
    int[] width =
        IntStream.range(0, columns)
            .map(c -> rows.stream().mapToInt(row -> row.get(c).length()).max().orElse(0))
            .toArray();
    return rows.stream()
        .map(
            row ->
                IntStream.range(0, columns)
                    .mapToObj(c -> padded(row.get(c), width[c], c < words))
                    .collect(Collectors.joining("  ", "", "\n")))
        .collect(Collectors.joining());
  }

  private static String padded(String cell, int width, boolean left) {
    String room = " ".repeat(width - cell.length());
    return left ? cell + room : room + cell;
  }
}
