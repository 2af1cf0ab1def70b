package halfwave.display;

import halfwave.explain.Account;
import halfwave.explain.BenchAnswer;
import halfwave.explain.Caution;
import halfwave.explain.Rung;
import halfwave.explain.VoltageLadder;
import halfwave.instrument.MeterReading;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/** A bench's answer as one page of plain text. */
public final class BenchReport {

  private static final int WIDTH = 78;
  private static final int LABEL_WIDTH = 44;
  private static final int VALUE_WIDTH = 16;

  /** Below this a rung is not worth a line of its own figures (V). */
  private static final double SMALLEST_VOLTS = 1e-3;

  /** Below these a reading is rounding, not current (A) or voltage (V). */
  private static final double NOTHING_AMPS = 1e-10;

  private static final double NOTHING_VOLTS = 1e-5;

  private final Sentences sentences;
  private final StringBuilder page = new StringBuilder();

  private BenchReport(Sentences sentences) {
    this.sentences = sentences;
  }

  /** The page in the language of the sentences. */
  public static String text(BenchAnswer answer, Sentences sentences) {
    BenchReport report = new BenchReport(sentences);
    report.title(answer.bench().name());
    report.readings(answer);
    report.ladder(answer);
    report.paragraphs(MessageKey.REPORT_WHY, Account.of(answer));
    report.paragraphs(MessageKey.REPORT_CAUTIONS, Caution.all());
    return report.page.toString();
  }

  private void title(String name) {
    String line = say(Message.of(MessageKey.REPORT_TITLE, Argument.text(name)));
    page.append(line).append('\n').append("=".repeat(line.length())).append('\n');
  }

  private void heading(MessageKey key) {
    page.append('\n').append(say(Message.of(key))).append('\n');
  }

  private void readings(BenchAnswer answer) {
    heading(MessageKey.REPORT_READINGS);
    reading(MessageKey.REPORT_SERIES, answer.readings().series());
    reading(MessageKey.REPORT_TERMINAL, answer.readings().terminal());
    reading(MessageKey.REPORT_SERIES_LOADED, answer.readings().seriesWithVoltmeter());
    reading(MessageKey.REPORT_LEAD_OFF, answer.readings().terminalLeadOff());
    reading(MessageKey.REPORT_FLAME_OUT, answer.readings().terminalFlameOut());
    reading(MessageKey.REPORT_PROBE, answer.readings().probe());
  }

  private void reading(MessageKey label, MeterReading reading) {
    String left = "";
    String right;
    if (reading instanceof MeterReading.Amps amps) {
      left = dc(amps.meanAmps(), Dimension.CURRENT);
      right = ac(amps.alternatingRmsAmps(), Dimension.CURRENT);
    } else if (reading instanceof MeterReading.Volts volts) {
      left = dc(volts.meanVolts(), Dimension.VOLTAGE);
      right = ac(volts.alternatingRmsVolts(), Dimension.VOLTAGE);
    } else if (reading instanceof MeterReading.None none) {
      right =
          say(
              Message.of(
                  MessageKey.ACCOUNT_UNSOLVED,
                  Argument.name(none.reason().failure()),
                  Argument.name(none.reason().part())));
    } else {
      throw new IllegalStateException("no text for " + reading);
    }
    row(say(Message.of(label)), left, right);
  }

  private String dc(double si, Dimension dimension) {
    return say(Message.of(MessageKey.REPORT_DC, Argument.quantity(some(si, dimension), dimension)));
  }

  private String ac(double si, Dimension dimension) {
    return say(Message.of(MessageKey.REPORT_AC, Argument.quantity(some(si, dimension), dimension)));
  }

  private static double some(double si, Dimension dimension) {
    double nothing = dimension == Dimension.CURRENT ? NOTHING_AMPS : NOTHING_VOLTS;
    return Math.abs(si) < nothing ? 0 : si;
  }

  private void ladder(BenchAnswer answer) {
    VoltageLadder positive = answer.rodPositive();
    VoltageLadder negative = answer.rodNegative();
    if (positive == null || negative == null || !answer.flame().burning()) {
      return;
    }
    page.append('\n');
    row(
        say(Message.of(MessageKey.REPORT_LADDER)),
        say(Message.of(MessageKey.REPORT_ROD_POSITIVE)),
        say(Message.of(MessageKey.REPORT_ROD_NEGATIVE)),
        0);
    for (Rung rung : Rung.values()) {
      double with = positive.rungVolts().getOrDefault(rung, 0.0);
      double against = negative.rungVolts().getOrDefault(rung, 0.0);
      if (Math.abs(with) >= SMALLEST_VOLTS || Math.abs(against) >= SMALLEST_VOLTS) {
        row(sentences.name(rung), volts(with), volts(against));
      }
    }
    row(
        say(Message.of(MessageKey.REPORT_SOURCE)),
        volts(positive.sourceVolts()),
        volts(negative.sourceVolts()));
    row(
        say(Message.of(MessageKey.REPORT_CREST)),
        sentences.text(Argument.quantity(positive.flameAmps(), Dimension.CURRENT)),
        sentences.text(Argument.quantity(negative.flameAmps(), Dimension.CURRENT)));
  }

  /** What is less than a display of millivolts shows is zero there. */
  private String volts(double volts) {
    double shown = Math.abs(volts) < SMALLEST_VOLTS ? 0 : volts;
    return sentences.text(Argument.quantity(shown, Dimension.VOLTAGE));
  }

  private void row(String label, String left, String right) {
    row(label, left, right, 2);
  }

  private void row(String label, String left, String right, int indent) {
    page.append(" ".repeat(indent)).append(padded(label, LABEL_WIDTH + 2 - indent));
    page.append(" ".repeat(Math.max(1, VALUE_WIDTH - left.length()))).append(left);
    page.append(" ".repeat(Math.max(1, VALUE_WIDTH - right.length()))).append(right);
    page.append('\n');
  }

  private static String padded(String text, int width) {
    return text.length() >= width ? text : text + " ".repeat(width - text.length());
  }

  private void paragraphs(MessageKey heading, List<Message> messages) {
    heading(heading);
    for (Message message : messages) {
      String lead = "  - ";
      for (String line : wrapped(say(message), WIDTH - lead.length())) {
        page.append(lead).append(line).append('\n');
        lead = "    ";
      }
    }
  }

  private static List<String> wrapped(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    // a number stays with its unit
    for (String word : text.split("(?<!\\d) ", -1)) {
      if (line.length() > 0 && line.length() + 1 + word.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  private String say(Message message) {
    return sentences.text(message);
  }
}
