package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.presentation.desk.DeskOutput;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BiConsumer;
import javax.swing.JTable;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * From the desk to the seats and back: a call is written, a quiz put together and handed out, taken
 * by two learners at machines of their own, collected, marked, reported and printed.
 */
class WholeClassRobotTest {

  private static final List<String> LEARNERS = List.of("ann", "ben");

  @TempDir private Path folder;

  private void at(BiConsumer<OpenWindow, Hand> work) throws Exception {
    try (OpenWindow open = OpenWindow.plain(folder)) {
      work.accept(open, new Hand(open));
    }
  }

  @Test
  void aClassIsExamined() throws Exception {
    Path sheets = Files.createDirectory(folder.resolve("sheets"));
    at((open, hand) -> prepare(new DeskHands(open, hand, folder), hand));
    assertThat(Files.readString(folder.resolve("class.halfwave"))).doesNotContain("rod-fouled");
    for (String learner : LEARNERS) {
      at((open, hand) -> take(new QuizHands(open, hand, folder), hand, learner));
    }
    at((open, hand) -> mark(new DeskHands(open, hand, folder), hand, sheets));
    assertThat(Files.readString(folder.resolve("grades.csv"))).contains(LEARNERS);
    try (var report = Loader.loadPDF(folder.resolve("report.pdf").toFile())) {
      assertThat(new PDFTextStripper().getText(report)).contains(LEARNERS).contains("Own words");
    }
  }

  private void prepare(DeskHands hands, Hand hand) {
    hands.window();
    for (int row : new int[] {0, 1}) {
      hands.row("desk.bank", row);
      hands.press("desk.add");
    }
    hands.text("desk.name", "class-of-two");
    hands.row("desk.calls", 0);
    hands.form(2);
    hands.text("desk.call-title-english", "Own words");
    hands.press("desk.keep-call");
    hands.press("desk.save");
    hand.choose(folder.resolve("own.halfwave"));
    hands.idle();
    hands.press("desk.hand-out");
    hand.choose(folder.resolve("class.halfwave"));
    hands.idle();
  }

  private void take(QuizHands hands, Hand hand, String learner) {
    hands.window();
    hands.press("quiz.open");
    hand.choose(folder.resolve("class.halfwave"));
    hands.idle();
    hands.text("quiz.learner", learner);
    hands.press("quiz.choose");
    hand.choose(folder.resolve("sheets").resolve(learner));
    hands.idle();
    hands.begin();
    hands.act(0, "thermostat");
    hands.press("visit.power");
    hands.idle();
    hands.press("visit.gas");
    hands.idle();
    hands.act(1, "abrasive pad");
    hands.front("visit.tabs", 2);
    hands.choose("visit.cause", learner.equals("ann") ? 2 : 4);
    hands.choose("visit.place", 4);
    hands.press("visit.hand-in");
    hand.answer("Hand in");
    hands.idle();
  }

  private void mark(DeskHands hands, Hand hand, Path sheets) {
    hands.window();
    hands.press("desk.open");
    hand.choose(folder.resolve("own.halfwave"));
    hands.idle();
    hands.tab(1);
    hands.press("desk.collect");
    hand.choose(sheets);
    hands.idle();
    assertThat(hands.rows("desk.learners")).isEqualTo(LEARNERS.size());
    write(hands, hand, DeskOutput.GRADEBOOK, "grades.csv");
    write(hands, hand, DeskOutput.REPORT, "report.pdf");
    hands.row("desk.learners", 0);
    hands.tab(2);
    hands.row("desk.moves", 1);
    JTable moves = hand.find(JTable.class, "desk.moves");
    assertThat(OpenWindow.onScreen(moves::getRowCount)).isGreaterThanOrEqualTo(4);
  }

  private void write(DeskHands hands, Hand hand, DeskOutput output, String name) {
    hands.choose("desk.output", DeskOutput.OF_CLASS.indexOf(output));
    hands.press("desk.write");
    hand.choose(folder.resolve(name));
    hands.idle();
  }
}
