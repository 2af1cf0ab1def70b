package halfwave.picture.bench;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Bench;
import halfwave.bench.Coat;
import halfwave.bench.Condition;
import halfwave.bench.RodPosition;
import halfwave.bench.ShippedBenches;
import halfwave.display.Sentences;
import halfwave.display.UnitSystem;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.instrument.HookUp.InSenseLead;
import halfwave.instrument.LeadEnd;
import halfwave.picture.Palette;
import halfwave.picture.scene.DrawingStyle;
import halfwave.picture.scene.DrawnBench;
import halfwave.picture.scene.DrawnView;
import halfwave.quantity.RejectedValueException;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Words never cover words nor leave the sheet, whatever the bench, the language and the size. */
class DrawingLabelsPropertyTest {

  private static final List<Dimension> SIZES =
      List.of(
          new Dimension(620, 440),
          new Dimension(820, 560),
          new Dimension(1000, 520),
          new Dimension(700, 900),
          new Dimension(1600, 1000));

  private static final List<Sentences> LANGUAGES =
      List.of(
          Sentences.in(Locale.ENGLISH, UnitSystem.INCH), Sentences.in(Locale.forLanguageTag("es")));

  private static final long SEED = 20_260_407;
  private static final int COUNT = Boolean.getBoolean("halfwave.deep") ? 600 : 60;

  static Stream<Bench> shipped() {
    return ShippedBenches.all().stream();
  }

  private static List<DrawnBench> conditions(Bench bench) {
    List<DrawnBench> drawn = new ArrayList<>();
    drawn.add(DrawnScenes.running(bench));
    drawn.add(DrawnScenes.cold(bench));
    drawn.add(
        DrawnScenes.measured(bench, new InSenseLead(LeadEnd.ROD, true), "0.00 µA AC, −12.3 µA DC"));
    drawn.add(DrawnScenes.measured(bench, new InSenseLead(LeadEnd.BOARD, false), "OL"));
    for (FaultKind kind :
        List.of(
            FaultKind.ROD_FOULED,
            FaultKind.ROD_ABOVE_FLAME,
            FaultKind.ROD_PULLED_BACK,
            FaultKind.CERAMIC_CRACKED,
            FaultKind.CONNECTOR_OFF,
            FaultKind.LEAD_BROKEN,
            FaultKind.GROUND_CORRODED,
            FaultKind.BURNER_SCALED)) {
      drawn.add(DrawnScenes.running(Fault.typical(kind).on(bench)));
    }
    Bench worst = bench;
    for (FaultKind kind :
        List.of(
            FaultKind.RECTIFYING_DEPOSIT,
            FaultKind.CERAMIC_CRACKED,
            FaultKind.ROD_TOUCHES_BURNER,
            FaultKind.GROUND_LOST,
            FaultKind.CONNECTOR_CORRODED,
            FaultKind.ROD_SILICA,
            FaultKind.BURNER_SCALED)) {
      worst = Fault.typical(kind).on(worst);
    }
    drawn.add(DrawnScenes.running(worst));
    return drawn;
  }

  @ParameterizedTest
  @MethodSource("shipped")
  void wordsStandApartAndOnTheSheet(Bench bench) {
    for (DrawnBench drawn : conditions(bench)) {
      for (Dimension size : SIZES) {
        for (Sentences sentences : LANGUAGES) {
          for (double scale : new double[] {1, 1.5, 2}) {
            for (DrawnView view : DrawnView.values()) {
              DrawingStyle style =
                  DrawingStyle.still(Palette.LIGHT, sentences).withScale(scale).with(view);
              assertClear(BenchDrawing.of(size, drawn, style).labels(), size, scale);
            }
          }
        }
      }
    }
  }

  private static void assertClear(List<Label> labels, Dimension size, double scale) {
    Rectangle2D sheet = new Rectangle2D.Double(0, 0, size.width, size.height);
    assertThat(labels).isNotEmpty();
    for (int k = 0; k < labels.size(); k++) {
      Label one = labels.get(k);
      assertThat(sheet.contains(one.bounds())).as("%s on %s", one, size).isTrue();
      assertThat(one.bounds().getHeight()).as(one.text()).isGreaterThanOrEqualTo(11 * scale);
      for (Label other : labels.subList(k + 1, labels.size())) {
        assertThat(one.bounds().intersects(other.bounds()))
            .as("%s over %s on %s at %s", one, other, size, scale)
            .isFalse();
      }
    }
  }

  @Test
  void anyConditionCanBeDrawn() {
    SplittableRandom random = new SplittableRandom(SEED);
    int drawn = 0;
    while (drawn < COUNT) {
      Optional<Bench> bench = any(random);
      if (bench.isPresent()) {
        drawn++;
        draw(bench.get(), random);
      }
    }
    assertThat(drawn).as("seed %d", SEED).isEqualTo(COUNT);
  }

  private static void draw(Bench bench, SplittableRandom random) {
    Dimension size = SIZES.get(random.nextInt(SIZES.size()));
    double scale = random.nextDouble(0.6, 2.2);
    DrawingStyle style =
        DrawingStyle.still(
                random.nextBoolean() ? Palette.LIGHT : Palette.DARK,
                LANGUAGES.get(random.nextInt(LANGUAGES.size())))
            .withScale(scale)
            .with(DrawnView.values()[random.nextInt(2)])
            .moving(random.nextDouble(), random.nextDouble());
    BenchDrawing drawing =
        BenchDrawing.of(size, DrawnScenes.of(bench, random.nextBoolean(), null, ""), style);
    Graphics2D g =
        new BufferedImage(size.width, size.height, BufferedImage.TYPE_INT_RGB).createGraphics();
    drawing.paint(g);
    g.dispose();
    assertThat(drawing.description()).doesNotContain("{");
    assertClear(drawing.labels(), size, scale);
  }

  /** Where the rod may be is decided by the bench itself: nothing where it stands in metal. */
  private static Optional<Bench> any(SplittableRandom random) {
    Bench bench = ShippedBenches.all().get(random.nextInt(ShippedBenches.all().size()));
    Condition c =
        bench
            .condition()
            .withManifold(random.nextDouble(0, 4))
            .withAir(random.nextDouble(0.1, 2))
            .withRodCoat(
                new Coat(random.nextDouble(0, 1e-3), 1000, ohms(random, Double.POSITIVE_INFINITY)))
            .withBurnerScale(ohms(random, 0), 0)
            .withConnector(ohms(random, 0))
            .withLeadExtra(ohms(random, 0))
            .withLeakage(ohms(random, Double.POSITIVE_INFINITY))
            .withJumper(ohms(random, Double.POSITIVE_INFINITY))
            .withDeposit(Math.max(1, ohms(random, Double.POSITIVE_INFINITY)))
            .withGroundExtra(ohms(random, 0));
    try {
      return Optional.of(
          bench.with(
              c.withRodPosition(
                  new RodPosition(
                      random.nextDouble(-0.1, 0.1),
                      random.nextDouble(-0.1, 0.1),
                      random.nextDouble(-0.1, 0.1),
                      random.nextDouble(-1.6, 1.6),
                      random.nextDouble(-1.6, 1.6),
                      random.nextDouble(-1.6, 1.6)))));
    } catch (RejectedValueException e) {
      return Optional.empty();
    }
  }

  private static double ohms(SplittableRandom random, double healthy) {
    double[] some = {healthy, healthy, 0, 3, 4.7e4, 1e6, 2.2e7, 3e9, Double.POSITIVE_INFINITY};
    return some[random.nextInt(some.length)];
  }
}
