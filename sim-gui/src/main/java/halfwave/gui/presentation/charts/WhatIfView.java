package halfwave.gui.presentation.charts;

import halfwave.bench.Parameter;
import halfwave.board.Sensing;
import halfwave.display.DisplayUnit;
import halfwave.display.QuantityText;
import halfwave.explain.Sweep;
import halfwave.explain.SweepRow;
import halfwave.explain.SweepRow.Taken;
import halfwave.gui.presentation.Wording;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * The reading over one number of the bench.
 *
 * @param across the axis of the number
 * @param amps the upright axis (µA)
 * @param dc the DC
 * @param ac the AC
 * @param healthy the DC of the healthy bench, or null where it is not known or no different
 * @param here where the bench is
 * @param pickUp height of the pick-up limit
 * @param dropOut height of the drop-out limit
 * @param pickUpWords the pick-up limit in words
 * @param dropOutWords the drop-out limit in words
 * @param summary the chart in a sentence
 * @param spoken the same for who hears the screen
 * @param points what was computed
 */
public record WhatIfView(
    ChartAxis across,
    ChartAxis amps,
    Trace dc,
    Trace ac,
    @Nullable Trace healthy,
    Here here,
    double pickUp,
    double dropOut,
    String pickUpWords,
    String dropOutWords,
    String summary,
    String spoken,
    Points points) {

  /**
   * The bench as it is.
   *
   * @param at where its number stands, held at the ends of the axis
   * @param dc height of its DC; NaN where there is no reading
   * @param ac height of its AC
   * @param words the number
   */
  public record Here(double at, double dc, double ac, String words) {}

  /**
   * What was computed.
   *
   * @param parameter the number that was turned
   * @param si its values, SI
   * @param dc DC (µA); NaN where there is no reading
   * @param ac AC (µA rms)
   * @param healthyDc DC of the healthy bench (µA), or empty
   */
  public record Points(
      Parameter parameter, double[] si, double[] dc, double[] ac, double[] healthyDc) {}

  /** The view of an answer. */
  public static WhatIfView of(WhatIf.Answer answer, Sensing sensing, Wording words) {
    Sweep sweep = answer.sweep();
    Parameter parameter = answer.question().parameter();
    Sweep ghost = answer.healthy();
    Points points =
        new Points(
            parameter,
            sweep.rows().stream().mapToDouble(r -> r.values().get(0)).toArray(),
            microamps(sweep, Taken::seriesMeanAmps),
            microamps(sweep, Taken::seriesAlternatingRmsAmps),
            ghost == null ? new double[0] : microamps(ghost, Taken::seriesMeanAmps));
    return new WhatIfMaker(answer, sensing, words, points).make();
  }

  private static double[] microamps(Sweep sweep, ToDoubleFunction<Taken> amps) {
    return sweep.rows().stream()
        .map(SweepRow::taken)
        .mapToDouble(
            t -> t.map(v -> DisplayUnit.MICROAMP.fromSi(amps.applyAsDouble(v))).orElse(Double.NaN))
        .toArray();
  }

  /** What the curves say at a place, 0 to 1 of the axis. */
  public Probe probe(double at, Wording words) {
    int nearest = 0;
    for (int k = 1; k < points.si.length; k++) {
      nearest = Math.abs(dc.at()[k] - at) < Math.abs(dc.at()[nearest] - at) ? k : nearest;
    }
    QuantityText numbers = words.sentences().quantities();
    String value = numbers.text(points.si[nearest], points.parameter.dimension());
    boolean read = !Double.isNaN(points.dc[nearest]);
    String said =
        read
            ? words.text(
                "whatif.probe",
                value,
                numbers.fixed(1e-6 * points.dc[nearest], DisplayUnit.MICROAMP, 2),
                numbers.fixed(1e-6 * points.ac[nearest], DisplayUnit.MICROAMP, 2))
            : words.text("whatif.probe-none", value);
    return new Probe(dc.at()[nearest], List.of(dc.levels()[nearest], ac.levels()[nearest]), said);
  }

  /** The numbers, for a spreadsheet. */
  public String table(Wording words) {
    String unit = DisplayUnit.MICROAMP.symbol();
    DataTable table =
        new DataTable(
            across.title(),
            words.text("chart.axis", words.text("whatif.dc"), unit),
            words.text("chart.axis", words.text("whatif.ac"), unit),
            words.text("chart.axis", words.text("whatif.dc-healthy"), unit));
    for (int k = 0; k < points.si.length; k++) {
      table.row(
          across.value(dc.at()[k]),
          points.dc[k],
          points.ac[k],
          k < points.healthyDc.length ? points.healthyDc[k] : Double.NaN);
    }
    return table.toString();
  }
}
