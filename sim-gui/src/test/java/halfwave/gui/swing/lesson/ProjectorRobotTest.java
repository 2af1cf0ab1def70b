package halfwave.gui.swing.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.board.FlameSignal;
import halfwave.board.Stage;
import halfwave.board.StatusCode;
import halfwave.display.UnitSystem;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.Spot;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.lesson.ProjectorView;
import halfwave.gui.swing.Hand;
import halfwave.gui.swing.OpenWindow;
import halfwave.gui.swing.bench.DrawingPanel;
import halfwave.instrument.MeterFunction;
import halfwave.io.lesson.ShippedDemonstrations;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Playthrough;
import halfwave.sequence.Moment;
import java.awt.Component;
import java.awt.Container;
import java.awt.Font;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.font.FontRenderContext;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.ToolTipManager;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The picture for the wall can be read from the back of a class, and obeys a remote. */
class ProjectorRobotTest {

  private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);

  /** What the drawing's smallest type measures in units of its own. */
  private static final double SMALLEST_TYPE = 11;

  @TempDir private Path folder;

  private static ProjectorPanel onWall(OpenWindow open, int width, int height) {
    OpenWindow.onScreen(
        () -> {
          open.project(new Rectangle(0, 0, width, height));
          return null;
        });
    return panel(open);
  }

  private static ProjectorPanel panel(OpenWindow open) {
    open.await("the picture", () -> open.projector().panel() != null);
    open.settle();
    return OpenWindow.onScreen(() -> open.projector().panel());
  }

  private static double capital(Font font) {
    return font.createGlyphVector(MEASURE, "H").getVisualBounds().getHeight();
  }

  /** Letters of at least 1/40 of the height, lines of 1/300: what the look of the window asks. */
  @ParameterizedTest
  @CsvSource({"1280, 720", "1920, 1080"})
  void lettersAndLinesAreLargeEnough(int width, int height) throws Exception {
    try (OpenWindow open = OpenWindow.plain(folder)) {
      ProjectorPanel panel = onWall(open, width, height);
      List<Font> fonts = OpenWindow.onScreen(() -> fonts(panel));
      assertThat(fonts).hasSizeGreaterThan(6);
      assertThat(fonts)
          .allSatisfy(f -> assertThat(capital(f)).isGreaterThanOrEqualTo(height / 40.0));
      double scale = height / (double) ProjectorPanel.HEIGHT;
      Font type = new Font("Inter", Font.PLAIN, 1);
      double drawn = SMALLEST_TYPE * 3.45 * scale;
      assertThat(capital(type.deriveFont((float) drawn))).isGreaterThanOrEqualTo(height / 40.0);
      assertThat(OpenWindow.onScreen(() -> thinnest(panel)))
          .isGreaterThanOrEqualTo((int) Math.floor(height / 300.0));
    }
  }

  private static List<Font> fonts(Container from) {
    List<Font> fonts = new ArrayList<>();
    for (Component c : from.getComponents()) {
      if ("projector.keys".equals(c.getName())) {
        // for whoever sits at them, and not for the back row
        continue;
      }
      if (c instanceof JLabel || c instanceof JTextArea || c instanceof ProjectorSignal) {
        fonts.add(c instanceof ProjectorSignal s ? s.type() : c.getFont());
      } else if (c instanceof Container inside && !(c instanceof DrawingPanel)) {
        fonts.addAll(fonts(inside));
      }
    }
    return fonts;
  }

  /** Shortest run of dark pixels across the upright axis of the chart, in the middle of it. */
  private static int thinnest(ProjectorPanel panel) {
    BufferedImage image =
        new BufferedImage(panel.getWidth(), panel.getHeight(), BufferedImage.TYPE_INT_RGB);
    panel.paint(image.createGraphics());
    int y = image.getHeight() * 2 / 5;
    int most = 0;
    int run = 0;
    for (int x = image.getWidth() * 62 / 100; x < image.getWidth() * 72 / 100; x++) {
      run = (image.getRGB(x, y) & 0xFF) < 0x80 ? run + 1 : 0;
      most = Math.max(most, run);
    }
    return most;
  }

  /** Every shipped demonstration, each of its phases, both languages. */
  @ParameterizedTest
  @CsvSource({"en", "es"})
  void whatADemonstrationSaysFitsOnTheWall(String language) throws Exception {
    Wording words = Wording.of(Locale.forLanguageTag(language), UnitSystem.METRIC);
    List<String> cut = new ArrayList<>();
    try (OpenWindow open = OpenWindow.with(folder, OpenWindow.PLAIN.withLanguage(language))) {
      ProjectorPanel panel = onWall(open, 1280, 720);
      State state = open.shown();
      for (Demonstration d : ShippedDemonstrations.all()) {
        for (int k = 0; k < d.steps().size(); k++) {
          for (int phase = 0; phase < 3; phase++) {
            Playthrough at = at(d, k, phase == 2);
            boolean asking = phase == 1;
            int room =
                OpenWindow.onScreen(
                    () -> {
                      panel.show(state, ProjectorView.of(state, at, asking, words));
                      panel.validate();
                      shortened(panel, cut);
                      return panel.roomBelow();
                    });
            if (room < 0) {
              cut.add("%s, step %s, phase %s: %s px".formatted(d.name(), k + 1, phase, room));
            }
          }
        }
      }
    }
    assertThat(cut).isEmpty();
  }

  /** Every stage with every light, every place of the leads, both languages. */
  @ParameterizedTest
  @CsvSource({"en, 1280, 720", "en, 1920, 1080", "es, 1280, 720", "es, 1920, 1080"})
  void whatMeterAndBoardSayFitsOnTheWall(String language, int width, int height) throws Exception {
    Wording words = Wording.of(Locale.forLanguageTag(language), UnitSystem.METRIC);
    List<String> stages = new ArrayList<>();
    for (Stage stage : Stage.values()) {
      stages.add(words.heading(stage));
    }
    for (FlameSignal signal : FlameSignal.values()) {
      stages.add(
          words.text("board.running", words.heading(Stage.RUN), words.sentences().name(signal)));
    }
    List<String> cut = new ArrayList<>();
    try (OpenWindow open = OpenWindow.plain(folder)) {
      ProjectorPanel panel = onWall(open, width, height);
      for (Spot spot : Spot.values()) {
        open.want(new Intent.Measure(MeterFunction.DC_MICROAMPS, spot.placing()));
        State state = open.shown();
        for (int k = 0; k < stages.size() && spot.ordinal() == 0 || k < 1; k++) {
          for (StatusCode code : StatusCode.values()) {
            String stage = stages.get(k);
            String light = words.text("board.light", words.sentences().name(code));
            OpenWindow.onScreen(
                () -> {
                  ProjectorView view = ProjectorView.of(state, null, false, words);
                  panel.show(
                      state,
                      new ProjectorView(
                          view.heading(),
                          view.place(),
                          view.reading(),
                          view.meterPlace(),
                          stage,
                          light,
                          view.words(),
                          view.signal()));
                  panel.validate();
                  shortened(panel, cut);
                  for (String name : List.of("projector.light", "projector.meter-place")) {
                    Component text = find(panel, name);
                    if (text.getPreferredSize().height > text.getHeight()) {
                      cut.add(stage + ", " + ((JTextArea) text).getText());
                    }
                  }
                  return null;
                });
          }
        }
      }
    }
    assertThat(cut).isEmpty();
  }

  /** Labels that end in dots. */
  private static void shortened(Container from, List<String> cut) {
    for (Component c : from.getComponents()) {
      if (c instanceof JLabel label
          && label.isVisible()
          && label.getPreferredSize().width > label.getWidth()) {
        cut.add(label.getText());
      } else if (c instanceof Container inside && c.isVisible()) {
        shortened(inside, cut);
      }
    }
  }

  private static Playthrough at(Demonstration d, int step, boolean revealed) {
    Moment cold = d.cold();
    List<List<Integer>> votes =
        d.steps().stream()
            .map(
                s ->
                    s.question() == null
                        ? List.<Integer>of()
                        : Collections.nCopies(s.question().answers().size(), 12))
            .toList();
    return new Playthrough(
        d, step, revealed, votes, Collections.nCopies(d.steps().size() + 1, cold));
  }

  @Test
  void aRemoteLeadsThroughADemonstration() throws Exception {
    try (OpenWindow open = OpenWindow.plain(folder)) {
      Hand hand = new Hand(open);
      Demonstration d = ShippedDemonstrations.named("a-dirty-rod").orElseThrow();
      OpenWindow.onScreen(
          () -> {
            open.lesson().begin(d);
            return null;
          });
      open.await("the first step", () -> open.lesson().at() != null);
      ProjectorPanel panel = onWall(open, 1280, 720);
      open.await(
          "the keyboard on the wall",
          () -> panel.getTopLevelAncestor() instanceof java.awt.Window w && w.isFocused());
      hand.key(KeyEvent.VK_PAGE_DOWN);
      open.await("the second step", () -> at(open).stepIndex() == 1);
      hand.key(KeyEvent.VK_B);
      assertThat(at(open).tally()).as("nothing is asked yet").containsOnly(0);
      hand.key(KeyEvent.VK_PAGE_DOWN);
      hand.key(KeyEvent.VK_B);
      hand.key(KeyEvent.VK_2);
      hand.key(KeyEvent.VK_D);
      hand.key(KeyEvent.VK_A);
      hand.key(KeyEvent.VK_A, InputEvent.SHIFT_DOWN_MASK);
      hand.key(KeyEvent.VK_C, InputEvent.SHIFT_DOWN_MASK);
      assertThat(at(open).tally()).containsExactly(0, 2, 0, 1);
      hand.key(KeyEvent.VK_RIGHT);
      hand.key(KeyEvent.VK_LEFT);
      open.await("the question again", () -> !at(open).revealed());
      assertThat(at(open).stepIndex()).isEqualTo(1);
      assertThat(at(open).tally()).as("votes stay").containsExactly(0, 2, 0, 1);
      assertThat(OpenWindow.onScreen(() -> said(panel)))
          .contains(d.steps().get(1).question().ask().in(Locale.ENGLISH));
      var rod = open.shown().moment().bench().condition().rodPosition();
      hand.key(KeyEvent.VK_RIGHT);
      assertThat(at(open).revealed()).isTrue();
      open.settle();
      assertThat(OpenWindow.onScreen(() -> said(panel)))
          .as("votes stay beside the answer")
          .contains("Votes: A\u20090 · B\u20092 · C\u20090 · D\u20091");
      assertThat(keys(panel)).contains("next", "count hands", "Esc");
      assertThat(open.shown().moment().bench().condition().rodPosition())
          .as("an arrow steps and does not move the rod")
          .isEqualTo(rod);
      hand.key(KeyEvent.VK_F);
      assertThat(keys(panel)).as("a picture that stands still says so").startsWith("Frozen");
      open.want(new Intent.StepOn(5000L));
      String frozen =
          OpenWindow.onScreen(() -> ((JLabel) find(panel, "projector.reading")).getText());
      hand.key(KeyEvent.VK_F);
      open.settle();
      assertThat(frozen).isNotBlank();
      assertThat(keys(panel)).contains("next");
      assertThat(find(panel, "drawing").getMouseListeners())
          .as("no small name beside the pointer stays on the wall")
          .noneMatch(ToolTipManager.class::isInstance);
      hand.key(KeyEvent.VK_ESCAPE);
      assertThat(OpenWindow.onScreen(() -> open.projector() == null)).isTrue();
    }
  }

  private static String keys(ProjectorPanel panel) {
    return OpenWindow.onScreen(() -> ((JLabel) find(panel, "projector.keys")).getText());
  }

  private static List<String> said(ProjectorPanel panel) {
    return Stream.of(((Container) find(panel, "projector.words")).getComponents())
        .filter(JTextArea.class::isInstance)
        .map(c -> ((JTextArea) c).getText())
        .toList();
  }

  private static Playthrough at(OpenWindow open) {
    return Objects.requireNonNull(open.lesson().at());
  }

  private static Component find(Container from, String name) {
    for (Component c : from.getComponents()) {
      Component found =
          name.equals(c.getName()) ? c : c instanceof Container inside ? find(inside, name) : null;
      if (found != null) {
        return found;
      }
    }
    return null;
  }
}
