package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.board.Stage;
import halfwave.gui.presentation.SettingsFile;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.swing.widget.TextCell;
import halfwave.io.lesson.DemonstrationFile;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Rehearsal;
import halfwave.lesson.Step;
import halfwave.sequence.Deed;
import halfwave.sequence.Moment;
import java.awt.Component;
import java.awt.EventQueue;
import java.awt.Point;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.WindowEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JMenuItem;
import javax.swing.JOptionPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.ListCellRenderer;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** An instructor makes a demonstration and shows it to a class. */
class EditorRobotTest extends WithWindow {

  @BeforeEach
  void begin() {
    hand.tab("Lesson");
  }

  private void press(String name) {
    hand.find(AbstractButton.class, name);
    OpenWindow.onScreen(
        () -> {
          hand.now(AbstractButton.class, name).doClick(0);
          return null;
        });
    open.settle();
  }

  /** What opens a box that waits for an answer must not be waited for. */
  private void pressAndLeave(String name) {
    AbstractButton button = hand.find(AbstractButton.class, name);
    EventQueue.invokeLater(() -> button.doClick(0));
  }

  /** Chooses from the editor's own menus; what opens a box must not be waited for. */
  private void menu(String name) {
    JDialog dialog = editor();
    JMenuItem item =
        OpenWindow.onScreen(
            () ->
                Hand.items(dialog.getJMenuBar())
                    .filter(i -> name.equals(i.getName()))
                    .findFirst()
                    .orElseThrow());
    EventQueue.invokeLater(() -> item.doClick(0));
  }

  private static JDialog editor() {
    return Hand.look(JDialog.class, d -> "editor".equals(d.getName())).orElseThrow();
  }

  private void write(String name, String text) {
    JTextComponent cell = hand.find(JTextComponent.class, name);
    OpenWindow.onScreen(
        () -> {
          cell.requestFocusInWindow();
          cell.setText(text);
          return null;
        });
    open.settle();
  }

  private void takeClaim() {
    open.await("the claim", () -> hand.there("claim.take"));
    press("claim.take");
    open.await("the end of the box", () -> !hand.there("claim.take"));
    open.settle();
  }

  private String status() {
    return OpenWindow.onScreen(() -> hand.now(JLabel.class, "editor.status").getText());
  }

  private void step(int index) {
    OpenWindow.onScreen(
        () -> {
          hand.now(JList.class, "editor.steps").setSelectedIndex(index + 1);
          return null;
        });
    open.settle();
  }

  private void record() {
    press("editor.record");
    open.await("the recording", () -> hand.there("editor.keep"));
    open.want(new Intent.Play(false));
    open.want(new Intent.StepOn(2000L));
    open.want(new Intent.Act(List.of(new Deed.Call(false)), 0));
    open.want(new Intent.StepOn(40_000L));
    press("editor.keep");
  }

  @Test
  void aDemonstrationIsRecordedCheckedSavedAndShown() throws Exception {
    Moment before = open.shown().moment();
    press("lesson.new");
    write("draft.title.en", "The call ends");
    write("draft.about.en", "What the board does when the room is warm.");
    step(0);
    write("draft.heading.en", "A warm room");
    write("draft.say.es", "El cuarto ya está caliente.");
    record();
    press("editor.asks");
    write("draft.ask.en", "What comes after the call?");
    write("draft.answerA.en", "It waits for the next call.");
    write("draft.answerB.en", "It tries again.");
    pressAndLeave("claim.add.answer0");
    takeClaim();
    pressAndLeave("claim.add.step");
    takeClaim();
    press("editor.check");
    open.await("the check", () -> status().startsWith("✓"));

    Path file = folder.resolve("warm-room.halfwave");
    pressAndLeave("editor.save");
    hand.choose(folder.resolve("warm-room"));
    Demonstration saved = DemonstrationFile.read(file);
    assertThat(saved.name()).isEqualTo("warm-room");
    Step made = saved.steps().get(0);
    assertThat(made.say().in(Locale.ENGLISH)).as("stands in").startsWith("El cuarto");
    assertThat(made.play().acts()).hasSize(1);
    assertThat(made.play().lengthMillis()).isGreaterThanOrEqualTo(42_000);
    assertThat(Rehearsal.of(saved).doubts()).isEmpty();
    assertThat(new SettingsFile(folder.resolve("settings.json")).read().lessons().recent())
        .containsExactly(file.toAbsolutePath());

    menu("menu-editor.close");
    open.await("the editor's end", () -> !hand.there("editor.status"));
    open.await("the bench", () -> open.workbench().shown().moment().bench().equals(before.bench()));
    String title = saved.title().in(Locale.ENGLISH);
    open.await(
        "its title in the list",
        () -> Hand.look(JTextArea.class, a -> title.equals(a.getText())).isPresent());
    press("lesson.file.warm-room.halfwave");
    open.await("the player", () -> hand.there("vote.A"));
    press("lesson.forward");
    open.settle();
    for (int p = 0; p < 1000 && open.shown().showing() != null; p++) {
      open.want(new Intent.Pass(500));
    }
    assertThat(open.shown().moment().board().stage()).isEqualTo(Stage.STANDBY);
    assertThat(Hand.look(JTextArea.class, a -> a.getText().startsWith("✓ It waits"))).isPresent();
  }

  @Test
  void anotherLanguageAndLookLeaveTheDraftAsItIs() {
    press("lesson.copy.a-dirty-rod");
    step(0);
    write("draft.heading.en", "Precious");
    hand.menu("language.es");
    hand.menu("menu.dark");
    TextCell heading = hand.find(TextCell.class, "draft.heading.en");
    String kept = OpenWindow.onScreen(heading::getText);
    assertThat(kept).isEqualTo("Precious");
    press("editor.record");
    open.await("the recording", () -> hand.there("editor.keep"));
    hand.menu("menu.light");
    assertThat(hand.there("editor.keep")).as("still little").isTrue();
    press("editor.discard");
    assertThat(hand.there("editor.steps")).isTrue();
  }

  @Test
  void nothingMovesWhenADoubtOrTheShorteningOfWaitsComesAndGoes() {
    press("lesson.copy.a-dirty-rod");
    step(2);
    press("editor.check");
    open.await("the check", () -> status().startsWith("✓"));
    List<Point> before = places("draft.say.en", "editor.length");
    write("draft.heading.en", "");
    write("draft.heading.es", "");
    open.await("the doubt", () -> hand.there("editor.doubts"));
    assertThat(places("draft.say.en", "editor.length")).isEqualTo(before);
    write("draft.heading.en", "A heading");
    open.await("its end", () -> !hand.there("editor.doubts"));
    assertThat(places("draft.say.en", "editor.length")).isEqualTo(before);

    write("act.wait.0", "9");
    hand.key(KeyEvent.VK_ENTER);
    hand.ready("editor.shorten");
    List<Point> waiting = places("editor.shorten", "editor.length");
    press("editor.shorten");
    assertThat(OpenWindow.onScreen(() -> hand.now(JButton.class, "editor.shorten").isEnabled()))
        .isFalse();
    assertThat(places("editor.shorten", "editor.length")).isEqualTo(waiting);
  }

  private static List<Point> places(String... names) {
    return OpenWindow.onScreen(
        () ->
            Hand.seen().stream()
                .filter(c -> Arrays.asList(names).contains(c.getName()))
                .map(Component::getLocationOnScreen)
                .toList());
  }

  @Test
  void escapeTakesBackWhatIsTypedAndThenClosesAndAsks() {
    press("lesson.copy.a-dirty-rod");
    step(2);
    String wait = text("act.wait.0");
    write("act.wait.0", "7");
    hand.key(KeyEvent.VK_ESCAPE);
    assertThat(text("act.wait.0")).isEqualTo(wait);
    assertThat(hand.there("editor.steps")).isTrue();

    write("draft.heading.en", "Precious");
    keyAndLeave(KeyEvent.VK_ESCAPE);
    hand.answer("Leave without saving");
    open.await("the end of the editor", () -> !hand.there("editor.steps"));
  }

  /** A key that opens a box must not be waited for. */
  private static void keyAndLeave(int code) {
    EventQueue.invokeLater(
        () -> {
          Component to = Hand.focused();
          to.dispatchEvent(
              new KeyEvent(to, KeyEvent.KEY_PRESSED, 0, 0, code, KeyEvent.CHAR_UNDEFINED));
        });
  }

  private String text(String field) {
    return OpenWindow.onScreen(() -> hand.now(JTextField.class, field).getText());
  }

  @Test
  void aFileNameIsMadeOfTheTitle() {
    press("lesson.copy.a-dirty-rod");
    write("draft.title.en", "¿Año 2? A rod / \"dirty\"…");
    pressAndLeave("editor.save");
    open.await("the chooser", () -> Hand.look(JFileChooser.class, c -> true).isPresent());
    JFileChooser chooser = Hand.look(JFileChooser.class, c -> true).orElseThrow();
    String offered = OpenWindow.onScreen(() -> chooser.getSelectedFile().getName());
    EventQueue.invokeLater(chooser::cancelSelection);
    open.await("its end", () -> !chooser.isShowing());
    assertThat(offered).isEqualTo("ano-2-a-rod-dirty.halfwave");
  }

  @Test
  void aTrialInThePlayerComesBackToTheEditor() {
    press("lesson.copy.a-dirty-rod");
    step(1);
    press("editor.try");
    open.await("the player", () -> hand.there("lesson.stop"));
    assertThat(hand.there("editor.status")).isFalse();
    press("lesson.stop");
    open.await("the editor", () -> hand.there("editor.status"));
    assertThat(hand.there("draft.heading.en")).isTrue();
  }

  @Test
  void stepsAreMadeMovedAndTakenBackByKeysAlone() {
    press("lesson.copy.a-dirty-rod");
    JDialog dialog = editor();
    var list = hand.find(JList.class, "editor.steps");
    open.await("the keyboard", list::isFocusOwner);
    int rows = OpenWindow.onScreen(() -> list.getModel().getSize());
    String first = row(list, 1);
    hand.key(KeyEvent.VK_DOWN);
    hand.key(KeyEvent.VK_DOWN, InputEvent.ALT_DOWN_MASK);
    assertThat(row(list, 2).substring(1)).isEqualTo(first.substring(1));
    hand.key(KeyEvent.VK_D, InputEvent.CTRL_DOWN_MASK);
    assertThat(OpenWindow.onScreen(() -> list.getModel().getSize())).isEqualTo(rows + 1);
    hand.key(KeyEvent.VK_Z, InputEvent.CTRL_DOWN_MASK);
    hand.key(KeyEvent.VK_Z, InputEvent.CTRL_DOWN_MASK);
    assertThat(row(list, 1)).isEqualTo(first);
    assertThat(OpenWindow.onScreen(() -> list.getModel().getSize())).isEqualTo(rows);
    hand.tabTo("draft.heading.en");
    hand.key(KeyEvent.VK_END, InputEvent.CTRL_DOWN_MASK);
    hand.type("!");
    assertThat(row(list, 1)).isEqualTo(first + "!");
    EventQueue.invokeLater(
        () -> dialog.dispatchEvent(new WindowEvent(dialog, WindowEvent.WINDOW_CLOSING)));
    open.await("the question", () -> Hand.look(JOptionPane.class, p -> true).isPresent());
    EventQueue.invokeLater(
        Hand.look(
                    AbstractButton.class,
                    b ->
                        "Cancel".equals(b.getText())
                            && SwingUtilities.getAncestorOfClass(JOptionPane.class, b) != null)
                .orElseThrow()
            ::doClick);
    open.await("its end", () -> Hand.look(JOptionPane.class, p -> true).isEmpty());
    assertThat(dialog.isShowing()).isTrue();
  }

  private static String row(JList<?> list, int index) {
    return OpenWindow.onScreen(
        () ->
            ((JLabel)
                    listRenderer(list)
                        .getListCellRendererComponent(
                            list, list.getModel().getElementAt(index), index, false, false))
                .getText());
  }

  @SuppressWarnings("unchecked")
  private static ListCellRenderer<Object> listRenderer(JList<?> list) {
    return (ListCellRenderer<Object>) list.getCellRenderer();
  }

  @Test
  void aBadFileIsRefusedInOneLineAndNothingIsLost() throws Exception {
    Path bad = folder.resolve("bad.json");
    Files.writeString(
        bad,
        "{\"format\": \"halfwave-demonstration\", \"version\": 1, \"name\": \"x\","
            + " \"bench\": \"hot-surface-propane\", \"title\": 7}");
    press("lesson.copy.a-dirty-rod");
    step(0);
    write("draft.heading.en", "Precious");
    menu("menu-lesson.edit-file");
    hand.choose(bad);
    open.await("the refusal", () -> Hand.look(JOptionPane.class, p -> true).isPresent());
    JTextArea line =
        Hand.look(JTextArea.class, a -> Objects.requireNonNullElse(a.getText(), "").contains("bad"))
            .orElseThrow();
    assertThat(line.getText()).contains("title", "7").doesNotContain("\n");
    JOptionPane pane = Hand.look(JOptionPane.class, p -> true).orElseThrow();
    EventQueue.invokeLater(() -> pane.setValue(0));
    open.await("its end", () -> Hand.look(JOptionPane.class, p -> true).isEmpty());
    TextCell heading = hand.find(TextCell.class, "draft.heading.en");
    String kept = OpenWindow.onScreen(heading::getText);
    assertThat(kept).isEqualTo("Precious");
  }
}
