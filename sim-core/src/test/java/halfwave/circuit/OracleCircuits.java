package halfwave.circuit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.validation.Unit;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The 12 reference circuits with their five values. Source: circuits.json, made with ngspice 39 (a
 * general-purpose circuit simulator) for the square-root law; its values carry a time-sampling
 * error that the tolerance of {@link #tolerance} allows for.
 */
public final class OracleCircuits {

  private OracleCircuits() {}

  /** One circuit and what the reference says of it. */
  public record Row(LumpedCircuit circuit, LumpedCircuit.Readings expected) {}

  /** Names of the five values, in the order of {@link #five}. */
  public static final List<String> NAMES =
      List.of(
          "boardEndDcAmps",
          "rodEndDcAmps",
          "rodEndAcAmpsRms",
          "terminalDcVolts",
          "terminalAcVoltsRms");

  /** What a report calls them. */
  public static final List<String> WORDS =
      List.of(
          "DC at the board",
          "DC at the rod",
          "AC at the rod",
          "DC volts at the terminal",
          "AC volts at the terminal");

  /** Their units in a report. */
  public static final List<Unit> UNITS =
      List.of(Unit.MICROAMPS, Unit.MICROAMPS, Unit.MICROAMPS, Unit.VOLTS, Unit.VOLTS);

  /** The reason of {@link #tolerance}. */
  public static final String ALLOWED =
      "0.5 % plus 2 nA or 20 mV, at the board end 20 mV over the insulation as well:"
          + " the other program samples in time";

  /** All rows of the file. */
  public static List<Row> rows() {
    ObjectMapper mapper =
        new ObjectMapper()
            .registerModule(
                new SimpleModule()
                    .addAbstractTypeMapping(ConductionLaw.class, SquareRootLaw.class));
    try (InputStream in =
        Objects.requireNonNull(OracleCircuits.class.getResourceAsStream("circuits.json"))) {
      List<Row> rows = new ArrayList<>();
      for (JsonNode node : mapper.readTree(in)) {
        rows.add(
            new Row(
                mapper.treeToValue(unitsInFull(node.required("circuit")), LumpedCircuit.class),
                expected(node.required("expected"))));
      }
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The file abbreviates two names. */
  private static JsonNode unitsInFull(JsonNode circuit) {
    ObjectNode source = (ObjectNode) circuit.required("source");
    source.set("openCircuitRmsVolts", source.remove("openCircuitVoltsRms"));
    source.set("frequencyHertz", source.remove("frequencyHz"));
    return circuit;
  }

  private static LumpedCircuit.Readings expected(JsonNode node) {
    double[] v = NAMES.stream().mapToDouble(name -> node.required(name).asDouble()).toArray();
    return new LumpedCircuit.Readings(v[0], v[1], v[2], v[3], v[4]);
  }

  /** The five values as a row. */
  public static double[] five(LumpedCircuit.Readings r) {
    return new double[] {
      r.boardEndMeanAmps(),
      r.rodEndMeanAmps(),
      r.rodEndAlternatingRmsAmps(),
      r.terminalMeanVolts(),
      r.terminalAlternatingRmsVolts()
    };
  }

  /**
   * Allowed difference of value k from a time-stepping reference: 0.5 % plus 2 nA or 20 mV, at the
   * board end also 20 mV over the insulation. Source: model.md section 6, "whole circuits".
   */
  public static double tolerance(int k, double expected, LumpedCircuit circuit) {
    double floor = k < 3 ? 2e-9 : 0.02;
    Double insulation = circuit.lead().insulationOhms();
    double leak = k == 0 && insulation != null ? 0.02 / Math.max(insulation, 1e-3) : 0;
    return 0.005 * Math.abs(expected) + floor + leak;
  }

  /** Solves, and demands a solution. */
  public static Solved solved(Circuit circuit) {
    SteadyState state = SteadyState.of(circuit);
    if (state instanceof Solved s) {
      return s;
    }
    throw new AssertionError(state + " for " + circuit);
  }

  /** The five values of a circuit that must have a solution. */
  public static LumpedCircuit.Readings readings(LumpedCircuit circuit) {
    return LumpedCircuit.Readings.of(solved(circuit.circuit()));
  }
}
