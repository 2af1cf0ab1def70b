package halfwave.gui.swing.bench;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.ShippedBenches;
import halfwave.board.ShippedBoards;
import halfwave.display.UnitSystem;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.MeterView;
import halfwave.gui.presentation.bench.Spot;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.swing.widget.Theme;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.ShippedMeters;
import halfwave.picture.Palette;
import halfwave.sequence.Deed;
import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JScrollPane;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a meter or a board says moves nothing: the next click finds what it aimed at. */
class StillPanelsTest {

  /** As wide as the panels are in a window of 1440 px, at 100 % (px). */
  private static final double WIDTH = 446;

  private final Workbench workbench =
      new Workbench(
          Runnable::run,
          Runnable::run,
          e -> {
            throw new AssertionError(e);
          });

  /**
   * A look.
   *
   * @param language its language
   * @param text size of type over the usual (1)
   */
  record Case(String language, double text) {}

  static Stream<Case> cases() {
    return Stream.of("en", "es").flatMap(l -> Stream.of(1.0, 1.5, 2.0).map(t -> new Case(l, t)));
  }

  private void open() {
    var bench = ShippedBenches.standard();
    workbench.want(new Intent.Open(bench, ShippedBoards.standard(bench.design().ignition()), null));
  }

  private static Wording words(Case look) {
    return Wording.of(Locale.forLanguageTag(look.language()), UnitSystem.METRIC);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void noCautionOfTheMeterMovesAButton(Case look) {
    open();
    Theme theme = Theme.install(Palette.LIGHT, look.text());
    MeterPanel panel = new MeterPanel(theme, words(look), workbench);
    List<String> before = places(panel, theme);
    Set<Integer> cautions = new HashSet<>();
    for (Spot spot : Spot.values()) {
      for (MeterFunction function : MeterFunction.values()) {
        workbench.want(new Intent.Measure(function, spot.placing()));
        panel.show(workbench.shown());

        assertThat(places(panel, theme)).as("%s %s", spot, function).isEqualTo(before);
        cautions.add(MeterView.of(workbench.shown(), words(look)).cautions().size());
      }
    }
    assertThat(cautions).as("the walk meets cautions, and uses without one").contains(0, 1);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void twoWarningsAreSeenAtOnce(Case look) {
    open();
    Theme theme = Theme.install(Palette.LIGHT, look.text());
    MeterPanel panel = new MeterPanel(theme, words(look), workbench);
    List<String> scrolled = new ArrayList<>();
    Set<Integer> met = new HashSet<>();
    for (Spot spot : Spot.values()) {
      for (MeterFunction function : MeterFunction.values()) {
        workbench.want(new Intent.HandOver(Meter.fresh(ShippedMeters.all().get(0))));
        workbench.want(new Intent.Measure(function, spot.placing()));
        panel.show(workbench.shown());
        places(panel, theme);
        MeterView view = MeterView.of(workbench.shown(), words(look));
        int warnings = view.cautions().size() + (view.alarm().isEmpty() ? 0 : 1);
        met.add(warnings);
        if (warnings == 2 && scrolls(panel)) {
          scrolled.add(view.alarm() + view.cautions());
        }
      }
    }
    assertThat(met).contains(2);
    assertThat(scrolled).isEmpty();
  }

  private static boolean scrolls(Container from) {
    return Stream.of(from.getComponents())
        .anyMatch(
            c ->
                c instanceof JScrollPane pane
                    ? pane.getVerticalScrollBar().isVisible()
                    : c instanceof Container inside && scrolls(inside));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void noStageOfTheBoardMovesWhatIsBelow(Case look) {
    open();
    Theme theme = Theme.install(Palette.LIGHT, look.text());
    BoardPanel panel = new BoardPanel(theme, words(look));
    panel.show(workbench.shown());
    int height = panel.getPreferredSize().height;
    Set<Object> stages = new HashSet<>();
    // a start, and one more that never sees its flame
    for (int k = 0; k < 160; k++) {
      if (k == 1) {
        workbench.want(new Intent.Act(List.of(new Deed.Supply(false)), 0));
      }
      if (k == 2) {
        workbench.want(new Intent.Act(List.of(new Deed.Supply(true)), 0));
      }
      if (k == 60) {
        workbench.want(new Intent.Measure(MeterFunction.DC_VOLTS, Spot.SERIES_AT_BOARD.placing()));
      }
      workbench.want(new Intent.StepOn(1500L));
      panel.show(workbench.shown());
      stages.add(workbench.shown().moment().board().stage());

      places(panel, theme);
      assertThat(panel.getPreferredSize().height).isEqualTo(height);
    }
    assertThat(stages).hasSizeGreaterThan(6);
  }

  /** Where buttons stand, when the panel has its width. */
  private static List<String> places(Container panel, Theme theme) {
    panel.setSize(theme.px(WIDTH), panel.getPreferredSize().height);
    // lines break in the first pass
    lay(panel);
    lay(panel);
    List<String> places = new ArrayList<>();
    places.add("height " + panel.getPreferredSize().height);
    collect(panel, places);
    return places;
  }

  private static void lay(Container from) {
    from.doLayout();
    for (Component inside : from.getComponents()) {
      if (inside instanceof Container box) {
        lay(box);
      }
    }
  }

  private static void collect(Container from, List<String> places) {
    for (Component c : from.getComponents()) {
      // not the arrows of a bar to scroll with, nor the one for the fuse, which may come
      boolean stays = c.getName() != null && !"meter.new-fuse".equals(c.getName());
      if (c instanceof AbstractButton button && stays) {
        places.add(button.getName() + from.getBounds() + button.getBounds());
      } else if (c instanceof Container box) {
        collect(box, places);
      }
    }
  }
}
