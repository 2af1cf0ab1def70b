package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.display.UnitSystem;
import halfwave.fault.FaultKind;
import halfwave.gui.presentation.Settings;
import halfwave.gui.presentation.SettingsFile;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.FaultCard;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.swing.bench.DrawingPanel;
import halfwave.paper.PaperSize;
import java.util.Locale;
import javax.swing.JLabel;
import javax.swing.JTabbedPane;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Another language, units, look or size of type loses nothing of the bench. */
class SettingsRobotTest extends WithWindow {

  private static final Wording ENGLISH = Wording.of(Locale.ENGLISH, UnitSystem.METRIC);

  @BeforeEach
  void begin() {
    FaultCard film = FaultCard.of(FaultKind.ROD_SILICA, ENGLISH);
    open.want(new Intent.Act(film.deeds(film.kind().typical(), null), 0));
    open.want(new Intent.StepOn(1000L));
  }

  @Test
  void theSheetIsRemembered() {
    hand.menu("sheet.letter");
    hand.menu("menu.dark");
    assertThat(new SettingsFile(folder.resolve("settings.json")).read().sheet())
        .isEqualTo(PaperSize.LETTER);
    hand.menu("sheet.a4");
    assertThat(new SettingsFile(folder.resolve("settings.json")).read().sheet())
        .isEqualTo(PaperSize.A4);
  }

  private String part() {
    JLabel name = hand.find(JLabel.class, "part.name");
    return OpenWindow.onScreen(name::getText);
  }

  @Test
  void nothingIsLost() {
    State before = open.shown();
    hand.tab("Part");
    DrawingPanel drawing = hand.find(DrawingPanel.class, "drawing");
    hand.takeKeyboard();
    OpenWindow.onScreen(drawing::requestFocusInWindow);
    open.settle();
    hand.letter('n');
    hand.key(java.awt.event.KeyEvent.VK_ENTER);
    String part = part();
    for (String choice :
        new String[] {
          "language.es",
          "menu.inch",
          "menu.dark",
          "text.150",
          "menu.side",
          "text.100",
          "menu.above",
          "menu.light",
          "menu.metric",
          "menu.millibar",
          "language.en"
        }) {
      hand.menu(choice);
      State after = open.shown();
      assertThat(after.moment()).as(choice).isEqualTo(before.moment());
      assertThat(after.history()).as(choice).isEqualTo(before.history());
      assertThat(after.unsaved()).as(choice).isTrue();
      assertThat(hand.find(JTabbedPane.class, "tabs").getSelectedIndex()).as(choice).isEqualTo(4);
      assertThat(part()).as("%s keeps the part's card open", choice).isNotBlank();
    }
    assertThat(part()).isEqualTo(part);
    hand.click("bar.undo");
    assertThat(open.shown().unsaved()).isFalse();
  }

  @Test
  void wordsUnitsAndColoursChange() {
    hand.menu("language.es");
    assertThat(open.frame().getTitle()).contains("Halfwave").doesNotContain("(changed)");
    hand.menu("menu.inch");
    hand.tab("Estado");
    JTextField up = hand.find(JTextField.class, "value.rod-up");
    String shown = OpenWindow.onScreen(() -> up.getText());
    assertThat(shown).endsWith("in");
    int light = OpenWindow.onScreen(() -> up.getBackground().getRed());
    hand.menu("menu.dark");
    JTextField dark = hand.find(JTextField.class, "value.rod-up");
    assertThat(OpenWindow.onScreen(() -> dark.getBackground().getRed())).isLessThan(light);
    assertThat(new SettingsFile(folder.resolve("settings.json")).read())
        .isEqualTo(OpenWindow.PLAIN.withLanguage("es").withUnits(UnitSystem.INCH).withDark(true));
  }

  @Test
  void theNextStartIsAsTheLastOneWasLeft() throws Exception {
    hand.menu("language.es");
    hand.menu("text.125");
    open.close();
    Settings kept = new SettingsFile(folder.resolve("settings.json")).read();
    open = OpenWindow.with(folder, kept);
    hand = new Hand(open);
    assertThat(Hand.look(JLabel.class, l -> "Multímetro".equals(l.getText()))).isPresent();
  }
}
