package halfwave.cli;

import halfwave.instrument.MeterModel;
import halfwave.instrument.ShippedMeters;
import halfwave.io.Typed;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What a command line means by a meter: the name of a shipped one, the good one without it. */
final class MeterArgument {

  static final String OPTION = "--meter";

  private MeterArgument() {}

  /** The meter that is meant. */
  static MeterModel resolve(String command, @Nullable String typed) {
    if (typed == null) {
      return ShippedMeters.service();
    }
    return ShippedMeters.all().stream()
        .filter(m -> m.name().equals(typed))
        .findFirst()
        .orElseThrow(() -> new Typed(command, OPTION).refused(typed, allowed()));
  }

  private static Message allowed() {
    String names =
        ShippedMeters.all().stream().map(MeterModel::name).collect(Collectors.joining(", "));
    return Message.of(MessageKey.ALLOWED_ONE_OF, Argument.text(names));
  }
}
