package halfwave.bench;

import halfwave.flame.ElectrodeCharacteristic;
import halfwave.flame.FlamePath;
import halfwave.flame.IonField;
import org.jspecify.annotations.Nullable;

/**
 * The flame of a bench and every electrode in it.
 *
 * @param field ion density and source as a function of place
 * @param path rod, column and burner as one path
 * @param spark the spark electrode against the plasma, or null
 */
public record BenchFlame(IonField field, FlamePath path, @Nullable ElectrodeCharacteristic spark) {

  /** Whether there is a flame that can conduct. */
  public boolean burning() {
    return field.sheets().state().burning();
  }
}
