package halfwave.flame;

/** One flame and one rod, the trial arrangement of the model, with one thing changed at a time. */
record FlameBench(
    BurnerDesign burner, FlameSheets sheets, Rod rod, boolean withOutside, double volts) {

  private static final int SAMPLES = 2000;

  static FlameBench standard() {
    BurnerDesign burner = BurnerDesign.inshot(Fuel.NATURAL_GAS);
    return new FlameBench(
        burner, FlameSheets.healthy(Fuel.NATURAL_GAS, burner), Rod.standard(), true, 110);
  }

  /** Without the law for the rod outside the mantle, as in the model's trial. */
  static FlameBench trial() {
    FlameBench b = standard();
    return new FlameBench(b.burner, b.sheets, b.rod, false, b.volts);
  }

  FlameBench withRod(Rod other) {
    return new FlameBench(burner, sheets, other, withOutside, volts);
  }

  FlameBench withSource(double rmsVolts) {
    return new FlameBench(burner, sheets, rod, withOutside, rmsVolts);
  }

  FlameBench withGap(double meters) {
    return new FlameBench(burner, sheets.withGap(meters), rod, withOutside, volts);
  }

  FlameBench withAirFactor(double ratio) {
    return with(Mixture.of(Fuel.NATURAL_GAS, burner, Fuel.NATURAL_GAS.manifoldPascals(), ratio));
  }

  FlameBench withInchesOfWater(double inches) {
    return with(Mixture.of(Fuel.NATURAL_GAS, burner, inches * Fuel.INCH_OF_WATER_PASCALS, 0.95));
  }

  private FlameBench with(Mixture mixture) {
    FlameSheets other = FlameSheets.of(mixture, burner, FlameCalibration.DEFAULT);
    return new FlameBench(burner, other, rod, withOutside, volts);
  }

  ElectrodeCharacteristic rodLaw() {
    return RodCollection.characteristic(
        IonField.of(sheets),
        rod,
        RodCollection.IN_SERVICE_KELVIN,
        sheets.electrodeMetersPerSecond(),
        withOutside,
        FlameCalibration.DEFAULT);
  }

  ElectrodeCharacteristic burnerLaw() {
    return BurnerCollection.characteristic(sheets, burner, FlameCalibration.DEFAULT);
  }

  FlamePath path() {
    return FlamePath.of(rodLaw(), burnerLaw(), FlameCalibration.DEFAULT.columnOhms());
  }

  /** Mean current behind 2.2 MΩ and more, over one period (A). */
  double meanAmps(double moreOhms) {
    FlamePath path = path();
    double sum = 0;
    for (int k = 0; k < SAMPLES; k++) {
      sum += instantAmps(path, k, moreOhms);
    }
    return sum / SAMPLES;
  }

  double meanAmps() {
    return meanAmps(0);
  }

  /** Rms of the current with the mean removed (A). */
  double alternatingAmps() {
    FlamePath path = path();
    double mean = meanAmps();
    double squares = 0;
    for (int k = 0; k < SAMPLES; k++) {
      double i = instantAmps(path, k, 0) - mean;
      squares += i * i;
    }
    return Math.sqrt(squares / SAMPLES);
  }

  private double instantAmps(FlamePath path, int k, double moreOhms) {
    double emf = volts * Math.sqrt(2) * StrictMath.sin(2 * Math.PI * (k + 0.5) / SAMPLES);
    return path.currentInSeriesAmps(emf, 2.2e6 + moreOhms);
  }
}
