package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Parameter;
import halfwave.gui.presentation.Intent;
import halfwave.gui.presentation.SettingsFile;
import halfwave.io.BenchFile;
import halfwave.sequence.Deed;
import java.awt.EventQueue;
import java.awt.event.WindowEvent;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JFileChooser;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Benches are saved, opened and not lost by a slip. */
class FilesRobotTest {

  @TempDir private Path folder;
  private OpenWindow open;
  private Hand hand;
  private Path file;

  @BeforeEach
  void open() {
    open = OpenWindow.plain(folder);
    hand = new Hand(open);
    file = folder.resolve("attic.json");
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
    }
  }

  private void change(double pressure) {
    Deed deed = new Deed.Alter(Change.Turned.to(Parameter.GAS_PRESSURE, pressure));
    open.want(new Intent.Act(List.of(deed), 0));
  }

  private void choose(Path chosen) {
    open.await("the file chooser", () -> Hand.look(JFileChooser.class, c -> true).isPresent());
    JFileChooser chooser = Hand.look(JFileChooser.class, c -> true).orElseThrow();
    File target = chosen.toFile();
    EventQueue.invokeLater(
        () -> {
          chooser.setSelectedFile(target);
          chooser.approveSelection();
        });
    open.await("the chooser's end", () -> !chooser.isShowing());
    open.settle();
  }

  @Test
  void whatWasSavedIsOpenedAgain() throws Exception {
    change(0.5);
    Bench changed = open.shown().moment().bench();
    hand.menu("menu.save");
    choose(folder.resolve("attic"));
    assertThat(BenchFile.read(file)).isEqualTo(changed);
    assertThat(open.shown().unsaved()).isFalse();
    assertThat(open.frame().getTitle()).contains("attic").doesNotContain("changed");
    change(1.5);
    assertThat(open.frame().getTitle()).contains("changed");
    hand.menu("menu.open");
    hand.answer("Leave without saving");
    choose(file);
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
    choose(file);
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
  void nothingIsReplacedWithoutAQuestion() throws Exception {
    Files.writeString(file, "precious");
    hand.menu("menu.save-as");
    choose(file);
    hand.answer("Cancel");
    assertThat(file).hasContent("precious");
  }

  @Test
  void aFileThatIsNoBenchIsRefusedInWords() throws Exception {
    Files.writeString(file, "{}");
    Bench before = open.shown().moment().bench();
    hand.menu("menu.open");
    choose(file);
    assertThat(OpenWindow.onScreen(hand.dialog()::getTitle)).contains("Halfwave");
    EventQueue.invokeLater(hand.dialog()::dispose);
    open.settle();
    assertThat(open.shown().moment().bench()).isEqualTo(before);
  }

  @Test
  void recentFilesAreRememberedAlsoAfterALookIsChosen() {
    change(0.5);
    hand.menu("menu.save");
    choose(file);
    hand.menu("menu.dark");
    assertThat(new SettingsFile(folder.resolve("settings.json")).read().recent())
        .containsExactly(file.toAbsolutePath());
    change(1.5);
    hand.menu("menu.open-recent", "attic.json");
    hand.answer("Leave without saving");
    assertThat(Parameter.GAS_PRESSURE.of(open.shown().moment().bench())).isEqualTo(0.5);
  }
}
