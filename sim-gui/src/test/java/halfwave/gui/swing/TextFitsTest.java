package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.display.UnitSystem;
import halfwave.fault.FaultKind;
import halfwave.gui.presentation.Settings;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.FaultCard;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.Spot;
import halfwave.gui.swing.bench.BenchParts;
import halfwave.gui.swing.bench.DrawingPanel;
import halfwave.gui.swing.bench.PartPanel;
import halfwave.gui.swing.bench.WorkPanel;
import halfwave.gui.swing.charts.StripTimes;
import halfwave.gui.swing.lesson.LessonPanel;
import halfwave.gui.swing.lesson.LessonTab;
import halfwave.picture.bench.BenchDrawing;
import halfwave.picture.scene.DrawnPart;
import halfwave.quiz.Rules;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** No word of the window is cut off or lies on another, in both languages and sizes of type. */
class TextFitsTest {

  /**
   * Preferred sizes are whole pixels, of which one may be lost where a layout shares out a rest.
   */
  private static final int LOST = 1;

  @TempDir private Path folder;

  /**
   * A window.
   *
   * @param language its language
   * @param text size of type over the usual (1)
   * @param width its width (px)
   * @param height its height (px)
   */
  record Case(String language, double text, int width, int height) {}

  /** As the window opens on a screen of 1600 by 1000, and on larger ones. */
  static Stream<Case> cases() {
    return Stream.of("en", "es")
        .flatMap(
            l ->
                Stream.of(
                    new Case(l, 1, 1440, 900),
                    new Case(l, 1.5, 1600, 1000),
                    new Case(l, 2, 1600, 1000),
                    new Case(l, 2, 2400, 1500)));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyWordCanBeRead(Case window) throws Exception {
    Settings settings =
        OpenWindow.PLAIN.withLanguage(window.language()).withTextRatio(window.text());
    Map<String, String> wrong = new TreeMap<>();
    try (OpenWindow open = OpenWindow.sized(folder, settings, window.width(), window.height())) {
      tabs(open, "healthy", wrong);
      charts(open, wrong);
      parts(open, wrong);
      // while the bench is as it was shipped: nobody asks whether it may be left
      lesson(open, wrong);
      editor(open, wrong);
      spoil(open, window);
      tabs(open, "broken", wrong);
      seal(open, wrong);
      ToolHands tools = new ToolHands(new Hand(open));
      tools.match();
      look(open, "match", wrong);
      tools.forecast();
      look(open, "forecast", wrong);
      quiz(open, wrong);
      practice(open, wrong);
      desk(open, wrong);
    }
    assertThat(wrong.entrySet()).as(window.toString()).isEmpty();
  }

  /** Three faults, a meter that is used badly with its fuse blown, and some work done. */
  private static void spoil(OpenWindow open, Case window) {
    Wording words = Wording.of(Locale.forLanguageTag(window.language()), UnitSystem.METRIC);
    for (FaultKind kind :
        List.of(FaultKind.ROD_SILICA, FaultKind.CONNECTOR_CORRODED, FaultKind.GAS_PRESSURE_LOW)) {
      FaultCard card = FaultCard.of(kind, words);
      open.want(new Intent.Act(card.deeds(kind.typical(), null), 0));
    }
    open.want(
        new Intent.Measure(
            halfwave.instrument.MeterFunction.DC_MICROAMPS, Spot.LINE_TO_NEUTRAL.placing()),
        new Intent.Labor(halfwave.work.Look.STATUS_LIGHT),
        new Intent.Labor(halfwave.work.Repair.REPLACE_LEAD));
  }

  private static void tabs(OpenWindow open, String state, Map<String, String> wrong) {
    Hand hand = new Hand(open);
    JTabbedPane tabs = hand.find(JTabbedPane.class, "tabs");
    for (int k = 0; k < OpenWindow.onScreen(tabs::getTabCount); k++) {
      int index = k;
      OpenWindow.onScreen(
          () -> {
            tabs.setSelectedIndex(index);
            return null;
          });
      look(open, state + ", tab " + tabs.getTitleAt(index), wrong);
    }
    for (String sort : List.of("work.sort.repair", "work.sort.mishap", "work.sort.look")) {
      OpenWindow.onScreen(
          () -> {
            bring(tabs, descend(open.frame(), WorkPanel.class));
            return null;
          });
      open.settle();
      press(hand, sort);
      look(open, state + ", " + sort, wrong);
    }
  }

  private static void charts(OpenWindow open, Map<String, String> wrong) {
    JTabbedPane charts = new Hand(open).find(JTabbedPane.class, "charts");
    for (int k = 0; k < OpenWindow.onScreen(charts::getTabCount); k++) {
      int index = k;
      OpenWindow.onScreen(
          () -> {
            charts.setSelectedIndex(index);
            return null;
          });
      look(open, "chart " + charts.getTitleAt(index), wrong);
    }
    times(open, charts, wrong);
  }

  /** What is painted and no component: marks of time on the timeline do not run into each other. */
  private static void times(OpenWindow open, JTabbedPane charts, Map<String, String> wrong) {
    OpenWindow.onScreen(
        () -> {
          charts.setSelectedIndex(0);
          return null;
        });
    open.settle();
    List<StripTimes.Mark> placed = OpenWindow.onScreen(() -> StripTimes.in(open.frame()));
    for (int k = 1; k < placed.size(); k++) {
      if (placed.get(k).left() <= placed.get(k - 1).right()) {
        wrong.put("timeline, " + placed.get(k).words(), "meets " + placed.get(k - 1).words());
      }
    }
    assertThat(placed).as("some time is marked").isNotEmpty();
  }

  private static void parts(OpenWindow open, Map<String, String> wrong) {
    PartPanel panel = any(open, PartPanel.class);
    JTabbedPane tabs = new Hand(open).find(JTabbedPane.class, "tabs");
    for (DrawnPart part : DrawnPart.values()) {
      OpenWindow.onScreen(
          () -> {
            bring(tabs, panel);
            panel.open(part);
            return null;
          });
      look(open, "part " + part, wrong);
    }
  }

  private static void bring(JTabbedPane tabs, Component panel) {
    Component tab = panel;
    while (tab.getParent() != tabs) {
      tab = tab.getParent();
    }
    tabs.setSelectedComponent(tab);
  }

  /** The longest of what a demonstration says: a question with its answers, then the answer. */
  private static void lesson(OpenWindow open, Map<String, String> wrong) {
    Hand hand = new Hand(open);
    LessonPanel panel = any(open, LessonPanel.class);
    JTabbedPane tabs = new Hand(open).find(JTabbedPane.class, "tabs");
    OpenWindow.onScreen(
        () -> {
          bring(tabs, panel);
          return null;
        });
    open.settle();
    press(hand, "lesson.a-dirty-rod");
    open.await("the first step", () -> hand.there("lesson.forward"));
    open.settle();
    press(hand, "lesson.forward");
    open.await("the question", () -> hand.there("vote.A"));
    look(open, "question", wrong);
    press(hand, "lesson.forward");
    open.want(new Intent.Play(false));
    look(open, "answer", wrong);
    press(hand, "lesson.stop");
    open.settle();
  }

  /** Hidden, after some work, and revealed. */
  private static void seal(OpenWindow open, Map<String, String> wrong) {
    open.want(new Intent.Hide());
    tabs(open, "sealed", wrong);
    open.want(
        new Intent.Labor(halfwave.work.Look.STATUS_LIGHT),
        new Intent.Labor(halfwave.work.Repair.REPLACE_LEAD),
        new Intent.Reveal(FaultKind.ROD_SILICA));
    bring(new Hand(open).find(JTabbedPane.class, "tabs"), any(open, LessonTab.class));
    look(open, "revealed", wrong);
    open.want(new Intent.Unseal());
  }

  /** The editor with a step that has everything, and the one that has the title and start. */
  private static void editor(OpenWindow open, Map<String, String> wrong) {
    Hand hand = new Hand(open);
    press(hand, "lesson.copy.a-dirty-rod");
    open.await("the editor", () -> hand.there("editor.steps"));
    look(open, "editor, start", wrong);
    JList<?> steps = hand.find(JList.class, "editor.steps");
    OpenWindow.onScreen(
        () -> {
          steps.setSelectedIndex(3);
          return null;
        });
    look(open, "editor, step", wrong);
    press(hand, "editor.record");
    open.await("the recording", () -> hand.there("editor.keep"));
    look(open, "editor, recording", wrong);
    press(hand, "editor.discard");
    open.settle();
    OpenWindow.onScreen(
        () -> {
          SwingUtilities.getWindowAncestor(steps)
              .dispatchEvent(
                  new WindowEvent(
                      SwingUtilities.getWindowAncestor(steps), WindowEvent.WINDOW_CLOSING));
          return null;
        });
    open.await("the end of the editor", () -> !hand.there("editor.steps"));
    open.want(new Intent.Play(false));
  }

  /** The start, a call with something found, every tab of it, and one that was stopped. */
  private void quiz(OpenWindow open, Map<String, String> wrong) throws Exception {
    QuizHands hands = new QuizHands(open, new Hand(open), folder);
    hands.window();
    look(open, "quiz, empty", wrong);
    hands.fill(new Rules(30, true), "A-17");
    look(open, "quiz, start", wrong);
    hands.begin();
    hands.act(0, "");
    hands.press("visit.hint-3");
    hands.idle();
    for (int tab = 0; tab < 3; tab++) {
      hands.front("visit.tabs", tab);
      hands.front("visit.offers", tab);
      look(open, "quiz, tab " + tab, wrong);
    }
    hands.front("visit.tabs", 0);
    hands.act(1, "");
    look(open, "quiz, stopped", wrong);
    hands.press("quiz.go.after-the-move");
    hands.idle();
    hands.act(1, "");
    look(open, "quiz, handed in", wrong);
  }

  /** Each form of the quiz, the class and the marks. */
  private void desk(OpenWindow open, Map<String, String> wrong) throws Exception {
    DeskHands hands = new DeskHands(open, new Hand(open), folder);
    hands.window();
    hands.quiz();
    look(open, "desk, quiz", wrong);
    hands.form(1);
    hands.press("desk.add-row");
    look(open, "desk, blueprint", wrong);
    hands.row("desk.blueprint", 0);
    hands.press("desk.remove-row");
    hands.row("desk.calls", 0);
    hands.form(2);
    look(open, "desk, call", wrong);
    hands.sheets();
    look(open, "desk, class", wrong);
    hands.tab(2);
    hands.row("desk.moves", 1);
    look(open, "desk, marks", wrong);
  }

  /** The choice, a call that is asked about, one that was shown, and its marks. */
  private static void practice(OpenWindow open, Map<String, String> wrong) {
    QuizHands hands = new QuizHands(open, new Hand(open), Path.of(""));
    hands.practise();
    look(open, "practice, choice", wrong);
    hands.choose("practice.help", 3);
    hands.first();
    hands.act(0, "");
    look(open, "practice, asked", wrong);
    hands.press("practice.answer");
    hands.idle();
    look(open, "practice, answered", wrong);
    hands.press("practice.leave");
    hands.choose("practice.help", 1);
    hands.first();
    for (int k = 0; k < 6; k++) {
      hands.press("practice.follow");
      hands.idle();
    }
    look(open, "practice, shown", wrong);
    hands.follow();
    look(open, "practice, marks", wrong);
  }

  /** Where text is too large for its window a pointer would have to scroll first. */
  private static void press(Hand hand, String name) {
    OpenWindow.onScreen(
        () -> {
          hand.now(AbstractButton.class, name).doClick(0);
          return null;
        });
  }

  private static <T extends Component> T any(OpenWindow open, Class<T> type) {
    return OpenWindow.onScreen(() -> descend(open.frame(), type));
  }

  private static <T extends Component> T descend(Container from, Class<T> type) {
    for (Component c : from.getComponents()) {
      T found =
          type.isInstance(c)
              ? type.cast(c)
              : c instanceof Container inner ? descend(inner, type) : null;
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  /** What is seen now; broken lines need some passes of the layout to know their heights. */
  private static void look(OpenWindow open, String where, Map<String, String> wrong) {
    // lines are broken in the first pass, a bar to scroll with may narrow them in the second
    open.settle();
    noLarger(open);
    open.settle();
    OpenWindow.onScreen(
        () -> {
          List<JComponent> texts = new ArrayList<>();
          for (Component c : Hand.seen()) {
            if (c instanceof JComponent text && hasText(text)) {
              texts.add(text);
              fits(text, where, wrong);
            }
          }
          assertThat(texts).as("the walk finds words").hasSizeGreaterThan(30);
          overlaps(texts, where, wrong);
          drawing(open, where, wrong);
          return null;
        });
  }

  /** No window is larger than the main one, which has the size of a screen: as if it were that. */
  private static void noLarger(OpenWindow open) {
    Dimension most = OpenWindow.onScreen(open.frame()::getSize);
    for (java.awt.Window each : OpenWindow.onScreen(java.awt.Window::getWindows)) {
      Dimension has = OpenWindow.onScreen(each::getSize);
      if (each.isShowing() && (has.width > most.width || has.height > most.height)) {
        open.size(each, Math.min(has.width, most.width), Math.min(has.height, most.height));
      }
    }
  }

  private static boolean hasText(JComponent c) {
    return !text(c).isBlank();
  }

  private static String text(JComponent c) {
    if (c instanceof JLabel label) {
      return Objects.requireNonNullElse(label.getText(), "");
    } else if (c instanceof AbstractButton button) {
      return Objects.requireNonNullElse(button.getText(), "");
    } else if (c instanceof JTextArea area) {
      return area.getText();
    } else if (c instanceof JTextField field) {
      return field.getText();
    }
    return "";
  }

  private static void fits(JComponent c, String where, Map<String, String> wrong) {
    Dimension wanted = c.getPreferredSize();
    boolean wraps = c instanceof JTextArea area && area.getLineWrap();
    boolean wide = wraps || wanted.width <= c.getWidth() + LOST;
    boolean high = wanted.height <= c.getHeight() + LOST;
    if (!wide || !high) {
      wrong.putIfAbsent(
          "cut: '%s' (%s): wants %sx%s, has %sx%s"
              .formatted(
                  text(c),
                  c.getClass().getSimpleName(),
                  wanted.width,
                  wanted.height,
                  c.getWidth(),
                  c.getHeight()),
          where);
    }
    outside(c, where, wrong);
  }

  /** What a parent cuts off is cut as well, unless it can be scrolled to. */
  private static void outside(JComponent c, String where, Map<String, String> wrong) {
    Container parent = c.getParent();
    Rectangle all = new Rectangle(0, 0, parent.getWidth() + LOST, parent.getHeight() + LOST);
    if (!all.contains(c.getBounds())) {
      wrong.putIfAbsent("outside its panel: '%s'".formatted(text(c)), where);
    }
  }

  private static void overlaps(List<JComponent> texts, String where, Map<String, String> wrong) {
    for (JComponent a : texts) {
      for (JComponent b : texts) {
        boolean siblings = a.getParent() == b.getParent();
        if (siblings && text(a).compareTo(text(b)) < 0 && lie(a, b)) {
          wrong.putIfAbsent("on each other: '%s' and '%s'".formatted(text(a), text(b)), where);
        }
      }
    }
  }

  private static boolean lie(JComponent a, JComponent b) {
    Rectangle both = a.getBounds().intersection(b.getBounds());
    return both.width > LOST && both.height > LOST;
  }

  private static void drawing(OpenWindow open, String where, Map<String, String> wrong) {
    DrawingPanel panel = descend(open.frame(), DrawingPanel.class);
    if (panel == null) {
      // an examination covers it
      return;
    }
    BenchDrawing drawing = BenchParts.drawing(panel);
    Rectangle sheet = new Rectangle(0, 0, panel.getWidth(), panel.getHeight());
    drawing
        .labels()
        .forEach(
            label -> {
              if (!sheet.contains(label.bounds())) {
                wrong.putIfAbsent("off the sheet: '%s'".formatted(label.text()), where);
              }
            });
  }
}
