package halfwave.cli;

import halfwave.grading.Grader;
import halfwave.io.BadInputException;
import halfwave.io.CacheFolder;
import halfwave.io.evidence.CachedOutlooks;
import halfwave.io.evidence.CaseCache;
import halfwave.io.quiz.Engine;
import halfwave.io.quiz.QuizFile;
import halfwave.io.quiz.QuizText;
import halfwave.io.quiz.SheetFolder;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quiz.Quiz;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.ResourceBundle;
import java.util.stream.Stream;

/** What several of the commands about quizzes read. */
final class QuizArgument {

  private QuizArgument() {}

  /** A quiz in the instructor's form; one that was handed out is refused. */
  static Quiz open(Path file) {
    QuizFile.Opened opened = QuizFile.read(file);
    if (opened.sealed()) {
      throw BadInputException.ofFile(file.toString(), Message.of(MessageKey.ALLOWED_UNSEALED));
    }
    return opened.quiz();
  }

  /** Marks sheets of a quiz. */
  static Grader grader(Quiz quiz, Progress progress) {
    return new Grader(
        quiz,
        QuizText.hash(quiz),
        Engine.text(),
        new CachedOutlooks(new CaseCache(CacheFolder.path()), progress));
  }

  /** Says of each sheet that cannot be read why; whether there was any. */
  static boolean refused(SheetFolder folder, Standard standard) {
    List<BadInputException> refused = folder.refused();
    PrintWriter err = standard.spec().commandLine().getErr();
    refused.forEach(e -> err.println(e.line(standard.sentences())));
    err.flush();
    return !refused.isEmpty();
  }

  /** Headings of a table, from the bundle. */
  static List<String> headings(Standard standard, String... keys) {
    ResourceBundle words = standard.spec().resourceBundle();
    return Stream.of(keys).map(k -> words.getString("table." + k)).toList();
  }
}
