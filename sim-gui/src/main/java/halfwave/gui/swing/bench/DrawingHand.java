package halfwave.gui.swing.bench;

import halfwave.bench.RodPosition;
import halfwave.circuit.Point;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.Placing;
import halfwave.gui.presentation.bench.RodGesture;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.swing.widget.Theme;
import halfwave.instrument.HookUp;
import halfwave.instrument.HookUp.Across;
import halfwave.instrument.HookUp.WireInFlame;
import halfwave.instrument.MeterFunction;
import halfwave.picture.bench.BenchDrawing;
import halfwave.picture.scene.DrawnPart;
import halfwave.picture.scene.RodGrip;
import halfwave.sequence.Hooked;
import java.awt.Cursor;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The mouse on the drawing: drags the rod and the leads of the meter, opens cards. */
final class DrawingHand extends MouseAdapter {

  private static final double LEAD_PX = 14;
  private static final double POINT_PX = 24;
  private static final double STILL_PX = 3;

  private final DrawingPanel panel;
  private final Theme theme;
  private final Workbench workbench;
  private @Nullable RodGrip grip;
  private RodGesture gesture = new RodGesture(RodPosition.FITTED, 0);
  private Point2D start = new Point2D.Double();
  private boolean dragged;

  /** Which lead is dragged: true is red; null is none. */
  private @Nullable Boolean red;

  DrawingHand(DrawingPanel panel, Theme theme, Workbench workbench) {
    this.panel = panel;
    this.theme = theme;
    this.workbench = workbench;
  }

  @Override
  public void mousePressed(MouseEvent e) {
    panel.requestFocusInWindow();
    BenchDrawing d = panel.drawing();
    State state = panel.state();
    if (d == null || state == null) {
      return;
    }
    dragged = false;
    start = e.getPoint();
    red = lead(d, e.getPoint());
    if (red == null && d.partAt(e.getPoint()).orElse(null) == DrawnPart.METER) {
      red = true;
    }
    // whoever may not see where the rod stands cannot move it
    grip = red == null && !state.sealed() ? d.gripAt(e.getPoint()).orElse(null) : null;
    gesture = new RodGesture(panel.rod(), KnobSlider.nextGesture());
    panel.focus(d.partAt(e.getPoint()).orElse(null));
  }

  @Override
  public void mouseDragged(MouseEvent e) {
    BenchDrawing d = panel.drawing();
    if (d == null) {
      return;
    }
    dragged = dragged || start.distance(e.getPoint()) > STILL_PX;
    if (red != null) {
      panel.leadAt(e.getPoint());
    } else if (grip != null && dragged) {
      panel.move(gesture, d.dragged(grip, gesture.start(), start, e.getPoint()));
    }
  }

  @Override
  public void mouseReleased(MouseEvent e) {
    BenchDrawing d = panel.drawing();
    if (red != null && dragged && d != null) {
      d.pointAt(e.getPoint(), theme.px(POINT_PX)).ifPresent(p -> put(p, Boolean.TRUE.equals(red)));
    } else if (!dragged) {
      panel.openFocused();
    }
    grip = null;
    red = null;
    panel.letGo();
  }

  @Override
  public void mouseMoved(MouseEvent e) {
    BenchDrawing d = panel.drawing();
    boolean can =
        d != null && (d.gripAt(e.getPoint()).isPresent() || lead(d, e.getPoint()) != null);
    boolean part = d != null && d.partAt(e.getPoint()).isPresent();
    panel.setCursor(
        Cursor.getPredefinedCursor(
            can ? Cursor.MOVE_CURSOR : part ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
  }

  private @Nullable Boolean lead(BenchDrawing d, Point2D at) {
    State state = panel.state();
    Hooked hooked = state == null ? null : state.moment().hooked();
    if (hooked == null) {
      return null;
    }
    if (hooked.hookUp() instanceof Across across) {
      if (near(d.place(across.red()), at)) {
        return true;
      }
      return near(d.place(across.black()), at) ? false : null;
    }
    return null;
  }

  private boolean near(Optional<Point2D> place, Point2D at) {
    return place.map(p -> p.distance(at) < theme.px(LEAD_PX)).orElse(false);
  }

  /** Puts one lead on a point; the other stays, or goes to the board's common. */
  private void put(Point point, boolean red) {
    State now = panel.state();
    if (now == null || !HookUp.REACHABLE.contains(point)) {
      return;
    }
    Hooked hooked = now.moment().hooked();
    HookUp before = hooked == null ? null : hooked.hookUp();
    Point other = Point.COMMON;
    if (before instanceof Across across) {
      other = red ? across.black() : across.red();
    } else if (before instanceof WireInFlame wire) {
      other = wire.other();
    }
    Across to = red ? new Across(point, other) : new Across(other, point);
    workbench.want(new Intent.Lead(new Placing.At(to), MeterFunction.AC_VOLTS));
  }
}
