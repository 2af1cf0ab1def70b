package halfwave.io.evidence;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.display.DisplayUnit;
import halfwave.display.Sentences;
import halfwave.evidence.SymptomTable;
import halfwave.evidence.Symptoms;
import halfwave.instrument.MeterReading;
import halfwave.io.CsvLine;
import halfwave.io.JsonValue;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The table of symptoms for people, as text and Markdown, and for programs, as CSV and JSON. */
public final class SymptomRows {

  /** How many columns from the left hold words. */
  public static final int WORDS = 3;

  private static final String NONE = "–";
  private static final int AMPS_DECIMALS = 2;
  private static final int VOLTS_DECIMALS = 0;

  private final Sentences sentences;
  private final SymptomTable table;

  /**
   * Prepares the rows.
   *
   * @param sentences language and units
   * @param table the table
   */
  public SymptomRows(Sentences sentences, SymptomTable table) {
    this.sentences = sentences;
    this.table = table;
  }

  /** Titles of the columns. */
  public List<String> heading() {
    return Stream.of(
            MessageKey.SYMPTOMS_FAULT,
            MessageKey.SYMPTOMS_COURSE,
            MessageKey.SYMPTOMS_CODE,
            MessageKey.SYMPTOMS_STANDBY,
            MessageKey.SYMPTOMS_LEAD_OFF,
            MessageKey.SYMPTOMS_TRIAL_DC,
            MessageKey.SYMPTOMS_TRIAL_AC,
            MessageKey.SYMPTOMS_WARM_DC,
            MessageKey.SYMPTOMS_WARM_AC,
            MessageKey.SYMPTOMS_SIGHTS)
        .map(key -> sentences.text(Message.of(key)))
        .toList();
  }

  /** The rows, the healthy one first. */
  public List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    rows.add(row(sentences.text(Message.of(MessageKey.SYMPTOMS_NO_FAULT)), table.healthy()));
    table.faulty().forEach((kind, symptoms) -> rows.add(row(sentences.name(kind), symptoms)));
    return rows;
  }

  private List<String> row(String name, Symptoms s) {
    return List.of(
        name,
        sentences.name(s.course()),
        sentences.name(s.code()),
        volts(s.standby()),
        volts(s.leadOff()),
        amps(s.trial(), true),
        amps(s.trial(), false),
        amps(s.warm(), true),
        amps(s.warm(), false),
        sights(s));
  }

  /** What looks find that they do not find on the healthy bench. */
  private String sights(Symptoms s) {
    return s.sights().unlike(table.healthy().sights()).values().stream()
        .map(sentences::name)
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private String volts(MeterReading reading) {
    return reading instanceof MeterReading.Volts v
        ? sentences.quantities().fixed(v.alternatingRmsVolts(), DisplayUnit.VOLT, VOLTS_DECIMALS)
        : NONE;
  }

  private String amps(Optional<MeterReading> reading, boolean direct) {
    return reading.orElse(null) instanceof MeterReading.Amps a
        ? sentences
            .quantities()
            .fixed(
                direct ? a.meanAmps() : a.alternatingRmsAmps(), DisplayUnit.MICROAMP, AMPS_DECIMALS)
        : NONE;
  }

  /** A table of Markdown. */
  public String markdown() {
    StringBuilder text = new StringBuilder(line(heading()));
    text.append(line(heading().stream().map(h -> "---").toList()));
    rows().forEach(row -> text.append(line(row)));
    return text.toString();
  }

  private static String line(List<String> cells) {
    return cells.stream().collect(Collectors.joining(" | ", "| ", " |\n"));
  }

  /** Comma-separated values (RFC 4180) in SI, the same in every language. */
  public String csv() {
    StringBuilder text = new StringBuilder(CsvLine.of(COLUMNS));
    text.append(CsvLine.of(cells("none", table.healthy())));
    table.faulty().forEach((kind, s) -> text.append(CsvLine.of(cells(kind.id(), s))));
    return text.toString();
  }

  private static final List<String> COLUMNS =
      List.of(
          "fault",
          "course",
          "statusCode",
          "standbyAcVoltsRms",
          "leadOffAcVoltsRms",
          "trialDcAmps",
          "trialAcAmpsRms",
          "warmDcAmps",
          "warmAcAmpsRms",
          "sights");

  private List<String> cells(String id, Symptoms s) {
    return List.of(
        id,
        JsonValue.spelling(s.course()),
        JsonValue.spelling(s.code()),
        exact(Optional.of(s.standby()), false),
        exact(Optional.of(s.leadOff()), false),
        exact(s.trial(), true),
        exact(s.trial(), false),
        exact(s.warm(), true),
        exact(s.warm(), false),
        s.sights().unlike(table.healthy().sights()).values().stream()
            .map(JsonValue::spelling)
            .distinct()
            .collect(Collectors.joining(";")));
  }

  private static String exact(Optional<MeterReading> reading, boolean direct) {
    MeterReading at = reading.orElse(null);
    if (at instanceof MeterReading.Volts v) {
      return Double.toString(direct ? v.meanVolts() : v.alternatingRmsVolts());
    }
    return at instanceof MeterReading.Amps a
        ? Double.toString(direct ? a.meanAmps() : a.alternatingRmsAmps())
        : "";
  }

  /** The same as JSON: a list of objects, null where nothing was read. */
  public String json() {
    ArrayNode root = JsonNodeFactory.instance.arrayNode();
    add(root, cells("none", table.healthy()));
    table.faulty().forEach((kind, symptoms) -> add(root, cells(kind.id(), symptoms)));
    return root.toPrettyString() + "\n";
  }

  private static void add(ArrayNode root, List<String> cells) {
    ObjectNode row = root.addObject();
    for (int k = 0; k < COLUMNS.size(); k++) {
      if (k < WORDS || k == COLUMNS.size() - 1) {
        row.put(COLUMNS.get(k), cells.get(k));
      } else if (cells.get(k).isEmpty()) {
        row.putNull(COLUMNS.get(k));
      } else {
        row.put(COLUMNS.get(k), Double.parseDouble(cells.get(k)));
      }
    }
  }
}
