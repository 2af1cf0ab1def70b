package halfwave.gui.swing.desk;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.presentation.desk.TableView;
import halfwave.gui.swing.widget.Theme;
import halfwave.picture.Palette;
import java.awt.Component;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Rows of the desk's tables, without a display. */
class DeskTableTest {

  private static final String LONG = "Measure microamps in series at the end of the first trial";

  private final DeskTable table =
      new DeskTable(Theme.install(Palette.LIGHT, 1), "moves", "Moves", () -> {});

  private void show(int width) {
    table.show(
        new TableView(
            List.of("min", "Move", "Found"),
            List.of(List.of("7", "Ask", "–"), List.of("33", LONG, LONG))));
    lay(width);
  }

  private void lay(int width) {
    table.setSize(width, 400);
    table.doLayout();
  }

  @ParameterizedTest
  @ValueSource(ints = {260, 320, 480})
  void aRowIsAsHighAsItsCellsNeed(int width) {
    show(width);

    assertThat(table.getRowHeight(1)).isGreaterThan(table.getRowHeight(0));
    for (int c = 0; c < table.getColumnCount(); c++) {
      Component cell = table.prepareRenderer(table.getCellRenderer(1, c), 1, c);
      cell.setSize(table.getColumnModel().getColumn(c).getWidth(), Short.MAX_VALUE);
      assertThat(cell.getPreferredSize().height).isLessThanOrEqualTo(table.getRowHeight(1));
    }
  }

  @Test
  void itIsOneLineAgainWhereThereIsRoom() {
    show(260);
    lay(1200);

    assertThat(table.getRowHeight(1)).isEqualTo(table.getRowHeight(0));
  }
}
