package halfwave.cli;

import halfwave.display.Sentences;
import halfwave.io.BadInputException;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.io.PrintWriter;
import java.util.Objects;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Turns every failure into one line of standard error and an exit status. */
final class Failures {

  /** Bad usage or bad input. */
  static final int BAD_INPUT = 2;

  /** A failure that is ours. */
  static final int INTERNAL = 1;

  private final Sentences sentences;

  Failures(Sentences sentences) {
    this.sentences = sentences;
  }

  /** Answers a command line that cannot be parsed. */
  int badUsage(ParameterException e, String[] args) {
    CommandLine line = e.getCommandLine();
    Argument command = Argument.text(line.getCommandSpec().qualifiedName());
    say(line.getErr(), sentences.text(message(e, command)));
    return BAD_INPUT;
  }

  private static Message message(ParameterException e, Argument command) {
    if (e instanceof UnmatchedArgumentException unmatched) {
      return Message.of(
          MessageKey.USAGE_UNKNOWN_ARGUMENT,
          command,
          Argument.text(unmatched.getUnmatched().get(0)));
    }
    if (e instanceof MissingParameterException missing) {
      String names =
          missing.getMissing().stream().map(Failures::label).collect(Collectors.joining(", "));
      return Message.of(MessageKey.USAGE_MISSING_ARGUMENT, command, Argument.text(names));
    }
    ArgSpec argument = e.getArgSpec();
    if (argument != null && e.getValue() != null) {
      return Message.of(
          MessageKey.USAGE_BAD_VALUE,
          command,
          Argument.text(label(argument)),
          Argument.text(e.getValue()),
          Argument.nested(allowed(argument)));
    }
    return Message.of(MessageKey.USAGE_BAD, command);
  }

  private static Message allowed(ArgSpec argument) {
    Class<?> type = argument.type();
    if (type == Language.class) {
      String codes = Language.all().stream().map(Language::code).collect(Collectors.joining(", "));
      return Message.of(MessageKey.ALLOWED_ONE_OF, Argument.text(codes));
    }
    return Message.of(
        type == Integer.class || type == int.class || type == Long.class
            ? MessageKey.ALLOWED_WHOLE_NUMBER
            : MessageKey.ALLOWED_CONSISTENT);
  }

  private static String label(ArgSpec argument) {
    return argument.isOption()
        ? ((CommandLine.Model.OptionSpec) argument).longestName()
        : argument.paramLabel();
  }

  /** Answers a command that failed. */
  int duringExecution(Exception e, CommandLine line, ParseResult parsed) {
    if (e instanceof BadInputException bad) {
      say(line.getErr(), bad.line(sentences));
      return BAD_INPUT;
    }
    if (e instanceof CommandFailedException failed) {
      say(line.getErr(), sentences.text(failed.said()));
      return failed.status();
    }
    return internal(line.getErr(), e);
  }

  /** Answers what nobody foresaw. */
  int internal(PrintWriter err, Throwable e) {
    String what = e.getClass().getSimpleName() + ": " + Objects.toString(e.getMessage(), "");
    say(err, sentences.text(Message.of(MessageKey.INTERNAL_FAILURE, Argument.text(what))));
    return INTERNAL;
  }

  /** One line, whatever the text holds. */
  private static void say(PrintWriter err, String text) {
    err.println(text.replaceAll("\\p{Cntrl}+", " "));
    err.flush();
  }
}
