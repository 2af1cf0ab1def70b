package halfwave.io.quiz;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.io.BadInputException;
import halfwave.io.JsonFields;
import halfwave.io.JsonFile;
import halfwave.io.bench.RecoveryFile;
import halfwave.quiz.Quiz;
import java.nio.file.Path;
import java.util.List;

/**
 * What is kept of a quiz that an instructor makes, in case the program does not end as it should:
 * {@code "format": "halfwave-quiz-recovery", "version": 1}. As {@link RecoveryFile} it is the
 * program's own. Its quiz is as in {@link QuizFile}, with all that is hidden.
 *
 * @param quiz the quiz as it is; where it has no calls yet, one call stands for none
 * @param begun whether it has calls
 * @param counts how many calls of the bank each row of its blueprint asks for
 */
public record QuizRecoveryFile(Quiz quiz, boolean begun, List<Integer> counts) {

  private static final String FORMAT = "halfwave-quiz-recovery";
  private static final int VERSION = 1;
  private static final int MOST_CALLS = 1000;

  /** Takes a copy. */
  public QuizRecoveryFile {
    counts = List.copyOf(counts);
    if (counts.size() != quiz.blueprint().size()) {
      throw new IllegalArgumentException("counts: one for each row of the blueprint");
    }
  }

  /**
   * Reads a file.
   *
   * @throws BadInputException if anything in it is not as it was written
   */
  public static QuizRecoveryFile read(Path file) {
    JsonFields f =
        JsonFile.read(file).file(FORMAT, VERSION, "format", "version", "quiz", "begun", "counts");
    return f.make(
        () ->
            new QuizRecoveryFile(
                QuizFile.of(f.get("quiz")).quiz(),
                f.get("begun").truth(),
                f.get("counts").list(v -> QuizFile.count(v, 1, MOST_CALLS))));
  }

  /** The text of the file. */
  public String text() {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", FORMAT).put("version", VERSION);
    root.set("quiz", QuizText.node(quiz, false));
    root.put("begun", begun);
    ArrayNode all = root.putArray("counts");
    counts.forEach(all::add);
    return root.toPrettyString() + "\n";
  }
}
