package halfwave.flame;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Unit;
import halfwave.validation.Validated;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Gas, air and flame against the check values of the model; each line names its source. Tolerances
 * without a word are half the last digit quoted.
 */
@Validated(Area.FLAME)
class FlameReferenceTest {

  private static final Reference ORIFICES =
      Reference.seen("orifice table, Plumbing 3e, opentextbc.ca: 3.5 in w.c., s 0.60");
  private static final Reference MODEL = Reference.calc("model's section 1, closed form by hand");
  private static final Reference COUNTERFLOW =
      Reference.calc("counterflow flames, Cantera 3.2.0 with GRI-Mech 3.0");
  private static final Reference RECOMBINATION =
      Reference.seen("Guo and Goodings, Chem. Phys. Lett. 329 (2000) 393");
  private static final Reference OTHER_RECOMBINATION =
      Reference.seen("Combust. Flame 166 (2016) 86; report AD0258229 (1960)");
  private static final Reference MOBILITY =
      Reference.calc("mobility of the ions in burnt gas, model's section 1");
  private static final Reference ION_SIGNAL =
      Reference.seen("Zhu et al., J. Tongji Univ. 46 (2018) 1281");
  private static final Reference ADIABATIC =
      Reference.calc("adiabatic flame temperature, Cantera 3.2.0");
  private static final Reference BURNING = Reference.seen("Edmondson and Heap, 10.25 % of methane");
  private static final Reference PROPANE_BURNING = Reference.memory("burning velocity of propane");
  private static final String DIGITS = "half of the last digit quoted";

  @Test
  void gasFlowOfAnOrificeTable() {
    // holes in inches
    double[][] rows = {{0.0135, 0.516}, {0.035, 3.47}, {0.039, 4.31}};
    for (double[] row : rows) {
      BurnerDesign b = BurnerDesign.inshot(Fuel.NATURAL_GAS).withOrificeDiameter(row[0] * 0.0254);
      double flow = b.gasCubicMetersPerSecond(Fuel.NATURAL_GAS, 3.5 * 249.1);
      ORIFICES
          .check("gas through an orifice", Unit.CUBIC_FEET_PER_HOUR, flow)
          .at(row[0] + " in")
          .isWithin(
              0.005, Unit.CUBIC_FEET_PER_HOUR.si(row[1]), "what the model says of its own formula");
    }
  }

  @Test
  void injectorBalancesItsMomentum() {
    // closed form: (s + r)(1 + r) = s·A_t/(Cd·A_o)
    for (Fuel fuel : Fuel.values()) {
      BurnerDesign b = BurnerDesign.inshot(fuel);
      double s = fuel.specificGravityRatio();
      double r = b.entrainmentRatio(fuel);
      double areas = Math.PI / 4 * 18e-3 * 18e-3 / (b.dischargeRatio() * b.orificeSquareMeters());
      MODEL
          .check("injector: (s + r)(1 + r) against s·A_t/(C_d·A)", Unit.RATIO, (s + r) * (1 + r))
          .at(fuel)
          .isWithin(1e-9, s * areas, "rounding");
    }
  }

  @Test
  void defaultBurners() {
    Mixture gas = Mixture.healthy(Fuel.NATURAL_GAS, BurnerDesign.inshot(Fuel.NATURAL_GAS));
    MODEL
        .check("burner for natural gas: firing rate", Unit.WATTS, gas.firingWatts())
        .isCloseTo(6700, 50, DIGITS);
    MODEL
        .check("burner for natural gas: air per gas", Unit.RATIO, gas.airRatio())
        .isCloseTo(5.4, 0.05, DIGITS);
    MODEL
        .check("burner for natural gas: equivalence ratio", Unit.RATIO, gas.equivalenceRatio())
        .isCloseTo(1.76, 0.005, DIGITS);
    MODEL
        .check(
            "burner for natural gas: speed in the port",
            Unit.METERS_PER_SECOND,
            gas.portMetersPerSecond())
        .isCloseTo(2.5, 0.05, DIGITS);
    Mixture propane = Mixture.healthy(Fuel.PROPANE, BurnerDesign.inshot(Fuel.PROPANE));
    MODEL
        .check("burner for propane: firing rate", Unit.WATTS, propane.firingWatts())
        .isWithin(0.01, 6800, "6865 W with the orifice of 1.40 mm as written; quoted rounded down");
    MODEL
        .check("burner for propane: equivalence ratio", Unit.RATIO, propane.equivalenceRatio())
        .isCloseTo(1.62, 0.005, DIGITS);
  }

  @Test
  void defaultFlame() {
    FlameSheets s = FlameSheets.healthy(Fuel.NATURAL_GAS, BurnerDesign.inshot(Fuel.NATURAL_GAS));
    assertThat(s.state()).isEqualTo(FlameState.HEALTHY);
    MODEL
        .check("standard flame: stretch χ", Unit.RATIO, s.stretchRatio())
        .isCloseTo(0.07, 0.005, DIGITS);
    MODEL
        .check("standard flame: gap at the rim", Unit.MILLIMETERS, s.gapMeters())
        .isCloseTo(0.54e-3, 0.5e-5, DIGITS);
    MODEL
        .check("standard flame: height of the cone", Unit.MILLIMETERS, s.coneHeightMeters())
        .isCloseTo(74e-3, 0.5e-3, DIGITS);
    // sin of the half-angle at the tip is S_eff/U_m
    MODEL
        .check(
            "standard flame: tangent of the cone's half-angle against R/h",
            Unit.RATIO,
            StrictMath.tan(s.coneHalfAngleRadians()))
        .isCloseTo(12e-3 / s.coneHeightMeters(), 1e-9, "rounding");
  }

  @Test
  void counterflowMantle() {
    // at 1/φ = 0, 1/3, 1/2, 0.625; propane's last value is the mantle's share of 0.053
    double[] inverse = {1e-9, 1.0 / 3, 0.5, 0.625, 1};
    double[] methane = {0.18, 0.105, 0.068, 0.051, 0};
    double[] propane = {0.20, 0.073, 0.031, 0.023, 0};
    for (int k = 0; k < inverse.length; k++) {
      double phi = 1 / inverse[k];
      counterflow(Fuel.NATURAL_GAS, phi, methane[k]);
      counterflow(Fuel.PROPANE, phi, propane[k]);
    }
  }

  private static void counterflow(Fuel fuel, double phi, double expected) {
    String inverse = Unit.RATIO.number(1 / phi, 0.001);
    double j = fuel.counterflowAmpsPerSquareMeter(phi);
    COUNTERFLOW
        .check("ions from the mantle by mixture", Unit.AMPS_PER_SQUARE_METER, j)
        .at(fuel == Fuel.PROPANE ? "propane, 1/φ " + inverse : "natural gas, 1/φ " + inverse)
        .isCloseTo(expected, 1e-8, "the table itself at its corners; the first lies beside 0");
  }

  @Test
  void strainOfTheMantle() {
    // CH4 at 1.76, that speed from each side
    double[] room = {0.36, 0.12, 1e-12, 0.02, 0.07};
    double[] speed = {0.25, 0.35, 0.5, 0.7, 1.0};
    double[] j = {0.015, 0.030, 0.057, 0.096, 0.152};
    for (int k = 0; k < speed.length; k++) {
      double told = FlameSheets.strainRatio(100 * speed[k] / 0.5);
      COUNTERFLOW
          .check("ions from the mantle by strain, times 1.5th power", Unit.RATIO, told)
          .at(speed[k] + " m/s")
          .isWithin(
              room[k],
              j[k] / 0.057,
              "the power is 35 % off at half the usual strain, 12 % at 0.7 of it, 7 % beyond");
    }
    assertThat(FlameSheets.strainRatio(1e6)).isEqualTo(3);
    assertThat(FlameSheets.strainRatio(1)).isEqualTo(0.3);
  }

  @Test
  void recombination() {
    double alpha = IonGas.recombinationCubicMetersPerSecond(2000);
    RECOMBINATION
        .check("recombination at 2000 K", Unit.RECOMBINATION, alpha)
        .isCloseTo(3.96e-13, 0.5e-15, DIGITS);
    OTHER_RECOMBINATION
        .check("recombination at 2000 K, other data", Unit.RECOMBINATION, alpha)
        .isBetween(2e-13, 4.4e-13, "what the two give");
  }

  @Test
  void ionMobility() {
    double[] kelvin = {1620, 1100, 547, 400, 800};
    double[] mobility = {1.6e-3, 1.06e-3, 5.0e-4, 3.6e-4, 7.5e-4};
    double[] digit = {5e-5, 1e-5, 5e-6, 5e-6, 5e-6};
    for (int k = 0; k < kelvin.length; k++) {
      double told = IonGas.mobilitySquareMetersPerVoltSecond(kelvin[k]);
      MOBILITY
          .check("mobility of the ions", Unit.SQUARE_CENTIMETERS_PER_VOLT_SECOND, told)
          .at(kelvin[k] + " K")
          .isCloseTo(mobility[k], digit[k], "quoted to two or three digits");
    }
  }

  @Test
  void equivalenceRatioOfTheLargestIonSignal() {
    Comparator<FlameRow> bySource =
        Comparator.comparingDouble(FlameRow::saturationAmpsPerSquareMeter);
    Comparator<FlameRow> byDensity = Comparator.comparingDouble(FlameRow::peakIonsPerCubicMeter);
    List<FlameRow> rows = Fuel.NATURAL_GAS.table().rows();
    for (Comparator<FlameRow> by : List.of(bySource, byDensity)) {
      FlameRow largest = rows.stream().max(by).orElseThrow();
      ION_SIGNAL
          .check("mixture of the largest ion signal", Unit.RATIO, largest.equivalenceRatio())
          .at(by == bySource ? "by source" : "by density")
          .isBetween(1.05, 1.2, "1.11 as measured, and its range");
    }
  }

  @Test
  void adiabaticTemperature() {
    hottest(Fuel.NATURAL_GAS, 2225);
    hottest(Fuel.PROPANE, 2266);
  }

  private static void hottest(Fuel fuel, double expected) {
    ADIABATIC
        .check("hottest of the flame above adiabatic", Unit.KELVIN, hottestKelvin(fuel) - expected)
        .at(fuel)
        .isBetween(3, 8, "the maximum of a flame lies that much above equilibrium");
  }

  private static double hottestKelvin(Fuel fuel) {
    return fuel.table().at(1).hottestKelvin();
  }

  @Test
  void largestBurningVelocity() {
    BURNING
        .check(
            "largest burning velocity of methane",
            Unit.METERS_PER_SECOND,
            Fuel.NATURAL_GAS.table().at(1.087).burningMetersPerSecond())
        .isWithin(0.02, 0.383, "the usual spread of the chemistry, GRI-Mech 3.0, there");
    double propane =
        Fuel.PROPANE.table().rows().stream()
            .mapToDouble(FlameRow::burningMetersPerSecond)
            .max()
            .orElseThrow();
    PROPANE_BURNING
        .check("largest burning velocity of propane", Unit.METERS_PER_SECOND, propane)
        .isCloseTo(0.42, 1e-12, "the table is scaled to it; rounding");
  }

  @Test
  void ionSourceBeyondTheTable() {
    beyond(Fuel.NATURAL_GAS, 1.51, 0, 0);
    beyond(Fuel.PROPANE, 1.55, 0.051, 1e-12);
    beyond(Fuel.PROPANE, 1.6, 0.03, 1e-12);
    beyond(Fuel.PROPANE, 1.75, 0, 0);
    beyond(Fuel.PROPANE, 3, 0, 0);
  }

  private static void beyond(Fuel fuel, double phi, double expected, double rounding) {
    double j = fuel.table().at(phi).saturationAmpsPerSquareMeter();
    MODEL
        .check("ions from the cone beyond the table", Unit.AMPS_PER_SQUARE_METER, j)
        .at((fuel == Fuel.PROPANE ? "propane, φ " : "natural gas, φ ") + phi)
        .isCloseTo(expected, rounding, "rounding; nothing is nothing");
  }

  @Test
  void brushHoldsTheSheetsSource() {
    IonField field = IonField.of(FlameBench.standard().sheets());
    double j = field.sheets().mantleAmpsPerSquareMeter();
    double sum = 0;
    double step = 1e-5;
    double edge = field.sheets().mantleRadiusMeters(0);
    for (double x = edge - 6e-3; x < edge + 6e-3; x += step) {
      sum += field.sourcePerCubicMeterSecond(x, 0, 0) * step;
    }
    double normal = 1 / Math.sqrt(1 + 0.12 * 0.12);
    MODEL
        .check("ion source across a sheet, all of it", Unit.SOURCE_PER_AREA, sum * normal)
        .isWithin(1e-3, j / 1.602176634e-19, "0.939 and 2.77 are rounded to three digits");
  }
}
