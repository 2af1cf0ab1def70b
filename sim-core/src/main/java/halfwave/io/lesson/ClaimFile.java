package halfwave.io.lesson;

import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.board.Stage;
import halfwave.board.StatusCode;
import halfwave.instrument.MeterFunction;
import halfwave.io.JsonFields;
import halfwave.io.JsonValue;
import halfwave.io.sequence.LeadWords;
import halfwave.lesson.Claim;
import halfwave.lesson.Reading;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.message.Quantity;
import halfwave.quantity.Dimension;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A claim as the file of a demonstration holds it; reads and writes it.
 *
 * <pre>
 * {"reading": R, "least": 1.5e-6, "most": "2.2µA"}      at the end
 * {"reading": R, "leastRatio": 0.9, "mostRatio": 1.1}   end over beginning
 * {"stage": "run"}   {"code": "weak-flame"}
 * {"enters": "trial", "least": 4, "most": 4}            meanwhile; without both, at least once
 * R = display-amps | display-volts | display-ohms | signal | burners
 *   | {"function": "dc-microamps", "leads": "series-board"}
 * </pre>
 */
final class ClaimFile {

  /** No claim counts further; without a most any number will do. */
  private static final int MOST_TIMES = 1000;

  private static final String SIGNAL = "signal";
  private static final String BURNERS = "burners";

  /** The readings that need one word only. */
  private static final Map<String, Reading> WORDS =
      new TreeMap<>(
          Map.of(
              "display-amps",
              new Reading.Display(Dimension.CURRENT),
              "display-volts",
              new Reading.Display(Dimension.VOLTAGE),
              "display-ohms",
              new Reading.Display(Dimension.RESISTANCE),
              SIGNAL,
              new Reading.Signal(),
              BURNERS,
              new Reading.Burners()));

  private ClaimFile() {}

  static Claim claim(JsonValue value) {
    JsonFields any = value.anyFields();
    if (any.has("stage")) {
      return new Claim.At(value.fields("stage").get("stage").oneOf(Stage.class));
    } else if (any.has("code")) {
      return new Claim.Shows(value.fields("code").get("code").oneOf(StatusCode.class));
    } else if (any.has("enters")) {
      return enters(value.fields("enters", "least", "most"));
    } else if (any.has("reading")) {
      return any.has("leastRatio") || any.has("mostRatio")
          ? compared(value.fields("reading", "leastRatio", "mostRatio"))
          : between(value.fields("reading", "least", "most"));
    }
    throw value.refused(
        Message.of(MessageKey.ALLOWED_CLAIM, Argument.text("reading, stage, code, enters")));
  }

  private static Claim enters(JsonFields f) {
    int least = count(f, "least", 0, f.has("most") ? 0 : 1);
    int most = count(f, "most", least, Integer.MAX_VALUE);
    return new Claim.Enters(f.get("enters").oneOf(Stage.class), least, most);
  }

  private static int count(JsonFields f, String name, int smallest, int fallback) {
    if (!f.has(name)) {
      return fallback;
    }
    long count = f.get(name).wholeNumber();
    if (!(count >= smallest && count <= MOST_TIMES)) {
      throw f.get(name).refused(JsonValue.between(smallest, MOST_TIMES));
    }
    return (int) count;
  }

  private static Claim compared(JsonFields f) {
    double least = f.orElse("leastRatio", JsonValue::number, 0.0);
    if (!(least >= 0)) {
      throw f.get("leastRatio").refused(Message.of(MessageKey.ALLOWED_NOT_NEGATIVE));
    }
    double most = f.orElse("mostRatio", JsonValue::number, Double.POSITIVE_INFINITY);
    if (!(most >= least)) {
      throw f.get("mostRatio").refused(Message.of(MessageKey.ALLOWED_CONSISTENT));
    }
    return new Claim.Compared(reading(f.get("reading")), least, most);
  }

  private static Claim between(JsonFields f) {
    Reading reading = reading(f.get("reading"));
    if (!f.has("least") && !f.has("most")) {
      // one of them is needed, and the refusal names the first
      throw f.get("least").refused(measure(reading.dimension()));
    }
    Quantity least = bound(f, "least", reading.dimension());
    Quantity most = bound(f, "most", reading.dimension());
    if (least != null && most != null && !(least.si() <= most.si())) {
      throw f.get("most").refused(Message.of(MessageKey.ALLOWED_CONSISTENT));
    }
    return new Claim.Between(reading, least, most);
  }

  private static @Nullable Quantity bound(JsonFields f, String name, Dimension dimension) {
    return f.has(name)
        ? new Quantity(f.get(name).typed(dimension, measure(dimension)), dimension)
        : null;
  }

  private static Message measure(Dimension dimension) {
    String example =
        switch (dimension) {
          case VOLTAGE -> "90V";
          case RESISTANCE -> "2MΩ";
          case CURRENT -> "2.2µA";
          default -> "3";
        };
    return Message.of(MessageKey.ALLOWED_MEASURE, Argument.text(example));
  }

  private static Reading reading(JsonValue value) {
    if (!value.isObject()) {
      Reading reading = value.isText() ? WORDS.get(value.text()) : null;
      if (reading == null) {
        String words = String.join(", ", WORDS.keySet()) + ", {function, leads}";
        throw value.refused(Message.of(MessageKey.ALLOWED_ONE_OF, Argument.text(words)));
      }
      return reading;
    }
    JsonFields f = value.fields("function", "leads");
    MeterFunction function = f.get("function").oneOf(MeterFunction.class);
    if (function == MeterFunction.AC_AND_DC_MICROAMPS) {
      Set<MeterFunction> others = EnumSet.complementOf(EnumSet.of(function));
      String words = others.stream().map(JsonValue::spelling).collect(Collectors.joining(", "));
      throw f.get("function").refused(Message.of(MessageKey.ALLOWED_ONE_OF, Argument.text(words)));
    }
    return new Reading.Metered(function, LeadWords.hookUp(f.get("leads")));
  }

  static void put(ObjectNode node, Claim claim) {
    if (claim instanceof Claim.Between between) {
      put(node, between.reading());
      putBound(node, "least", between.least());
      putBound(node, "most", between.most());
    } else if (claim instanceof Claim.Compared compared) {
      put(node, compared.reading());
      node.put("leastRatio", compared.leastRatio());
      if (compared.mostRatio() < Double.POSITIVE_INFINITY) {
        node.put("mostRatio", compared.mostRatio());
      }
    } else if (claim instanceof Claim.At at) {
      node.put("stage", JsonValue.spelling(at.stage()));
    } else if (claim instanceof Claim.Shows shows) {
      node.put("code", JsonValue.spelling(shows.code()));
    } else if (claim instanceof Claim.Enters enters) {
      node.put("enters", JsonValue.spelling(enters.stage())).put("least", enters.leastCount());
      if (enters.mostCount() < Integer.MAX_VALUE) {
        node.put("most", enters.mostCount());
      }
    }
  }

  private static void putBound(ObjectNode node, String name, @Nullable Quantity bound) {
    if (bound != null && bound.si() == Double.POSITIVE_INFINITY) {
      node.put(name, JsonValue.OPEN);
    } else if (bound != null) {
      node.put(name, bound.si());
    }
  }

  private static void put(ObjectNode node, Reading reading) {
    if (reading instanceof Reading.Metered metered) {
      node.putObject("reading")
          .put("function", JsonValue.spelling(metered.function()))
          .put("leads", LeadWords.word(metered.hookUp()));
      return;
    }
    String word =
        WORDS.entrySet().stream()
            .filter(e -> e.getValue().equals(reading))
            .map(Map.Entry::getKey)
            .findFirst()
            .orElseThrow(
                () -> new IllegalArgumentException("reading = " + reading + ": no word for it"));
    node.put("reading", word);
  }
}
