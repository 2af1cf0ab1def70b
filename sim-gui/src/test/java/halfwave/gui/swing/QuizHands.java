package halfwave.gui.swing;

import halfwave.gui.presentation.quiz.SmallQuiz;
import halfwave.quiz.Rules;
import java.nio.file.Path;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JTextField;

/** Takes a small quiz without mouse and keys: quick, and in any size of type. */
record QuizHands(OpenWindow open, Hand hand, Path folder) {

  /** Opens the window, with nothing in it. */
  void window() {
    hand.menu("menu.take");
    hand.find(AbstractButton.class, "quiz.open");
  }

  /** Fills in what is asked at the start. */
  void fill(Rules rules, String learner) {
    press("quiz.open");
    hand.choose(SmallQuiz.file(folder, rules));
    idle();
    text("quiz.learner", learner);
    press("quiz.choose");
    hand.choose(folder.resolve("sheet.json"));
    idle();
  }

  void begin() {
    press("quiz.begin");
    hand.find(AbstractButton.class, "visit.act");
    idle();
  }

  /** Chooses by words of its name, and does it. */
  void act(int tab, String search) {
    offer(tab, search);
    press("visit.act");
    idle();
  }

  void offer(int tab, String search) {
    front("visit.offers", tab);
    text("visit.search", search);
    open.settle();
  }

  void front(String tabs, int tab) {
    JTabbedPane found = hand.find(JTabbedPane.class, tabs);
    OpenWindow.onScreen(
        () -> {
          found.setSelectedIndex(tab);
          return null;
        });
    open.settle();
  }

  /** Chooses a row of a table. */
  void row(String table, int row) {
    JTable found = hand.find(JTable.class, table);
    OpenWindow.onScreen(
        () -> {
          found.setRowSelectionInterval(row, row);
          return null;
        });
    open.settle();
  }

  void choose(String box, int index) {
    JComboBox<?> found = hand.find(JComboBox.class, box);
    OpenWindow.onScreen(
        () -> {
          found.setSelectedIndex(index);
          return null;
        });
  }

  /** Opens the window of practice; the one of the quiz is closed, its names are the same. */
  void practise() {
    Hand.look(javax.swing.JDialog.class, d -> "quiz".equals(d.getName()))
        .ifPresent(d -> OpenWindow.onScreen(() -> hidden(d)));
    hand.menu("menu.practise");
    idle();
  }

  private static boolean hidden(javax.swing.JDialog dialog) {
    dialog.setVisible(false);
    return true;
  }

  /** Begins the first call of the list. */
  void first() {
    idle();
    AbstractButton found =
        Hand.look(
                AbstractButton.class,
                b -> b.getName() != null && b.getName().startsWith("practice.begin."))
            .orElseThrow();
    press(found.getName());
    hand.find(AbstractButton.class, "visit.act");
    idle();
  }

  /** Has the coach do all that is left, the conclusion too. */
  void follow() {
    for (int k = 0; k < 40 && hand.there("practice.follow"); k++) {
      press("practice.follow");
      idle();
    }
  }

  /** Until nothing is played or written any more. */
  void idle() {
    open.settle();
    open.await("an end of the work", () -> !open.window().quizBusy());
    open.settle();
  }

  /** A press that may open a dialog. */
  void press(String name) {
    AbstractButton found = hand.find(AbstractButton.class, name);
    java.awt.EventQueue.invokeLater(() -> found.doClick(0));
    open.settle();
  }

  void text(String field, String text) {
    JTextField found = hand.find(JTextField.class, field);
    OpenWindow.onScreen(
        () -> {
          found.setText(text);
          return null;
        });
  }
}
