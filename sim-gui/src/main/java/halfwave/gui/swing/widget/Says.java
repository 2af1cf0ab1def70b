package halfwave.gui.swing.widget;

import java.awt.Dimension;
import java.awt.Point;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import javax.swing.Popup;
import javax.swing.PopupFactory;
import javax.swing.SwingUtilities;
import javax.swing.Timer;

/** A few words beside a control that could not do what was wanted; they go by themselves. */
public final class Says {

  private static final int SHOWN_MILLIS = 4000;

  private Says() {}

  /** Says them. */
  public static void beside(JComponent control, Theme theme, String text) {
    if (!control.isShowing()) {
      return;
    }
    JTextArea area = Lettering.paragraph(text, theme.body(), theme.palette().ink());
    area.setOpaque(true);
    area.setBackground(theme.palette().sheet());
    area.setBorder(
        BorderFactory.createCompoundBorder(
            BorderFactory.createLineBorder(theme.palette().danger()),
            BorderFactory.createEmptyBorder(6, 8, 6, 8)));
    area.setSize(new Dimension(theme.px(280), Short.MAX_VALUE));
    area.setPreferredSize(new Dimension(theme.px(280), area.getPreferredSize().height));
    Point at = new Point(0, control.getHeight() + 2);
    SwingUtilities.convertPointToScreen(at, control);
    int most = control.getToolkit().getScreenSize().width - theme.px(290);
    Popup popup =
        PopupFactory.getSharedInstance().getPopup(control, area, Math.min(at.x, most), at.y);
    popup.show();
    Timer timer = new Timer(SHOWN_MILLIS, e -> popup.hide());
    timer.setRepeats(false);
    timer.start();
    // who leaves the control has done with its complaint
    control.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent e) {
            timer.stop();
            popup.hide();
            control.removeFocusListener(this);
          }
        });
    control.getAccessibleContext().setAccessibleDescription(text);
  }
}
