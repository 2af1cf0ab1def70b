package halfwave.gui.swing;

import halfwave.display.UnitSystem;
import halfwave.fault.FaultKind;
import halfwave.gui.presentation.Settings;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.FaultCard;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.Spot;
import halfwave.gui.presentation.lesson.LessonModel;
import halfwave.gui.swing.bench.PartPanel;
import halfwave.io.lesson.ShippedDemonstrations;
import halfwave.picture.scene.DrawnPart;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.WindowEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.swing.AbstractButton;
import javax.swing.JDialog;
import javax.swing.JList;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/**
 * Paints the window in many ways into target/screens, for a critical eye. No test: asked for by
 * name only.
 */
final class Screens {

  /** Paints all pictures. */
  @Test
  void paint() throws Exception {
    tour("en", false, 1, 1440, 900);
    tour("es", false, 1, 1440, 900);
    tour("en", true, 1, 1440, 900);
    glance("es", true, 1, 1600, 1000);
    glance("en", false, 2, 2400, 1500);
    glance("es", true, 2, 2400, 1500);
    glance("es", false, 1.5, 1600, 1000);
    charts();
    classroom("en", 1280, 720);
    classroom("es", 1920, 1080);
  }

  /** Every chart of a bench that is not as it should be. */
  private void charts() throws Exception {
    Path own = Files.createTempDirectory("screens");
    try (OpenWindow open = OpenWindow.with(own, settings("en", false, 1))) {
      size(open, 1440, 900);
      open.want(new Intent.Act(card("en", FaultKind.ROD_FOULED), 0), new Intent.StepOn(20_000L));
      JTabbedPane charts = new Hand(open).find(JTabbedPane.class, "charts");
      for (int k = 0; k < charts.getTabCount(); k++) {
        int index = k;
        OpenWindow.onScreen(
            () -> {
              charts.setSelectedIndex(index);
              return null;
            });
        // the fine pass of the map and the ghosts come from the background
        Thread.sleep(15_000);
        picture(open, "chart-" + (k + 1));
      }
    }
  }

  /** A demonstration on the wall and in the window, a sealed fault, its end, and the editor. */
  private void classroom(String language, int width, int height) throws Exception {
    Path own = Files.createTempDirectory("screens");
    try (OpenWindow open = OpenWindow.with(own, settings(language, false, 1))) {
      size(open, 1440, 900);
      Hand hand = new Hand(open);
      JTabbedPane tabs = hand.find(JTabbedPane.class, "tabs");
      OpenWindow.onScreen(
          () -> {
            var words = Wording.of(Locale.forLanguageTag(language), UnitSystem.METRIC);
            tabs.setSelectedIndex(tabs.indexOfTab(words.text("tab.lesson")));
            return null;
          });
      picture(open, language + "-lesson-list");
      editor(open, hand, language + "-editor");
      Shots.seen(open).wall(width, height, false, language + "-wall");
      LessonModel lesson = open.window().lesson();
      OpenWindow.onScreen(
          () -> {
            lesson.begin(ShippedDemonstrations.named("a-dirty-rod").orElseThrow());
            return null;
          });
      open.await("the first step", () -> lesson.at() != null);
      open.run(lesson::forward);
      open.await("the second step", () -> lesson.at().stepIndex() == 1);
      open.run(() -> lesson.vote(1));
      open.run(() -> lesson.vote(0));
      open.run(() -> lesson.vote(1));
      picture(open, language + "-lesson-question");
      Shots.seen(open).wall(width, height, true, language + "-wall-question");
      open.run(lesson::forward);
      Thread.sleep(20_000);
      picture(open, language + "-lesson-answer");
      Shots.seen(open).wall(width, height, false, language + "-wall-answer");
      open.run(lesson::end);
      open.want(new Intent.Hide(), new Intent.Draw(4), new Intent.StepOn(30_000L));
      open.want(new Intent.Labor(halfwave.work.Look.STATUS_LIGHT));
      picture(open, language + "-sealed");
      open.want(
          new Intent.Labor(halfwave.work.Repair.REPLACE_LEAD),
          new Intent.StepOn(30_000L),
          new Intent.Reveal(FaultKind.ROD_SILICA));
      picture(open, language + "-revealed");
    }
  }

  /** The editor with a step that has everything. */
  private void editor(OpenWindow open, Hand hand, String name) throws IOException {
    open.run(() -> hand.now(AbstractButton.class, "lesson.copy.a-dirty-rod").doClick());
    JList<?> steps = hand.find(JList.class, "editor.steps");
    open.run(() -> steps.setSelectedIndex(3));
    java.awt.Window window = SwingUtilities.getWindowAncestor(steps);
    Shots.seen(open).of(((JDialog) window).getRootPane(), name);
    open.run(() -> window.dispatchEvent(new WindowEvent(window, WindowEvent.WINDOW_CLOSING)));
    open.await("the end of the editor", () -> !hand.there("editor.steps"));
  }

  private static List<halfwave.sequence.Deed> card(String language, FaultKind kind) {
    Wording words = Wording.of(Locale.forLanguageTag(language), UnitSystem.METRIC);
    return FaultCard.of(kind, words).deeds(kind.typical(), null);
  }

  private static Settings settings(String language, boolean dark, double text) {
    return OpenWindow.PLAIN.withLanguage(language).withDark(dark).withTextRatio(text);
  }

  /** Every tab and both views of the drawing, healthy, and the whole with three faults. */
  private void tour(String language, boolean dark, double text, int width, int height)
      throws Exception {
    Path own = Files.createTempDirectory("screens");
    String name = language + (dark ? "-dark" : "-light");
    try (OpenWindow open = OpenWindow.with(own, settings(language, dark, text))) {
      size(open, width, height);
      Hand hand = new Hand(open);
      JTabbedPane tabs = hand.find(JTabbedPane.class, "tabs");
      // the first tab is on the picture of the whole; one language and look shows every tab
      picture(open, name + "-healthy");
      if (language.equals("en") && !dark) {
        for (int k = 1; k < tabs.getTabCount(); k++) {
          int index = k;
          OpenWindow.onScreen(
              () -> {
                tabs.setSelectedIndex(index);
                return null;
              });
          openPart(open);
          // the last one reads its table first
          open.await("what is computed", () -> !hand.there("evidence.cancel"));
          picture(open, name + "-tab-" + (k + 1));
        }
        hand.menu("menu.side");
        picture(open, name + "-side");
      }
      spoil(open, language);
      OpenWindow.onScreen(
          () -> {
            tabs.setSelectedIndex(language.equals("es") ? 2 : 0);
            return null;
          });
      picture(open, name + "-three-faults");
    }
  }

  private void glance(String language, boolean dark, double text, int width, int height)
      throws Exception {
    Path own = Files.createTempDirectory("screens");
    String name = language + (dark ? "-dark-" : "-light-") + Math.round(100 * text);
    try (OpenWindow open = OpenWindow.with(own, settings(language, dark, text))) {
      size(open, width, height);
      picture(open, name + "-healthy");
      spoil(open, language);
      picture(open, name + "-three-faults");
    }
  }

  private static void size(OpenWindow open, int width, int height) {
    OpenWindow.onScreen(
        () -> {
          open.frame().setSize(new Dimension(width, height));
          open.frame().validate();
          return null;
        });
    open.settle();
  }

  private static void openPart(OpenWindow open) {
    OpenWindow.onScreen(
        () -> {
          for (Component c : Hand.seen()) {
            if (c instanceof PartPanel part) {
              part.open(DrawnPart.ROD);
            }
          }
          return null;
        });
  }

  private static void spoil(OpenWindow open, String language) {
    for (FaultKind kind :
        List.of(FaultKind.ROD_SILICA, FaultKind.CONNECTOR_CORRODED, FaultKind.GAS_PRESSURE_LOW)) {
      open.want(new Intent.Act(card(language, kind), 0));
    }
    open.want(
        new Intent.StepOn(60_000L),
        new Intent.Measure(
            halfwave.instrument.MeterFunction.OHMS, Spot.TERMINAL_TO_COMMON.placing()),
        new Intent.StepOn(2000L),
        new Intent.Labor(halfwave.work.Look.STATUS_LIGHT),
        new Intent.Labor(halfwave.work.Look.FLAME_PICTURE));
  }

  private static void picture(OpenWindow open, String name) throws IOException {
    Shots.seen(open).window(name);
  }
}
