package halfwave.io.bench;

import halfwave.bench.Trigger;
import halfwave.display.QuantityReader;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.io.JsonValue;
import halfwave.io.Typed;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import java.util.Optional;

/**
 * A kind of fault in words: {@code [TRIGGER:]KIND[=SEVERITY]}, such as {@code rod-fouled} or {@code
 * vibration:connector-off}.
 */
public final class FaultWords {

  private FaultWords() {}

  /** The fault, or nothing where the word names no kind. */
  public static Optional<Fault> fault(Typed where, String text) {
    int colon = text.indexOf(':');
    String rest = text.substring(colon + 1);
    int equals = rest.indexOf('=');
    String word = equals < 0 ? rest : rest.substring(0, equals);
    Optional<FaultKind> kind = FaultKind.named(word);
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    Fault fault =
        equals < 0
            ? Fault.typical(kind.get())
            : severe(where.then(word), kind.get(), rest.substring(equals + 1));
    return Optional.of(
        colon < 0
            ? fault
            : fault.during(ChangeWords.oneOf(where, Trigger.class, text.substring(0, colon))));
  }

  private static Fault severe(Typed where, FaultKind kind, String text) {
    Dimension dimension =
        kind.dimension()
            .orElseThrow(() -> where.refused(text, Message.of(MessageKey.ALLOWED_NO_SEVERITY)));
    boolean open = dimension == Dimension.RESISTANCE && text.equals(JsonValue.OPEN);
    double si =
        open ? Double.POSITIVE_INFINITY : QuantityReader.si(text, dimension).orElse(Double.NaN);
    if (!(si >= kind.least() && si <= kind.most())) {
      throw where.refused(
          text,
          Message.of(
              MessageKey.ALLOWED_RANGE,
              Argument.quantity(kind.least(), dimension),
              Argument.quantity(kind.most(), dimension)));
    }
    return Fault.of(kind, si);
  }
}
