package halfwave.gui.swing.lesson;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.lesson.ProjectorView;
import halfwave.gui.swing.bench.DrawingPanel;
import halfwave.gui.swing.widget.Lettering;
import halfwave.gui.swing.widget.Theme;
import java.awt.BasicStroke;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/**
 * The arrangement for the wall: drawing, reading, board, and either the words of a demonstration or
 * the flame signal. Every capital is at least 1/40 of the picture's height, every line 1/300, and
 * nothing is in soft ink; but for the line of keys, which is for whoever holds them. It is laid out
 * for a height of 1080 and scaled to the one there is.
 */
final class ProjectorPanel extends JPanel {

  private static final long serialVersionUID = 1L;

  /** The picture that all measures below belong to (px). */
  static final int HEIGHT = 1080;

  private static final int WIDTH = 1920;
  private static final Rectangle DRAWING = new Rectangle(44, 100, 1050, 608);
  private static final Rectangle METER = new Rectangle(44, 722, 515, 270);
  private static final Rectangle BOARD = new Rectangle(579, 722, 515, 270);
  private static final Rectangle RIGHT = new Rectangle(1138, 100, 738, 892);

  /** Words that need more room take that of the drawing. */
  private static final Rectangle WIDE = new Rectangle(44, 100, 1832, 608);

  /** Within the plates: the longest name of a stage and of a light take five lines together. */
  private static final int PAD = 14;

  /** Size of the line of keys over that of the smallest words for a class (1). */
  private static final float KEYS_RATIO = 0.6f;

  private final transient Theme theme;
  private final transient Wording words;
  private final double scale;
  private final DrawingPanel drawing;
  private final JLabel heading;
  private final JLabel place;
  private final JLabel reading;
  private final JTextArea meterPlace;
  private final JTextArea stage;
  private final JTextArea light;
  private final JPanel text;
  private final ProjectorSignal signal;
  private final JLabel keys;
  private transient List<ProjectorView.Block> blocks = List.of();
  private @Nullable transient BufferedImage frozen;
  private @Nullable transient Point pointer;
  private boolean blank;

  /**
   * A panel.
   *
   * @param theme the theme of {@link #theme} for the height there is
   * @param drawing the drawing, in the theme of {@link #drawingTheme}
   * @param scale the height there is over {@link #HEIGHT}
   */
  ProjectorPanel(Theme theme, Wording words, DrawingPanel drawing, double scale) {
    super(null);
    this.theme = theme;
    this.words = words;
    this.scale = scale;
    this.drawing = drawing;
    Color ink = theme.palette().ink();
    setBackground(theme.palette().ground());
    setName("projector");
    heading = Lettering.label(" ", theme.projectorHeading(), ink);
    heading.setName("projector.heading");
    place = Lettering.label(" ", theme.body(), ink);
    reading = Lettering.label(" ", theme.projectorReading(), ink);
    reading.setName("projector.reading");
    meterPlace = Lettering.paragraph(" ", theme.body(), ink);
    meterPlace.setName("projector.meter-place");
    stage = Lettering.paragraph(" ", theme.projectorHeading(), ink);
    stage.setName("projector.stage");
    light = Lettering.paragraph(" ", theme.body(), ink);
    light.setName("projector.light");
    text = new JPanel(new MigLayout("insets 0, gap 8 14, fillx, novisualpadding", "[][grow][]"));
    text.setOpaque(false);
    text.setName("projector.words");
    signal =
        new ProjectorSignal(
            theme, line(), words.text("projector.pick-up"), words.text("projector.drop-out"));
    put(heading, new Rectangle(44, 22, 1500, 70));
    place.setHorizontalAlignment(JLabel.TRAILING);
    put(place, new Rectangle(1546, 22, 330, 70));
    put(drawing, DRAWING);
    put(plate(reading, meterPlace), METER);
    put(plate(stage, light), BOARD);
    put(text, RIGHT);
    put(plate(signalName(), signal), RIGHT);
    put(
        Lettering.label(words.text("projector.caution"), theme.body(), ink),
        new Rectangle(44, 994, 1832, 52));
    keys =
        Lettering.label(
            " ",
            theme.body().deriveFont(KEYS_RATIO * theme.body().getSize2D()),
            theme.palette().hairline());
    keys.setName("projector.keys");
    put(keys, new Rectangle(44, 1042, 1832, 32));
  }

  /** The theme of the words. */
  static Theme theme(Theme of, double scale) {
    return of.projected(38.5 / 13 * scale);
  }

  /** The drawing's smallest type is 11 of its units: this makes it as large as the rest. */
  static Theme drawingTheme(Theme of, double scale) {
    return of.projected(3.45 * scale);
  }

  /** Width of the finest line on a picture of that scale (px). */
  static double line(double scale) {
    return HEIGHT / 300.0 * scale;
  }

  private double line() {
    return line(scale);
  }

  private JLabel signalName() {
    return Lettering.label(
        words.text("projector.signal"), theme.body().deriveFont(Font.BOLD), theme.palette().ink());
  }

  private void put(JComponent child, Rectangle at) {
    place(child, at);
    add(child);
  }

  private void place(JComponent child, Rectangle at) {
    child.setBounds(
        (int) Math.round(at.x * scale),
        (int) Math.round(at.y * scale),
        (int) Math.round(at.width * scale),
        (int) Math.round(at.height * scale));
  }

  private JPanel plate(JComponent head, JComponent body) {
    JPanel plate =
        new JPanel(new BorderLayout()) {
          private static final long serialVersionUID = 1L;

          @Override
          protected void paintComponent(Graphics graphics) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setColor(theme.palette().sheet());
            g.fillRect(0, 0, getWidth(), getHeight());
            g.setColor(theme.palette().hairline());
            g.setStroke(new BasicStroke((float) line()));
            double half = 0.5 * line();
            g.draw(
                new java.awt.geom.Rectangle2D.Double(
                    half, half, getWidth() - line(), getHeight() - line()));
            g.dispose();
          }
        };
    int pad = (int) Math.round(PAD * scale);
    plate.setBorder(javax.swing.BorderFactory.createEmptyBorder(pad, pad, pad, pad));
    plate.setOpaque(false);
    plate.add(head, BorderLayout.NORTH);
    plate.add(body, BorderLayout.CENTER);
    return plate;
  }

  /** Shows a view, unless the picture is frozen. */
  void show(State state, ProjectorView view) {
    if (frozen != null) {
      return;
    }
    drawing.show(state);
    heading.setText(view.heading());
    place.setText(view.place());
    reading.setText(view.reading());
    reading.setFont(fitting(view.reading(), theme.projectorReading()));
    meterPlace.setText(view.meterPlace());
    stage.setText(view.stage());
    stage.setFont(fitting(view.stage(), theme.projectorHeading()));
    light.setText(view.light());
    boolean lesson = !view.words().isEmpty();
    keys.setText(words.text(lesson ? "projector.keys-lesson" : "projector.keys"));
    text.setVisible(lesson);
    signal.getParent().setVisible(!lesson);
    signal.show(view.signal());
    if (!view.words().equals(blocks)) {
      blocks = view.words();
      fill();
    }
  }

  /** Smaller where it would not fit on a line of its plate, but never too small to be read. */
  private Font fitting(String shown, Font font) {
    double room = (BOARD.width - 2 * PAD - 10) * scale;
    double wide = getFontMetrics(font).stringWidth(shown);
    double size = font.getSize2D() * Math.min(1, room / Math.max(1, wide));
    return font.deriveFont((float) Math.max(theme.body().getSize2D(), size));
  }

  private void fill() {
    text.removeAll();
    for (ProjectorView.Block block : blocks) {
      Font font = block.strong() ? theme.body().deriveFont(Font.BOLD) : theme.body();
      Color ink = block.right() ? theme.palette().accent() : theme.palette().ink();
      if (block.sign().isEmpty()) {
        text.add(Lettering.paragraph(block.text(), font, ink), "span, growx, wmin 0, wrap");
      } else {
        text.add(Lettering.label(block.sign(), font.deriveFont(Font.BOLD), ink), "top");
        text.add(Lettering.paragraph(block.text(), font, ink), "growx, wmin 0");
        text.add(
            Lettering.label(block.votes(), font.deriveFont(Font.BOLD), theme.palette().accent()),
            "top, wrap");
      }
    }
    place(text, RIGHT);
    boolean cut = roomBelow() < 0;
    if (cut) {
      place(text, WIDE);
    }
    drawing.setVisible(!cut);
    text.revalidate();
    repaint();
  }

  /** The class goes on seeing this picture; what is done meanwhile is not seen. */
  boolean freeze() {
    if (frozen == null) {
      keys.setText(words.text("projector.keys-frozen"));
      keys.setForeground(theme.palette().ink());
      BufferedImage image =
          new BufferedImage(
              Math.max(1, getWidth()), Math.max(1, getHeight()), BufferedImage.TYPE_INT_RGB);
      Graphics2D g = image.createGraphics();
      paint(g);
      g.dispose();
      frozen = image;
    } else {
      frozen = null;
      keys.setForeground(theme.palette().hairline());
    }
    repaint();
    return frozen != null;
  }

  /** Nothing but ground, or the picture again. */
  void blank() {
    blank = !blank;
    repaint();
  }

  /** A large ring that can be seen from the back, or null for none. */
  void pointAt(@Nullable Point at) {
    pointer = at;
    repaint();
  }

  @Override
  public void paint(Graphics g) {
    if (blank) {
      g.setColor(theme.palette().ground());
      g.fillRect(0, 0, getWidth(), getHeight());
    } else if (frozen != null) {
      g.drawImage(frozen, 0, 0, null);
    } else {
      super.paint(g);
      ring((Graphics2D) g);
    }
  }

  private void ring(Graphics2D graphics) {
    if (pointer != null) {
      Graphics2D g = (Graphics2D) graphics.create();
      g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
      int radius = (int) Math.round(30 * scale);
      g.setStroke(new BasicStroke((float) (3 * line())));
      g.setColor(theme.palette().sheet());
      g.drawOval(pointer.x - radius, pointer.y - radius, 2 * radius, 2 * radius);
      g.setStroke(new BasicStroke((float) (2 * line())));
      g.setColor(theme.palette().danger());
      g.drawOval(pointer.x - radius, pointer.y - radius, 2 * radius, 2 * radius);
      g.dispose();
    }
  }

  /** What is shown has no room left below it (px); negative: it is cut. */
  int roomBelow() {
    // lines break in the first pass, heights follow in the second
    for (int pass = 0; pass < 2; pass++) {
      text.doLayout();
      for (java.awt.Component c : text.getComponents()) {
        c.invalidate();
      }
    }
    text.doLayout();
    int low = 0;
    for (java.awt.Component c : text.getComponents()) {
      low = Math.max(low, c.getY() + c.getPreferredSize().height);
    }
    return text.getHeight() - low;
  }
}
