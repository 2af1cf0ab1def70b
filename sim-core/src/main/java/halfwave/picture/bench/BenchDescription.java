package halfwave.picture.bench;

import halfwave.bench.Bench;
import halfwave.bench.Condition;
import halfwave.bench.Disorder;
import halfwave.board.Ignition;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.picture.scene.Arrows;
import halfwave.picture.scene.DrawingStyle;
import halfwave.picture.scene.DrawnBench;
import halfwave.picture.scene.LeadPlaces;
import halfwave.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/** The drawing in full sentences, for whoever does not see it. */
final class BenchDescription {

  private final DrawnBench drawn;
  private final Bench bench;
  private final Condition condition;
  private final SheetWords words;
  private final List<String> sentences = new ArrayList<>();

  private BenchDescription(DrawnBench drawn, SheetWords words) {
    this.drawn = drawn;
    this.bench = drawn.bench();
    this.condition = bench.condition();
    this.words = words;
  }

  static String of(DrawnBench drawn, DrawingStyle style) {
    BenchDescription d = new BenchDescription(drawn, new SheetWords(style.sentences()));
    d.board();
    d.lead();
    d.rod();
    d.flame();
    d.way();
    d.gas();
    d.disorders();
    d.meter();
    return String.join(" ", d.sentences);
  }

  private void say(MessageKey key, Argument... arguments) {
    sentences.add(words.text(Message.of(key, arguments)));
  }

  private Argument ohms(double ohms) {
    return words.plain(ohms, Dimension.RESISTANCE);
  }

  private Argument length(double meters) {
    return Argument.text(words.length(meters));
  }

  private void board() {
    say(
        MessageKey.DESCRIBED_BOARD,
        Argument.name(drawn.moment().board().stage()),
        Argument.name(drawn.code()));
    var source = bench.design().source();
    say(
        MessageKey.DESCRIBED_SOURCE,
        words.plain(source.openCircuitRmsVolts(), Dimension.VOLTAGE),
        words.plain(source.frequencyHertz(), Dimension.FREQUENCY),
        ohms(source.resistanceOhms()));
  }

  private void lead() {
    double extra = condition.connectorOhms() + condition.leadExtraOhms();
    if (condition.connectorOhms() >= Wires.BROKEN_OHMS) {
      say(MessageKey.DESCRIBED_LEAD_OFF);
    } else if (condition.leadExtraOhms() >= Wires.BROKEN_OHMS) {
      say(MessageKey.DESCRIBED_LEAD_BROKEN);
    } else {
      say(MessageKey.DESCRIBED_LEAD);
      if (extra > 0) {
        say(MessageKey.DESCRIBED_LEAD_OHMS, ohms(extra));
      }
    }
  }

  private void rod() {
    say(
        MessageKey.DESCRIBED_ROD,
        length(2 * bench.rod().radiusMeters()),
        length(bench.rod().tip().zMeters()),
        length(Math.abs(bench.rod().tip().yMeters())));
    double film = condition.rodCoat().thicknessMeters();
    if (film > 0) {
      say(MessageKey.DESCRIBED_FILM, words.plain(film, Dimension.LENGTH));
    }
    say(
        RodPainter.cracked(drawn.moment().bench())
            ? MessageKey.DESCRIBED_CRACKED
            : MessageKey.DESCRIBED_INSULATOR);
    joined(MessageKey.DESCRIBED_LEAK, condition.leakageOhms());
    joined(MessageKey.DESCRIBED_JUMPER, condition.jumperOhms());
    joined(MessageKey.DESCRIBED_DEPOSIT, condition.depositOhms());
    if (bench.rodClearanceMeters() == 0) {
      say(MessageKey.DESCRIBED_TOUCHES);
    }
  }

  private void joined(MessageKey key, double ohms) {
    if (ohms < Double.POSITIVE_INFINITY) {
      say(key, ohms(ohms));
    }
  }

  private void flame() {
    int lit = drawn.flame().burning() ? drawn.moment().furnace().litCount() : 0;
    say(
        MessageKey.DESCRIBED_BURNERS,
        Argument.count(bench.design().burnerCount()),
        Argument.count(lit));
    var sheets = drawn.flame().field().sheets();
    if (drawn.burns()) {
      say(MessageKey.DESCRIBED_FLAME, Argument.name(sheets.state()), length(sheets.gapMeters()));
    } else {
      say(MessageKey.DESCRIBED_NO_FLAME);
    }
    if (condition.burnerScaleOhms() > 0) {
      say(MessageKey.DESCRIBED_SCALE, ohms(condition.burnerScaleOhms()));
    }
    Arrows arrows = drawn.arrows();
    if (drawn.burns() && arrows != null) {
      say(
          MessageKey.DESCRIBED_ARROWS,
          words.current(arrows.rodPositiveAmps()),
          words.current(arrows.rodNegativeAmps()));
    }
  }

  private void way() {
    if (condition.groundExtraOhms() >= Wires.BROKEN_OHMS) {
      say(MessageKey.DESCRIBED_GROUND_OPEN);
    } else {
      say(
          MessageKey.DESCRIBED_GROUND,
          ohms(bench.design().groundOhms() + condition.groundExtraOhms()));
    }
  }

  private void gas() {
    say(
        drawn.moment().furnace().gasRatio() > 0
            ? MessageKey.DESCRIBED_VALVE_OPEN
            : MessageKey.DESCRIBED_VALVE_SHUT);
    Ignition ignition = bench.design().ignition();
    if (ignition.hotSurface()) {
      say(
          MessageKey.DESCRIBED_GLOWS,
          words.plain(drawn.moment().furnace().igniterKelvin(), Dimension.TEMPERATURE));
    } else {
      say(
          drawn.moment().outputs().spark()
              ? MessageKey.DESCRIBED_SPARKS
              : MessageKey.DESCRIBED_NO_SPARK);
    }
  }

  private void disorders() {
    for (Disorder disorder : Disorder.values()) {
      if (condition.appliance().has(disorder)) {
        say(MessageKey.DESCRIBED_DISORDER, Argument.name(disorder));
      }
    }
  }

  private void meter() {
    if (!drawn.reading().isEmpty()) {
      say(MessageKey.DESCRIBED_METER, Argument.text(drawn.reading()));
    } else {
      say(
          drawn.moment().hooked() == null
              ? MessageKey.DESCRIBED_METER_READY
              : MessageKey.DESCRIBED_METER_ON);
    }
    if (drawn.moment().hooked() != null) {
      sentences.add(LeadPlaces.text(drawn.moment().hooked().hookUp(), words.sentences()));
    }
  }
}
