package halfwave.io.quiz;

import halfwave.io.JsonFile;
import halfwave.quiz.Quiz;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;

/** The bank of service calls that comes with the program. All in it is invented. */
public final class ShippedQuizzes {

  private static final String NAME = "bank.json";

  private ShippedQuizzes() {}

  /** Reads it once, and only if someone asks. */
  private static final class Holder {
    static final Quiz BANK = QuizFile.of(JsonFile.parse(NAME, bytes())).quiz();
  }

  /** The bank. */
  public static Quiz bank() {
    return Holder.BANK;
  }

  private static byte[] bytes() {
    try (InputStream in = Objects.requireNonNull(Quiz.class.getResourceAsStream(NAME), NAME)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
