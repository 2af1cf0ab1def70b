package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.swing.widget.Column;
import halfwave.gui.swing.widget.Theme;
import halfwave.picture.Palette;
import java.awt.Container;
import javax.swing.JPanel;
import org.junit.jupiter.api.Test;

/** Where picture and panels lie, without a display. */
class SidesTest {

  private final Theme theme = Theme.install(Palette.LIGHT, 2);
  private final JPanel picture = new JPanel();
  private final Column panels = Column.filling(theme);
  private final Sides sides = new Sides(theme, picture, panels);

  private void lay(int width) {
    sides.setSize(width, 600);
    sides.arrange();
    layAll(sides);
  }

  private static void layAll(Container from) {
    from.doLayout();
    for (var inside : from.getComponents()) {
      if (inside instanceof Container box) {
        layAll(box);
      }
    }
  }

  @Test
  void aWideWindowHasThemBesideEachOther() {
    lay(2400);

    assertThat(sides.stacked()).isFalse();
    assertThat(picture.getParent()).isSameAs(sides);
    assertThat(picture.getWidth()).isGreaterThan(theme.px(300));
  }

  @Test
  void aNarrowOneHasThePictureOnTopOfTheColumn() {
    lay(1024);

    assertThat(sides.stacked()).isTrue();
    assertThat(panels.getComponent(0)).isSameAs(picture);
    // the column has insets of 14 px at each side, in large type more
    assertThat(picture.getWidth()).isBetween(900, 1024);
  }

  @Test
  void itComesBackWhenThereIsRoomAgain() {
    lay(1024);
    lay(2400);

    assertThat(sides.stacked()).isFalse();
    assertThat(picture.getParent()).isSameAs(sides);
  }
}
