package halfwave.bench;

import static halfwave.bench.Hookups.HEALTHY;
import static halfwave.bench.Hookups.STANDARD;
import static halfwave.bench.Hookups.dc;
import static halfwave.bench.Hookups.shifted;
import static org.assertj.core.api.Assertions.assertThat;

import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.circuit.LumpedCircuit.Source;
import halfwave.flame.BurnerDesign;
import halfwave.flame.FlameCalibration;
import halfwave.flame.Rod;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Not evidence: DC of the standard bench at both ends of the range of a number, as the table "how
 * sure each number is" of {@code docs/model.md} says it. The lines of that table are the numbers
 * that are expected here.
 */
class HowSureRegressionTest {

  private static final Path MODEL = Path.of("..", "docs", "model.md");

  @ParameterizedTest
  @CsvSource({
    "C_d, 0.80, 0.95",
    "f_air, 0.9, 1.0",
    "k_ion, 0.2, 1",
    "f_root, 1, 3",
    "g₀, 0.3e-3, 1e-3",
    "P, 0.20, 0.25",
    "plasma column, 0, 200e3",
    "μ of electrons, 0.2, 1",
    "gas at the burner's face, 400, 800",
    "rod in service, 1000, 1300",
    "rod across, -2e-3, 2e-3",
    "rod up, -2e-3, 2e-3",
    "rod's radius, 1.2e-3, 2e-3",
    "source voltage, 90, 130",
    "source resistance, 1.1e6, 4.4e6",
    "insulation, 50e6, 1e9",
    "cable, 60e-12, 100e-12"
  })
  void theTableSaysWhatTheModelDoes(String name, double low, double high) throws IOException {
    String ends =
        String.format(Locale.ROOT, "| %.2f to %.2f |", microamps(name, low), microamps(name, high))
            .replace('-', '−');
    assertThat(Files.readAllLines(MODEL))
        .filteredOn(line -> line.startsWith("| " + name + " |"))
        .as("line of %s, ending in %s", name, ends)
        .singleElement()
        .asString()
        .endsWith(ends);
  }

  private static double microamps(String name, double value) {
    return 1e6 * dc(with(name, value));
  }

  private static Bench with(String name, double v) {
    Design design = STANDARD.design();
    FlameCalibration f = design.flame();
    Source s = design.source();
    Lead lead = design.lead();
    double root = f.rootMultiplierRatio();
    double gap = f.restGapMeters();
    double column = f.columnOhms();
    double electrons = f.electronMobilitySquareMetersPerVoltSecond();
    double face = f.burnerFaceKelvin();
    return switch (name) {
      case "C_d" ->
          STANDARD.with(design.withBurner(burner(v, design.burner().attachmentLengthMeters())));
      case "P" -> STANDARD.with(design.withBurner(burner(design.burner().dischargeRatio(), v)));
      case "f_air" -> STANDARD.with(HEALTHY.withAir(v));
      case "k_ion" -> STANDARD.with(design.withFlame(f.withIonMultiplier(v)));
      case "f_root" -> flame(v, gap, column, electrons, face);
      case "g₀" -> flame(root, v, column, electrons, face);
      case "plasma column" -> flame(root, gap, v, electrons, face);
      case "μ of electrons" -> flame(root, gap, column, v, face);
      case "gas at the burner's face" -> flame(root, gap, column, electrons, v);
      case "rod in service" -> STANDARD.with(HEALTHY.withRodKelvin(v));
      case "rod across" -> shifted(v, 0, 0);
      case "rod up" -> shifted(0, v, 0);
      case "rod's radius" -> STANDARD.with(design.withRod(new Rod(design.rod().path(), v)));
      case "source voltage" -> Hookups.withSourceVolts(STANDARD, v);
      case "source resistance" ->
          STANDARD.with(
              design.withSource(
                  new Source(
                      s.openCircuitRmsVolts(),
                      s.frequencyHertz(),
                      v,
                      s.couplingFarads(),
                      s.returnOhms())));
      case "insulation" ->
          STANDARD.with(
              design.withLead(new Lead(lead.resistanceOhms(), v, lead.capacitanceFarads())));
      case "cable" ->
          STANDARD.with(design.withLead(new Lead(lead.resistanceOhms(), lead.insulationOhms(), v)));
      default -> throw new IllegalArgumentException(name);
    };
  }

  private static Bench flame(
      double root, double gap, double column, double electrons, double kelvin) {
    double ions = STANDARD.design().flame().ionMultiplierRatio();
    return STANDARD.with(
        STANDARD
            .design()
            .withFlame(new FlameCalibration(ions, root, gap, column, electrons, kelvin)));
  }

  private static BurnerDesign burner(double discharge, double perimeter) {
    BurnerDesign b = STANDARD.design().burner();
    return new BurnerDesign(
        b.orificeDiameterMeters(),
        b.throatDiameterMeters(),
        b.portRadiusMeters(),
        b.holder(),
        perimeter,
        b.spacingMeters(),
        discharge);
  }
}
