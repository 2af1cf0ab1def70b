package halfwave.io.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import halfwave.bench.ShippedBenches;
import halfwave.bench.Stages;
import halfwave.circuit.Circuit;
import halfwave.circuit.ConductionLaw;
import halfwave.circuit.LumpedCircuit;
import halfwave.circuit.LumpedCircuit.Film;
import halfwave.circuit.LumpedCircuit.Ground;
import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.circuit.LumpedCircuit.Readings;
import halfwave.circuit.LumpedCircuit.Source;
import halfwave.circuit.OracleCircuits;
import halfwave.circuit.Part;
import halfwave.circuit.Solved;
import halfwave.circuit.SquareRootLaw;
import halfwave.circuit.SteadyState;
import halfwave.validation.Area;
import halfwave.validation.Reference;
import halfwave.validation.Validated;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The decks run as they are in ngspice (39 and later), and it agrees with the library. */
@Validated(Area.CIRCUIT)
class SpiceDeckReferenceTest {

  private static final Reference NGSPICE =
      Reference.program("ngspice, general-purpose circuit simulator, run with the deck");

  private static final List<String> NAMES =
      List.of(
          "boardEndDcAmps",
          "rodEndDcAmps",
          "rodEndAcAmpsRms",
          "terminalDcVolts",
          "terminalAcVoltsRms");

  private static final SquareRootLaw FLAME = new SquareRootLaw(2e-7, 2e-6, 5e5);

  @TempDir Path folder;

  @BeforeAll
  static void toolIsThere() {
    boolean there;
    try {
      there = new ProcessBuilder("ngspice", "--version").start().waitFor() == 0;
    } catch (IOException | InterruptedException e) {
      there = false;
    }
    assertThat(there || !Boolean.getBoolean("halfwave.requireTools")).isTrue();
    assumeTrue(there, "ngspice is not installed");
  }

  static Stream<Arguments> circuits() throws Exception {
    Path oracle =
        Path.of(LumpedCircuit.class.getResource("/halfwave/circuit/circuits.json").toURI());
    List<LumpedCircuitFile.Entry> entries = LumpedCircuitFile.read(oracle);
    Stream<Arguments> rows =
        IntStream.range(0, entries.size())
            .mapToObj(k -> Arguments.of("row " + k, entries.get(k).circuit().circuit()));
    double open = Double.POSITIVE_INFINITY;
    // the flame laws of benches are no square roots; their table stands in the deck
    Stream<Arguments> benches =
        ShippedBenches.all().stream()
            .map(bench -> Arguments.of("bench " + bench.name(), new Stages().circuit(bench)));
    return Stream.concat(
        Stream.concat(rows, benches),
        Stream.of(
            Arguments.of("no column", circuit(new SquareRootLaw(2e-7, 2e-6, 0), 100, null)),
            Arguments.of("another law", circuit(new Arctangent(), 100, null)),
            Arguments.of("lost ground", circuit(FLAME, open, null)),
            Arguments.of("film", circuit(FLAME, 10, new Film(2e8, 1e-9))),
            Arguments.of("insulating film", circuit(FLAME, 10, new Film(open, 1e-9))),
            Arguments.of("open film", circuit(FLAME, 10, new Film(open, 0))),
            Arguments.of("no flame", circuit(null, 10, null)),
            Arguments.of("pulled lead", circuit(FLAME, 0, null).without(Part.CONNECTOR)),
            Arguments.of(
                "all zero ohms",
                new LumpedCircuit(
                        new Source(120, 60, 1e5, 1e-9, 0.0),
                        new Lead(0, 0.0, 0.0),
                        null,
                        FLAME,
                        null,
                        new Ground(0))
                    .circuit())));
  }

  private static Circuit circuit(
      @Nullable ConductionLaw law, double groundOhms, @Nullable Film film) {
    return new LumpedCircuit(
            new Source(120, 60, 2e5, 4.7e-9, 2e6),
            new Lead(0, 5e8, 3e-11),
            film,
            law,
            null,
            new Ground(groundOhms))
        .circuit();
  }

  /** A law that is no square root: it exercises the table. */
  private record Arctangent() implements ConductionLaw {
    @Override
    public double currentAmps(double volts) {
      return (volts > 0 ? 2e-6 : 2e-7) * StrictMath.atan(volts / 5);
    }

    @Override
    public double differentialSiemens(double volts) {
      return (volts > 0 ? 4e-7 : 4e-8) / (1 + volts * volts / 25);
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("circuits")
  void deckGivesTheSameReadings(String name, Circuit circuit) throws Exception {
    Solved solved = (Solved) SteadyState.of(circuit);
    double[] ours = five(Readings.of(solved));

    double[] theirs = run(SpiceDeck.of(solved));

    double ampsFloor = 2e-4 * ours[2] + 2e-11;
    double voltsFloor = 1e-4 * ours[4] + 1e-5;
    for (int k = 0; k < 5; k++) {
      NGSPICE
          .check("decks: " + OracleCircuits.WORDS.get(k), OracleCircuits.UNITS.get(k), theirs[k])
          .at(name)
          .isCloseTo(
              ours[k],
              3e-3 * Math.abs(ours[k]) + (k < 3 ? ampsFloor : voltsFloor),
              "0.3 %: 2000 steps, a table of 201 points; floor: the program's smallest current and"
                  + " volts, and what a mean loses to the current's peak");
    }
  }

  @Test
  void deckSaysWhatIsOpen() {
    Solved solved = (Solved) SteadyState.of(circuit(FLAME, Double.POSITIVE_INFINITY, null));

    assertThat(SpiceDeck.of(solved)).contains("* ground is open").doesNotContain("Infinity");
  }

  private static double[] five(Readings r) {
    return new double[] {
      r.boardEndMeanAmps(),
      r.rodEndMeanAmps(),
      r.rodEndAlternatingRmsAmps(),
      r.terminalMeanVolts(),
      r.terminalAlternatingRmsVolts()
    };
  }

  private double[] run(String deck) throws IOException, InterruptedException {
    Path file = folder.resolve("deck.cir");
    Path log = folder.resolve("deck.log");
    Files.writeString(file, deck);
    Process process =
        new ProcessBuilder("ngspice", "-b", file.toString())
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(log.toFile())
            .start();
    boolean ended = process.waitFor(60, TimeUnit.SECONDS);
    String output = Files.readString(log);
    assertThat(ended && process.exitValue() == 0).as(output).isTrue();
    // one whole period of 2000 points: one more or less would shift every mean
    assertThat(output).contains("length(board) = 2.000000e+03");
    List<Double> values = new ArrayList<>();
    for (String name : NAMES) {
      Matcher found =
          Pattern.compile("(?i)^" + name + " = (\\S+)$", Pattern.MULTILINE).matcher(output);
      assertThat(found.find()).as(name + " in\n" + output).isTrue();
      values.add(Double.parseDouble(found.group(1)));
    }
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
