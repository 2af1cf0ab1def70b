package halfwave.gui.presentation.charts;

import halfwave.board.Sensing;
import halfwave.display.DisplayUnit;
import halfwave.display.QuantityText;
import halfwave.explain.SweepRow.Taken;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.charts.WhatIfView.Here;
import halfwave.gui.presentation.charts.WhatIfView.Points;
import halfwave.message.Quantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.util.FastMath;

/** Makes the view of an answer. */
final class WhatIfMaker {

  /** What is less apart than this share of the axis looks the same. */
  private static final double SAME = 0.01;

  /** A reading that changes less than this over the whole range does not depend on the number. */
  private static final double FLAT = 0.01;

  /** So little below zero is not worth making room for, as a share of the highest. */
  private static final double HIDDEN = 0.04;

  private static final double LEAST_MICROAMPS = 1;

  private final WhatIf.Answer answer;
  private final Sensing sensing;
  private final Wording words;
  private final QuantityText numbers;
  private final Points points;
  private final ChartAxis across;

  WhatIfMaker(WhatIf.Answer answer, Sensing sensing, Wording words, Points points) {
    this.answer = answer;
    this.sensing = sensing;
    this.words = words;
    this.points = points;
    numbers = words.sentences().quantities();
    across = across();
  }

  private ChartAxis across() {
    WhatIfRange range = answer.question().range();
    DisplayUnit unit = unit(range);
    String title = ChartAxis.title(words.heading(points.parameter()), unit, words);
    double from = unit.fromSi(range.from());
    double to = unit.fromSi(range.to());
    return range.decades()
        ? ChartAxis.decades(title, from, to, numbers)
        : ChartAxis.linear(title, from, to, 8, numbers);
  }

  private DisplayUnit unit(WhatIfRange range) {
    double size =
        range.decades()
            ? FastMath.sqrt(range.from() * range.to())
            : Math.max(Math.abs(range.from()), Math.abs(range.to()));
    return numbers.unit(size, points.parameter().dimension());
  }

  WhatIfView make() {
    double high = Math.max(LEAST_MICROAMPS, DisplayUnit.MICROAMP.fromSi(sensing.pickUpAmps()));
    double low = 0;
    for (double[] curve : List.of(points.dc(), points.ac(), points.healthyDc())) {
      for (double v : curve) {
        high = v > high ? v : high;
        low = v < low ? v : low;
      }
    }
    low = low > -HIDDEN * high ? 0 : low;
    ChartAxis amps =
        ChartAxis.rounded(
            words.text("chart.axis", words.text("whatif.current"), "µA"), low, high, 4, numbers);
    DisplayUnit unit = unit(answer.question().range());
    double[] at = new double[points.si().length];
    for (int k = 0; k < at.length; k++) {
      at[k] = across.place(unit.fromSi(points.si()[k]));
    }
    boolean same =
        points.healthyDc().length != points.dc().length
            || Trace.apart(points.healthyDc(), points.dc()) < SAME * (amps.high() - amps.low());
    String said = words.text("whatif.summary", now(), consequence());
    return new WhatIfView(
        across,
        amps,
        new Trace(at, amps.places(points.dc())),
        new Trace(at, amps.places(points.ac())),
        same ? null : new Trace(at, amps.places(points.healthyDc())),
        here(amps, unit),
        amps.place(DisplayUnit.MICROAMP.fromSi(sensing.pickUpAmps())),
        amps.place(DisplayUnit.MICROAMP.fromSi(sensing.dropOutAmps())),
        words.text("board.pick-up", limit(sensing.pickUpAmps())),
        words.text("board.drop-out", limit(sensing.dropOutAmps())),
        said,
        words.text("whatif.spoken", words.heading(points.parameter()), said),
        points);
  }

  private String limit(double amps) {
    return numbers.text(amps, DisplayUnit.MICROAMP, 2);
  }

  private double value() {
    return points.parameter().of(answer.question().bench());
  }

  private String text(double si) {
    // what is open has a word; zero gets the unit of the axis
    return Double.isInfinite(si)
        ? words.sentences().text(new Quantity(si, points.parameter().dimension()))
        : numbers.text(
            si,
            si == 0
                ? unit(answer.question().range())
                : numbers.unit(si, points.parameter().dimension()),
            3);
  }

  private Here here(ChartAxis amps, DisplayUnit unit) {
    double place = across.place(unit.fromSi(value()));
    double at = Math.max(0, Math.min(1, place));
    Taken now = answer.microamps();
    return new Here(
        at,
        now == null ? Double.NaN : amps.place(DisplayUnit.MICROAMP.fromSi(now.seriesMeanAmps())),
        now == null
            ? Double.NaN
            : amps.place(DisplayUnit.MICROAMP.fromSi(now.seriesAlternatingRmsAmps())),
        words.text("whatif.here", text(value())));
  }

  private String now() {
    Taken now = answer.microamps();
    return now == null
        ? words.text("whatif.probe-none", text(value()))
        : words.text(
            "whatif.probe",
            text(value()),
            numbers.fixed(now.seriesMeanAmps(), DisplayUnit.MICROAMP, 1),
            numbers.fixed(now.seriesAlternatingRmsAmps(), DisplayUnit.MICROAMP, 1));
  }

  /** What the board makes of it, going away from the present value on either side. */
  private String consequence() {
    double limit = DisplayUnit.MICROAMP.fromSi(sensing.dropOutAmps());
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    List<Double> crossings = new ArrayList<>();
    for (int k = 0; k < points.dc().length; k++) {
      double v = points.dc()[k];
      low = v < low ? v : low;
      high = v > high ? v : high;
      double before = k == 0 ? Double.NaN : points.dc()[k - 1];
      if ((before < limit && v >= limit) || (before >= limit && v < limit)) {
        double share = (limit - before) / (v - before);
        double a = points.si()[k - 1];
        double b = points.si()[k];
        crossings.add(across.decades() ? a * FastMath.pow(b / a, share) : a + share * (b - a));
      }
    }
    if (high - low < FLAT * Math.max(Math.abs(high), LEAST_MICROAMPS)) {
      return words.text("whatif.flat");
    }
    if (crossings.isEmpty()) {
      return words.text(low >= limit ? "whatif.holds" : "whatif.never");
    }
    double now = value();
    String places =
        String.join(
            words.text("whatif.and"),
            crossings.stream()
                .sorted(Comparator.comparingDouble(c -> Math.abs(c - now)))
                .limit(2)
                .sorted()
                .map(this::rough)
                .toList());
    return words.text("whatif.crosses", places);
  }

  private String rough(double si) {
    return numbers.text(si, numbers.unit(si, points.parameter().dimension()), 2);
  }
}
