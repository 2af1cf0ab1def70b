package halfwave.io.sequence;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import halfwave.bench.ShippedBenches;
import halfwave.board.ShippedBoards;
import halfwave.display.Sentences;
import halfwave.io.SchemaFile;
import halfwave.sequence.Moment;
import halfwave.sequence.Script;
import halfwave.sequence.Segment;
import halfwave.sequence.Sequence;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** A sequence as CSV and JSON holds every sample with every digit. */
class SequenceTextsTest {

  private static final Moment COLD =
      Moment.cold(ShippedBenches.standard(), ShippedBoards.all().get(0), 1);

  private static final Segment CALL =
      new Sequence().advance(COLD, 60_000, Script.withStart(List.of()));

  @Test
  void csvHasOneRowPerSampleAndEveryDigit() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    new SequenceCsv(bytes).add(CALL.samples());
    String[] lines = bytes.toString(StandardCharsets.UTF_8).split("\r\n", -1);

    assertThat(lines).hasSize(CALL.samples().size() + 2);
    assertThat(lines[0]).startsWith("timeSeconds,stage,").contains("filteredDcAmps");
    for (int k = 0; k < CALL.samples().size(); k++) {
      String[] cells = lines[k + 1].split(",", -1);
      assertThat(cells).hasSize(SequenceCsv.COLUMNS.size());
      assertThat(Math.round(1000 * Double.parseDouble(cells[0])))
          .isEqualTo(CALL.samples().get(k).timeMillis());
      assertThat(Double.parseDouble(cells[SequenceCsv.COLUMNS.indexOf("filteredDcAmps")]))
          .isEqualTo(CALL.samples().get(k).filteredAmps());
    }
  }

  @Test
  void jsonHoldsSamplesEventsAndTheEnd() throws IOException {
    StringWriter text = new StringWriter();
    PrintWriter to = new PrintWriter(text);
    SequenceJson json = new SequenceJson(to, COLD, Sentences.in(Locale.ENGLISH));
    json.add(CALL);
    json.end(CALL.end());
    JsonNode answer = SchemaFile.MAPPER.readTree(text.toString());

    assertThat(answer.get("bench").textValue()).isEqualTo(COLD.bench().name());
    assertThat(answer.get("seed").longValue()).isEqualTo(1);
    assertThat(answer.get("samples")).hasSize(CALL.samples().size());
    assertThat(answer.get("events")).hasSize(CALL.events().size());
    assertThat(answer.at("/events/1/to").textValue()).isEqualTo("standby");
    assertThat(answer.at("/events/1/key").textValue()).isEqualTo("board-power-back");
    assertThat(answer.at("/end/stage").textValue()).isEqualTo("run");
    assertThat(answer.at("/samples/250/filteredDcAmps").doubleValue())
        .isEqualTo(CALL.samples().get(250).filteredAmps());
  }

  @Test
  void jsonWithoutSamplesIsStillJson() throws IOException {
    StringWriter text = new StringWriter();
    SequenceJson json = new SequenceJson(new PrintWriter(text), COLD, Sentences.in(Locale.ENGLISH));
    json.end(COLD);

    assertThat(SchemaFile.MAPPER.readTree(text.toString()).get("samples")).isEmpty();
  }
}
