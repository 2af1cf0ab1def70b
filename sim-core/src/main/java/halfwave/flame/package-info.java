/**
 * From gas and air to the flame as a conductor: mixture, flame sheets, ion field, electrode laws,
 * flame path.
 *
 * <p>Data flows one way: {@code Fuel, BurnerDesign -> Mixture -> FlameSheets -> IonField -> }
 * ({@code RodCollection}, {@code BurnerCollection}) {@code -> ElectrodeCharacteristic ->
 * FlamePath}. Every type is immutable and every function pure.
 *
 * <p>Coordinates: z along the burner's axis from its face, y upwards, x sideways (m). Voltages of
 * an electrode are its own surface minus the plasma; of the flame path rod surface minus burner
 * surface; current is positive from rod to burner. An electrode below the plasma collects ions and
 * limits the current; above the plasma it collects electrons.
 *
 * <p>Origin of the numbers: [seen] in the source named, [calc] computed, [memory] textbook
 * knowledge, [practice] trade practice or a plain assumption. Computed values are no measurements.
 */
@NullMarked
package halfwave.flame;

import org.jspecify.annotations.NullMarked;
