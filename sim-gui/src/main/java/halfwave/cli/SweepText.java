package halfwave.cli;

import halfwave.display.DisplayUnit;
import halfwave.display.QuantityText;
import halfwave.display.Sentences;
import halfwave.explain.Axis;
import halfwave.explain.Sweep;
import halfwave.explain.SweepRow;
import halfwave.explain.SweepRow.Failed;
import halfwave.explain.SweepRow.Impossible;
import halfwave.explain.SweepRow.Taken;
import halfwave.io.bench.LumpedCircuitFile;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.ArrayList;
import java.util.List;
import java.util.ResourceBundle;

/** A sweep as a table in plain text; the reasons of rows without readings stand below it. */
final class SweepText {

  private static final int VALUE_DIGITS = 4;
  private static final int AMPS_DECIMALS = 3;
  private static final int VOLTS_DECIMALS = 1;

  /** Stands where there is no reading. */
  private static final String NONE = "–";

  private SweepText() {}

  static String of(Sweep sweep, Sentences sentences, ResourceBundle words) {
    List<String> heading = new ArrayList<>();
    sweep.axes().forEach(axis -> heading.add(axis.parameter().id()));
    heading.add(words.getString("table.series-dc"));
    heading.add(words.getString("table.series-ac"));
    heading.add(words.getString("table.terminal-ac"));
    TextTable table = new TextTable(heading);
    List<String> reasons = new ArrayList<>();
    for (SweepRow row : sweep.rows()) {
      List<String> cells = values(sweep.axes(), row, sentences.quantities());
      if (row.outcome() instanceof Taken t) {
        QuantityText text = sentences.quantities();
        cells.add(text.fixed(t.seriesMeanAmps(), DisplayUnit.MICROAMP, AMPS_DECIMALS));
        cells.add(text.fixed(t.seriesAlternatingRmsAmps(), DisplayUnit.MICROAMP, AMPS_DECIMALS));
        cells.add(text.fixed(t.terminalAlternatingRmsVolts(), DisplayUnit.VOLT, VOLTS_DECIMALS));
      } else {
        String reason = sentences.text(reason(row));
        int number = reasons.contains(reason) ? reasons.indexOf(reason) : reasons.size();
        if (number == reasons.size()) {
          reasons.add(reason);
        }
        cells.addAll(List.of(NONE, NONE, "(" + (number + 1) + ")"));
      }
      table.add(cells);
    }
    StringBuilder text = new StringBuilder(table.toString());
    for (int k = 0; k < reasons.size(); k++) {
      text.append("(").append(k + 1).append(") ").append(reasons.get(k)).append('\n');
    }
    return text.toString();
  }

  private static List<String> values(List<Axis> axes, SweepRow row, QuantityText text) {
    List<String> cells = new ArrayList<>();
    for (int k = 0; k < axes.size(); k++) {
      Axis axis = axes.get(k);
      double larger = Math.max(Math.abs(axis.from()), Math.abs(axis.to()));
      double si = row.values().get(k);
      DisplayUnit unit =
          text.unit(axis.isLogarithmic() ? si : larger, axis.parameter().dimension());
      cells.add(text.text(si, unit, VALUE_DIGITS));
    }
    return cells;
  }

  private static Message reason(SweepRow row) {
    if (row.outcome() instanceof Impossible impossible) {
      return Message.of(
          MessageKey.SWEEP_IMPOSSIBLE, Argument.nested(Sentences.allowed(impossible.reason())));
    }
    return LumpedCircuitFile.said(((Failed) row.outcome()).reason());
  }
}
