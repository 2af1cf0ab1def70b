package halfwave.flame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Limits, directions and invariants that hold for every flame and rod; the seed is fixed. */
class FlamePathPropertyTest {

  private static final long SEED = 20240229;
  private static final int CASES = 150;

  @Test
  void everyGeometryGivesARisingFinitePath() {
    Random random = new Random(SEED);
    for (int k = 0; k < CASES; k++) {
      FlamePath path = path(random);
      double last = Double.NEGATIVE_INFINITY;
      for (double v = -400; v <= 400; v += 1.7) {
        double i = path.currentAmps(v);
        assertThat(i).isFinite().isGreaterThan(last);
        assertThat(i * v).isGreaterThanOrEqualTo(0);
        assertThat(path.differentialSiemens(v)).isPositive().isFinite();
        last = i;
      }
    }
  }

  @Test
  void seriesCurrentAgreesWithBisection() {
    Random random = new Random(SEED + 1);
    for (int k = 0; k < CASES; k++) {
      FlamePath path = path(random);
      double emf = 800 * (random.nextDouble() - 0.5);
      double ohms = StrictMath.pow(10, 3 + 6 * random.nextDouble());
      double low = Math.min(0, emf);
      double high = Math.max(0, emf);
      for (int step = 0; step < 100; step++) {
        double middle = 0.5 * (low + high);
        if (middle + ohms * path.currentAmps(middle) < emf) {
          low = middle;
        } else {
          high = middle;
        }
      }
      double i = (emf - 0.5 * (low + high)) / ohms;
      // both solve to about 1e-9; the difference of voltages over the resistance adds rounding
      double room = 1e-8 * Math.abs(i) + 1e-13 * Math.abs(emf) / ohms + 1e-20;
      assertThat(path.currentInSeriesAmps(emf, ohms)).isCloseTo(i, within(room));
    }
  }

  @Test
  void dropsAddUpToTheVoltage() {
    Random random = new Random(SEED + 2);
    for (int k = 0; k < CASES; k++) {
      FlamePath path = path(random);
      for (double v : new double[] {-170, -30, -2, 2, 30, 170}) {
        FlameDrops drops = path.dropsAt(path.currentAmps(v));
        // A path composed numerically is interpolated once more, at 33 knots; in the steep start of
        // the space-charge laws that may shift a few per cent of the voltage.
        assertThat(drops.totalVolts()).isCloseTo(v, within(0.04 * Math.abs(v) + 0.3));
        assertThat(drops.rodVolts() * v).isGreaterThanOrEqualTo(0);
        assertThat(drops.burnerVolts() * v).isGreaterThanOrEqualTo(0);
      }
    }
  }

  @Test
  void standardPathSplitsExactly() {
    FlamePath path = FlameBench.standard().path();
    for (double v : new double[] {-170, -30, -2, 2, 30, 170}) {
      // the contact of a rod in the flame is one resistance: nothing is interpolated twice; the
      // air beside the contact is left out, 1e-3 of its fraction of a volt
      assertThat(path.dropsAt(path.currentAmps(v)).totalVolts()).isCloseTo(v, within(1e-3));
    }
  }

  @Test
  void rodOutOfTheFlameCarriesNothing() {
    FlameBench bench = FlameBench.standard();
    double inside = bench.meanAmps();
    // 60 mm above, 40 mm behind the face, and 60 mm to the side
    for (Rod rod :
        List.of(
            bench.rod().moved(0, 60e-3, 0),
            bench.rod().moved(0, 0, -55e-3),
            bench.rod().moved(-60e-3, 0, 0))) {
      FlamePath path = bench.withRod(rod).path();
      assertThat(path.currentAmps(150)).isBetween(0.0, 0.01 * inside);
      assertThat(path.currentAmps(-150)).isBetween(-0.01 * inside, 0.0);
    }
  }

  @Test
  void aFlameThatIsOutCarriesNothing() {
    FlameBench bench = FlameBench.standard();
    for (FlameBench dead : List.of(bench.withAirFactor(1.8), bench.withInchesOfWater(0))) {
      assertThat(dead.sheets().state().burning()).isFalse();
      assertThat(Math.abs(dead.path().currentAmps(-150))).isLessThan(1e-12);
      assertThat(dead.path().currentAmps(150)).isLessThan(1e-12);
    }
  }

  @Test
  void moreIonsGiveMoreCurrent() {
    BurnerDesign burner = BurnerDesign.inshot(Fuel.NATURAL_GAS);
    Mixture mixture = Mixture.healthy(Fuel.NATURAL_GAS, burner);
    double lastPlus = 0;
    double lastMinus = 0;
    for (double k : new double[] {0.2, 0.4, 0.7, 1.0}) {
      FlameCalibration calibration = FlameCalibration.DEFAULT.withIonMultiplier(k);
      IonField field = IonField.of(FlameSheets.of(mixture, burner, calibration));
      FlamePath path = FlamePath.of(field, burner, Rod.standard(), 1150, calibration);
      assertThat(path.currentAmps(100)).isGreaterThan(lastPlus);
      assertThat(-path.currentAmps(-100)).isGreaterThan(lastMinus);
      lastPlus = path.currentAmps(100);
      lastMinus = -path.currentAmps(-100);
    }
  }

  @Test
  void coldRodCollectsLessThanAHotOne() {
    FlameBench bench = FlameBench.standard();
    IonField field = IonField.of(bench.sheets());
    double cold =
        RodCollection.characteristic(field, bench.rod(), 300, FlameCalibration.DEFAULT)
            .ions()
            .currentAmps(100);
    double hot =
        RodCollection.characteristic(field, bench.rod(), 1150, FlameCalibration.DEFAULT)
            .ions()
            .currentAmps(100);
    assertThat(cold).isLessThan(hot);
  }

  @Test
  void aWiderGapOnlyLowersTheBurner() {
    FlameBench bench = FlameBench.standard();
    double lastIons = Double.POSITIVE_INFINITY;
    double lastElectrons = Double.POSITIVE_INFINITY;
    for (double g = 0.4e-3; g < 9e-3; g *= 1.1) {
      ElectrodeCharacteristic burner = bench.withGap(g).burnerLaw();
      double ions = burner.ions().currentAmps(100);
      double electrons = burner.electrons().currentAmps(20);
      assertThat(ions).isLessThan(lastIons);
      assertThat(electrons).isLessThanOrEqualTo(lastElectrons);
      lastIons = ions;
      lastElectrons = electrons;
    }
  }

  @Test
  void aBentRodEqualsItsStraightPieces() {
    Place a = new Place(-40e-3, 5e-3, 15e-3);
    Place b = new Place(-10e-3, 5e-3, 15e-3);
    Place c = new Place(12e-3, 5e-3, 15e-3);
    double whole = law(new Rod(List.of(a, c), 1.6e-3)).ions().currentAmps(100);
    double chain = law(new Rod(List.of(a, b, c), 1.6e-3)).ions().currentAmps(100);
    double reversed = law(new Rod(List.of(c, a), 1.6e-3)).ions().currentAmps(100);
    assertThat(chain).isCloseTo(whole, within(2e-3 * whole)); // other stations
    assertThat(reversed).isCloseTo(whole, within(1e-9 * whole));
  }

  @Test
  void leftAndRightAreAlike() {
    Place a = new Place(-40e-3, 5e-3, 15e-3);
    Place c = new Place(12e-3, 5e-3, 15e-3);
    Place ma = new Place(40e-3, 5e-3, 15e-3);
    Place mc = new Place(-12e-3, 5e-3, 15e-3);
    double one = law(new Rod(List.of(a, c), 1.6e-3)).ions().currentAmps(100);
    double two = law(new Rod(List.of(ma, mc), 1.6e-3)).ions().currentAmps(100);
    assertThat(two).isCloseTo(one, within(1e-9 * one));
  }

  @Test
  void movingTheRodNeverJumps() {
    double last = law(Rod.across(15e-3, -30e-3, -40e-3, 12e-3, 1.6e-3)).ions().currentAmps(100);
    for (int k = 1; k <= 600; k++) {
      double y = -30e-3 + k * 0.1e-3;
      double i = law(Rod.across(15e-3, y, -40e-3, 12e-3, 1.6e-3)).ions().currentAmps(100);
      // a tenth of a millimetre against scales of 0.7 mm (brush) and 1 mm (decay outside)
      assertThat(i).isCloseTo(last, within(0.15 * Math.max(i, last) + 1e-8));
      last = i;
    }
  }

  private static ElectrodeCharacteristic law(Rod rod) {
    return FlameBench.standard().withRod(rod).rodLaw();
  }

  private static FlamePath path(Random random) {
    Fuel fuel = random.nextBoolean() ? Fuel.NATURAL_GAS : Fuel.PROPANE;
    BurnerDesign burner =
        random.nextInt(4) == 0 ? BurnerDesign.pilot(fuel) : BurnerDesign.inshot(fuel);
    Mixture mixture =
        Mixture.of(
            fuel,
            burner,
            fuel.manifoldPascals() * (0.1 + 2 * random.nextDouble()),
            0.2 + 1.5 * random.nextDouble());
    FlameCalibration calibration =
        FlameCalibration.DEFAULT.withIonMultiplier(0.1 + random.nextDouble());
    IonField field = IonField.of(FlameSheets.of(mixture, burner, calibration));
    Place start = place(random);
    Rod rod =
        new Rod(List.of(start, place(random), place(random)), 0.2e-3 + 3e-3 * random.nextDouble());
    return FlamePath.of(field, burner, rod, 300 + 1000 * random.nextDouble(), calibration);
  }

  private static Place place(Random random) {
    return new Place(
        80e-3 * (random.nextDouble() - 0.5),
        60e-3 * (random.nextDouble() - 0.5),
        80e-3 * (random.nextDouble() - 0.1));
  }
}
