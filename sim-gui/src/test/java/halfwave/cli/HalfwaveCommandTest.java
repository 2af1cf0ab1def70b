package halfwave.cli;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.display.Sentences;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Enumeration;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;

/** What all commands have in common: help, languages, bad usage, internal failures. */
class HalfwaveCommandTest {

  @Test
  void helpNamesCommandsAndCaution() {
    CommandRun run = CommandRun.of("--help");

    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains("Usage: halfwave", "circuit", "spice", "turn off gas");
  }

  @Test
  void helpSpeaksSpanish() {
    assertThat(CommandRun.of("spice", "--help", "--language=es").out())
        .contains("Uso: halfwave spice", "Opciones:");
    assertThat(CommandRun.in(Locale.forLanguageTag("es"), "--help").out()).contains("Órdenes:");
  }

  /** Every command and every option says what it does, in each language. */
  @ParameterizedTest
  @MethodSource("halfwave.cli.Language#all")
  void everythingIsDescribed(Language language) {
    Deque<CommandLine> left = new ArrayDeque<>();
    left.add(HalfwaveCommand.commandLine(language, new Failures(language.sentences())));
    int described = 0;
    while (!left.isEmpty()) {
      CommandLine command = left.remove();
      left.addAll(command.getSubcommands().values());
      assertThat(command.getCommandSpec().usageMessage().description())
          .as(command.getCommandName())
          .isNotEmpty();
      for (ArgSpec argument : command.getCommandSpec().args()) {
        assertThat(argument.description()).as(argument.toString()).isNotEmpty();
        described++;
      }
      for (String option : new String[] {"--json", "--help", "--language"}) {
        assertThat(command.getCommandSpec().findOption(option)).as(option).isNotNull();
      }
    }
    assertThat(described).isGreaterThan(10);
  }

  @Test
  void bundlesHaveTheSameKeys() {
    Set<String> english = keys(Locale.ENGLISH);

    assertThat(keys(Locale.forLanguageTag("es"))).isEqualTo(english);
  }

  private static Set<String> keys(Locale locale) {
    ResourceBundle bundle =
        ResourceBundle.getBundle(
            "halfwave.cli.commands",
            locale,
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    Set<String> keys = new TreeSet<>();
    // keys without the parent's: what this language itself has
    Enumeration<String> all = bundle.getKeys();
    while (all.hasMoreElements()) {
      keys.add(all.nextElement());
    }
    return keys;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "circuit|halfwave circuit: FILE is missing: allowed is what halfwave circuit --help shows",
        "circuit --nonsense a|halfwave circuit: argument --nonsense is not known: allowed is what"
            + " halfwave circuit --help shows",
        "circuit a b|halfwave circuit: argument b is not known: allowed is what"
            + " halfwave circuit --help shows",
        "circuit --js a|halfwave circuit: argument --js is not known: allowed is what"
            + " halfwave circuit --help shows",
        "nonsense|halfwave: argument nonsense is not known: allowed is what halfwave --help shows",
        "spice a -o|halfwave spice: --output is missing: allowed is what halfwave spice --help shows"
      })
  void badUsageIsOneLine(String args, String line) {
    CircuitCommandTest.refused(CommandRun.of(args.split(" ")), line);
  }

  @Test
  void anUnknownLanguageIsRefusedWithThoseThereAre() {
    String codes = Language.all().stream().map(Language::code).collect(Collectors.joining(", "));
    CircuitCommandTest.refused(
        CommandRun.of("circuit", "--language", "xx", "a"),
        "halfwave circuit: --language = xx: allowed is one of " + codes);
  }

  @Test
  void badUsageSpeaksSpanish() {
    CircuitCommandTest.refused(
        CommandRun.of("--language", "es", "circuit"),
        "halfwave circuit: falta FILE: se admite lo que muestra halfwave circuit --help");
  }

  @Test
  void internalFailureIsOneLineWithoutItsStack() {
    StringWriter err = new StringWriter();
    Failures failures = new Failures(Sentences.in(Locale.ENGLISH));

    int status = failures.internal(new PrintWriter(err), new IllegalStateException("a\nb"));

    assertThat(status).isEqualTo(1);
    assertThat(err.toString().lines())
        .containsExactly(
            "halfwave: internal failure, please report it: IllegalStateException: a b");
  }
}
