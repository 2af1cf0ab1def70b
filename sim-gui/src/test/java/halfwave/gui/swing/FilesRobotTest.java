package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Parameter;
import halfwave.gui.presentation.SettingsFile;
import halfwave.gui.presentation.bench.Intent;
import halfwave.io.bench.BenchFile;
import halfwave.sequence.Deed;
import java.awt.EventQueue;
import java.awt.event.WindowEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JTabbedPane;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Benches are saved, opened and not lost by a slip. */
class FilesRobotTest extends WithWindow {

  private Path file;

  @BeforeEach
  void begin() {
    file = folder.resolve("attic.halfwave");
  }

  private void change(double pressure) {
    Deed deed = new Deed.Alter(Change.Turned.to(Parameter.GAS_PRESSURE, pressure));
    open.want(new Intent.Act(List.of(deed), 0));
  }

  @Test
  void whatWasSavedIsOpenedAgain() throws Exception {
    change(0.5);
    Bench changed = open.shown().moment().bench();
    hand.menu("menu.save");
    hand.choose(folder.resolve("attic"));
    assertThat(BenchFile.read(file)).isEqualTo(changed);
    assertThat(open.shown().unsaved()).isFalse();
    assertThat(open.frame().getTitle()).contains("attic").doesNotContain("changed");
    change(1.5);
    assertThat(open.frame().getTitle()).contains("changed");
    hand.menu("menu.open");
    hand.answer("Leave without saving");
    hand.choose(file);
    assertThat(open.shown().moment().bench()).isEqualTo(changed);
    assertThat(open.shown().unsaved()).isFalse();
    assertThat(open.shown().history().done()).isEmpty();
  }

  @Test
  void aChangedBenchIsNotLeftWithoutAQuestion() {
    change(0.5);
    Bench changed = open.shown().moment().bench();
    EventQueue.invokeLater(
        () ->
            open.frame().dispatchEvent(new WindowEvent(open.frame(), WindowEvent.WINDOW_CLOSING)));
    hand.answer("Cancel");
    assertThat(open.frame().isShowing()).isTrue();
    hand.menu("bench.low-voltage-sense");
    hand.answer("Cancel");
    assertThat(open.shown().moment().bench()).isEqualTo(changed);
    hand.menu("bench.low-voltage-sense");
    hand.answer("Save");
    hand.choose(file);
    assertThat(open.shown().moment().bench().name()).isEqualTo("low-voltage-sense");
    assertThat(Files.exists(file)).isTrue();
  }

  @Test
  void aBenchThatIsAsItWasIsLeftWithoutAQuestion() {
    EventQueue.invokeLater(
        () ->
            open.frame().dispatchEvent(new WindowEvent(open.frame(), WindowEvent.WINDOW_CLOSING)));
    open.await("the end", () -> !open.frame().isShowing());
    assertThat(new SettingsFile(folder.resolve("settings.json")).read().place().frame()).hasSize(4);
  }

  @Test
  void whatIsInFrontIsThereAtTheNextStart() throws Exception {
    hand.tab("Work");
    JTabbedPane charts = hand.find(JTabbedPane.class, "charts");
    OpenWindow.onScreen(
        () -> {
          charts.setSelectedIndex(2);
          return null;
        });
    hand.menu("menu.side");
    assertThat(marked("menu.side")).isTrue();
    assertThat(marked("menu.above")).isFalse();
    EventQueue.invokeLater(
        () ->
            open.frame().dispatchEvent(new WindowEvent(open.frame(), WindowEvent.WINDOW_CLOSING)));
    open.await("the end", () -> !open.frame().isShowing());
    open.close();
    open = OpenWindow.with(folder, new SettingsFile(folder.resolve("settings.json")).read());
    hand = new Hand(open);
    JTabbedPane tabs = hand.find(JTabbedPane.class, "tabs");
    assertThat(OpenWindow.onScreen(() -> tabs.getTitleAt(tabs.getSelectedIndex())))
        .isEqualTo("Work");
    JTabbedPane again = hand.find(JTabbedPane.class, "charts");
    assertThat(OpenWindow.onScreen(again::getSelectedIndex)).isEqualTo(2);
  }

  private boolean marked(String item) {
    return OpenWindow.onScreen(
        () ->
            Hand.items(open.frame().getJMenuBar())
                .filter(i -> item.equals(i.getName()))
                .findFirst()
                .orElseThrow()
                .isSelected());
  }

  @Test
  void nothingIsReplacedWithoutAQuestion() throws Exception {
    Files.writeString(file, "precious");
    hand.menu("menu.save-as");
    hand.choose(file);
    hand.answer("Cancel");
    assertThat(file).hasContent("precious");
  }

  @Test
  void aFileThatIsNoBenchIsRefusedInWords() throws Exception {
    Files.writeString(file, "{}");
    Bench before = open.shown().moment().bench();
    hand.menu("menu.open");
    hand.choose(file);
    assertThat(OpenWindow.onScreen(hand.dialog()::getTitle)).contains("Halfwave");
    EventQueue.invokeLater(hand.dialog()::dispose);
    open.settle();
    assertThat(open.shown().moment().bench()).isEqualTo(before);
  }

  @Test
  void recentFilesAreRememberedAlsoAfterALookIsChosen() {
    change(0.5);
    hand.menu("menu.save");
    hand.choose(file);
    hand.menu("menu.dark");
    assertThat(new SettingsFile(folder.resolve("settings.json")).read().recent())
        .containsExactly(file.toAbsolutePath());
    change(1.5);
    hand.menu("menu.open-recent", "attic.halfwave");
    hand.answer("Leave without saving");
    assertThat(Parameter.GAS_PRESSURE.of(open.shown().moment().bench())).isEqualTo(0.5);
  }
}
