package halfwave.cli;

import halfwave.io.Typed;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.paper.PaperSize;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which sheets pages are made for. A mixin. */
final class PaperOption {

  static final String OPTION = "--paper";

  @Option(names = OPTION, paramLabel = "a4|letter", descriptionKey = "paper")
  private @Nullable String paper;

  /** Whether somebody said which. */
  boolean given() {
    return paper != null;
  }

  /**
   * The sheets; without a word those that are usual where the program runs.
   *
   * @throws halfwave.io.BadInputException where the word is none of them
   */
  PaperSize size(String command) {
    String wanted = paper;
    if (wanted == null) {
      return PaperSize.usual(Locale.getDefault());
    }
    return PaperSize.of(wanted)
        .orElseThrow(
            () ->
                new Typed(command, OPTION)
                    .refused(
                        wanted,
                        Message.of(
                            MessageKey.ALLOWED_ONE_OF,
                            Argument.text(
                                Arrays.stream(PaperSize.values())
                                    .map(PaperSize::code)
                                    .collect(Collectors.joining(", "))))));
  }
}
