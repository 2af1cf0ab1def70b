/**
 * Elements, netlist, reduction to ports and decay modes, periodic steady state, waveforms; knows no
 * flame.
 *
 * <pre>
 * Circuit     = source + Element*           Element = Resistor | Capacitor | Conductor(ConductionLaw)
 * SteadyState = Solved | Failed             SteadyState.of(Circuit)
 * </pre>
 *
 * <p>Signs: passive convention. Current is positive from {@code from} to {@code to}; in the sense
 * circuit that is from the board through lead, rod and flame to the burner. A healthy flame gives
 * positive DC, and puts the sense terminal at negative DC volts against common.
 *
 * <p>"DC" is the mean over whole periods, signed; "AC" the rms with the mean removed; a source's
 * volts are open-circuit rms.
 *
 * <p>Method, in the order of the files: {@code Topology} (what hangs together) with {@code
 * SourceLoops} (what is cut off), {@code Reduction} (everything linear, once), {@code Grid} (exact
 * steps), {@code Sweep} (one walk through the period), {@code Shooting} (the walk that closes) or,
 * where nothing remembers, {@code QuarterWave}, {@code Solved} and {@code Currents} (readings).
 * Where the power goes is a second, slower method, started from the first: {@code PortWaves} and
 * {@code HarmonicNetwork} for {@code PowerBalance}.
 */
@NullMarked
package halfwave.circuit;

import org.jspecify.annotations.NullMarked;
