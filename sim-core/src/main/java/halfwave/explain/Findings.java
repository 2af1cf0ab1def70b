package halfwave.explain;

import halfwave.bench.Bench;
import halfwave.bench.BenchCircuit;
import halfwave.bench.BenchFlame;
import halfwave.bench.Condition;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import halfwave.work.Aspect;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** What is not as it should be on a bench, and what each of it does to the signal. */
final class Findings {

  /** From here resistance in lead or ground is worth a sentence: it costs about 1 % (Ω). */
  private static final double TOLD_OHMS = 1e5;

  /** Of these there is a sentence that says what they do to the signal. */
  private static final Set<Aspect> TOLD_BY_EFFECT =
      EnumSet.of(
          Aspect.ROD_COAT,
          Aspect.ROD_CONTACT,
          Aspect.INSULATOR_LEAK,
          Aspect.DAMP_LEAK,
          Aspect.LEAD_CHAFE,
          Aspect.CONNECTOR,
          Aspect.GROUND,
          Aspect.BURNER_SCALE,
          Aspect.PORTS,
          Aspect.BLOWER_AIR);

  private final List<Message> said = new ArrayList<>();

  private Findings() {}

  /** Whether any of the rod stands in the flame that this bench has while it burns. */
  static boolean rodInFlame(Bench bench, BenchFlame flame) {
    return flame.burning() && BenchCircuit.lengthInFlameMeters(bench.rod(), flame.field()) > 0;
  }

  /** What bears on the sense circuit. */
  static List<Message> of(Bench bench, BenchFlame flame) {
    Findings findings = new Findings();
    if (flame.burning() && !rodInFlame(bench, flame)) {
      findings.say(MessageKey.ACCOUNT_ROD_OUT);
    }
    findings.burner(bench.condition());
    findings.wiring(bench);
    findings.film(bench.condition());
    return List.copyOf(findings.said);
  }

  /** The same, and by name whatever else is not as it should be. */
  static List<Message> all(Bench bench, BenchFlame flame) {
    List<Message> all = new ArrayList<>(of(bench, flame));
    for (Aspect aspect : Aspect.values()) {
      if (aspect.wrong(bench.condition()) && !TOLD_BY_EFFECT.contains(aspect)) {
        all.add(Message.of(MessageKey.ACCOUNT_WRONG, Argument.name(aspect)));
      }
    }
    return List.copyOf(all);
  }

  private void burner(Condition c) {
    if (c.attachmentRatio() < 1) {
      say(MessageKey.ACCOUNT_ATTACHMENT, Argument.quantity(c.attachmentRatio(), Dimension.RATIO));
    }
    if (c.burnerScaleOhms() > 0 && c.burnerScaleOhms() < Double.POSITIVE_INFINITY) {
      say(MessageKey.ACCOUNT_SCALE, Argument.quantity(c.burnerScaleOhms(), Dimension.RESISTANCE));
    }
  }

  private void wiring(Bench bench) {
    Condition c = bench.condition();
    double series = c.connectorOhms() + c.groundExtraOhms();
    if (series >= TOLD_OHMS && series < Double.POSITIVE_INFINITY) {
      say(MessageKey.ACCOUNT_SERIES_OHMS, Argument.quantity(series, Dimension.RESISTANCE));
    }
    if (c.connectorOhms() == Double.POSITIVE_INFINITY) {
      say(MessageKey.ACCOUNT_LEAD_OFF);
    }
    if (c.groundExtraOhms() == Double.POSITIVE_INFINITY) {
      say(MessageKey.ACCOUNT_GROUND_LOST);
    }
    if (bench.rodClearanceMeters() == 0) {
      say(MessageKey.ACCOUNT_ROD_TOUCHES);
    } else if (c.jumperOhms() < Double.POSITIVE_INFINITY) {
      say(MessageKey.ACCOUNT_JUMPER, Argument.quantity(c.jumperOhms(), Dimension.RESISTANCE));
    }
    if (c.leakageOhms() < Double.POSITIVE_INFINITY) {
      say(MessageKey.ACCOUNT_LEAKAGE, Argument.quantity(c.leakageOhms(), Dimension.RESISTANCE));
    }
  }

  private void film(Condition c) {
    if (c.rodCoat().covers()) {
      say(
          MessageKey.ACCOUNT_FILM,
          Argument.quantity(c.rodCoat().thicknessMeters(), Dimension.LENGTH),
          Argument.quantity(c.rodKelvin(), Dimension.TEMPERATURE));
    }
  }

  private void say(MessageKey key, Argument... arguments) {
    said.add(Message.of(key, arguments));
  }
}
