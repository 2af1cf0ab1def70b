package halfwave.bench;

import halfwave.circuit.Circuit;
import halfwave.flame.BurnerCollection;
import halfwave.flame.BurnerDesign;
import halfwave.flame.ElectrodeCharacteristic;
import halfwave.flame.FlameCalibration;
import halfwave.flame.FlamePath;
import halfwave.flame.FlameSheets;
import halfwave.flame.Fuel;
import halfwave.flame.IonField;
import halfwave.flame.Mixture;
import halfwave.flame.Rod;
import halfwave.flame.RodCollection;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The stages from bench to circuit, each remembered by the value it was made from: dragging the rod
 * never makes the field anew, a change of wiring only the circuit. One instance belongs to one
 * thread; a fresh one gives the same answers.
 */
public final class Stages {

  private record FieldKey(
      Fuel fuel,
      BurnerDesign burner,
      double manifoldPascals,
      double airRatio,
      FlameCalibration calibration) {}

  private record BurnerKey(FieldKey field, double attachmentRatio) {}

  private record RodKey(FieldKey field, Rod rod, double rodKelvin) {}

  private record PathKey(RodKey rod, BurnerKey burner) {}

  private static final class Stage<K, V> {
    private @Nullable K key;
    private @Nullable V value;
    private int count;

    V get(K wanted, Function<K, V> make) {
      V known = value;
      if (known == null || !wanted.equals(key)) {
        known = make.apply(wanted);
        value = known;
        key = wanted;
        count++;
      }
      return known;
    }
  }

  private final Stage<FieldKey, IonField> fields = new Stage<>();
  private final Stage<BurnerKey, ElectrodeCharacteristic> burners = new Stage<>();
  private final Stage<RodKey, ElectrodeCharacteristic> rods = new Stage<>();
  private final Stage<RodKey, ElectrodeCharacteristic> sparks = new Stage<>();
  private final Stage<PathKey, FlamePath> paths = new Stage<>();

  /** How often the field was made. */
  public int fieldCount() {
    return fields.count;
  }

  /** How often a rod's law was made. */
  public int rodCount() {
    return rods.count;
  }

  /** How often a flame path was made. */
  public int pathCount() {
    return paths.count;
  }

  /** The flame of a bench. */
  public BenchFlame flame(Bench bench) {
    Design design = bench.design();
    Condition condition = bench.condition();
    FieldKey gas =
        new FieldKey(
            design.fuel(),
            design.burner(),
            design.manifoldPascals() * condition.manifoldRatio(),
            condition.airRatio(),
            design.flame());
    IonField field = fields.get(gas, Stages::field);
    RodKey rodKey = new RodKey(gas, bench.rod(), condition.rodKelvin());
    BurnerKey burnerKey = new BurnerKey(gas, condition.attachmentRatio());
    FlamePath path =
        paths.get(
            new PathKey(rodKey, burnerKey),
            key ->
                FlamePath.of(
                    rods.get(rodKey, k -> collection(field, k)),
                    burners.get(burnerKey, k -> burner(field, k)),
                    design.flame().columnOhms()));
    SparkElectrode spark = design.spark();
    ElectrodeCharacteristic sparkLaw =
        spark == null
            ? null
            : sparks.get(
                new RodKey(gas, spark.electrode(), condition.rodKelvin()),
                k -> collection(field, k));
    return new BenchFlame(field, path, sparkLaw);
  }

  /** The sense circuit of a bench, with its flame burning. */
  public Circuit circuit(Bench bench) {
    return BenchCircuit.of(bench, flame(bench));
  }

  private static IonField field(FieldKey key) {
    Mixture mixture = Mixture.of(key.fuel, key.burner, key.manifoldPascals, key.airRatio);
    return IonField.of(FlameSheets.of(mixture, key.burner, key.calibration));
  }

  private static ElectrodeCharacteristic collection(IonField field, RodKey key) {
    return RodCollection.characteristic(field, key.rod, key.rodKelvin, key.field.calibration);
  }

  private static ElectrodeCharacteristic burner(IonField field, BurnerKey key) {
    BurnerDesign b = key.field.burner;
    BurnerDesign attached =
        new BurnerDesign(
            b.orificeDiameterMeters(),
            b.throatDiameterMeters(),
            b.portRadiusMeters(),
            b.holder(),
            b.attachmentLengthMeters() * key.attachmentRatio,
            b.spacingMeters(),
            b.dischargeRatio());
    return BurnerCollection.characteristic(field.sheets(), attached, key.field.calibration);
  }
}
