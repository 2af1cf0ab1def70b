package halfwave.explain;

import halfwave.bench.Bench;
import halfwave.bench.Condition;
import halfwave.circuit.Part;
import halfwave.circuit.Solved;
import halfwave.circuit.SteadyState;
import halfwave.flame.FlameSheets;
import halfwave.instrument.MeterReading;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;

/** The account of a bench in plain words, as messages in the order of reading. */
public final class Account {

  /** From here a reading counts as good [common practice, no source]. */
  private static final double HEALTHY_AMPS = 1.5e-6;

  /** Below this most boards drop out [seen: product literature, 0.4 to 0.6 µA]. */
  private static final double DROP_OUT_AMPS = 0.5e-6;

  /** What a service meter can tell from nothing: one digit of a 0.1 µA range. */
  private static final double NOTHING_AMPS = 0.1e-6;

  /** With this much AC and hardly any DC the path conducts but does not rectify [seen: TA-5]. */
  private static final double PLENTY_ALTERNATING_AMPS = 4e-6;

  /** Below this a crest of the flame current is not worth a ratio (A). */
  private static final double SMALLEST_CREST_AMPS = 1e-9;

  private static final int TOLD_ELASTICITIES = 4;

  private final List<Message> said = new ArrayList<>();

  private Account() {}

  /** Tells a bench's answer. */
  public static List<Message> of(BenchAnswer answer) {
    Account account = new Account();
    account.flame(answer);
    account.condition(answer.bench());
    account.verdict(answer.readings().series());
    VoltageLadder positive = answer.rodPositive();
    VoltageLadder negative = answer.rodNegative();
    if (answer.flame().burning() && positive != null && negative != null) {
      account.halfCycles(positive, negative);
    }
    account.meter(answer);
    for (Elasticity e :
        answer
            .elasticities()
            .subList(0, Math.min(TOLD_ELASTICITIES, answer.elasticities().size()))) {
      account.say(
          MessageKey.ACCOUNT_DEPENDS,
          Argument.name(e.parameter()),
          Argument.quantity(e.dcElasticityRatio() / 100, Dimension.RATIO));
    }
    return List.copyOf(account.said);
  }

  private void say(MessageKey key, Argument... arguments) {
    said.add(Message.of(key, arguments));
  }

  private void flame(BenchAnswer answer) {
    FlameSheets sheets = answer.flame().field().sheets();
    if (answer.flame().burning()) {
      say(
          MessageKey.ACCOUNT_FLAME,
          Argument.name(sheets.state()),
          Argument.quantity(sheets.mixture().firingWatts(), Dimension.POWER),
          Argument.quantity(sheets.mixture().equivalenceRatio(), Dimension.NUMBER));
    } else {
      say(MessageKey.ACCOUNT_NO_FLAME, Argument.name(sheets.state()));
    }
  }

  private void condition(Bench bench) {
    Condition c = bench.condition();
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
    if (c.rodCoat().thicknessMeters() > 0) {
      say(
          MessageKey.ACCOUNT_FILM,
          Argument.quantity(c.rodCoat().thicknessMeters(), Dimension.LENGTH),
          Argument.quantity(c.rodKelvin(), Dimension.TEMPERATURE));
    }
  }

  private void verdict(MeterReading series) {
    if (series instanceof MeterReading.Amps amps) {
      double dc = amps.meanAmps();
      MessageKey key =
          dc >= HEALTHY_AMPS
              ? MessageKey.ACCOUNT_HEALTHY
              : dc >= DROP_OUT_AMPS
                  ? MessageKey.ACCOUNT_WEAK
                  : dc > NOTHING_AMPS
                      ? MessageKey.ACCOUNT_TOO_WEAK
                      : dc < -NOTHING_AMPS ? MessageKey.ACCOUNT_REVERSED : MessageKey.ACCOUNT_NO_DC;
      say(
          key,
          Argument.quantity(dc, Dimension.CURRENT),
          Argument.quantity(amps.alternatingRmsAmps(), Dimension.CURRENT));
      if (dc < HEALTHY_AMPS && amps.alternatingRmsAmps() >= PLENTY_ALTERNATING_AMPS) {
        say(MessageKey.ACCOUNT_CONDUCTS_ONLY);
      }
    } else if (series instanceof MeterReading.None none) {
      say(
          MessageKey.ACCOUNT_UNSOLVED,
          Argument.name(none.reason().failure()),
          Argument.name(none.reason().part()));
    }
  }

  private void halfCycles(VoltageLadder positive, VoltageLadder negative) {
    halfCycle(MessageKey.ACCOUNT_ROD_POSITIVE, positive);
    halfCycle(MessageKey.ACCOUNT_ROD_NEGATIVE, negative);
    double with = Math.abs(positive.flameAmps());
    double against = Math.abs(negative.flameAmps());
    if (with > SMALLEST_CREST_AMPS && against > SMALLEST_CREST_AMPS) {
      say(
          with >= against ? MessageKey.ACCOUNT_RECTIFIES : MessageKey.ACCOUNT_RECTIFIES_BACKWARDS,
          Argument.quantity(Math.max(with, against) / Math.min(with, against), Dimension.NUMBER));
    }
  }

  private void halfCycle(MessageKey key, VoltageLadder ladder) {
    Rung largest = ladder.largest();
    say(
        key,
        Argument.quantity(Math.abs(ladder.flameAmps()), Dimension.CURRENT),
        Argument.name(largest),
        Argument.quantity(
            Math.abs(ladder.rungVolts().getOrDefault(largest, 0.0)), Dimension.VOLTAGE),
        Argument.quantity(Math.abs(ladder.sourceVolts()), Dimension.VOLTAGE));
  }

  private void meter(BenchAnswer answer) {
    SteadyState state = answer.state();
    if (answer.readings().terminal() instanceof MeterReading.Volts flame
        && answer.readings().terminalLeadOff() instanceof MeterReading.Volts off
        && answer.readings().seriesWithVoltmeter() instanceof MeterReading.Amps loaded
        && state instanceof Solved solved) {
      say(
          MessageKey.ACCOUNT_METER,
          Argument.quantity(flame.alternatingRmsVolts(), Dimension.VOLTAGE),
          Argument.quantity(off.alternatingRmsVolts(), Dimension.VOLTAGE),
          Argument.quantity(solved.currentMeanAmps(Part.CONNECTOR), Dimension.CURRENT),
          Argument.quantity(loaded.meanAmps(), Dimension.CURRENT));
    }
  }
}
