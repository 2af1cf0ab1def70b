package halfwave.gui.presentation.charts;

import halfwave.display.DisplayUnit;
import halfwave.display.QuantityText;
import halfwave.explain.Rung;
import halfwave.explain.VoltageLadder;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.charts.LadderView.Side;
import halfwave.gui.presentation.charts.LadderView.Step;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Makes the view of two ladders. */
final class LadderMaker {

  /** What is less apart than this share of the axis looks the same. */
  private static final double SAME = 0.01;

  private final Wording words;
  private final QuantityText numbers;
  private final VoltageLadder positive;
  private final VoltageLadder negative;
  private final @Nullable VoltageLadder healthyPositive;
  private final @Nullable VoltageLadder healthyNegative;

  LadderMaker(
      Wording words,
      VoltageLadder positive,
      VoltageLadder negative,
      @Nullable VoltageLadder healthyPositive,
      @Nullable VoltageLadder healthyNegative) {
    this.words = words;
    numbers = words.sentences().quantities();
    this.positive = positive;
    this.negative = negative;
    this.healthyPositive = healthyPositive;
    this.healthyNegative = healthyNegative;
  }

  LadderView make(int mostSteps) {
    double full = Math.max(most(positive, healthyPositive), most(negative, healthyNegative));
    ChartAxis axis =
        ChartAxis.linear(
            words.text("chart.axis", words.text("ladder.drop"), DisplayUnit.VOLT.symbol()),
            0,
            full,
            4,
            numbers);
    Set<Rung> shown = shown(mostSteps);
    String summary =
        words.text(
            "ladder.summary",
            words.sentences().name(positive.largest()),
            words.sentences().name(negative.largest()));
    String said = positive.largest() == negative.largest() ? both() : summary;
    return new LadderView(
        axis,
        side("ladder.positive", positive, healthyPositive, axis, shown),
        side("ladder.negative", negative, healthyNegative, axis, shown),
        said,
        words.text("ladder.spoken", said, told(positive), told(negative)),
        table());
  }

  private String both() {
    return words.text("ladder.summary-both", words.sentences().name(positive.largest()));
  }

  /** The farthest that the steps get; a negative step lets them go beyond the source. */
  private static double most(VoltageLadder ladder, @Nullable VoltageLadder healthy) {
    double most = 1;
    for (VoltageLadder l : healthy == null ? List.of(ladder) : List.of(ladder, healthy)) {
      double sum = 0;
      for (double v : l.rungVolts().values()) {
        sum += v * Math.signum(l.sourceVolts());
        most = Math.max(most, sum);
      }
    }
    return most;
  }

  private Set<Rung> shown(int mostSteps) {
    List<Rung> all = new ArrayList<>(List.of(Rung.values()));
    if (all.size() <= mostSteps) {
      return EnumSet.allOf(Rung.class);
    }
    all.sort(Comparator.comparingDouble((Rung r) -> -size(r)));
    return EnumSet.copyOf(all.subList(0, mostSteps - 1));
  }

  private double size(Rung rung) {
    double size = 0;
    size = Math.max(size, Math.abs(at(positive, rung)));
    size = Math.max(size, Math.abs(at(negative, rung)));
    size = Math.max(size, healthyPositive == null ? 0 : Math.abs(at(healthyPositive, rung)));
    return Math.max(size, healthyNegative == null ? 0 : Math.abs(at(healthyNegative, rung)));
  }

  private static double at(VoltageLadder ladder, Rung rung) {
    return ladder.rungVolts().getOrDefault(rung, 0.0);
  }

  /** Where all parts take what they take on the healthy bench there is no ghost to show. */
  private static boolean same(VoltageLadder ladder, VoltageLadder healthy, double full) {
    for (Rung rung : Rung.values()) {
      if (Math.abs(against(ladder, rung) - against(healthy, rung)) > SAME * full) {
        return false;
      }
    }
    return true;
  }

  private Side side(
      String key,
      VoltageLadder ladder,
      @Nullable VoltageLadder healthyLadder,
      ChartAxis axis,
      Set<Rung> shown) {
    List<Step> steps = new ArrayList<>();
    VoltageLadder healthy =
        healthyLadder == null || same(ladder, healthyLadder, axis.high()) ? null : healthyLadder;
    double from = 0;
    double healthyFrom = healthy == null ? Double.NaN : 0;
    double rest = 0;
    double healthyRest = healthyFrom;
    for (Rung rung : Rung.values()) {
      double drop = against(ladder, rung);
      double was = healthy == null ? Double.NaN : against(healthy, rung);
      if (!shown.contains(rung)) {
        rest += drop;
        healthyRest += was;
        continue;
      }
      boolean largest = rung == ladder.largest();
      steps.add(step(words.heading(rung), from, drop, healthyFrom, was, axis, ladder, largest));
      from += drop;
      healthyFrom += was;
    }
    if (shown.size() < Rung.values().length) {
      String name = words.text("ladder.others");
      steps.add(step(name, from, rest, healthyFrom, healthyRest, axis, ladder, false));
    }
    String source =
        words.text(
            "ladder.source",
            numbers.fixed(Math.abs(ladder.sourceVolts()), DisplayUnit.VOLT, 0),
            numbers.fixed(Math.abs(ladder.flameAmps()), DisplayUnit.MICROAMP, 1));
    return new Side(words.text(key), source, steps);
  }

  /** Counted along the source's own direction, so that both half-cycles go one way. */
  private static double against(VoltageLadder ladder, Rung rung) {
    return at(ladder, rung) * Math.signum(ladder.sourceVolts());
  }

  private Step step(
      String name,
      double from,
      double drop,
      double healthyFrom,
      double healthyDrop,
      ChartAxis axis,
      VoltageLadder ladder,
      boolean largest) {
    String volts = numbers.fixed(drop, DisplayUnit.VOLT, 1);
    double source = Math.abs(ladder.sourceVolts());
    String share = numbers.fixed(source == 0 ? 0 : drop / source, DisplayUnit.PERCENT, 0);
    String tip =
        Double.isNaN(healthyDrop)
            ? words.text("ladder.tip", name, volts, share)
            : words.text(
                "ladder.tip-healthy",
                name,
                volts,
                share,
                numbers.fixed(healthyDrop, DisplayUnit.VOLT, 1));
    return new Step(
        name,
        axis.place(from),
        axis.place(from + drop),
        axis.place(healthyFrom),
        axis.place(healthyFrom + healthyDrop),
        volts,
        share,
        largest,
        tip);
  }

  private String told(VoltageLadder ladder) {
    List<String> parts = new ArrayList<>();
    for (Map.Entry<Rung, Double> e : ladder.rungVolts().entrySet()) {
      parts.add(
          words.text(
              "ladder.part",
              words.sentences().name(e.getKey()),
              numbers.fixed(against(ladder, e.getKey()), DisplayUnit.VOLT, 1)));
    }
    return String.join(", ", parts);
  }

  private String table() {
    DataTable table =
        new DataTable(
            words.text("ladder.column-part"),
            words.text("ladder.column", words.text("ladder.positive")),
            words.text("ladder.column", words.text("ladder.negative")),
            words.text("ladder.column-healthy", words.text("ladder.positive")),
            words.text("ladder.column-healthy", words.text("ladder.negative")));
    for (Rung rung : Rung.values()) {
      table.row(
          words.heading(rung),
          against(positive, rung),
          against(negative, rung),
          healthyPositive == null ? Double.NaN : against(healthyPositive, rung),
          healthyNegative == null ? Double.NaN : against(healthyNegative, rung));
    }
    return table.toString();
  }
}
