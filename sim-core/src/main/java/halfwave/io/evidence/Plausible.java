package halfwave.io.evidence;

import halfwave.display.QuantityReader;
import halfwave.io.BadInputException;
import halfwave.io.JsonValue;
import halfwave.io.Typed;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** Numbers that can be, where only some can; recognises a slip of the unit. */
public final class Plausible {

  /** A slip is by a prefix or two. */
  private static final double[] SLIPS = {1e-9, 1e-6, 1e-3, 1e3, 1e6, 1e9};

  /** So much off the usual a number may be and still be meant. */
  private static final double NEAR_RATIO = 100;

  private final Dimension dimension;
  private final double least;
  private final double most;
  private final double usual;

  /**
   * Numbers of a kind.
   *
   * @param dimension their kind
   * @param least smallest, SI
   * @param most largest, SI
   * @param usual about what they are, SI; above zero
   */
  public Plausible(Dimension dimension, double least, double most, double usual) {
    this.dimension = dimension;
    this.least = least;
    this.most = most;
    this.usual = usual;
  }

  /**
   * The number that was typed, in SI.
   *
   * @throws BadInputException naming the place, what was typed and what is allowed there
   */
  public double read(Typed where, String typed) {
    double si = QuantityReader.si(typed, dimension).orElse(Double.NaN);
    objection(si)
        .ifPresent(
            message -> {
              throw where.refused(typed, message);
            });
    return si;
  }

  /** The number that a file has, in SI or as text with its unit. */
  double read(JsonValue value) {
    double si = value.typed(dimension, objection(Double.NaN).orElseThrow());
    objection(si)
        .ifPresent(
            message -> {
              throw value.refused(message);
            });
    return si;
  }

  /** What is wrong with a number in SI, NaN for none; nothing where it can be. */
  private Optional<Message> objection(double si) {
    if (si >= least && si <= most) {
      return Optional.empty();
    }
    Message range =
        Message.of(
            MessageKey.ALLOWED_RANGE,
            Argument.quantity(least, dimension),
            Argument.quantity(most, dimension));
    return Optional.of(
        meant(si)
            .map(
                m ->
                    Message.of(
                        MessageKey.ALLOWED_DID_YOU_MEAN,
                        Argument.nested(range),
                        Argument.quantity(m, dimension)))
            .orElse(range));
  }

  /** Of the numbers that another prefix makes, the one nearest to the usual. */
  private Optional<Double> meant(double si) {
    return DoubleStream.of(SLIPS)
        .mapToObj(slip -> si * slip)
        .filter(m -> m >= least && m <= most && offRatio(m) <= NEAR_RATIO)
        .min(Comparator.comparingDouble(this::offRatio));
  }

  private double offRatio(double si) {
    double ratio = Math.abs(si) / usual;
    return Math.max(ratio, 1 / ratio);
  }
}
