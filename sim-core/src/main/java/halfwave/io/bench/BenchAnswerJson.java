package halfwave.io.bench;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.circuit.LumpedCircuit.Readings;
import halfwave.circuit.Solved;
import halfwave.display.Sentences;
import halfwave.explain.Account;
import halfwave.explain.BenchAnswer;
import halfwave.explain.Elasticity;
import halfwave.explain.Rung;
import halfwave.explain.VoltageLadder;
import halfwave.flame.FlameSheets;
import halfwave.instrument.MeterReading;
import halfwave.io.JsonValue;
import halfwave.message.Message;
import org.jspecify.annotations.Nullable;

/** A bench's answer as JSON: SI numbers, and the words in one language. */
public final class BenchAnswerJson {

  private BenchAnswerJson() {}

  /** The answer as text. */
  public static String text(BenchAnswer answer, Sentences sentences) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("bench", answer.bench().name());
    FlameSheets sheets = answer.flame().field().sheets();
    root.putObject("flame")
        .put("state", JsonValue.spelling(sheets.state()))
        .put("firingWatts", sheets.mixture().firingWatts())
        .put("primaryEquivalenceRatio", sheets.mixture().equivalenceRatio())
        .put("portMetersPerSecond", sheets.mixture().portMetersPerSecond())
        .put("gapMeters", sheets.gapMeters());
    ObjectNode readings = root.putObject("readings");
    put(readings, "series", answer.readings().series());
    put(readings, "terminal", answer.readings().terminal());
    put(readings, "seriesWithVoltmeter", answer.readings().seriesWithVoltmeter());
    put(readings, "terminalLeadOff", answer.readings().terminalLeadOff());
    put(readings, "terminalFlameOut", answer.readings().terminalFlameOut());
    put(readings, "probe", answer.readings().probe());
    if (answer.state() instanceof Solved solved) {
      // what a deck of the same bench gives: no meter hangs anywhere
      root.set("undisturbed", LumpedCircuitFile.row(Readings.of(solved)));
    }
    put(root, "ladderRodPositive", answer.rodPositive());
    put(root, "ladderRodNegative", answer.rodNegative());
    ObjectNode elasticities = root.putObject("dcElasticities");
    for (Elasticity e : answer.elasticities()) {
      elasticities.put(e.parameter().id(), e.dcElasticityRatio());
    }
    ArrayNode words = root.putArray("words");
    for (Message message : Account.of(answer)) {
      words.add(sentences.text(message));
    }
    return root.toPrettyString() + "\n";
  }

  private static void put(ObjectNode node, String name, MeterReading reading) {
    if (reading instanceof MeterReading.Amps amps) {
      node.putObject(name)
          .put("dcAmps", amps.meanAmps())
          .put("acAmpsRms", amps.alternatingRmsAmps());
    } else if (reading instanceof MeterReading.Volts volts) {
      node.putObject(name)
          .put("dcVolts", volts.meanVolts())
          .put("acVoltsRms", volts.alternatingRmsVolts());
    } else if (reading instanceof MeterReading.None none) {
      node.putObject(name)
          .put("failure", JsonValue.spelling(none.reason().failure()))
          .put("part", JsonValue.spelling(none.reason().part()));
    }
  }

  private static void put(ObjectNode node, String name, @Nullable VoltageLadder ladder) {
    if (ladder == null) {
      node.putNull(name);
      return;
    }
    ObjectNode object = node.putObject(name);
    object
        .put("timeSeconds", ladder.timeSeconds())
        .put("sourceVolts", ladder.sourceVolts())
        .put("flameAmps", ladder.flameAmps());
    ObjectNode rungs = object.putObject("rungVolts");
    for (Rung rung : Rung.values()) {
      rungs.put(JsonValue.spelling(rung), ladder.rungVolts().getOrDefault(rung, 0.0));
    }
  }
}
