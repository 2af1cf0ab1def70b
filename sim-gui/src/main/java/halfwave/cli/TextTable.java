package halfwave.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A table in plain text, its columns aligned to the right. */
final class TextTable {

  private final List<List<String>> rows = new ArrayList<>();

  TextTable(List<String> heading) {
    rows.add(List.copyOf(heading));
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
                    .mapToObj(c -> " ".repeat(width[c] - row.get(c).length()) + row.get(c))
                    .collect(Collectors.joining("  ", "", "\n")))
        .collect(Collectors.joining());
  }
}
