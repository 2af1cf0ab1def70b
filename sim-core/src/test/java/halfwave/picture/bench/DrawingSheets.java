package halfwave.picture.bench;

import halfwave.bench.Bench;
import halfwave.bench.Condition;
import halfwave.bench.RodPosition;
import halfwave.bench.ShippedBenches;
import halfwave.circuit.Point;
import halfwave.display.Sentences;
import halfwave.display.UnitSystem;
import halfwave.fault.FaultKind;
import halfwave.instrument.LeadEnd;
import halfwave.picture.Palette;
import halfwave.picture.flame.FlameMemory;
import halfwave.picture.scene.DrawingStyle;
import halfwave.picture.scene.DrawnBench;
import halfwave.picture.scene.DrawnPart;
import halfwave.picture.scene.DrawnView;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import javax.imageio.ImageIO;

/** Writes drawings to {@code target/drawings}, to be looked at. */
public final class DrawingSheets {

  private static final Dimension USUAL = new Dimension(820, 560);
  private static final Sentences ENGLISH = Sentences.in(Locale.ENGLISH);
  private static final DrawingStyle LIGHT = DrawingStyle.still(Palette.LIGHT, ENGLISH);
  private static final DrawingStyle DARK = DrawingStyle.still(Palette.DARK, ENGLISH);

  private final Path folder;

  private DrawingSheets(Path folder) {
    this.folder = folder;
  }

  /** Writes all of them, or measures the time to paint one. */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args.length > 0 ? args[0] : "target/drawings");
    Files.createDirectories(folder);
    DrawingSheets sheets = new DrawingSheets(folder);
    sheets.flames();
    sheets.faults();
    sheets.meters();
    sheets.benches();
    sheets.sizes();
    sheets.times();
  }

  private void flames() throws IOException {
    write("healthy-light", USUAL, DrawnScenes.running(DrawnScenes.standard()), LIGHT);
    write("healthy-dark", USUAL, DrawnScenes.running(DrawnScenes.standard()), DARK);
    write(
        "side-light",
        USUAL,
        DrawnScenes.running(DrawnScenes.standard()),
        LIGHT.with(DrawnView.SIDE));
    write(
        "side-dark", USUAL, DrawnScenes.running(DrawnScenes.standard()), DARK.with(DrawnView.SIDE));
    write("lifted", USUAL, DrawnScenes.running(lifted()), LIGHT);
    write("rich", USUAL, DrawnScenes.running(air(0.4)), LIGHT);
    write("rich-side", USUAL, DrawnScenes.running(air(0.35)), DARK.with(DrawnView.SIDE));
    write("lean", USUAL, DrawnScenes.running(air(1.3)), LIGHT);
    write("low", USUAL, DrawnScenes.running(gas(0.12)), LIGHT);
    write("lazy-side", USUAL, DrawnScenes.running(gas(0.06)), LIGHT.with(DrawnView.SIDE));
    write("no-flame", USUAL, DrawnScenes.cold(DrawnScenes.standard()), LIGHT);
    write("moving", USUAL, DrawnScenes.running(DrawnScenes.standard()), LIGHT.moving(0.2, 0.6));
  }

  private static Bench air(double ratio) {
    Bench bench = DrawnScenes.standard();
    return bench.with(bench.condition().withAir(ratio));
  }

  private static Bench gas(double ratio) {
    Bench bench = DrawnScenes.standard();
    return bench.with(bench.condition().withManifold(ratio));
  }

  /** As lean as it can be before it blows off. */
  private static Bench lifted() {
    Bench last = air(1.3);
    for (double ratio = 1.3; ratio < 1.7; ratio += 0.002) {
      DrawnBench drawn = DrawnScenes.running(air(ratio));
      if (drawn.flame().field().sheets().state() == halfwave.flame.FlameState.LIFTED) {
        return air(ratio + 0.004);
      }
    }
    return last;
  }

  private void faults() throws IOException {
    Bench bench = DrawnScenes.standard();
    Condition c = bench.condition();
    write(
        "rod-out", USUAL, DrawnScenes.running(DrawnScenes.with(FaultKind.ROD_PULLED_BACK)), LIGHT);
    write(
        "rod-above",
        USUAL,
        DrawnScenes.running(DrawnScenes.with(FaultKind.ROD_ABOVE_FLAME)),
        LIGHT);
    write(
        "rod-turned",
        USUAL,
        DrawnScenes.running(
            bench.with(c.withRodPosition(new RodPosition(0, 0, 0.004, 0.35, -0.1, 0.3)))),
        LIGHT);
    write(
        "lost-ground",
        USUAL,
        DrawnScenes.running(DrawnScenes.with(FaultKind.GROUND_LOST, FaultKind.ROD_FOULED)),
        LIGHT);
    write(
        "lead-off",
        USUAL,
        DrawnScenes.running(DrawnScenes.with(FaultKind.CONNECTOR_OFF, FaultKind.BURNER_SCALED)),
        DARK);
    write(
        "leaks",
        USUAL,
        DrawnScenes.running(
            DrawnScenes.with(
                FaultKind.CERAMIC_CRACKED,
                FaultKind.ROD_TOUCHES_BURNER,
                FaultKind.RECTIFYING_DEPOSIT,
                FaultKind.LEAD_BROKEN,
                FaultKind.GROUND_CORRODED)),
        LIGHT);
    write(
        "lit-parts",
        USUAL,
        DrawnScenes.running(bench),
        LIGHT.pointing(Set.of(DrawnPart.ROD, DrawnPart.SENSE_LEAD), DrawnPart.GAS_VALVE));
  }

  private void meters() throws IOException {
    write("series-rod", USUAL, DrawnScenes.inSeries(LeadEnd.ROD), LIGHT);
    write("series-board", USUAL, DrawnScenes.inSeries(LeadEnd.BOARD), DARK);
    write(
        "across",
        USUAL,
        DrawnScenes.across(Point.TERMINAL, Point.COMMON, "75.2 V AC, −7.3 V DC"),
        LIGHT);
    write("across-rod", USUAL, DrawnScenes.across(Point.ROD, Point.CHASSIS, "74.9 V AC"), LIGHT);
    write("wire", USUAL, DrawnScenes.wireInFlame(), LIGHT);
    write("wire-side", USUAL, DrawnScenes.wireInFlame(), LIGHT.with(DrawnView.SIDE));
    write("supply", USUAL, DrawnScenes.onSupply(), LIGHT);
  }

  private void benches() throws IOException {
    for (Bench bench : ShippedBenches.all()) {
      write("bench-" + bench.name(), USUAL, DrawnScenes.running(bench), LIGHT);
    }
    write(
        "spark-side",
        USUAL,
        DrawnScenes.running(ShippedBenches.named("direct-spark-separate-rod").orElseThrow()),
        LIGHT.with(DrawnView.SIDE));
  }

  private void sizes() throws IOException {
    Sentences spanish = Sentences.in(Locale.forLanguageTag("es"));
    Sentences inches = Sentences.in(Locale.ENGLISH, UnitSystem.INCH);
    DrawnBench drawn = DrawnScenes.inSeries(LeadEnd.ROD);
    DrawingStyle es = DrawingStyle.still(Palette.LIGHT, spanish);
    write("spanish", USUAL, drawn, es);
    write("inches", USUAL, drawn, DrawingStyle.still(Palette.LIGHT, inches));
    write("620x440", new Dimension(620, 440), drawn, es);
    write("620x440-en", new Dimension(620, 440), drawn, LIGHT);
    write("620x440-scale-2", new Dimension(620, 440), drawn, es.withScale(2));
    write("1240x880-scale-2", new Dimension(1240, 880), drawn, LIGHT.withScale(2));
    write("1600x1000", new Dimension(1600, 1000), drawn, LIGHT);
    write("1600x1000-scale-2", new Dimension(1600, 1000), drawn, DARK.withScale(2));
    write("1600x500", new Dimension(1600, 500), drawn, LIGHT);
    write("700x900", new Dimension(700, 900), drawn, LIGHT);
  }

  /** How long painting takes, the flame being remembered. */
  private void times() {
    BufferedImage image = new BufferedImage(820, 560, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    FlameMemory memory = new FlameMemory();
    DrawnBench drawn = DrawnScenes.inSeries(LeadEnd.ROD);
    double least = Double.MAX_VALUE;
    double sum = 0;
    for (int k = 0; k < 300; k++) {
      long start = System.nanoTime();
      BenchDrawing.of(USUAL, drawn, LIGHT.moving(k / 97.0, k / 50.0), memory).paint(g);
      double millis = (System.nanoTime() - start) / 1e6;
      least = Math.min(least, millis);
      sum += k >= 200 ? millis : 0;
    }
    g.dispose();
    System.out.printf(
        Locale.ROOT,
        "painting: %.1f ms on average, %.1f ms at best; flames made: %d%n",
        sum / 100,
        least,
        memory.madeCount());
    long start = System.nanoTime();
    for (int k = 0; k < 10; k++) {
      BenchDrawing.of(USUAL, drawn, LIGHT).paint(image.createGraphics());
    }
    System.out.printf(
        Locale.ROOT, "with the flame made anew: %.1f ms%n", (System.nanoTime() - start) / 1e7);
  }

  private void write(String name, Dimension size, DrawnBench drawn, DrawingStyle style)
      throws IOException {
    BufferedImage image = new BufferedImage(size.width, size.height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    BenchDrawing.of(size, drawn, style).paint(g);
    g.dispose();
    ImageIO.write(image, "png", folder.resolve(name + ".png").toFile());
  }
}
