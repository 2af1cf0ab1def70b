package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.swing.widget.Theme;
import halfwave.picture.Palette;
import org.junit.jupiter.api.Test;

/** The line at the foot of the window. */
class NoticeTest {

  private final Notice notice = new Notice(Theme.install(Palette.LIGHT, 1));

  @Test
  void onlyARefusalHasTheColourOfErrors() {
    notice.refuse("Too much.");
    assertThat(notice.getForeground()).isEqualTo(Palette.LIGHT.danger());

    notice.tell("Written.");
    assertThat(notice.getForeground()).isEqualTo(Palette.LIGHT.softInk());
  }

  @Test
  void timeThatPassesTakesARefusalAwayAndNothingElse() {
    notice.refuse("Too much.");
    notice.accept();
    assertThat(notice.getText()).isBlank();

    notice.tell("Written.");
    notice.accept();
    assertThat(notice.getText()).isEqualTo("Written.");
  }
}
