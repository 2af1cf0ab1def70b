package halfwave.io.bench;

import halfwave.board.BoardSettings;
import halfwave.board.Counting;
import halfwave.board.Ignition;
import halfwave.board.LossCount;
import halfwave.board.Sensing;
import halfwave.board.Times;
import halfwave.board.WarmUpLearning;
import halfwave.io.BadInputException;
import halfwave.io.JsonFields;
import halfwave.io.JsonFile;
import halfwave.io.JsonValue;
import java.nio.file.Path;

/**
 * The file of a control board, {@code "format": "halfwave-board", "version": 1}. Its schema is
 * {@code docs/schemas/board.schema.json}; {@link BoardText} writes it. Currents are amperes, times
 * whole milliseconds.
 */
public final class BoardFile {

  static final String FORMAT = "halfwave-board";
  static final int VERSION = 1;

  private BoardFile() {}

  /**
   * Reads a file.
   *
   * @param file the file
   * @return the board
   * @throws BadInputException if anything in it is not as the schema says
   */
  public static BoardSettings read(Path file) {
    return of(JsonFile.read(file));
  }

  /** The same for a file that was already read. */
  static BoardSettings of(JsonValue value) {
    JsonFields f =
        value.file(
            FORMAT,
            VERSION,
            "format",
            "version",
            "name",
            "ignition",
            "sensing",
            "times",
            "counting",
            "learning");
    return f.make(
        () ->
            new BoardSettings(
                f.get("name").text(),
                f.get("ignition").oneOf(Ignition.class),
                sensing(f.get("sensing")),
                times(f.get("times")),
                counting(f.get("counting")),
                f.orNull("learning", BoardFile::learning)));
  }

  private static Sensing sensing(JsonValue value) {
    JsonFields f =
        value.fields(
            "pickUpAmps",
            "dropOutAmps",
            "warningAmps",
            "shortRmsAmps",
            "filterSeconds",
            "responseMillis",
            "fadeMillis",
            "checksLine");
    return f.make(
        () ->
            new Sensing(
                f.get("pickUpAmps").number(),
                f.get("dropOutAmps").number(),
                f.get("warningAmps").number(),
                f.get("shortRmsAmps").number(),
                f.get("filterSeconds").number(),
                f.get("responseMillis").wholeNumber(),
                f.get("fadeMillis").wholeNumber(),
                f.get("checksLine").truth()));
  }

  private static Times times(JsonValue value) {
    JsonFields f =
        value.fields(
            "restartMillis",
            "selfCheckMillis",
            "pressureProofMillis",
            "pressureRetryMillis",
            "prePurgeMillis",
            "warmUpMillis",
            "retryWarmUpMillis",
            "ignitionActivationMillis",
            "trialMillis",
            "provingMillis",
            "interPurgeMillis",
            "postPurgeMillis",
            "blowerOnMillis",
            "blowerOffMillis");
    return f.make(
        () ->
            new Times(
                f.get("restartMillis").wholeNumber(),
                f.get("selfCheckMillis").wholeNumber(),
                f.get("pressureProofMillis").wholeNumber(),
                f.get("pressureRetryMillis").wholeNumber(),
                f.get("prePurgeMillis").wholeNumber(),
                f.get("warmUpMillis").wholeNumber(),
                f.get("retryWarmUpMillis").wholeNumber(),
                f.get("ignitionActivationMillis").wholeNumber(),
                f.get("trialMillis").wholeNumber(),
                f.get("provingMillis").wholeNumber(),
                f.get("interPurgeMillis").wholeNumber(),
                f.get("postPurgeMillis").wholeNumber(),
                f.get("blowerOnMillis").wholeNumber(),
                f.get("blowerOffMillis").wholeNumber()));
  }

  private static Counting counting(JsonValue value) {
    JsonFields f =
        value.fields(
            "mostTrials",
            "mostLosses",
            "lossCounts",
            "clearAfterMillis",
            "lockoutMillis",
            "callResetMillis",
            "powerResetMillis",
            "falseFlameClearMillis",
            "falseFlameLockoutMillis");
    return f.make(
        () ->
            new Counting(
                count(f.get("mostTrials")),
                count(f.get("mostLosses")),
                f.get("lossCounts").oneOf(LossCount.class),
                f.get("clearAfterMillis").wholeNumber(),
                f.orNull("lockoutMillis", JsonValue::wholeNumber),
                f.orNull("callResetMillis", JsonValue::wholeNumber),
                f.get("powerResetMillis").wholeNumber(),
                f.get("falseFlameClearMillis").wholeNumber(),
                f.orNull("falseFlameLockoutMillis", JsonValue::wholeNumber)));
  }

  /** What does not fit an int is no count either. */
  private static int count(JsonValue value) {
    return (int) Math.max(-1, Math.min(value.wholeNumber(), Integer.MAX_VALUE));
  }

  private static WarmUpLearning learning(JsonValue value) {
    JsonFields f = value.fields("stepMillis", "leastMillis", "mostMillis");
    return f.make(
        () ->
            new WarmUpLearning(
                f.get("stepMillis").wholeNumber(),
                f.get("leastMillis").wholeNumber(),
                f.get("mostMillis").wholeNumber()));
  }
}
