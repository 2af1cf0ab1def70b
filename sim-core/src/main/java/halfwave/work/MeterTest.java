package halfwave.work;

import halfwave.bench.Readings;
import halfwave.instrument.MeterReading;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** A reading of the sense circuit that is not a look: what the meter shows is solved. */
public enum MeterTest implements Work {
  /** Microamps in series, flame burning. */
  SERIES_CURRENT(4, Tool.MICROAMMETER, Needs.FLAME, Readings::series, senseCircuit()),
  /** Volts at the sense terminal, flame burning. */
  TERMINAL_VOLTS(2, Tool.MULTIMETER, Needs.FLAME, Readings::terminal, senseCircuit()),
  /** Volts at the sense terminal, lead pulled off. */
  TERMINAL_VOLTS_LEAD_OFF(
      3,
      Tool.MULTIMETER,
      Needs.POWER,
      Readings::terminalLeadOff,
      EnumSet.of(Aspect.SENSE_SUPPLY, Aspect.POLARITY)),
  /** Volts at the sense terminal, lead on, no flame. */
  TERMINAL_VOLTS_FLAME_OUT(
      2,
      Tool.MULTIMETER,
      Needs.POWER,
      Readings::terminalFlameOut,
      EnumSet.of(
          Aspect.SENSE_SUPPLY,
          Aspect.POLARITY,
          Aspect.ROD_CONTACT,
          Aspect.INSULATOR_LEAK,
          Aspect.DAMP_LEAK,
          Aspect.DEPOSIT,
          Aspect.LEAD_CHAFE,
          Aspect.CONNECTOR,
          Aspect.GROUND));

  private final int ownMinutes;
  private final Tool tool;
  private final Needs needs;
  private final Function<Readings, MeterReading> reading;
  private final Set<Aspect> shows;

  MeterTest(
      int ownMinutes,
      Tool tool,
      Needs needs,
      Function<Readings, MeterReading> reading,
      Set<Aspect> shows) {
    this.ownMinutes = ownMinutes;
    this.tool = tool;
    this.needs = needs;
    this.reading = reading;
    this.shows = Collections.unmodifiableSet(shows);
  }

  /** Everything in the way of the sense current. */
  private static Set<Aspect> senseCircuit() {
    Set<Aspect> all = EnumSet.range(Aspect.ROD_COAT, Aspect.BLOWER_AIR);
    all.addAll(EnumSet.of(Aspect.GAS_PRESSURE, Aspect.AIR, Aspect.SENSE_SUPPLY, Aspect.POLARITY));
    return all;
  }

  /** Which of a bench's readings it is. */
  public MeterReading of(Readings readings) {
    return reading.apply(readings);
  }

  /** What it can show something of. */
  public Set<Aspect> shows() {
    return shows;
  }

  @Override
  public FurnacePart part() {
    return FurnacePart.BOARD_CONNECTOR;
  }

  @Override
  public int ownMinutes() {
    return ownMinutes;
  }

  @Override
  public Tool tool() {
    return tool;
  }

  @Override
  public List<Caution> ownCautions() {
    return List.of(Caution.PROBE_TIPS, Caution.CONNECTOR_SPRING);
  }

  @Override
  public boolean needsFlame() {
    return needs == Needs.FLAME;
  }

  @Override
  public boolean needsPower() {
    return needs != Needs.NOTHING;
  }

  @Override
  public boolean needsCall() {
    return needs == Needs.FLAME;
  }

  @Override
  public boolean powerOff() {
    return needs == Needs.NOTHING;
  }

  @Override
  public boolean gasOff() {
    return needs != Needs.FLAME;
  }
}
