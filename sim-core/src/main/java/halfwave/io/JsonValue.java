package halfwave.io;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import halfwave.display.QuantityReader;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * One value of a JSON file, and where it stands. Each question either has its answer or throws
 * {@link BadInputException}; a value that is missing answers no question.
 */
public final class JsonValue {

  /** The word for an infinite resistance, since JSON has no infinity. */
  public static final String OPEN = "open";

  /** The word for an infinite time. */
  public static final String NEVER = "never";

  private final String file;
  private final String path;
  private final JsonNode node;
  private final boolean mayBeNull;

  JsonValue(String file, String path, JsonNode node) {
    this(file, path, node, false);
  }

  private JsonValue(String file, String path, JsonNode node, boolean mayBeNull) {
    this.file = file;
    this.path = path;
    this.node = node;
    this.mayBeNull = mayBeNull;
  }

  /** Name of the file, for messages. */
  public String file() {
    return file;
  }

  /** Where the value stands, such as {@code [2].circuit.lead}; empty for the whole file. */
  public String path() {
    return path;
  }

  /** Whether it is an object. */
  public boolean isObject() {
    return node.isObject();
  }

  /** Whether it is a text. */
  public boolean isText() {
    return node.isTextual();
  }

  /** Whether it is a list. */
  public boolean isList() {
    return node.isArray();
  }

  /**
   * The object's fields.
   *
   * @param names all fields that may stand there; any other is refused by its name
   */
  public JsonFields fields(String... names) {
    JsonFields fields = anyFields();
    List<String> known = Arrays.asList(names);
    node.fieldNames()
        .forEachRemaining(
            name -> {
              if (!known.contains(name)) {
                throw fields
                    .get(name)
                    .refused(
                        Message.of(
                            MessageKey.ALLOWED_FIELDS, Argument.text(String.join(", ", known))));
              }
            });
    return fields;
  }

  /**
   * The fields of a whole file. Its format is asked first: what another file is made of says little
   * to whoever took the wrong one.
   *
   * @param format the word that stands in its field {@code format}
   * @param version the number that stands in its field {@code version}
   * @param names all fields that may stand there, those two too
   * @throws BadInputException if it is no object, of another format or version, or has other fields
   */
  public JsonFields file(String format, int version, String... names) {
    anyFields().checkFormat(format, version);
    return fields(names);
  }

  /** The object's fields where others may stand beside those that are read. */
  public JsonFields anyFields() {
    if (!node.isObject()) {
      throw refused(Message.of(MessageKey.ALLOWED_OBJECT));
    }
    return new JsonFields(this);
  }

  /** A finite number. */
  public double number() {
    double value = node.isNumber() ? node.doubleValue() : Double.NaN;
    if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
      throw refused(Message.of(MessageKey.ALLOWED_FINITE));
    }
    return value;
  }

  /** A number of ohms, or {@value #OPEN} for infinity; the sign is for the model to judge. */
  public double ohms() {
    if (node.isTextual() && node.textValue().equals(OPEN)) {
      return Double.POSITIVE_INFINITY;
    }
    double value = node.isNumber() ? node.doubleValue() : Double.NaN;
    if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
      throw refused(Message.of(MessageKey.ALLOWED_RESISTANCE));
    }
    return value;
  }

  /**
   * A number in SI, {@value #OPEN} for infinite ohms, or a text as a person types it in a command.
   *
   * @param dimension what it is a number of
   * @param allowed what a refusal asks for
   * @throws BadInputException if it is neither, or its unit is one of something else
   */
  public double typed(Dimension dimension, Message allowed) {
    if (!node.isTextual()) {
      return number();
    }
    if (dimension == Dimension.RESISTANCE && node.textValue().equals(OPEN)) {
      return Double.POSITIVE_INFINITY;
    }
    return QuantityReader.si(node.textValue(), dimension).orElseThrow(() -> refused(allowed));
  }

  /** A number of seconds, or {@value #NEVER} for infinity. */
  public double orNever() {
    return node.isTextual() && node.textValue().equals(NEVER) ? Double.POSITIVE_INFINITY : number();
  }

  /** A whole number, such as a count or a seed; 5.0 is not one. */
  public long wholeNumber() {
    if (!(node.isIntegralNumber() && node.canConvertToLong())) {
      throw refused(Message.of(MessageKey.ALLOWED_WHOLE_NUMBER));
    }
    return node.longValue();
  }

  /** True or false. */
  public boolean truth() {
    if (!node.isBoolean()) {
      throw refused(Message.of(MessageKey.ALLOWED_TRUTH));
    }
    return node.booleanValue();
  }

  /** A text. */
  public String text() {
    if (!node.isTextual()) {
      throw refused(Message.of(MessageKey.ALLOWED_TEXT));
    }
    return node.textValue();
  }

  /** A place on the disk, as {@link Path#toString} spells it. */
  public Path place() {
    try {
      return Path.of(text());
    } catch (InvalidPathException e) {
      throw refused(Message.of(MessageKey.ALLOWED_WRITABLE_FILE));
    }
  }

  /** One of an enum's constants, spelt in lower case with hyphens. */
  public <E extends Enum<E>> E oneOf(Class<E> type) {
    return oneOf(List.of(type.getEnumConstants()));
  }

  /** The same, one of some of them. */
  public <E extends Enum<E>> E oneOf(List<E> constants) {
    for (E constant : constants) {
      if (node.isTextual() && node.textValue().equals(spelling(constant))) {
        return constant;
      }
    }
    String words = constants.stream().map(JsonValue::spelling).collect(Collectors.joining(", "));
    throw refused(Message.of(MessageKey.ALLOWED_ONE_OF, Argument.text(words)));
  }

  /** What a number has to lie between, ends included. */
  public static Message between(double low, double high) {
    return Message.of(
        MessageKey.ALLOWED_RANGE,
        Argument.quantity(low, Dimension.NUMBER),
        Argument.quantity(high, Dimension.NUMBER));
  }

  /** How a file spells an enum's constant: {@code ROD_FILM} as {@code rod-film}. */
  public static String spelling(Enum<?> constant) {
    return constant.name().replace('_', '-').toLowerCase(Locale.ROOT);
  }

  /** What the function makes of the value, or null where the file says null. */
  public <T> @Nullable T orNull(Function<JsonValue, T> read) {
    return node.isNull() ? null : read.apply(new JsonValue(file, path, node, true));
  }

  /** A list, each entry read by the function; it may be empty. */
  public <T> List<T> list(Function<JsonValue, T> read) {
    return entries().stream().map(read).toList();
  }

  /** The same, refused with that message where it is empty. */
  public <T> List<T> filledList(Function<JsonValue, T> read, Message allowed) {
    List<T> list = list(read);
    if (list.isEmpty()) {
      throw refused(allowed);
    }
    return list;
  }

  /** A list of exactly so many finite numbers: three for a point in space. */
  public double[] numbers(int count) {
    List<JsonValue> entries = entries();
    if (entries.size() != count) {
      throw refused(Message.of(MessageKey.ALLOWED_LIST_OF, Argument.count(count)));
    }
    return entries.stream().mapToDouble(JsonValue::number).toArray();
  }

  private List<JsonValue> entries() {
    if (!node.isArray()) {
      throw refused(Message.of(MessageKey.ALLOWED_LIST));
    }
    return new ArrayList<>(
        IntStream.range(0, node.size())
            .mapToObj(k -> new JsonValue(file, path + "[" + k + "]", node.get(k)))
            .toList());
  }

  /** The value of that name in this object; one that is missing where there is none. */
  public JsonValue child(String name) {
    JsonNode found = node.get(name);
    return new JsonValue(
        file,
        path.isEmpty() ? name : path + "." + name,
        found == null ? MissingNode.getInstance() : found);
  }

  /** The names of this object's fields, in the order of the file. */
  List<String> names() {
    List<String> names = new ArrayList<>();
    node.fieldNames().forEachRemaining(names::add);
    return names;
  }

  /** Whether the object has a field of that name. */
  public boolean has(String name) {
    return node.has(name);
  }

  /** The refusal of this value. */
  public BadInputException refused(Message allowed) {
    Message all =
        mayBeNull ? Message.of(MessageKey.ALLOWED_OR_NULL, Argument.nested(allowed)) : allowed;
    return path.isEmpty()
        ? BadInputException.ofFile(file, all)
        : BadInputException.ofField(file, path, shown(), all);
  }

  private Argument shown() {
    return node.isMissingNode()
        ? Argument.nested(Message.of(MessageKey.VALUE_MISSING))
        : Argument.text(JsonFile.shortened(node.isNumber() ? node.asText() : node.toString()));
  }
}
