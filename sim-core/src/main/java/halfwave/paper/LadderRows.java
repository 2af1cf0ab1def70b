package halfwave.paper;

import halfwave.display.DisplayUnit;
import halfwave.explain.Rung;
import halfwave.explain.VoltageLadder;
import java.awt.Font;
import java.awt.geom.Rectangle2D;

/**
 * The voltage ladder as a table that is a picture too: the volts of each part in both half-cycles,
 * and beside the figures bars of that length. Rod positive is filled, rod negative hatched.
 */
final class LadderRows {

  /** Less than this is zero in figures with one decimal (V). */
  private static final double LEAST_VOLTS = 0.05;

  private static final double ROW = 18;
  private static final double NAMES = 0.34;
  private static final double FIGURES = 50;
  private static final double GAP = 10;

  private final PageFlow flow;
  private final PaperWords words;
  private final VoltageLadder positive;
  private final VoltageLadder negative;
  private final double full;

  LadderRows(PageFlow flow, PaperWords words, VoltageLadder positive, VoltageLadder negative) {
    this.flow = flow;
    this.words = words;
    this.positive = positive;
    this.negative = negative;
    double most = Math.max(Math.abs(positive.sourceVolts()), Math.abs(negative.sourceVolts()));
    for (Rung rung : Rung.values()) {
      most = Math.max(most, Math.max(Math.abs(of(positive, rung)), Math.abs(of(negative, rung))));
    }
    full = most;
  }

  /** Counted along the source's own direction, so that both half-cycles go one way. */
  private static double of(VoltageLadder ladder, Rung rung) {
    return ladder.rungVolts().getOrDefault(rung, 0.0) * Math.signum(ladder.sourceVolts());
  }

  void put() {
    double middle = middle();
    flow.add(
        new Item(
            2,
            PageFlow.line(PageFlow.NOTE_STRONG) + 5,
            true,
            (pen, top) -> {
              Font font = PageFlow.NOTE_STRONG;
              double base = PageFlow.base(font, top + 2);
              pen.text(words.text("ladder.part"), font, Pen.INK, flow.left(), base);
              pen.text(words.text("ladder.positive"), font, Pen.INK, names(), base);
              pen.text(words.text("ladder.negative"), font, Pen.INK, middle, base);
            }));
    boolean quiet = false;
    for (Rung rung : Rung.values()) {
      if (tells(rung)) {
        row(rung);
      } else {
        quiet = true;
      }
    }
    if (quiet) {
      row(words.text("ladder.others"), 0, 0, false, false);
    }
    Font font = PageFlow.STRONG;
    sum(
        font,
        words.text("ladder.source"),
        volts(Math.abs(positive.sourceVolts())),
        volts(Math.abs(negative.sourceVolts())),
        true);
    sum(
        PageFlow.BODY,
        words.text("ladder.crest"),
        amps(positive.flameAmps()),
        amps(negative.flameAmps()),
        false);
  }

  private double names() {
    return flow.left() + NAMES * flow.width();
  }

  private double middle() {
    return names() + 0.5 * (flow.right() - names()) + 0.5 * GAP;
  }

  /** Whether a part takes as much as the figures can show. */
  private boolean tells(Rung rung) {
    return Math.max(Math.abs(of(positive, rung)), Math.abs(of(negative, rung))) >= LEAST_VOLTS;
  }

  private void row(Rung rung) {
    row(
        PaperWords.capital(words.sentences().name(rung)),
        of(positive, rung),
        of(negative, rung),
        rung == positive.largest(),
        rung == negative.largest());
  }

  private void row(
      String name, double with, double against, boolean mostWith, boolean mostAgainst) {
    Font font = mostWith || mostAgainst ? PageFlow.STRONG : PageFlow.BODY;
    flow.add(
        new Item(
            0,
            ROW,
            true,
            (pen, top) -> {
              pen.line(flow.left(), top, flow.right(), top, Pen.HAIRLINE, 0.5);
              pen.text(name, font, Pen.INK, flow.left(), base(font, top));
              side(pen, with, names(), top, mostWith, false);
              side(pen, against, middle(), top, mostAgainst, true);
            }));
  }

  private static double base(Font font, double top) {
    return PageFlow.base(font, top + 0.5 * (ROW - PageFlow.line(font)));
  }

  private void side(Pen pen, double volts, double left, double top, boolean most, boolean hatched) {
    Font font = most ? PageFlow.STRONG : PageFlow.BODY;
    pen.textTo(volts(volts), font, Pen.INK, left + FIGURES, base(font, top));
    double from = left + FIGURES + 8;
    double room = middle() - GAP - names() - FIGURES - 8;
    double length = room * Math.abs(volts) / full;
    if (length >= 0.3) {
      Rectangle2D bar = new Rectangle2D.Double(from, top + 4.5, length, ROW - 9);
      if (hatched) {
        pen.hatched(bar, Pen.VOLTS);
      } else {
        pen.fill(bar, Pen.VOLTS);
      }
    }
  }

  private void sum(Font font, String name, String left, String right, boolean first) {
    flow.add(
        new Item(
            0,
            ROW,
            first,
            (pen, top) -> {
              pen.line(flow.left(), top, flow.right(), top, first ? Pen.INK : Pen.HAIRLINE, 0.6);
              pen.text(name, font, Pen.INK, flow.left(), base(font, top));
              pen.textTo(left, font, Pen.INK, names() + FIGURES, base(font, top));
              pen.textTo(right, font, Pen.INK, middle() + FIGURES, base(font, top));
            }));
  }

  private String volts(double volts) {
    double shown = Math.abs(volts) < LEAST_VOLTS ? 0 : volts;
    return words.sentences().quantities().fixed(shown, DisplayUnit.VOLT, 1);
  }

  private String amps(double amps) {
    return words.sentences().quantities().fixed(Math.abs(amps), DisplayUnit.MICROAMP, 1);
  }
}
