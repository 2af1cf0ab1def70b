package halfwave.gui.swing;

import halfwave.gui.presentation.desk.SmallClass;
import halfwave.gui.presentation.quiz.SmallQuiz;
import halfwave.io.AtomicFile;
import halfwave.io.quiz.QuizText;
import halfwave.quiz.Quiz;
import halfwave.quiz.Rules;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JTable;

/** Works at the instructor's desk without mouse and keys: quick, and in any size of type. */
record DeskHands(OpenWindow open, Hand hand, Path folder) {

  private QuizHands hands() {
    return new QuizHands(open, hand, folder);
  }

  /** Opens the window; the bank is read. */
  void window() {
    hand.menu("menu.desk");
    hand.find(AbstractButton.class, "desk.fresh");
    idle();
  }

  /** Opens a small quiz that an instructor has saved. */
  void quiz() {
    Path file = folder.resolve("own.json");
    AtomicFile.write(file, QuizText.of(small()));
    press("desk.open");
    hand.choose(file);
    idle();
  }

  private static Quiz small() {
    return SmallQuiz.under(Rules.STANDARD);
  }

  /** Collects the sheets of a small class. */
  void sheets() throws Exception {
    Path sheets = Files.createDirectories(folder.resolve("sheets"));
    SmallClass.handIn(sheets, small());
    tab(1);
    press("desk.collect");
    hand.choose(sheets);
    idle();
  }

  void tab(int tab) {
    hands().front("desk.tabs", tab);
  }

  void form(int tab) {
    hands().front("desk.forms", tab);
  }

  void row(String table, int row) {
    hands().row(table, row);
  }

  void press(String name) {
    hands().press(name);
  }

  void text(String field, String text) {
    hands().text(field, text);
  }

  void choose(String box, int index) {
    hands().choose(box, index);
  }

  int chosen(String box) {
    JComboBox<?> found = hand.find(JComboBox.class, box);
    return OpenWindow.onScreen(found::getSelectedIndex);
  }

  int rows(String table) {
    JTable found = hand.find(JTable.class, table);
    return OpenWindow.onScreen(found::getRowCount);
  }

  void idle() {
    hands().idle();
  }
}
