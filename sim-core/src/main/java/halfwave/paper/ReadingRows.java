package halfwave.paper;

import halfwave.bench.Readings;
import halfwave.bench.Stages;
import halfwave.display.MeterText;
import halfwave.display.Sentences;
import halfwave.explain.MomentAnswer;
import halfwave.instrument.MeterReading;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.picture.scene.LeadPlaces;
import halfwave.quantity.Dimension;
import halfwave.sequence.Hooked;

/** What meters show: the one on the bench, and those of a technician who takes all readings. */
final class ReadingRows {

  /** Below these a reading is rounding, not current (A) or voltage (V). */
  private static final double NOTHING_AMPS = 1e-10;

  private static final double NOTHING_VOLTS = 1e-5;

  private final PageFlow flow;
  private final PaperWords words;
  private final MomentAnswer answer;

  ReadingRows(PageFlow flow, PaperWords words, MomentAnswer answer) {
    this.flow = flow;
    this.words = words;
    this.answer = answer;
  }

  void put() {
    flow.heading(words.text("readings.title"));
    meter();
    if (!answer.powered()) {
      flow.paragraph(words.text("readings.no-power"), 6);
      return;
    } else if (!answer.flame().burning()) {
      flow.paragraph(words.text("readings.no-flame"), 6);
      return;
    } else if (!answer.lit()) {
      flow.paragraph(words.text("readings.if-lit"), 6);
      flow.keepWithNext();
    }
    flow.together(this::all);
  }

  private void all() {
    Readings all = Readings.of(new Stages(), answer.bench());
    Table table = new Table(flow, 0.6, -0.2, -0.2);
    table.head(words.text("readings.where"), words.text("readings.dc"), words.text("readings.ac"));
    row(table, MessageKey.REPORT_SERIES, all.series());
    row(table, MessageKey.REPORT_TERMINAL, all.terminal());
    row(table, MessageKey.REPORT_SERIES_LOADED, all.seriesWithVoltmeter());
    row(table, MessageKey.REPORT_LEAD_OFF, all.terminalLeadOff());
    row(table, MessageKey.REPORT_FLAME_OUT, all.terminalFlameOut());
    row(table, MessageKey.REPORT_PROBE, all.probe());
  }

  private void meter() {
    Hooked hooked = answer.moment().hooked();
    Sentences s = words.sentences();
    if (hooked == null || answer.measured().isEmpty()) {
      flow.paragraph(words.text("readings.no-meter"), 4);
      return;
    }
    String shown = MeterText.text(answer.measured().get().shown(), s);
    flow.text(
        words.text("readings.meter", shown, s.name(hooked.function())),
        PageFlow.STRONG,
        Pen.INK,
        4,
        flow.left(),
        flow.width());
    flow.keepWithNext();
    flow.paragraph(LeadPlaces.text(hooked.hookUp(), s), 0);
    flow.gap(3);
  }

  private void row(Table table, MessageKey label, MeterReading reading) {
    String name = words.sentences().text(Message.of(label));
    if (reading instanceof MeterReading.Amps amps) {
      table.row(
          name,
          text(amps.meanAmps(), Dimension.CURRENT, NOTHING_AMPS),
          text(amps.alternatingRmsAmps(), Dimension.CURRENT, NOTHING_AMPS));
    } else if (reading instanceof MeterReading.Volts volts) {
      table.row(
          name,
          text(volts.meanVolts(), Dimension.VOLTAGE, NOTHING_VOLTS),
          text(volts.alternatingRmsVolts(), Dimension.VOLTAGE, NOTHING_VOLTS));
    } else {
      table.row(name, words.text("readings.unsolved"), words.text("readings.unsolved"));
    }
  }

  private String text(double si, Dimension dimension, double nothing) {
    double shown = Math.abs(si) < nothing ? 0 : si;
    return words.sentences().text(Argument.quantity(shown, dimension));
  }
}
