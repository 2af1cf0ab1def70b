package halfwave.gui.swing.bench;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.swing.widget.Theme;
import halfwave.picture.Palette;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A hand on a slider, without a display. */
class KnobSliderTest {

  private final List<Double> turns = new ArrayList<>();
  private final KnobSlider slider =
      new KnobSlider(Theme.install(Palette.LIGHT, 1), (place, gesture) -> turns.add(place));

  KnobSliderTest() {
    // 8 pixels at each end, so that the way is 200 long
    slider.setSize(216, 24);
    slider.show(0.5, 0);
  }

  private void mouse(int id, int x) {
    slider.dispatchEvent(
        new MouseEvent(slider, id, 0, MouseEvent.BUTTON1_DOWN_MASK, x, 12, 1, false));
  }

  @Test
  void aClickOnTheThumbIsNoAct() {
    mouse(MouseEvent.MOUSE_PRESSED, 111);
    mouse(MouseEvent.MOUSE_DRAGGED, 111);
    mouse(MouseEvent.MOUSE_RELEASED, 111);

    assertThat(turns).isEmpty();
  }

  @Test
  void theThumbFollowsTheHandFromWhereItWasTaken() {
    mouse(MouseEvent.MOUSE_PRESSED, 111);
    mouse(MouseEvent.MOUSE_DRAGGED, 131);

    assertThat(turns).hasSize(1);
    assertThat(turns.get(0)).isBetween(0.599, 0.601);
  }

  @Test
  void aClickBesideTheThumbTurnsAtOnce() {
    mouse(MouseEvent.MOUSE_PRESSED, 168);

    assertThat(turns).containsExactly(0.8);
  }
}
