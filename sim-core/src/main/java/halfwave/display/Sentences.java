package halfwave.display;

import halfwave.bench.Disorder;
import halfwave.bench.Parameter;
import halfwave.bench.Trigger;
import halfwave.board.FlameSignal;
import halfwave.board.Ignition;
import halfwave.board.LossCount;
import halfwave.board.Output;
import halfwave.board.Stage;
import halfwave.board.StatusCode;
import halfwave.circuit.Failure;
import halfwave.circuit.Part;
import halfwave.diagnosis.Entry;
import halfwave.diagnosis.Occasion;
import halfwave.evidence.Course;
import halfwave.explain.Rung;
import halfwave.fault.FaultGroup;
import halfwave.fault.FaultKind;
import halfwave.flame.FlameState;
import halfwave.flame.Fuel;
import halfwave.forecast.Rate;
import halfwave.grading.Criterion;
import halfwave.grading.MoveClass;
import halfwave.instrument.LeadEnd;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.SupplyPoint;
import halfwave.matching.ReadingKind;
import halfwave.matching.Unknown;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.message.Quantity;
import halfwave.quantity.RejectedValueException;
import halfwave.quiz.Ending;
import halfwave.quiz.Help;
import halfwave.quiz.Level;
import halfwave.quiz.Objective;
import halfwave.quiz.Phase;
import halfwave.quiz.Refusal;
import halfwave.quiz.Temptation;
import halfwave.work.Aspect;
import halfwave.work.Caution;
import halfwave.work.Cover;
import halfwave.work.Finding;
import halfwave.work.FurnacePart;
import halfwave.work.Handling;
import halfwave.work.Hazard;
import halfwave.work.Look;
import halfwave.work.MeterTest;
import halfwave.work.Preparation;
import halfwave.work.Proviso;
import halfwave.work.Repair;
import halfwave.work.StillOn;
import halfwave.work.Tool;
import halfwave.work.Work;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;

/**
 * Messages and names as text in one language, from the bundle {@code halfwave/display/sentences}. A
 * placeholder is a number in braces; nothing else in a sentence is special.
 */
public final class Sentences {

  /** The languages there are; the first serves whoever speaks none of them. */
  public static final List<Locale> LANGUAGES = Languages.in(Sentences.class.getClassLoader());

  /** The types whose constants have names in the bundle, besides the keys of messages. */
  public static final List<Class<? extends Enum<?>>> NAMED =
      List.of(
          Part.class,
          Failure.class,
          Rung.class,
          Parameter.class,
          Disorder.class,
          Trigger.class,
          FaultKind.class,
          FaultGroup.class,
          Course.class,
          Occasion.class,
          Entry.Result.class,
          Ignition.class,
          Fuel.class,
          FlameState.class,
          Stage.class,
          StatusCode.class,
          FlameSignal.class,
          LossCount.class,
          Output.class,
          BoardNumber.class,
          MeterFunction.class,
          LeadEnd.class,
          SupplyPoint.class,
          FurnacePart.class,
          Cover.class,
          Tool.class,
          Hazard.class,
          Caution.class,
          StillOn.class,
          Look.class,
          Finding.class,
          MeterTest.class,
          Repair.class,
          Handling.class,
          Aspect.class,
          Preparation.class,
          Proviso.class,
          Unknown.class,
          ReadingKind.class,
          Rate.class,
          Objective.class,
          Level.class,
          Temptation.class,
          Refusal.class,
          Ending.class,
          MoveClass.class,
          Criterion.class,
          Phase.class,
          Help.class);

  /** What has another name where the gas is lit by a spark. */
  static final List<Enum<?>> SPARK_NAMED = List.of(Look.IGNITER, Repair.REPLACE_IGNITER);

  /** The words that stand for a value. */
  static final List<String> WORDS = List.of("open", "never", "yes", "no");

  private final ResourceBundle bundle;
  private final QuantityText quantities;

  private Sentences(ResourceBundle bundle, QuantityText quantities) {
    this.bundle = bundle;
    this.quantities = quantities;
  }

  /** Sentences in the language of that locale, with metric units. */
  public static Sentences in(Locale locale) {
    return in(locale, UnitSystem.METRIC);
  }

  /** Sentences in the language of that locale, or English where there are none. */
  public static Sentences in(Locale locale, UnitSystem system) {
    ResourceBundle bundle =
        ResourceBundle.getBundle(
            "halfwave.display.sentences",
            locale,
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    // the language that was found decides on the decimal sign, so that the two never disagree
    Locale language = bundle.getLocale().getLanguage().isEmpty() ? Locale.ENGLISH : locale;
    return new Sentences(bundle, QuantityText.of(language, system));
  }

  /** Numbers as this language has them. */
  public QuantityText quantities() {
    return quantities;
  }

  /** The sentence of a message. */
  public String text(Message message) {
    List<String> arguments = message.arguments().stream().map(this::text).toList();
    return Placeholders.filled(pattern(message.key()), arguments);
  }

  /** The same as a sentence of its own: a name that it begins with gets its capital. */
  public String sentence(Message message) {
    String text = text(message);
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** The text of an argument. */
  public String text(Argument argument) {
    if (argument instanceof Quantity quantity) {
      return quantity.si() == Double.POSITIVE_INFINITY
          ? word("open")
          : quantities.text(quantity.si(), quantity.dimension());
    } else if (argument instanceof Argument.Count count) {
      return Long.toString(count.count());
    } else if (argument instanceof Argument.Text text) {
      return text.text();
    } else if (argument instanceof Argument.Name name) {
      return name(name.constant());
    } else if (argument instanceof Argument.Nested nested) {
      return text(nested.message());
    }
    throw new IllegalStateException("no text for " + argument);
  }

  /** The name of a thing. */
  public String name(Enum<?> constant) {
    return bundle.getString(bundleKey(constant));
  }

  /** The name of a stage where there is little room. */
  public String brief(Stage stage) {
    return bundle.getString(briefKey(stage));
  }

  /** The name of a work at an appliance that lights its gas so. */
  public String name(Work work, Ignition ignition) {
    Enum<?> constant = (Enum<?>) work;
    return SPARK_NAMED.contains(work) && !ignition.hotSurface()
        ? bundle.getString(sparkKey(constant))
        : name(constant);
  }

  /** Where the bundle keeps the name of a work where the gas is lit by a spark. */
  static String sparkKey(Enum<?> constant) {
    return "spark-" + bundleKey(constant);
  }

  /** The right way of what goes wrong, in a sentence. */
  public String rightWay(Handling handling) {
    return bundle.getString(rightKey(handling));
  }

  /** Where the bundle keeps the right way of a handling. */
  static String rightKey(Handling handling) {
    return "right-" + bundleKey(handling);
  }

  /** Where the bundle keeps the brief name of a stage. */
  static String briefKey(Stage stage) {
    return "brief-" + bundleKey(stage);
  }

  /** One of the few {@link #WORDS} that stand for a value. */
  String word(String word) {
    return bundle.getString("word." + word);
  }

  /** Yes or no. */
  public String truth(boolean truth) {
    return word(truth ? "yes" : "no");
  }

  /** What a shipped bench is, in a line; nothing for a bench of that name that a person made. */
  public Optional<String> bench(String name) {
    return described("bench." + name);
  }

  /** What a shipped board is, in a line; nothing for a board of that name that a person made. */
  public Optional<String> board(String name) {
    return described("board." + name);
  }

  /** What a shipped meter is, in a line; nothing for a meter of that name that a person made. */
  public Optional<String> meter(String name) {
    return described("meter." + name);
  }

  private Optional<String> described(String key) {
    return bundle.containsKey(key) ? Optional.of(bundle.getString(key)) : Optional.empty();
  }

  private String pattern(MessageKey key) {
    return bundle.getString(bundleKey(key));
  }

  /** Where the bundle keeps the sentence or name of a constant: {@code part.rod-film}. */
  static String bundleKey(Enum<?> constant) {
    String type =
        constant instanceof MessageKey ? "message" : constant.getDeclaringClass().getSimpleName();
    String hyphens = type.replaceAll("(?<=[a-z])(?=[A-Z])", "-");
    return (hyphens + "." + constant.name().replace('_', '-')).toLowerCase(Locale.ROOT);
  }

  /** What a field accepts, as a message. */
  public static Message allowed(RejectedValueException rejected) {
    return switch (rejected.allowed()) {
      case FINITE -> Message.of(MessageKey.ALLOWED_FINITE);
      case POSITIVE -> Message.of(MessageKey.ALLOWED_POSITIVE);
      case NOT_NEGATIVE -> Message.of(MessageKey.ALLOWED_NOT_NEGATIVE);
      case RESISTANCE -> Message.of(MessageKey.ALLOWED_RESISTANCE);
      case RANGE ->
          Message.of(MessageKey.ALLOWED_RANGE, bound(rejected.low()), bound(rejected.high()));
      case ENTRIES -> Message.of(MessageKey.ALLOWED_ENTRIES, bound(rejected.low()));
      case CLEAR_OF_BURNER -> Message.of(MessageKey.ALLOWED_CLEAR_OF_BURNER);
      case NAME -> Message.of(MessageKey.ALLOWED_NAME);
      case CONSISTENT -> Message.of(MessageKey.ALLOWED_CONSISTENT);
    };
  }

  /** A bound as a file spells it: a decimal comma would mislead whoever edits the file. */
  private static Argument bound(double value) {
    if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
      return Argument.text(Double.toString(value));
    }
    BigDecimal exact = BigDecimal.valueOf(value);
    String plain = value == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
    return Argument.text(plain.length() > 12 ? Double.toString(value) : plain);
  }
}
