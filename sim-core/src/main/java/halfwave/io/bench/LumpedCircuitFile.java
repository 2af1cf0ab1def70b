package halfwave.io.bench;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.circuit.Failure;
import halfwave.circuit.LumpedCircuit;
import halfwave.circuit.LumpedCircuit.Film;
import halfwave.circuit.LumpedCircuit.Ground;
import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.circuit.LumpedCircuit.Readings;
import halfwave.circuit.LumpedCircuit.Source;
import halfwave.circuit.SquareRootLaw;
import halfwave.circuit.SteadyState;
import halfwave.io.BadInputException;
import halfwave.io.JsonFields;
import halfwave.io.JsonFile;
import halfwave.io.JsonValue;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import java.nio.file.Path;
import java.util.List;

/**
 * The file of the command {@code circuit}: one lumped circuit or a list of them, each bare or as
 * the field {@code circuit} of a row. Its schema is {@code docs/schemas/circuit.schema.json}.
 */
public final class LumpedCircuitFile {

  private static final String CIRCUIT = "circuit";
  private static final String SOURCE = "source";
  private static final String RESISTANCE = "resistanceOhms";
  private static final String CAPACITANCE = "capacitanceFarads";

  /**
   * One circuit of the file.
   *
   * @param where the value it was read from
   * @param circuit the circuit
   */
  public record Entry(JsonValue where, LumpedCircuit circuit) {

    /**
     * The refusal of a circuit that has no steady state.
     *
     * @param failed why
     */
    public BadInputException unsolvable(SteadyState.Failed failed) {
      // what shorts the source stands in its resistance; else the whole circuit is in question
      JsonValue field =
          failed.failure() == Failure.SOURCE_SHORTED
              ? where.child(SOURCE).child(RESISTANCE)
              : where.child(SOURCE);
      return field.refused(Message.of(MessageKey.ALLOWED_SOLVABLE, Argument.nested(said(failed))));
    }
  }

  private LumpedCircuitFile() {}

  /**
   * Reads a file.
   *
   * @param file the file
   * @return its circuits in order; at least one
   * @throws BadInputException if anything in it is not as the schema says
   */
  public static List<Entry> read(Path file) {
    return of(JsonFile.read(file));
  }

  /** The same for a file that was already read. */
  public static List<Entry> of(JsonValue all) {
    Message allowed = Message.of(MessageKey.ALLOWED_CIRCUIT_FILE);
    if (all.isList()) {
      return all.filledList(LumpedCircuitFile::entry, allowed);
    } else if (all.isObject()) {
      return List.of(entry(all));
    }
    throw all.refused(allowed);
  }

  private static Entry entry(JsonValue value) {
    JsonFields row = value.anyFields();
    // a row may carry what else belongs to the circuit, such as the readings expected of it
    JsonValue circuit = row.has(CIRCUIT) ? row.get(CIRCUIT) : value;
    return new Entry(circuit, circuit(circuit));
  }

  private static LumpedCircuit circuit(JsonValue value) {
    JsonFields f = value.fields(SOURCE, "lead", "rodFilm", "flame", "burnerFilm", "ground");
    return f.make(
        () ->
            new LumpedCircuit(
                source(f.get(SOURCE)),
                lead(f.get("lead")),
                f.orNull("rodFilm", LumpedCircuitFile::film),
                f.orNull("flame", LumpedCircuitFile::flame),
                f.orNull("burnerFilm", LumpedCircuitFile::film),
                ground(f.get("ground"))));
  }

  static Source source(JsonValue value) {
    JsonFields f =
        value.fields(
            "openCircuitVoltsRms", "frequencyHz", RESISTANCE, "couplingFarads", "returnOhms");
    return f.make(
        () ->
            new Source(
                f.get("openCircuitVoltsRms").number(),
                f.get("frequencyHz").number(),
                f.get(RESISTANCE).ohms(),
                f.orNull("couplingFarads", JsonValue::number),
                f.orNull("returnOhms", JsonValue::ohms)));
  }

  static Lead lead(JsonValue value) {
    JsonFields f = value.fields(RESISTANCE, "insulationOhms", CAPACITANCE);
    return f.make(
        () ->
            new Lead(
                f.get(RESISTANCE).ohms(),
                f.orNull("insulationOhms", JsonValue::ohms),
                f.orNull(CAPACITANCE, JsonValue::number)));
  }

  private static Film film(JsonValue value) {
    JsonFields f = value.fields(RESISTANCE, CAPACITANCE);
    return f.make(() -> new Film(f.get(RESISTANCE).ohms(), f.get(CAPACITANCE).number()));
  }

  private static SquareRootLaw flame(JsonValue value) {
    JsonFields f = value.fields("rodIonAmpsPerRootVolt", "burnerIonAmpsPerRootVolt", "columnOhms");
    return f.make(
        () ->
            new SquareRootLaw(
                f.get("rodIonAmpsPerRootVolt").number(),
                f.get("burnerIonAmpsPerRootVolt").number(),
                f.get("columnOhms").number()));
  }

  private static Ground ground(JsonValue value) {
    JsonFields f = value.fields(RESISTANCE);
    return f.make(() -> new Ground(f.get(RESISTANCE).ohms()));
  }

  /** The failure of a solve as a message. */
  public static Message said(SteadyState.Failed failed) {
    return failed.failure() == Failure.SOURCE_SHORTED
        ? Message.of(
            MessageKey.SOLVE_IMPOSSIBLE,
            Argument.name(failed.failure()),
            Argument.name(failed.part()))
        : Message.of(
            MessageKey.SOLVE_FAILED,
            Argument.name(failed.failure()),
            Argument.name(failed.part()),
            Argument.quantity(failed.timeSeconds(), Dimension.TIME),
            Argument.count(failed.iterationCount()));
  }

  /**
   * The answer of the command as JSON: a list, in order, of five values each.
   *
   * @param readings one per circuit
   */
  public static String answer(List<Readings> readings) {
    ArrayNode rows = JsonNodeFactory.instance.arrayNode();
    readings.forEach(r -> rows.add(row(r)));
    return rows.toPrettyString() + "\n";
  }

  /** The five values of one circuit. */
  static ObjectNode row(Readings r) {
    return JsonNodeFactory.instance
        .objectNode()
        .put("boardEndDcAmps", r.boardEndMeanAmps())
        .put("rodEndDcAmps", r.rodEndMeanAmps())
        .put("rodEndAcAmpsRms", r.rodEndAlternatingRmsAmps())
        .put("terminalDcVolts", r.terminalMeanVolts())
        .put("terminalAcVoltsRms", r.terminalAlternatingRmsVolts());
  }
}
