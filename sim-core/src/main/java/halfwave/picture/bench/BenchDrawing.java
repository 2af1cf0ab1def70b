package halfwave.picture.bench;

import halfwave.bench.Disorder;
import halfwave.bench.RodPosition;
import halfwave.board.StatusCode;
import halfwave.circuit.Point;
import halfwave.instrument.SupplyPoint;
import halfwave.picture.Ink;
import halfwave.picture.LabelPlacer;
import halfwave.picture.Picture;
import halfwave.picture.flame.FlameMemory;
import halfwave.picture.scene.DrawingStyle;
import halfwave.picture.scene.DrawnBench;
import halfwave.picture.scene.DrawnPart;
import halfwave.picture.scene.RodGrip;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;

/**
 * The drawing of a whole sense circuit: the flame zone to scale, the wiring around it not. It knows
 * where each part is, what a drag of the rod means, and how to say all of it in words.
 *
 * <pre>{@code
 * FlameMemory memory = new FlameMemory();
 * BenchDrawing.of(getSize(), drawn, style, memory).paint(graphics);
 * }</pre>
 *
 * <p>All places are in pixels of that size. One instance belongs to one thread.
 */
public final class BenchDrawing {

  private final BenchSheet sheet;
  private final FlameMemory memory;
  private final double scale;
  private final List<LabelPlacer.Placed> labels;

  private BenchDrawing(BenchSheet sheet, FlameMemory memory, double scale) {
    this.sheet = sheet;
    this.memory = memory;
    this.scale = scale;
    labels = BenchLabels.of(sheet);
  }

  /**
   * A drawing of a size.
   *
   * @param size in pixels
   * @param drawn what it shows
   * @param style how
   * @param memory remembers the flame from one drawing to the next
   */
  public static BenchDrawing of(
      Dimension size, DrawnBench drawn, DrawingStyle style, FlameMemory memory) {
    double scale = style.scaleRatio();
    return new BenchDrawing(
        new BenchSheet(size.width / scale, size.height / scale, drawn, style), memory, scale);
  }

  /** The same with nothing to remember. */
  public static BenchDrawing of(Dimension size, DrawnBench drawn, DrawingStyle style) {
    return of(size, drawn, style, new FlameMemory());
  }

  /** Paints it with its paper, from the origin. */
  public void paint(Graphics2D graphics) {
    paint(graphics, true, 0);
  }

  /**
   * The same where no line may be finer than the back of a room can see.
   *
   * @param leastLine width of the finest line, in pixels
   */
  public void paint(Graphics2D graphics, double leastLine) {
    paint(graphics, true, leastLine);
  }

  /**
   * The drawing where no hand can reach it: without what the rod can be gripped by.
   *
   * @param size in units of the picture
   * @param drawn what it shows
   * @param style how
   */
  public static Picture picture(Dimension size, DrawnBench drawn, DrawingStyle style) {
    return picture(size, drawn, style, 0);
  }

  /**
   * The same for a slide, where no line is finer than the back of the room can see.
   *
   * @param size in units of the picture
   * @param drawn what it shows
   * @param style how
   * @param leastLine width of the finest line, in units of the picture
   */
  public static Picture picture(
      Dimension size, DrawnBench drawn, DrawingStyle style, double leastLine) {
    return Picture.of(
        size.width, size.height, g -> of(size, drawn, style).paint(g, false, leastLine));
  }

  private void paint(Graphics2D graphics, boolean grips, double leastLine) {
    Graphics2D g = (Graphics2D) graphics.create();
    Picture.smooth(g);
    g.scale(scale, scale);
    DrawingStyle style = sheet.style;
    Ink ink = new Ink(g, style.palette(), leastLine / scale);
    ink.fill(sheet.plan.sheet, style.palette().sheet());
    for (DrawnPart part : DrawnPart.values()) {
      Shape shape = sheet.shapes.get(part);
      if (shape != null && style.lit().contains(part)) {
        ink.glow(shape);
      }
    }
    parts(g, ink, grips);
    new LabelPainter(sheet, ink).paint(labels);
    sheet.disorders.paint(ink);
    Shape focused = style.focused() == null ? null : sheet.shapes.get(style.focused());
    if (focused != null) {
      ink.focus(focused);
    }
    g.dispose();
  }

  private void parts(Graphics2D g, Ink ink, boolean grips) {
    WirePainter wires = new WirePainter(sheet, ink);
    BurnerPainter burner = new BurnerPainter(sheet, ink);
    RodPainter rod = new RodPainter(sheet, ink);
    boolean lit =
        sheet.style.motion()
            ? StatusFlashes.lit(sheet.drawn.code(), sheet.drawn.moment().timeMillis())
            : sheet.drawn.code() != StatusCode.DARK;
    wires.board(lit);
    wires.supply();
    wires.chassis();
    boolean side = sheet.rod.endOn;
    if (side) {
      wires.lead();
      rod.ceramic();
    }
    burner.inside();
    burner.axis();
    new FlamePainter(sheet, memory).paint(g);
    new FrontPainter(sheet, ink).paint(grips);
    burner.walls();
    wires.groundAndValve();
    new ArrowPainter(sheet).paint(ink);
    rod.metal();
    if (!side) {
      rod.ceramic();
      wires.lead();
    }
    wires.leaks();
    if (grips) {
      rod.grips();
    }
    new Dimensions(sheet).paint(ink);
    new Legend(sheet).paint(ink);
    new MeterPainter(sheet, ink).paint();
  }

  private Point2D onSheet(Point2D pixel) {
    return new Point2D.Double(pixel.getX() / scale, pixel.getY() / scale);
  }

  private Point2D inPixels(Point2D place) {
    return new Point2D.Double(place.getX() * scale, place.getY() * scale);
  }

  /** The part under a point; of two the one that is drawn on top. */
  public Optional<DrawnPart> partAt(Point2D pixel) {
    Point2D at = onSheet(pixel);
    DrawnPart found = null;
    for (DrawnPart part : sheet.shapes.keySet()) {
      boolean over = found == null || SheetOrder.over(part, found);
      Shape shape = sheet.shapes.get(part);
      if (over && shape != null && shape.intersects(at.getX() - 2, at.getY() - 2, 4, 4)) {
        found = part;
      }
    }
    return Optional.ofNullable(found);
  }

  /** Where a part is; empty where it is not on the sheet. */
  public Shape shape(DrawnPart part) {
    Shape shape = sheet.shapes.get(part);
    return shape == null
        ? new Area()
        : AffineTransform.getScaleInstance(scale, scale).createTransformedShape(shape);
  }

  /** Where a test lead reaches a point of the sense circuit; nothing where none can. */
  public Optional<Point2D> place(Point point) {
    return sheet.points.of(point).map(this::inPixels);
  }

  /** Where a test lead reaches a point of the supply. */
  public Point2D place(SupplyPoint point) {
    return inPixels(sheet.points.of(point));
  }

  /** The point of the sense circuit that a lead let go here would be on. */
  public Optional<Point> pointAt(Point2D pixel, double radius) {
    return sheet.points.near(onSheet(pixel), radius / scale);
  }

  /** What the rod can be gripped by here. */
  public Optional<RodGrip> gripAt(Point2D pixel) {
    return new RodDrag(sheet).at(onSheet(pixel));
  }

  /**
   * What a drag of the rod means: a millimetre on the sheet is a millimetre on the bench. A rod
   * that would run into the burner's metal stays where it touches.
   *
   * @param grip what it is gripped by
   * @param from where the rod stood when the drag began
   * @param start where the drag began, in the flame zone or in the view from the front
   * @param now where it is
   */
  public RodPosition dragged(RodGrip grip, RodPosition from, Point2D start, Point2D now) {
    return new RodDrag(sheet).dragged(grip, from, onSheet(start), onSheet(now));
  }

  /** All words on it and where they stand. */
  public List<Label> labels() {
    return labels.stream()
        .map(
            l ->
                new Label(
                    l.text(),
                    new Rectangle2D.Double(
                        l.bounds().getX() * scale,
                        l.bounds().getY() * scale,
                        l.bounds().getWidth() * scale,
                        l.bounds().getHeight() * scale)))
        .toList();
  }

  /** What is marked at a part because it is not as it should be in service. */
  public List<Disorder> disorders(DrawnPart part) {
    return List.copyOf(sheet.disorders.at(part));
  }

  /** The drawing in full sentences. */
  public String description() {
    return BenchDescription.of(sheet.drawn, sheet.style);
  }
}
