package halfwave.io.evidence;

import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Priors;
import halfwave.fault.FaultKind;
import halfwave.io.BadInputException;
import halfwave.io.JsonFields;
import halfwave.io.JsonFile;
import halfwave.io.JsonValue;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.work.Hazard;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The file of the judgement that weighs causes, dangers and mistakes, {@code "format":
 * "halfwave-priors", "version": 1}. Its schema is {@code docs/schemas/priors.schema.json}.
 */
public final class PriorsFile {

  static final String FORMAT = "halfwave-priors";
  static final int VERSION = 1;

  private static final String SHIPPED = "/halfwave/diagnosis/priors.json";

  private PriorsFile() {}

  /**
   * Reads a file.
   *
   * @throws BadInputException if anything in it is not as the schema says
   */
  public static Priors read(Path file) {
    return of(JsonFile.read(file));
  }

  /** The judgement that comes with the program. */
  public static Priors shipped() {
    return of(JsonFile.parse(SHIPPED, shippedBytes()));
  }

  /** The file that comes with the program, to be edited. */
  public static byte[] shippedBytes() {
    try (InputStream stream =
        Objects.requireNonNull(PriorsFile.class.getResourceAsStream(SHIPPED))) {
      return stream.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Priors of(JsonValue value) {
    JsonFields f =
        value.file(
            FORMAT,
            VERSION,
            "format",
            "version",
            "label",
            "healthy",
            "kinds",
            "pairs",
            "hazardMinutes",
            "costUnitSeconds",
            "misreadProbability",
            "misrememberedProbability",
            "outlierProbability",
            "mishapProbability");
    f.get("label").text();
    return f.make(
        () ->
            new Priors(
                f.get("healthy").number(),
                whole(f.get("kinds"), FaultKind.class),
                pairs(f.get("pairs")),
                whole(f.get("hazardMinutes"), Hazard.class),
                f.get("costUnitSeconds").number(),
                f.get("misreadProbability").number(),
                f.get("misrememberedProbability").number(),
                f.get("outlierProbability").number(),
                f.get("mishapProbability").number()));
  }

  private static <K extends Enum<K>> Map<K, Double> whole(JsonValue value, Class<K> type) {
    String[] names =
        Stream.of(type.getEnumConstants()).map(JsonValue::spelling).toArray(String[]::new);
    JsonFields f = value.fields(names);
    Map<K, Double> map = new EnumMap<>(type);
    for (K constant : type.getEnumConstants()) {
      map.put(constant, f.get(JsonValue.spelling(constant)).number());
    }
    return map;
  }

  private static Map<Cause, Double> pairs(JsonValue value) {
    Map<Cause, Double> pairs = new LinkedHashMap<>();
    for (JsonValue entry : value.list(v -> v)) {
      JsonFields f = entry.fields("kinds", "weight");
      List<FaultKind> kinds = f.get("kinds").list(PriorsFile::kind);
      if (kinds.size() != 2 || kinds.get(0) == kinds.get(1)) {
        throw f.get("kinds").refused(Message.of(MessageKey.ALLOWED_LIST_OF, Argument.count(2)));
      }
      pairs.put(new Cause(kinds), f.get("weight").number());
    }
    return pairs;
  }

  private static FaultKind kind(JsonValue value) {
    String names =
        Stream.of(FaultKind.values()).map(FaultKind::id).collect(Collectors.joining(", "));
    return FaultKind.named(value.text())
        .orElseThrow(
            () -> value.refused(Message.of(MessageKey.ALLOWED_FAULT, Argument.text(names))));
  }
}
