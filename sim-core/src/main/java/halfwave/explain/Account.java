package halfwave.explain;

import halfwave.bench.Bench;
import halfwave.bench.BenchCircuit;
import halfwave.bench.Condition;
import halfwave.bench.Parameter;
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
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

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

  /** Below this a crest of the flame current is not worth a sentence (A). */
  private static final double SMALLEST_CREST_AMPS = 50e-9;

  /** From here resistance in lead or ground is worth a sentence: it costs about 1 % (Ω). */
  private static final double TOLD_OHMS = 1e5;

  /** Of these one per cent more or less means nothing to a person, or the same as another. */
  private static final Set<Parameter> NOT_TOLD =
      EnumSet.of(
          Parameter.ROD_ACROSS,
          Parameter.ROD_UP,
          Parameter.ROD_ALONG,
          Parameter.ROD_TURN,
          Parameter.ROD_TILT,
          Parameter.ROD_BEND,
          Parameter.ROD_TEMPERATURE,
          Parameter.SENSE_SUPPLY);

  /** Below this a current is rounding (A). */
  private static final double ROUNDING_AMPS = 1e-10;

  private static final int TOLD_ELASTICITIES = 4;

  private final List<Message> said = new ArrayList<>();

  /** Whether there is DC of the right sign that a meter can show. */
  private boolean signal;

  /** Whether any of the rod stands in a burning flame. */
  private boolean rodInFlame;

  private Account() {}

  /** Tells a bench's answer. */
  public static List<Message> of(BenchAnswer answer) {
    Account account = new Account();
    account.flame(answer);
    account.condition(answer);
    account.verdict(answer.readings().series());
    VoltageLadder positive = answer.rodPositive();
    VoltageLadder negative = answer.rodNegative();
    if (account.rodInFlame && positive != null && negative != null) {
      account.halfCycles(positive, negative);
    }
    if (account.signal) {
      account.meter(answer);
      answer.elasticities().stream()
          .filter(e -> !NOT_TOLD.contains(e.parameter()))
          .limit(TOLD_ELASTICITIES)
          .forEach(account::depends);
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

  private void depends(Elasticity e) {
    say(
        MessageKey.ACCOUNT_DEPENDS,
        Argument.name(e.parameter()),
        Argument.quantity(e.dcElasticityRatio() / 100, Dimension.RATIO));
  }

  private void condition(BenchAnswer answer) {
    Bench bench = answer.bench();
    Condition c = bench.condition();
    rodInFlame =
        answer.flame().burning()
            && BenchCircuit.lengthInFlameMeters(bench.rod(), answer.flame().field()) > 0;
    if (answer.flame().burning() && !rodInFlame) {
      say(MessageKey.ACCOUNT_ROD_OUT);
    }
    if (c.attachmentRatio() < 1) {
      say(MessageKey.ACCOUNT_ATTACHMENT, Argument.quantity(c.attachmentRatio(), Dimension.RATIO));
    }
    if (c.burnerScaleOhms() > 0 && c.burnerScaleOhms() < Double.POSITIVE_INFINITY) {
      say(MessageKey.ACCOUNT_SCALE, Argument.quantity(c.burnerScaleOhms(), Dimension.RESISTANCE));
    }
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
    if (c.rodCoat().covers()) {
      say(
          MessageKey.ACCOUNT_FILM,
          Argument.quantity(c.rodCoat().thicknessMeters(), Dimension.LENGTH),
          Argument.quantity(c.rodKelvin(), Dimension.TEMPERATURE));
    }
  }

  private void verdict(MeterReading series) {
    if (series instanceof MeterReading.Amps amps) {
      double dc = Math.abs(amps.meanAmps()) < ROUNDING_AMPS ? 0 : amps.meanAmps();
      signal = dc > NOTHING_AMPS;
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
      if (dc < HEALTHY_AMPS
          && dc > -NOTHING_AMPS
          && amps.alternatingRmsAmps() >= PLENTY_ALTERNATING_AMPS) {
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
    double with = Math.abs(positive.flameAmps());
    double against = Math.abs(negative.flameAmps());
    if (Math.max(with, against) < SMALLEST_CREST_AMPS) {
      return;
    }
    halfCycle(MessageKey.ACCOUNT_ROD_POSITIVE, positive);
    halfCycle(MessageKey.ACCOUNT_ROD_NEGATIVE, negative);
    // with a film the crests need not tell the sign of the mean: then they are not compared
    if (signal && with > against && against > 0) {
      say(MessageKey.ACCOUNT_RECTIFIES, Argument.quantity(with / against, Dimension.NUMBER));
    } else if (!signal && against > with && with > 0) {
      say(
          MessageKey.ACCOUNT_RECTIFIES_BACKWARDS,
          Argument.quantity(against / with, Dimension.NUMBER));
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
