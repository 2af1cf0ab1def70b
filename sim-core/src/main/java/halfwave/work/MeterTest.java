package halfwave.work;

import halfwave.bench.Bench;
import halfwave.bench.BenchCircuit;
import halfwave.bench.BenchFlame;
import halfwave.bench.Stages;
import halfwave.circuit.Circuit;
import halfwave.circuit.Part;
import halfwave.circuit.Point;
import halfwave.instrument.HookUp;
import halfwave.instrument.HookUp.Across;
import halfwave.instrument.HookUp.InSenseLead;
import halfwave.instrument.LeadEnd;
import halfwave.instrument.Measurement;
import halfwave.instrument.Measuring;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.Subject;
import halfwave.instrument.Supply;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** A reading of the sense circuit that is not a look: what the multimeter shows is solved. */
public enum MeterTest implements Work {
  /** Microamps in series, flame burning. */
  SERIES_CURRENT(
      4, Tool.MICROAMMETER, Needs.FLAME, MeterFunction.AC_AND_DC_MICROAMPS, senseCircuit()),
  /** Volts at the sense terminal, flame burning. */
  TERMINAL_VOLTS(2, Tool.MULTIMETER, Needs.FLAME, MeterFunction.AC_VOLTS, senseCircuit()),
  /** Volts at the sense terminal, lead pulled off. */
  TERMINAL_VOLTS_LEAD_OFF(
      3,
      Tool.MULTIMETER,
      Needs.POWER,
      MeterFunction.AC_VOLTS,
      EnumSet.of(Aspect.SENSE_SUPPLY, Aspect.POLARITY)),
  /** Volts at the sense terminal, lead on, no flame. */
  TERMINAL_VOLTS_FLAME_OUT(
      2,
      Tool.MULTIMETER,
      Needs.POWER,
      MeterFunction.AC_VOLTS,
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
  private final MeterFunction function;
  private final Set<Aspect> shows;

  MeterTest(int ownMinutes, Tool tool, Needs needs, MeterFunction function, Set<Aspect> shows) {
    this.ownMinutes = ownMinutes;
    this.tool = tool;
    this.needs = needs;
    this.function = function;
    this.shows = Collections.unmodifiableSet(shows);
  }

  /** Everything in the way of the sense current. */
  private static Set<Aspect> senseCircuit() {
    Set<Aspect> all = EnumSet.range(Aspect.ROD_COAT, Aspect.BLOWER_AIR);
    all.addAll(EnumSet.of(Aspect.GAS_PRESSURE, Aspect.AIR, Aspect.SENSE_SUPPLY, Aspect.POLARITY));
    return all;
  }

  /**
   * What a meter shows, used as it should be.
   *
   * @param stages remembered stages
   * @param bench as it is under the present triggers, its rod as hot as it is
   * @param meter which
   * @param look when somebody looks
   */
  public Measurement of(Stages stages, Bench bench, Meter meter, halfwave.instrument.Look look) {
    BenchFlame flame = stages.flame(bench);
    Circuit circuit =
        needsFlame() ? BenchCircuit.of(bench, flame) : BenchCircuit.withoutFlame(bench, flame);
    Circuit hooked = this == TERMINAL_VOLTS_LEAD_OFF ? circuit.without(Part.CONNECTOR) : circuit;
    // power stays on where the sense source is dead
    Subject subject = new Subject(hooked, Supply.CORRECT, false, false);
    return Measuring.of(meter, function, hookUp(), subject, look);
  }

  /** What the dial is set to. */
  public MeterFunction function() {
    return function;
  }

  /** Where the leads are. */
  public HookUp hookUp() {
    return this == SERIES_CURRENT
        ? new InSenseLead(LeadEnd.BOARD, true)
        : new Across(Point.TERMINAL, Point.COMMON);
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
