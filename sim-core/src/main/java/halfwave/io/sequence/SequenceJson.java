package halfwave.io.sequence;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.board.Board;
import halfwave.board.BoardOutputs;
import halfwave.board.Transition;
import halfwave.display.Sentences;
import halfwave.io.JsonValue;
import halfwave.sequence.Event;
import halfwave.sequence.Moment;
import halfwave.sequence.Sample;
import halfwave.sequence.Segment;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/**
 * A sequence as JSON: bench, board, seed, samples, events, and how it ended. Numbers are SI, times
 * whole milliseconds; only the sentences depend on the language. Samples are written as they come,
 * one a line, because a week has millions of them.
 */
public final class SequenceJson {

  private final PrintWriter to;
  private final Sentences sentences;
  private final List<Event> events = new ArrayList<>();
  private boolean begun;

  /**
   * Writes the beginning.
   *
   * @param to where all of it goes
   * @param start the first moment
   * @param sentences language of the events
   */
  public SequenceJson(PrintWriter to, Moment start, Sentences sentences) {
    this.to = to;
    this.sentences = sentences;
    to.print("{\n  \"bench\" : " + quoted(start.bench().name()));
    to.print(",\n  \"board\" : " + quoted(start.settings().name()));
    to.print(",\n  \"seed\" : " + start.seed());
    to.print(",\n  \"samples\" : [");
  }

  /** Writes the samples of a slice and remembers its events. */
  public void add(Segment slice) {
    for (Sample sample : slice.samples()) {
      to.print((begun ? ",\n    " : "\n    ") + node(sample));
      begun = true;
    }
    events.addAll(slice.events());
  }

  /** Writes the rest. */
  public void end(Moment end) {
    ObjectNode rest = JsonNodeFactory.instance.objectNode();
    ArrayNode all = rest.putArray("events");
    events.forEach(event -> write(all.addObject(), event));
    ObjectNode last = rest.putObject("end");
    last.put("timeMillis", end.timeMillis())
        .put("stage", JsonValue.spelling(end.board().stage()))
        .put("statusCode", JsonValue.spelling(Board.code(end.board(), end.filter().signal())))
        .put("flameSignal", JsonValue.spelling(end.filter().signal()))
        .put("filteredDcAmps", end.filter().meanAmps())
        .put("failedTrials", end.board().failedTrials())
        .put("losses", end.board().losses())
        .put("power", end.supply())
        .put("call", end.call())
        .put("damp", end.damp())
        .put("litCount", end.furnace().litCount())
        .put("rodKelvin", end.furnace().rodKelvin())
        .put("rodFilmMeters", end.bench().condition().rodCoat().thicknessMeters());
    write(last, end.outputs());
    // the object that was begun by hand goes on where the samples end
    to.print((begun ? "\n  ]," : " ],") + rest.toPrettyString().substring(1) + "\n");
  }

  private void write(ObjectNode node, Event event) {
    node.put("timeMillis", event.timeMillis()).put("subject", JsonValue.spelling(event.subject()));
    Transition transition = event.transition();
    if (transition == null) {
      node.putNull("from").putNull("to");
    } else {
      node.put("from", JsonValue.spelling(transition.from()))
          .put("to", JsonValue.spelling(transition.to()));
    }
    node.put("key", JsonValue.spelling(event.message().key()))
        .put("sentence", sentences.sentence(event.message()));
  }

  private static ObjectNode node(Sample s) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("timeMillis", s.timeMillis())
        .put("stage", JsonValue.spelling(s.stage()))
        .put("statusCode", JsonValue.spelling(s.code()));
    write(node, s.outputs());
    node.put("flameSignal", JsonValue.spelling(s.signal()))
        .put("filteredDcAmps", s.filteredAmps())
        .put("senseDcAmps", s.sense().meanAmps())
        .put("senseAcAmpsRms", s.sense().alternatingRmsAmps())
        .put("litCount", s.litCount())
        .put("flameGrowthRatio", s.growthRatio())
        .put("rodKelvin", s.rodKelvin())
        .put("igniterKelvin", s.igniterKelvin());
    String failure = SequenceCsv.failure(s);
    return node.put("failure", failure.isEmpty() ? null : failure);
  }

  private static void write(ObjectNode node, BoardOutputs o) {
    node.put("inducer", o.inducer())
        .put("igniter", o.igniter())
        .put("spark", o.spark())
        .put("pilotValve", o.pilotValve())
        .put("mainValve", o.mainValve())
        .put("blower", o.blower());
  }

  private static String quoted(String text) {
    return JsonNodeFactory.instance.textNode(text).toString();
  }
}
