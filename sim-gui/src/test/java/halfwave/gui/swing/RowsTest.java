package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.display.UnitSystem;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.swing.widget.Rows;
import halfwave.gui.swing.widget.Theme;
import halfwave.picture.Palette;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JPanel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** In any size of type nothing of the bar is out of reach, without a display. */
class RowsTest {

  /**
   * A window.
   *
   * @param language its language
   * @param text size of type over the usual (1)
   * @param width its width (px)
   */
  record Case(String language, double text, int width) {}

  /** From the least width of the window up. */
  static Stream<Case> cases() {
    return Stream.of("en", "es")
        .flatMap(
            l ->
                Stream.of(1.0, 1.25, 1.5, 2.0)
                    .flatMap(t -> Stream.of(1000, 1024, 1440).map(w -> new Case(l, t, w))));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everythingOfTheBarIsInTheWindow(Case window) {
    Theme theme = Theme.install(Palette.LIGHT, window.text());
    Wording words = Wording.of(Locale.forLanguageTag(window.language()), UnitSystem.METRIC);
    TopBar bar =
        new TopBar(
            theme,
            words,
            new Workbench(
                Runnable::run,
                Runnable::run,
                e -> {
                  throw new AssertionError(e);
                }));
    JPanel sheet = new JPanel(new BorderLayout());
    sheet.add(bar, BorderLayout.NORTH);
    lay(sheet, window.width());

    assertThat(bar.getComponentCount()).isEqualTo(10);
    inReach(bar);
  }

  @Test
  void aWiderWindowTakesItBackToOneRow() {
    JPanel sheet = boxes(new Rows(10, 30, 0), 100, 100, 100);
    Container row = (Container) sheet.getComponent(0);
    lay(sheet, 150);
    assertThat(row.getHeight()).isEqualTo(3 * 20 + 2 * 10);
    inReach(row);

    lay(sheet, 320);
    assertThat(row.getHeight()).isEqualTo(20);
    inReach(row);
  }

  @Test
  void aRowEndsWhereAGroupEnds() {
    JPanel sheet = boxes(new Rows(10, 30, 0), 100, 100, -100, 100);
    Container row = (Container) sheet.getComponent(0);
    // three of them would fit, but the third belongs to the fourth
    lay(sheet, 360);

    assertThat(tops(row)).containsExactly(0, 0, 30, 30);
  }

  @Test
  void theFirstTakesWhatIsLeft() {
    JPanel sheet = boxes(new Rows(10, 30, 50), 100, 100, -100);
    Container row = (Container) sheet.getComponent(0);
    lay(sheet, 500);

    assertThat(row.getComponent(0).getWidth()).isEqualTo(500 - 200 - 10 - 30);
    assertThat(row.getComponent(2).getX()).isEqualTo(400);
  }

  /** Boxes of these widths; one with a minus begins a group. */
  private static JPanel boxes(Rows rows, int... widths) {
    JPanel row = new JPanel(rows);
    for (int width : widths) {
      JPanel box = new JPanel();
      box.setPreferredSize(new Dimension(Math.abs(width), 20));
      if (width < 0) {
        row.add(box, Rows.GROUP);
      } else {
        row.add(box);
      }
    }
    JPanel sheet = new JPanel(new BorderLayout());
    sheet.add(row, BorderLayout.NORTH);
    return sheet;
  }

  private static void lay(JPanel sheet, int width) {
    sheet.setSize(width, 900);
    sheet.doLayout();
    ((Container) sheet.getComponent(0)).doLayout();
  }

  private static List<Integer> tops(Container row) {
    return Stream.of(row.getComponents()).map(Component::getY).toList();
  }

  private static void inReach(Container row) {
    Rectangle all = new Rectangle(0, 0, row.getWidth(), row.getHeight());
    Component[] things = row.getComponents();
    for (Component thing : things) {
      assertThat(all.contains(thing.getBounds())).as("%s in %s", thing, all).isTrue();
    }
    assertThat(IntStream.range(1, things.length))
        .allSatisfy(
            k -> assertThat(things[k].getBounds().intersects(things[k - 1].getBounds())).isFalse());
  }
}
