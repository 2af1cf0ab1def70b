package halfwave.io.sequence;

import halfwave.display.QuantityReader;
import halfwave.io.BadInputException;
import halfwave.io.JsonValue;
import halfwave.io.Typed;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import java.math.BigDecimal;
import java.util.OptionalLong;

/** Times as people type them, {@code 45s}, {@code 2min}, {@code 0.5h}, in whole milliseconds. */
public final class TimeWords {

  /** The longest time that a script may last: seven days. */
  public static final long LONGEST_MILLIS = 7 * 86_400_000L;

  private TimeWords() {}

  /**
   * The time that was typed.
   *
   * @param least smallest that is allowed (ms)
   * @param most largest that is allowed (ms)
   * @throws BadInputException naming the place, the time and what is allowed there
   */
  public static long millis(Typed where, String text, long least, long most) {
    double seconds = QuantityReader.si(text, Dimension.TIME).orElse(Double.NaN);
    return whole(seconds, least, most).orElseThrow(() -> where.refused(text, allowed(least, most)));
  }

  /**
   * The time that a file has, in seconds.
   *
   * @param least smallest that is allowed (ms)
   * @param most largest that is allowed (ms)
   * @throws BadInputException naming the field, the time and what is allowed there
   */
  public static long millis(JsonValue value, long least, long most) {
    return whole(value.number(), least, most)
        .orElseThrow(() -> value.refused(allowed(least, most)));
  }

  private static OptionalLong whole(double seconds, long least, long most) {
    double millis = Math.rint(seconds * 1000);
    return seconds >= 0 && millis >= least && millis <= most
        ? OptionalLong.of((long) millis)
        : OptionalLong.empty();
  }

  /** What a time may be. */
  public static Message allowed(long least, long most) {
    return Message.of(MessageKey.ALLOWED_TIME, seconds(least), seconds(most));
  }

  /** To the millisecond, as it may be typed. */
  private static Argument seconds(long millis) {
    return Argument.text(BigDecimal.valueOf(millis, 3).stripTrailingZeros().toPlainString() + "s");
  }
}
