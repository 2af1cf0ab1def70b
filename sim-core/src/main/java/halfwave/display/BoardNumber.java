package halfwave.display;

import halfwave.board.BoardSettings;
import halfwave.board.WarmUpLearning;
import halfwave.quantity.Dimension;
import java.math.BigDecimal;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;

/** Every setting of a board, one by one, as a person reads it. */
public enum BoardNumber {
  /** DC from which there is a flame. */
  PICK_UP("sensing.pickUpAmps", Kind.AMPS, b -> b.sensing().pickUpAmps()),
  /** DC below which there is no flame any more. */
  DROP_OUT("sensing.dropOutAmps", Kind.AMPS, b -> b.sensing().dropOutAmps()),
  /** DC below which the light warns. */
  WARNING("sensing.warningAmps", Kind.AMPS, b -> b.sensing().warningAmps()),
  /** AC without DC from which the sense circuit counts as shorted. */
  SHORT("sensing.shortRmsAmps", Kind.AMPS, b -> b.sensing().shortRmsAmps()),
  /** Time constant of the filter. */
  FILTER("sensing.filterSeconds", Kind.SECONDS, b -> b.sensing().filterSeconds()),
  /** Flame failure response time, behind the filter. */
  RESPONSE("sensing.responseMillis", Kind.MILLIS, b -> b.sensing().responseMillis()),
  /** A signal so long after the valve has shut is the flame going out. */
  FADE("sensing.fadeMillis", Kind.MILLIS, b -> b.sensing().fadeMillis()),
  /** No start where line and neutral are swapped. */
  CHECKS_LINE("sensing.checksLine", Kind.WORD, b -> b.sensing().checksLine()),
  /** Blower first, after power returns during a call. */
  RESTART("times.restartMillis", Kind.MILLIS, b -> b.times().restartMillis()),
  /** Self-check before each start. */
  SELF_CHECK("times.selfCheckMillis", Kind.MILLIS, b -> b.times().selfCheckMillis()),
  /** The pressure switch has to close within this; 0 s: there is none. */
  PRESSURE_PROOF("times.pressureProofMillis", Kind.MILLIS, b -> b.times().pressureProofMillis()),
  /** Pause after a pressure switch that did not close. */
  PRESSURE_RETRY("times.pressureRetryMillis", Kind.MILLIS, b -> b.times().pressureRetryMillis()),
  /** Pre-purge. */
  PRE_PURGE("times.prePurgeMillis", Kind.MILLIS, b -> b.times().prePurgeMillis()),
  /** Igniter warm-up, first trial. */
  WARM_UP("times.warmUpMillis", Kind.MILLIS, b -> b.times().warmUpMillis()),
  /** Igniter warm-up, further trials. */
  RETRY_WARM_UP("times.retryWarmUpMillis", Kind.MILLIS, b -> b.times().retryWarmUpMillis()),
  /** Igniter or spark stays on after the valve has opened. */
  IGNITION_ACTIVATION(
      "times.ignitionActivationMillis", Kind.MILLIS, b -> b.times().ignitionActivationMillis()),
  /** Trial for ignition, proving included. */
  TRIAL("times.trialMillis", Kind.MILLIS, b -> b.times().trialMillis()),
  /** The signal has to hold for this. */
  PROVING("times.provingMillis", Kind.MILLIS, b -> b.times().provingMillis()),
  /** Inter-purge. */
  INTER_PURGE("times.interPurgeMillis", Kind.MILLIS, b -> b.times().interPurgeMillis()),
  /** Post-purge. */
  POST_PURGE("times.postPurgeMillis", Kind.MILLIS, b -> b.times().postPurgeMillis()),
  /** From proof to the circulating blower. */
  BLOWER_ON("times.blowerOnMillis", Kind.MILLIS, b -> b.times().blowerOnMillis()),
  /** From the end of the flame to the end of the blower. */
  BLOWER_OFF("times.blowerOffMillis", Kind.MILLIS, b -> b.times().blowerOffMillis()),
  /** Failed trials until soft lockout. */
  MOST_TRIALS("counting.mostTrials", Kind.WORD, b -> b.counting().mostTrials()),
  /** Lost flames in one call until soft lockout; 0: any number is allowed. */
  MOST_LOSSES("counting.mostLosses", Kind.WORD, b -> b.counting().mostLosses()),
  /** Lost flames that count as failed trials. */
  LOSS_COUNTS("counting.lossCounts", Kind.WORD, b -> b.counting().lossCounts()),
  /** A flame that holds this long clears the failed trials. */
  CLEAR_AFTER("counting.clearAfterMillis", Kind.MILLIS, b -> b.counting().clearAfterMillis()),
  /** Soft lockout ends by itself after. */
  LOCKOUT("counting.lockoutMillis", Kind.MILLIS, b -> b.counting().lockoutMillis()),
  /** Soft lockout ends without a call for. */
  CALL_RESET("counting.callResetMillis", Kind.MILLIS, b -> b.counting().callResetMillis()),
  /** Any lockout ends without power for. */
  POWER_RESET("counting.powerResetMillis", Kind.MILLIS, b -> b.counting().powerResetMillis()),
  /** A false flame has to be gone for, before the next start. */
  FALSE_FLAME_CLEAR(
      "counting.falseFlameClearMillis", Kind.MILLIS, b -> b.counting().falseFlameClearMillis()),
  /** A false flame ends in hard lockout after. */
  FALSE_FLAME_LOCKOUT(
      "counting.falseFlameLockoutMillis", Kind.MILLIS, b -> b.counting().falseFlameLockoutMillis()),
  /** Warm-up shorter after a success, longer after a failure, by. */
  LEARNING_STEP("learning.stepMillis", Kind.MILLIS, b -> learning(b, WarmUpLearning::stepMillis)),
  /** Learned warm-up, at least. */
  LEARNING_LEAST(
      "learning.leastMillis", Kind.MILLIS, b -> learning(b, WarmUpLearning::leastMillis)),
  /** Learned warm-up, at most. */
  LEARNING_MOST("learning.mostMillis", Kind.MILLIS, b -> learning(b, WarmUpLearning::mostMillis));

  /** How the value is read. */
  private enum Kind {
    AMPS,
    SECONDS,
    MILLIS,
    WORD
  }

  /** Reads the setting off a board; null where the board has none. */
  private interface Get extends Function<BoardSettings, @Nullable Object> {}

  private final String field;
  private final Kind kind;
  private final Get get;

  BoardNumber(String field, Kind kind, Get get) {
    this.field = field;
    this.kind = kind;
    this.get = get;
  }

  /** Where it stands in the file of a board. */
  public String field() {
    return field;
  }

  /** The value with its unit. */
  public String text(BoardSettings board, Sentences sentences) {
    Object value = get.apply(board);
    if (value == null) {
      return sentences.word("never");
    }
    return switch (kind) {
      case AMPS -> sentences.quantities().text((Double) value, Dimension.CURRENT);
      case SECONDS -> seconds(BigDecimal.valueOf((Double) value), sentences);
      case MILLIS -> seconds(BigDecimal.valueOf((Long) value, 3), sentences);
      case WORD -> word(value, sentences);
    };
  }

  private static String word(Object value, Sentences sentences) {
    if (value instanceof Boolean yes) {
      return sentences.word(yes ? "yes" : "no");
    }
    return value instanceof Enum<?> constant ? sentences.name(constant) : value.toString();
  }

  /** With no digit lost and none too many. */
  private static String seconds(BigDecimal seconds, Sentences sentences) {
    int decimals = Math.max(0, seconds.stripTrailingZeros().scale());
    return sentences.quantities().fixed(seconds.doubleValue(), DisplayUnit.SECOND, decimals);
  }

  private static @Nullable Object learning(
      BoardSettings board, ToLongFunction<WarmUpLearning> millis) {
    WarmUpLearning learning = board.learning();
    return learning == null ? null : (Object) millis.applyAsLong(learning);
  }
}
