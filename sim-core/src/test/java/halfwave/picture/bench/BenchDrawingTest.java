package halfwave.picture.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Disorder;
import halfwave.bench.RodPosition;
import halfwave.bench.ShippedBenches;
import halfwave.circuit.Point;
import halfwave.display.Sentences;
import halfwave.fault.FaultKind;
import halfwave.flame.Place;
import halfwave.instrument.HookUp;
import halfwave.instrument.LeadEnd;
import halfwave.instrument.SupplyPoint;
import halfwave.picture.Palette;
import halfwave.picture.flame.FlameMemory;
import halfwave.picture.scene.DrawingStyle;
import halfwave.picture.scene.DrawnBench;
import halfwave.picture.scene.DrawnPart;
import halfwave.picture.scene.DrawnView;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The drawing is the engine's geometry, and what is done to it comes back to the bench. */
class BenchDrawingTest {

  private static final Dimension USUAL = new Dimension(820, 560);
  private static final DrawingStyle STYLE =
      DrawingStyle.still(Palette.LIGHT, Sentences.in(Locale.ENGLISH));

  private static BenchDrawing drawing(Bench bench, DrawingStyle style) {
    return BenchDrawing.of(USUAL, DrawnScenes.running(bench), style);
  }

  private static BenchDrawing drawing(DrawnBench drawn) {
    return BenchDrawing.of(USUAL, drawn, STYLE);
  }

  /** A sign at a part that is on the sheet, and the same in words. */
  @ParameterizedTest
  @EnumSource(Disorder.class)
  void whatIsOutOfOrderIsMarkedAndSaid(Disorder disorder) {
    Bench bench = DrawnScenes.standard();
    BenchDrawing healthy = drawing(bench, STYLE);
    BenchDrawing upset = drawing(new Change.Upset(disorder, true).on(bench), STYLE);
    String said = Sentences.in(Locale.ENGLISH).name(disorder);
    List<DrawnPart> marked =
        Stream.of(DrawnPart.values()).filter(p -> upset.disorders(p).contains(disorder)).toList();

    assertThat(marked).hasSize(1);
    assertThat(upset.shape(marked.get(0)).getBounds2D().isEmpty()).isFalse();
    assertThat(healthy.disorders(marked.get(0))).isEmpty();
    assertThat(upset.description()).contains(": " + said + ".");
    assertThat(healthy.description()).doesNotContain(": " + said + ".");
  }

  private static Bench standardAt(RodPosition position) {
    Bench bench = DrawnScenes.standard();
    return bench.with(bench.condition().withRodPosition(position));
  }

  static java.util.List<Bench> shipped() {
    return ShippedBenches.all();
  }

  @ParameterizedTest
  @MethodSource("shipped")
  void theRodStandsWhereTheEngineHasIt(Bench bench) {
    SheetPlan plan = new SheetPlan(820, 560, bench.design(), DrawnView.ABOVE);
    Rectangle2D box = drawing(bench, STYLE).shape(DrawnPart.ROD).getBounds2D();
    Place root = bench.rod().path().get(0);
    double per = plan.zone.length(1);
    Point2D face = plan.zone.at(0, 0);

    double deepest = bench.rod().path().stream().mapToDouble(Place::xMeters).max().orElseThrow();
    assertThat(box.getMinY()).isCloseTo(face.getY() + per * root.xMeters(), within(1.0));
    assertThat(box.getMaxY())
        .isBetween(
            face.getY() + per * deepest - 1,
            face.getY() + per * (deepest + bench.rod().radiusMeters()) + 1);
    assertThat(box.getMaxX())
        .isCloseTo(face.getX() + per * (root.zMeters() + bench.rod().radiusMeters()), within(1.0));
  }

  @Test
  void fromTheSideTheRodIsSeenFromItsEnd() {
    Bench bench = DrawnScenes.standard();
    SheetPlan plan = new SheetPlan(820, 560, bench.design(), DrawnView.SIDE);
    Rectangle2D box = drawing(bench, STYLE.with(DrawnView.SIDE)).shape(DrawnPart.ROD).getBounds2D();
    Point2D tip = plan.zone.at(bench.rod().tip());

    assertThat(box.getCenterX()).isCloseTo(tip.getX(), within(0.5));
    assertThat(box.getCenterY()).isCloseTo(tip.getY(), within(0.5));
    assertThat(tip.getY()).isLessThan(plan.zone.at(0, 0).getY());
    assertThat(box.getWidth()).isCloseTo(plan.zone.length(3.2e-3), within(0.5));
  }

  @Test
  void everyScaleShowsTheSameSheet() {
    Bench bench = DrawnScenes.standard();
    Rectangle2D one = drawing(bench, STYLE).shape(DrawnPart.ROD).getBounds2D();
    Rectangle2D two =
        BenchDrawing.of(new Dimension(1640, 1120), DrawnScenes.running(bench), STYLE.withScale(2))
            .shape(DrawnPart.ROD)
            .getBounds2D();

    assertThat(two.getX()).isCloseTo(2 * one.getX(), within(1e-6));
    assertThat(two.getMaxY()).isCloseTo(2 * one.getMaxY(), within(1e-6));
  }

  @ParameterizedTest
  @EnumSource(
      value = DrawnPart.class,
      names = {
        "BOARD", "STATUS_LIGHT", "SENSE_TERMINAL", "COMMON_TERMINAL", "VALVE_TERMINALS",
        "CONNECTOR", "INSULATOR", "GAS_VALVE", "METER", "SUPPLY"
      })
  void everyPartIsFoundWhereItIsDrawn(DrawnPart part) {
    BenchDrawing drawing = drawing(DrawnScenes.standard(), STYLE);
    Rectangle2D box = drawing.shape(part).getBounds2D();

    // the board's middle carries nothing else
    assertThat(drawing.partAt(new Point2D.Double(box.getCenterX(), box.getCenterY())))
        .contains(part);
  }

  @ParameterizedTest
  @EnumSource(Point.class)
  void aLeadFindsEveryPointThatCanBeReached(Point point) {
    BenchDrawing drawing =
        drawing(ShippedBenches.named("direct-spark-separate-rod").orElseThrow(), STYLE);

    assertThat(drawing.place(point).isPresent()).isEqualTo(HookUp.REACHABLE.contains(point));
    drawing.place(point).ifPresent(at -> assertThat(drawing.pointAt(at, 6)).contains(point));
  }

  @Test
  void nothingIsFoundFarFromEverything() {
    assertThat(drawing(DrawnScenes.standard(), STYLE).pointAt(new Point2D.Double(600, 300), 12))
        .isEmpty();
  }

  @Test
  void theLeadsOfAMeterEndWhereTheyAreHookedUp() {
    assertEnds(DrawnScenes.across(Point.TERMINAL, Point.CHASSIS, "1"), Point.TERMINAL, true);
    assertEnds(DrawnScenes.across(Point.TERMINAL, Point.CHASSIS, "1"), Point.CHASSIS, false);
    BenchSheet supply = new BenchSheet(820, 560, DrawnScenes.onSupply(), STYLE);
    assertThat(supply.meter.redEnd).isEqualTo(supply.points.of(SupplyPoint.LINE));
    assertThat(supply.meter.blackEnd).isEqualTo(supply.points.of(SupplyPoint.GROUND));
    BenchSheet wire = new BenchSheet(820, 560, DrawnScenes.wireInFlame(), STYLE);
    assertThat(wire.meter.wire).isNotNull();
    assertThat(wire.meter.blackEnd).isEqualTo(wire.rod.terminal);
    BenchSheet none = new BenchSheet(820, 560, DrawnScenes.running(DrawnScenes.standard()), STYLE);
    assertThat(none.meter.redEnd).isNull();
    assertThat(none.meter.blackEnd).isNull();
  }

  private static void assertEnds(DrawnBench drawn, Point point, boolean red) {
    BenchSheet sheet = new BenchSheet(820, 560, drawn, STYLE);
    Point2D end = red ? sheet.meter.redEnd : sheet.meter.blackEnd;
    assertThat(end).isEqualTo(sheet.points.of(point).orElseThrow());
  }

  @ParameterizedTest
  @EnumSource(LeadEnd.class)
  void inSeriesBothLeadsEndAtTheOpenedLead(LeadEnd end) {
    BenchSheet sheet = new BenchSheet(820, 560, DrawnScenes.inSeries(end), STYLE);

    assertThat(sheet.wires.opened).isNotNull();
    assertThat(sheet.meter.redEnd).isEqualTo(sheet.wires.opened[0]);
    assertThat(sheet.meter.blackEnd).isEqualTo(sheet.wires.opened[1]);
    assertThat(sheet.wires.connectorOff).isEqualTo(end == LeadEnd.BOARD);
  }

  @Test
  void theSenseLeadKeepsOffTheChassis() {
    BenchSheet sheet = new BenchSheet(820, 560, DrawnScenes.running(DrawnScenes.standard()), STYLE);
    Rectangle2D chassis = sheet.shapes.get(DrawnPart.CHASSIS).getBounds2D();

    assertThat(BenchSheet.wide(sheet.wires.lead, 12).intersects(chassis)).isFalse();
  }

  @Test
  void theFlameIsMadeOnceWhileOnlyTheRodMoves() {
    FlameMemory memory = new FlameMemory();
    Graphics2D g = new BufferedImage(820, 560, BufferedImage.TYPE_INT_RGB).createGraphics();
    for (int k = 0; k < 5; k++) {
      Bench moved = standardAt(RodPosition.shifted(-1e-3 * k, 0, 1e-3 * k));
      BenchDrawing.of(USUAL, DrawnScenes.running(moved), STYLE.moving(0.1 * k, 0.1 * k), memory)
          .paint(g);
    }

    assertThat(memory.madeCount()).isEqualTo(1);
  }

  @Test
  void withoutAFlameNothingBurns() {
    BenchDrawing dark = drawing(DrawnScenes.cold(DrawnScenes.standard()));

    assertThat(dark.shape(DrawnPart.FLAME).getBounds2D().isEmpty()).isTrue();
    assertThat(dark.description()).contains("no flame at the rod");
    assertThat(dark.labels()).noneMatch(l -> l.text().contains("rod positive"));
  }

  @Test
  void aLongerAxisOfTheFilmIsAThickerCoat() {
    assertThat(RodPainter.filmThickness(halfwave.bench.Coat.CLEAN)).isZero();
    double thin = RodPainter.filmThickness(halfwave.bench.Coat.even(1e-6, 1000));
    double thick = RodPainter.filmThickness(halfwave.bench.Coat.even(1e-4, 1000));
    assertThat(thick).isGreaterThan(thin + 1);
  }

  @Test
  void faultsAreSaidAndDrawn() {
    BenchDrawing drawing =
        drawing(
            DrawnScenes.with(
                FaultKind.CONNECTOR_OFF,
                FaultKind.GROUND_LOST,
                FaultKind.RECTIFYING_DEPOSIT,
                FaultKind.BURNER_SCALED,
                FaultKind.ROD_FOULED),
            STYLE);

    assertThat(drawing.description())
        .contains("off the board", "common is open", "one way", "Scale of 10", "film of 100");
    assertThat(drawing.labels())
        .extracting(Label::text)
        .contains("lead off the board", "ground open", "scale 10 MΩ", "film 100 µm");
    assertThat(drawing.shape(DrawnPart.DEPOSIT).getBounds2D().isEmpty()).isFalse();
    assertThat(drawing.shape(DrawnPart.JUMPER).getBounds2D().isEmpty()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"en", "es"})
  void theDescriptionHasEveryPartInFullSentences(String language) {
    Sentences sentences = Sentences.in(Locale.forLanguageTag(language));
    DrawnBench drawn = DrawnScenes.inSeries(LeadEnd.ROD);
    String text =
        BenchDrawing.of(USUAL, drawn, DrawingStyle.still(Palette.LIGHT, sentences)).description();
    Set<String> parts =
        language.equals("en")
            ? Set.of(
                "board",
                "light",
                "terminals",
                "lead",
                "connector",
                "rod",
                "insulator",
                "burner",
                "Flame",
                "ground strap",
                "igniter",
                "gas valve",
                "meter",
                "3.0 µA DC",
                "chassis")
            : Set.of(
                "Placa",
                "luz",
                "bornes",
                "cable",
                "conector",
                "varilla",
                "aislador",
                "quemador",
                "Llama",
                "trenza de tierra",
                "encendedor",
                "válvula",
                "medidor",
                "chasis");

    assertThat(text).contains(parts).endsWith(".").doesNotContain("{", "  ");
  }

  @Test
  void theLightFlashesItsCode() {
    assertThat(StatusFlashes.lit(halfwave.board.StatusCode.DARK, 0)).isFalse();
    int changes = 0;
    boolean before = false;
    for (long t = 0; t < 4650; t += 10) {
      boolean now = StatusFlashes.lit(halfwave.board.StatusCode.WEAK_FLAME, t);
      changes += now && !before ? 1 : 0;
      before = now;
    }
    // one long and one short flash in a round of 1350 + 600 + 1800 ms, and the next round's first
    assertThat(changes).isEqualTo(3);
  }
}
