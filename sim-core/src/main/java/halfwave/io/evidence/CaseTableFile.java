package halfwave.io.evidence;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.diagnosis.Case;
import halfwave.diagnosis.CaseTable;
import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.Outcome;
import halfwave.io.BadInputException;
import halfwave.io.JsonFields;
import halfwave.io.JsonFile;
import halfwave.io.JsonValue;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/**
 * A table of cases as compressed bytes. The program writes it for itself and makes it anew when it
 * cannot read it; nobody edits one, so there is no published schema of it.
 */
final class CaseTableFile {

  private CaseTableFile() {}

  static byte[] bytes(CaseTable table) {
    ArrayNode cases = JsonNodeFactory.instance.arrayNode();
    for (Case one : table.cases()) {
      ArrayNode row = cases.addArray();
      for (int k = 0; k < table.checks().size(); k++) {
        add(row, table.checks().get(k), one.outcomes().get(k));
      }
    }
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    ArrayNode checks = root.putArray("checks");
    table.checks().forEach(c -> checks.add(c.id()));
    ArrayNode causes = root.putArray("causes");
    table.causes().forEach(c -> causes.add(c.id()));
    root.set("cases", cases);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (GZIPOutputStream packed = new GZIPOutputStream(bytes)) {
      packed.write(root.toString().getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static void add(ArrayNode row, Check check, Outcome outcome) {
    if (outcome instanceof Outcome.Found found) {
      row.add(check.outcomes().indexOf(found.what()));
    } else if (outcome instanceof Outcome.Amps amps) {
      ArrayNode pair = row.addArray();
      add(pair, amps.meanAmps());
      add(pair, amps.alternatingRmsAmps());
    } else if (outcome instanceof Outcome.Volts volts) {
      add(row.addArray(), volts.alternatingRmsVolts());
    } else {
      row.addNull();
    }
  }

  private static void add(ArrayNode pair, double value) {
    if (Double.isNaN(value)) {
      pair.addNull();
    } else {
      pair.add(value);
    }
  }

  /**
   * The table.
   *
   * @param wanted what it was asked to be about; what cannot happen to its bench is not in it
   * @param checks of the appliance
   * @throws BadInputException if the bytes hold no such table
   */
  static CaseTable of(String name, byte[] bytes, List<Cause> wanted, List<Check> checks) {
    JsonFields f = JsonFile.parse(name, unpacked(bytes)).fields("checks", "causes", "cases");
    List<String> names = f.get("causes").list(JsonValue::text);
    List<Cause> causes = wanted.stream().filter(c -> names.contains(c.id())).toList();
    List<String> ids = f.get("checks").list(JsonValue::text);
    // a hundred thousand outcomes are a few thousand different ones
    Map<Outcome, Outcome> known = new HashMap<>();
    List<List<Outcome>> rows = f.get("cases").list(row -> outcomes(row, checks, known));
    boolean fits =
        ids.equals(checks.stream().map(Check::id).toList())
            && rows.size() == causes.size() * CaseTable.DRAWS;
    if (!fits) {
      throw BadInputException.ofFile(name, Message.of(MessageKey.ALLOWED_READABLE_FILE));
    }
    List<Case> cases = new ArrayList<>();
    for (int k = 0; k < rows.size(); k++) {
      Cause cause = causes.get(k / CaseTable.DRAWS);
      cases.add(new Case(cause, k % CaseTable.DRAWS, rows.get(k)));
    }
    return new CaseTable(checks, causes, cases);
  }

  private static byte[] unpacked(byte[] bytes) {
    try (GZIPInputStream packed = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
      return packed.readAllBytes();
    } catch (IOException e) {
      // no JSON either, which is what is said
      return new byte[0];
    }
  }

  private static List<Outcome> outcomes(
      JsonValue row, List<Check> checks, Map<Outcome, Outcome> known) {
    List<JsonValue> values = row.list(v -> v);
    List<Outcome> outcomes = new ArrayList<>();
    for (int k = 0; k < Math.min(values.size(), checks.size()); k++) {
      Check check = checks.get(k);
      Outcome read = values.get(k).orNull(v -> outcome(v, check));
      Outcome outcome = read == null ? new Outcome.NotReached() : read;
      outcomes.add(known.computeIfAbsent(outcome, o -> o));
    }
    return outcomes;
  }

  private static Outcome outcome(JsonValue value, Check check) {
    if (check instanceof Check.Read) {
      List<Double> figures = value.list(CaseTableFile::number);
      return figures.size() == 1
          ? new Outcome.Volts(figures.get(0))
          : new Outcome.Amps(figures.get(0), figures.get(1));
    }
    int index = (int) value.wholeNumber();
    return new Outcome.Found(check.outcomes().get(index));
  }

  private static double number(JsonValue value) {
    Double number = value.orNull(JsonValue::number);
    return number == null ? Double.NaN : number;
  }
}
