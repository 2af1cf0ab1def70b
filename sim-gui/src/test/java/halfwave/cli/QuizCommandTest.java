package halfwave.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code quiz}: an instructor and a class, from the new quiz to the gradebook. */
class QuizCommandTest {

  @TempDir Path folder;

  private String quiz = "";
  private String handedOut = "";
  private String sheet = "";

  @BeforeEach
  void setQuiz() {
    quiz = folder.resolve("quiz.json").toString();
    handedOut = folder.resolve("class.json").toString();
    sheet = folder.resolve("ann.json").toString();
    CommandRun run =
        CommandRun.of(
            "quiz", "new", quiz, "--call=cat-hair", "--call=new-floor", "--hand-out", handedOut);
    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
  }

  private CommandRun take(String... more) {
    String[] args = new String[more.length + 4];
    args[0] = "quiz";
    args[1] = "take";
    args[2] = handedOut;
    args[3] = sheet;
    System.arraycopy(more, 0, args, 4, more.length);
    return CommandRun.of(args);
  }

  @Test
  void nobodyGoesOnWithAQuizThatWasEnded() throws IOException {
    takeFirstCall();
    Path file = Path.of(sheet);
    Files.writeString(
        file, Files.readString(file).replace("\"calls\"", "\"handedIn\" : true, \"calls\""));
    CommandRun run = take("--do=check call");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).hasLineCount(1).contains(sheet, "handed in");
  }

  private void takeFirstCall() {
    CommandRun run =
        take(
            "--learner=ann",
            "--do=check call",
            "--do=suspects rod,lead,ground",
            "--do=power off",
            "--do=gas off",
            "--do=check rod",
            "--do=repair reposition-rod",
            "--do=power on",
            "--do=gas on",
            "--do=check call",
            "--do=check series-current@warm",
            "--cause=rod-above-flame",
            "--place=rod",
            "--repair=reposition-rod");
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("rod bent", "µA DC", "cat-hair is handed in.");
  }

  @Test
  void aClassIsExaminedFromTheSetToTheGradebook() throws IOException {
    takeFirstCall();
    JsonNode marks =
        new ObjectMapper().readTree(CommandRun.of("quiz", "grade", quiz, sheet, "--json").out());
    JsonNode first = marks.at("/sheets/0/calls/0");
    // a sound way and the right result; the light was not read, and too much was thought possible
    assertThat(first.at("/totalRatio").doubleValue()).isGreaterThan(0.75);
    assertThat(first.at("/whole").booleanValue()).isTrue();
    assertThat(marks.at("/sheets/0/calls/1/totalRatio").doubleValue()).isZero();
    assertThat(CommandRun.of("quiz", "report", quiz, sheet).out())
        .contains("ann", "cat-hair", "alpha");
    Path grades = folder.resolve("grades.csv");
    Path statements = folder.resolve("s.jsonl");
    CommandRun export =
        CommandRun.of(
            "quiz",
            "export",
            quiz,
            sheet,
            "--gradebook",
            grades.toString(),
            "--xapi",
            statements.toString());
    assertThat(export.status()).isZero();
    assertThat(grades).content().startsWith("learner,").contains("ann,");
    assertThat(statements).content().contains("\"verb\"");
  }

  @Test
  void aSheetOnPaperAndARecordAreWritten() {
    takeFirstCall();
    Path blank = folder.resolve("blank.pdf");
    Path record = folder.resolve("1-ann.pdf");
    CommandRun run =
        CommandRun.of(
            "quiz",
            "print",
            quiz,
            sheet,
            "--blank",
            blank.toString(),
            "--marks",
            folder.toString());
    assertThat(run.err()).isEmpty();
    assertThat(blank).exists();
    assertThat(record).exists();
  }

  @Test
  void badSheetsAreNamedAndTheOthersMarked() throws IOException {
    takeFirstCall();
    String text = Files.readString(Path.of(sheet));
    Files.writeString(folder.resolve("bob.json"), text.substring(0, text.length() / 2));
    Files.writeString(folder.resolve("copy.json"), text);
    CommandRun run = CommandRun.of("quiz", "grade", quiz, folder.toString());
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).contains("ann: ");
    assertThat(run.complaints())
        .anyMatch(l -> l.contains("bob.json"))
        .anyMatch(l -> l.contains("copy.json") && l.contains("one sheet of each learner"))
        .anyMatch(l -> l.contains("class.json") && l.contains("halfwave-answer-sheet"));
  }

  @Test
  void whatWasHandedOutIsNoKey() {
    for (String[] args :
        new String[][] {
          {"quiz", "grade", handedOut, sheet},
          {"quiz", "check", handedOut},
          {"quiz", "print", handedOut, "--key", folder.resolve("k.pdf").toString()}
        }) {
      CommandRun run = CommandRun.of(args);
      assertThat(run.status()).isEqualTo(2);
      assertThat(run.complaints()).singleElement().asString().contains("instructor's file");
    }
    assertThat(folder.resolve("k.pdf")).doesNotExist();
  }

  @Test
  void badMovesAreRefusedInOneLineAndNothingIsLost() throws IOException {
    take("--learner=ann", "--do=check call");
    String before = Files.readString(Path.of(sheet));
    for (String bad : new String[] {"check foo", "power on", "hint 1", "dance", "repair hammer"}) {
      CommandRun run = take("--do=" + bad);
      assertThat(run.status()).as(bad).isEqualTo(2);
      assertThat(run.complaints()).hasSize(1);
    }
    assertThat(Path.of(sheet)).content().isEqualTo(before);
  }

  @Test
  void aDangerousMoveStopsTheCallWithItsCaution() {
    CommandRun run = take("--learner=ann", "--do=check rod");
    assertThat(run.out()).contains("the call is stopped", "Turn off gas and power");
    assertThat(take("--do=check call").complaints())
        .singleElement()
        .asString()
        .contains("the call is over");
  }

  @Test
  void aQuizThatCannotBeMadeIsRefused() {
    String other = folder.resolve("other.json").toString();
    assertThat(CommandRun.of("quiz", "new", other, "--row=rod:basic:99").complaints())
        .singleElement()
        .asString()
        .contains("--row", "at most");
    assertThat(CommandRun.of("quiz", "new", other, "--row=rod").status()).isEqualTo(2);
    assertThat(CommandRun.of("quiz", "new", other, "--call=nobody").status()).isEqualTo(2);
    assertThat(CommandRun.of("quiz", "new", quiz).complaints())
        .singleElement()
        .asString()
        .contains("--replace");
    assertThat(Path.of(other)).doesNotExist();
  }

  @Test
  void marksThatChangedAreShown() throws IOException {
    takeFirstCall();
    Path kept = folder.resolve("marks.json");
    CommandRun.of("quiz", "grade", quiz, sheet, "--write", kept.toString());
    assertThat(CommandRun.of("quiz", "grade", quiz, sheet, "--compare", kept.toString()).out())
        .contains("No mark changed.");
    String heavier =
        Files.readString(Path.of(quiz))
            .replace("\"interpretation\" : 15.0", "\"interpretation\" : 90.0");
    Files.writeString(Path.of(quiz), heavier);
    assertThat(CommandRun.of("quiz", "grade", quiz, sheet, "--compare", kept.toString()).out())
        .contains("ann, cat-hair: ");
  }

  @Test
  void anOwnRoutineStandsBesideAnExpert() throws IOException {
    CommandRun run =
        CommandRun.of(
            "quiz", "check", quiz, "--routine", "../docs/examples/routine.json", "--json");
    assertThat(run.status()).isZero();
    JsonNode calls = new ObjectMapper().readTree(run.out()).at("/calls");
    assertThat(calls).hasSize(2);
    assertThat(calls.at("/0/whole").booleanValue()).isTrue();
    Path bad = folder.resolve("routine.json");
    Files.writeString(
        bad, "{\"format\":\"halfwave-routine\",\"version\":1,\"name\":\"n\",\"steps\":[{}]}");
    CommandRun refused = CommandRun.of("quiz", "check", quiz, "--routine", bad.toString());
    assertThat(refused.status()).isEqualTo(2);
    assertThat(refused.complaints()).singleElement().asString().contains("steps[0]");
  }
}
