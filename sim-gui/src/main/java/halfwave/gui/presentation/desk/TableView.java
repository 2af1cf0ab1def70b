package halfwave.gui.presentation.desk;

import java.util.List;

/**
 * A table in words.
 *
 * @param columns headings
 * @param rows as many cells in each as there are columns
 */
public record TableView(List<String> columns, List<List<String>> rows) {

  /** Takes copies. */
  public TableView {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
  }
}
