package halfwave.io.bench;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.explain.Axis;
import halfwave.explain.Sweep;
import halfwave.explain.SweepRow;
import halfwave.explain.SweepRow.Taken;
import java.util.List;

/**
 * A sweep as JSON, the same in every language: bench, axes, and one row per combination with the
 * columns of {@link SweepCsv}. Where nothing was read the readings are null and {@code failure}
 * says why; otherwise {@code failure} is null.
 */
public final class SweepJson {

  private SweepJson() {}

  /** The whole text. */
  public static String of(Sweep sweep) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("bench", sweep.bench().name());
    ArrayNode axes = root.putArray("axes");
    for (Axis axis : sweep.axes()) {
      axes.addObject()
          .put("parameter", axis.parameter().id())
          .put("column", SweepCsv.column(axis.parameter()))
          .put("from", axis.from())
          .put("to", axis.to())
          .put("count", axis.count())
          .put("logarithmic", axis.isLogarithmic());
    }
    ArrayNode rows = root.putArray("rows");
    for (SweepRow row : sweep.rows()) {
      write(rows.addObject(), sweep.axes(), row);
    }
    return root.toPrettyString() + "\n";
  }

  private static void write(ObjectNode node, List<Axis> axes, SweepRow row) {
    for (int k = 0; k < axes.size(); k++) {
      node.put(SweepCsv.column(axes.get(k).parameter()), row.values().get(k));
    }
    if (row.outcome() instanceof Taken t) {
      node.put(SweepCsv.READINGS.get(0), t.seriesMeanAmps())
          .put(SweepCsv.READINGS.get(1), t.seriesAlternatingRmsAmps())
          .put(SweepCsv.READINGS.get(2), t.terminalAlternatingRmsVolts())
          .putNull(SweepCsv.FAILURE);
    } else {
      SweepCsv.READINGS.forEach(node::putNull);
      node.put(SweepCsv.FAILURE, SweepCsv.failure(row));
    }
  }
}
