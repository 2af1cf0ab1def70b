package halfwave.io.bench;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.board.BoardSettings;
import halfwave.board.Counting;
import halfwave.board.Sensing;
import halfwave.board.Times;
import halfwave.board.WarmUpLearning;
import halfwave.io.JsonValue;

/** Writes what {@link BoardFile} reads. */
public final class BoardText {

  private BoardText() {}

  /** The board as the text of a file. */
  public static String of(BoardSettings board) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", BoardFile.FORMAT)
        .put("version", BoardFile.VERSION)
        .put("name", board.name())
        .put("ignition", JsonValue.spelling(board.ignition()));
    Sensing s = board.sensing();
    root.putObject("sensing")
        .put("pickUpAmps", s.pickUpAmps())
        .put("dropOutAmps", s.dropOutAmps())
        .put("warningAmps", s.warningAmps())
        .put("shortRmsAmps", s.shortRmsAmps())
        .put("filterSeconds", s.filterSeconds())
        .put("responseMillis", s.responseMillis())
        .put("fadeMillis", s.fadeMillis())
        .put("checksLine", s.checksLine());
    Times t = board.times();
    root.putObject("times")
        .put("restartMillis", t.restartMillis())
        .put("selfCheckMillis", t.selfCheckMillis())
        .put("pressureProofMillis", t.pressureProofMillis())
        .put("pressureRetryMillis", t.pressureRetryMillis())
        .put("prePurgeMillis", t.prePurgeMillis())
        .put("warmUpMillis", t.warmUpMillis())
        .put("retryWarmUpMillis", t.retryWarmUpMillis())
        .put("ignitionActivationMillis", t.ignitionActivationMillis())
        .put("trialMillis", t.trialMillis())
        .put("provingMillis", t.provingMillis())
        .put("interPurgeMillis", t.interPurgeMillis())
        .put("postPurgeMillis", t.postPurgeMillis())
        .put("blowerOnMillis", t.blowerOnMillis())
        .put("blowerOffMillis", t.blowerOffMillis());
    Counting c = board.counting();
    root.putObject("counting")
        .put("mostTrials", c.mostTrials())
        .put("mostLosses", c.mostLosses())
        .put("lossCounts", JsonValue.spelling(c.lossCounts()))
        .put("clearAfterMillis", c.clearAfterMillis())
        .put("lockoutMillis", c.lockoutMillis())
        .put("callResetMillis", c.callResetMillis())
        .put("powerResetMillis", c.powerResetMillis())
        .put("falseFlameClearMillis", c.falseFlameClearMillis())
        .put("falseFlameLockoutMillis", c.falseFlameLockoutMillis());
    WarmUpLearning l = board.learning();
    if (l == null) {
      root.putNull("learning");
    } else {
      root.putObject("learning")
          .put("stepMillis", l.stepMillis())
          .put("leastMillis", l.leastMillis())
          .put("mostMillis", l.mostMillis());
    }
    return root.toPrettyString() + "\n";
  }
}
