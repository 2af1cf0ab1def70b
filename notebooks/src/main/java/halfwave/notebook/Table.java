package halfwave.notebook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A table as a cell shows it. Immutable: each {@link #row} gives a longer one.
 *
 * <pre>{@code
 * Table.of("film (µm)", "DC (µA)").row(0, text("%.2f", dc))
 * }</pre>
 *
 * @param head names of the columns, with their units
 * @param rows the rows, each as wide as the head
 */
public record Table(List<String> head, List<List<String>> rows) {

  /** Checks that every row is as wide as the head, and takes copies. */
  public Table {
    head = List.copyOf(head);
    rows = rows.stream().map(List::copyOf).toList();
    for (List<String> row : rows) {
      if (row.size() != head.size()) {
        throw new IllegalArgumentException(
            "row = " + row + ": as many cells as the head " + head + " has");
      }
    }
  }

  /** A table without rows. */
  public static Table of(String... head) {
    return new Table(List.of(head), List.of());
  }

  /** The same with one more row below; each cell is shown as {@link String#valueOf} has it. */
  public Table row(Object... cells) {
    List<List<String>> more = new ArrayList<>(rows);
    more.add(Arrays.stream(cells).map(String::valueOf).toList());
    return new Table(head, more);
  }

  /** As Markdown. */
  public String markdown() {
    List<String> lines = new ArrayList<>();
    lines.add(line(head));
    lines.add(line(head.stream().map(name -> "---").toList()));
    rows.forEach(row -> lines.add(line(row)));
    return String.join("\n", lines);
  }

  private static String line(List<String> cells) {
    return cells.stream()
        .map(cell -> cell.replace("|", "\\|"))
        .collect(Collectors.joining(" | ", "| ", " |"));
  }

  /** As plain text, its columns one below the other. */
  @Override
  public String toString() {
    int[] widths = new int[head.size()];
    List<List<String>> lines = new ArrayList<>(rows);
    lines.add(0, head);
    for (List<String> line : lines) {
      for (int column = 0; column < widths.length; column++) {
        widths[column] = Math.max(widths[column], line.get(column).length());
      }
    }
    StringBuilder text = new StringBuilder();
    for (List<String> line : lines) {
      StringBuilder row = new StringBuilder();
      for (int column = 0; column < widths.length; column++) {
        String cell = line.get(column);
        row.append(cell).append(" ".repeat(widths[column] - cell.length() + 2));
      }
      text.append(row.toString().stripTrailing()).append('\n');
    }
    return text.toString().stripTrailing();
  }
}
