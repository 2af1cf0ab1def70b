package halfwave.io;

import halfwave.display.Sentences;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.RejectedValueException;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The fields of one object of a JSON file.
 *
 * <pre>{@code
 * JsonFields f = value.fields("lengthMeters", "resistanceOhms");
 * return f.make(() -> new Wire(f.get("lengthMeters").number(), f.get("resistanceOhms").ohms()));
 * }</pre>
 */
public final class JsonFields {

  private final JsonValue object;

  JsonFields(JsonValue object) {
    this.object = object;
  }

  /** Whether the file has that field. */
  public boolean has(String name) {
    return object.has(name);
  }

  /** The names of all fields, in the order of the file. */
  public List<String> names() {
    return object.names();
  }

  /** Refuses a file of another format or version. */
  void checkFormat(String format, int version) {
    if (!get("format").text().equals(format)) {
      throw get("format").refused(Message.of(MessageKey.ALLOWED_KIND, Argument.text(format)));
    }
    if (get("version").wholeNumber() != version) {
      Argument one = Argument.text(Integer.toString(version));
      throw get("version").refused(Message.of(MessageKey.ALLOWED_ONE_OF, one));
    }
  }

  /** The field; where it is missing, the first question put to it is refused. */
  public JsonValue get(String name) {
    return object.child(name);
  }

  /** What the function makes of the field, or null where the file says null; never missing. */
  public <T> @Nullable T orNull(String name, Function<JsonValue, T> read) {
    return get(name).orNull(read);
  }

  /** What the function makes of the field, or the fallback where it is missing. */
  public <T> T orElse(String name, Function<JsonValue, T> read, T fallback) {
    return has(name) ? read.apply(get(name)) : fallback;
  }

  /**
   * Makes something of the fields, and turns the model's refusal into one that names the file, the
   * field's place in it, and the value as the file spells it.
   */
  public <T> T make(Supplier<T> maker) {
    try {
      return maker.get();
    } catch (RejectedValueException e) {
      JsonValue field = object;
      for (String name : e.field().split("\\.")) {
        field = field.child(name);
      }
      boolean found = object.has(e.field().replaceAll("\\..*", ""));
      throw found
          ? field.refused(Sentences.allowed(e))
          : BadInputException.ofField(
              object.file(), field.path(), Argument.text(e.value()), Sentences.allowed(e));
    }
  }
}
