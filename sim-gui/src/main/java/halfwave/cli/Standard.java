package halfwave.cli;

import halfwave.display.Sentences;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The options that every command has, and where its output goes. A mixin. */
public final class Standard {

  static final String LANGUAGE = "--language";

  @Spec(Spec.Target.MIXEE)
  private @Nullable CommandSpec spec;

  @Option(names = "--json", descriptionKey = "json")
  private boolean json;

  @Option(
      names = LANGUAGE,
      paramLabel = "CODE",
      completionCandidates = Language.Codes.class,
      descriptionKey = "language")
  private @Nullable Language language;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      descriptionKey = "help")
  private boolean help;

  /** Whether the answer is for a program. */
  public boolean json() {
    return json;
  }

  /** Whether help was asked for. */
  public boolean help() {
    return help;
  }

  /** Where answers go. */
  public PrintWriter out() {
    return spec().commandLine().getOut();
  }

  /** Sentences in the language of this command line. */
  public Sentences sentences() {
    return language().sentences();
  }

  /** The language of this command line. */
  public Language language() {
    HalfwaveCommand root = (HalfwaveCommand) spec().root().userObject();
    return language == null ? root.language() : language;
  }

  /** The command this belongs to. */
  CommandSpec spec() {
    if (spec == null) {
      throw new IllegalStateException("no command yet");
    }
    return spec;
  }

  /** What to throw where something has to be named that is not. */
  CommandFailedException missing(String what) {
    return new CommandFailedException(
        Failures.BAD_INPUT,
        Message.of(
            MessageKey.USAGE_MISSING_ARGUMENT,
            Argument.text(spec().qualifiedName()),
            Argument.text(what)));
  }
}
