package halfwave.explain;

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
  static final double NOTHING_AMPS = 0.1e-6;

  /** With this much AC and hardly any DC the path conducts but does not rectify [seen: TA-5]. */
  static final double PLENTY_ALTERNATING_AMPS = 4e-6;

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
  static final double ROUNDING_AMPS = 1e-10;

  private static final int TOLD_ELASTICITIES = 4;

  private final List<Message> said = new ArrayList<>();

  /** Whether there is DC of the right sign that a meter can show. */
  private boolean signal;

  private Account() {}

  /** Tells a bench's answer. */
  public static List<Message> of(BenchAnswer answer) {
    Account account = new Account();
    account.flame(answer);
    boolean rodInFlame = Findings.rodInFlame(answer.bench(), answer.flame());
    account.said.addAll(Findings.of(answer.bench(), answer.flame()));
    account.verdict(answer.readings().series());
    VoltageLadder positive = answer.rodPositive();
    VoltageLadder negative = answer.rodNegative();
    if (rodInFlame && positive != null && negative != null) {
      account.said.addAll(HalfCycles.of(positive, negative, account.signal));
    }
    if (account.signal) {
      account.meter(answer);
      told(answer.elasticities()).forEach(account::depends);
    }
    return List.copyOf(account.said);
  }

  /** Of what a signal depends on, what is worth a sentence: the strongest first, few. */
  static List<Elasticity> told(List<Elasticity> all) {
    return all.stream()
        .filter(e -> !NOT_TOLD.contains(e.parameter()))
        .limit(TOLD_ELASTICITIES)
        .toList();
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
