package halfwave.cli;

import halfwave.bench.Parameter;
import halfwave.display.QuantityReader;
import halfwave.display.Sentences;
import halfwave.explain.Axis;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.RejectedValueException;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads {@code NAME=FROM:TO:COUNT[:log]}, or says what is wrong with it. */
final class AxisOption {

  static final String OPTION = "--vary";

  private static final String EXAMPLE = "rod-up=-10mm:10mm:41";

  private static final Pattern FORM = Pattern.compile("([^=]+)=([^:]+):([^:]+):(\\d{1,9})(:log)?");

  private final String command;

  AxisOption(String command) {
    this.command = command;
  }

  /** The axis that was typed. */
  Axis axis(String typed) {
    Matcher form = FORM.matcher(typed);
    if (!form.matches()) {
      throw refused(OPTION, typed, Message.of(MessageKey.ALLOWED_AXIS, Argument.text(EXAMPLE)));
    }
    Parameter parameter =
        Parameter.named(form.group(1))
            .orElseThrow(
                () ->
                    refused(
                        OPTION,
                        form.group(1),
                        Message.of(MessageKey.ALLOWED_ONE_OF, Argument.text(names()))));
    double from = number(parameter, "from", form.group(2));
    double to = number(parameter, "to", form.group(3));
    int count = Integer.parseInt(form.group(4));
    try {
      return form.group(5) == null
          ? Axis.linear(parameter, from, to, count)
          : Axis.logarithmic(parameter, from, to, count);
    } catch (RejectedValueException e) {
      throw refused(place(parameter, e.field()), e);
    }
  }

  /** The refusal of what a sweep does not take. */
  CommandFailedException refused(String place, RejectedValueException e) {
    String value = e.value().endsWith(".0") ? e.value().replaceAll("\\.0$", "") : e.value();
    return refused(place, value, Sentences.allowed(e));
  }

  CommandFailedException refused(String place, String value, Message allowed) {
    return new CommandFailedException(
        Failures.BAD_INPUT,
        Message.of(
            MessageKey.USAGE_BAD_VALUE,
            Argument.text(command),
            Argument.text(place),
            Argument.text(value),
            Argument.nested(allowed)));
  }

  private double number(Parameter parameter, String field, String typed) {
    OptionalDouble si = QuantityReader.si(typed, parameter.dimension());
    return si.orElseThrow(
        () ->
            refused(
                place(parameter, field),
                typed,
                Message.of(
                    MessageKey.ALLOWED_RANGE,
                    Argument.quantity(parameter.low(), parameter.dimension()),
                    Argument.quantity(parameter.high(), parameter.dimension()))));
  }

  private static String place(Parameter parameter, String field) {
    return OPTION + " " + parameter.id() + " " + field;
  }

  private static String names() {
    return Stream.of(Parameter.values()).map(Parameter::id).collect(Collectors.joining(", "));
  }
}
