package halfwave.gui.swing.bench;

import halfwave.bench.RodPosition;
import halfwave.gui.presentation.bench.RodGesture;
import halfwave.picture.scene.DrawnView;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;

/** The keyboard on the drawing: moves the rod, goes from part to part, opens cards. */
final class DrawingKeys extends KeyAdapter {

  private static final double NUDGE_METERS = 1e-3;
  private static final double NUDGE_RADIANS = Math.toRadians(2);
  private static final double FINE = 0.1;

  /** Keys that follow each other faster are one act (ms). */
  private static final long PAUSE_MILLIS = 1500;

  private final DrawingPanel panel;
  private RodGesture gesture = new RodGesture(RodPosition.FITTED, 0);
  private long lastMillis;

  DrawingKeys(DrawingPanel panel) {
    this.panel = panel;
  }

  @Override
  public void keyPressed(KeyEvent e) {
    double far = NUDGE_METERS * (e.isShiftDown() ? FINE : 1);
    double turn = NUDGE_RADIANS * (e.isShiftDown() ? FINE : 1);
    RodPosition p = panel.rod();
    RodPosition to =
        switch (e.getKeyCode()) {
          case KeyEvent.VK_LEFT ->
              e.isControlDown()
                  ? p.withTurn(p.turnRadians() - turn)
                  : p.withAlong(p.alongMeters() - far);
          case KeyEvent.VK_RIGHT ->
              e.isControlDown()
                  ? p.withTurn(p.turnRadians() + turn)
                  : p.withAlong(p.alongMeters() + far);
          case KeyEvent.VK_UP ->
              e.isControlDown() ? p.withBend(p.bendRadians() + turn) : upwards(p, far);
          case KeyEvent.VK_DOWN ->
              e.isControlDown() ? p.withBend(p.bendRadians() - turn) : upwards(p, -far);
          default -> p;
        };
    if (!to.equals(p)) {
      // keys that follow each other closely are one act
      if (e.getWhen() - lastMillis > PAUSE_MILLIS) {
        gesture = new RodGesture(p, KnobSlider.nextGesture());
      }
      lastMillis = e.getWhen();
      panel.move(gesture, to);
      e.consume();
    } else if (e.getKeyCode() == KeyEvent.VK_ENTER && panel.openFocused()) {
      e.consume();
    } else if (e.getKeyChar() == 'n' || e.getKeyChar() == 'p') {
      panel.step(e.getKeyChar() == 'n' ? 1 : -1);
      e.consume();
    }
  }

  /** Up is up on the screen. */
  private RodPosition upwards(RodPosition p, double far) {
    return panel.view() == DrawnView.ABOVE
        ? p.withAcross(p.acrossMeters() - far)
        : p.withUp(p.upMeters() + far);
  }
}
