/**
 * Meters: what they insert in the circuit and what they show.
 *
 * <pre>
 * Measuring.of(Meter, MeterFunction, HookUp, Subject, Look) = Measurement(Shown, loaded, Meter, cautions)
 * HookUp = Across | InSenseLead | WireInFlame | AcrossSupply
 * Shown  = Alternating | Direct | Both | Ohms | Nothing | Unsolved        Figure = Value | OverRange
 * </pre>
 *
 * <p>Signs: DC is positive where red is above black, and where current enters the meter by red. In
 * the sense lead red belongs on the board's side; then a healthy flame reads positive.
 *
 * <p>{@link halfwave.instrument.Voltmeter} and {@link halfwave.instrument.Microammeter} are the
 * bare inputs; they read without display, error or fuse.
 */
@NullMarked
package halfwave.instrument;

import org.jspecify.annotations.NullMarked;
