package halfwave.gui.swing;

import halfwave.forecast.Forecast;
import halfwave.gui.presentation.ForecastAnswer;
import halfwave.gui.presentation.ForecastModel;
import halfwave.gui.presentation.MatchModel;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.Workbench;
import halfwave.io.AtomicFile;
import halfwave.io.ForecastCsv;
import halfwave.paper.PictureFormat;
import halfwave.picture.Picture;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.function.Consumer;
import javax.swing.JFrame;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import org.jspecify.annotations.Nullable;

/** The windows beside the main one that reckon something: a match, a forecast. */
final class Tools {

  private final JFrame over;
  private final Workbench workbench;
  private final MatchModel match;
  private final ForecastModel forecast;
  private final Consumer<String> help;
  private Runnable unsubscribe = () -> {};
  private @Nullable Face face;

  /** How they look in one language and look. */
  private record Face(
      Wording words, SideWindow match, SideWindow forecast, ForecastPanel forecastPanel) {}

  Tools(
      JFrame over,
      Workbench workbench,
      MatchModel match,
      ForecastModel forecast,
      Consumer<String> help) {
    this.over = over;
    this.workbench = workbench;
    this.match = match;
    this.forecast = forecast;
    this.help = help;
  }

  /** Makes them anew, in another language or look; what was open stays open. */
  void dress(Theme theme, Wording words, BenchFiles files, TargetChooser chooser, LongWork work) {
    Face before = face;
    unsubscribe.run();
    // what nobody has seen yet is filled in when it is opened
    if (before != null && before.forecast().isVisible()) {
      before.forecastPanel().keep();
    }
    MatchPanel matchPanel =
        new MatchPanel(
            theme, words, match, workbench, new ReadingsFiles(words, match), files::openFitted);
    ForecastPanel forecastPanel =
        new ForecastPanel(theme, words, forecast, workbench, c -> keep(words, chooser, work, c));
    Face made =
        new Face(
            words,
            window("match", words.text("match.title"), matchPanel, theme, 700),
            window("forecast", words.text("forecast.title"), forecastPanel, theme, 740),
            forecastPanel);
    face = made;
    if (workbench.ready()) {
      forecastPanel.fill();
    }
    Runnable matches = match.subscribe(matchPanel::refresh);
    Runnable forecasts = forecast.subscribe(forecastPanel::refresh);
    unsubscribe =
        () -> {
          matches.run();
          forecasts.run();
        };
    if (before != null) {
      replace(before.match(), made.match());
      replace(before.forecast(), made.forecast());
    }
  }

  private SideWindow window(
      String name, String title, javax.swing.JPanel content, Theme theme, int height) {
    return new SideWindow(
        over, name, title, content, () -> help.accept(name), theme.px(1000), theme.px(height));
  }

  private static void replace(SideWindow old, SideWindow made) {
    if (old.isVisible()) {
      made.setBounds(old.getBounds());
      made.setVisible(true);
    }
    old.dispose();
  }

  private void keep(Wording words, TargetChooser chooser, LongWork work, ForecastCanvas canvas) {
    ForecastAnswer answer = forecast.answer();
    Picture picture = canvas.onPaper();
    if (picture == null
        || answer == null
        || !(answer.forecasted() instanceof Forecast forecasted)) {
      return;
    }
    String title = words.text("forecast.title");
    chooser
        .file(title, title, words.text("forecast.files"), "png", "svg", "pdf", "csv")
        .ifPresent(
            file ->
                work.begin(
                    watch -> {
                      write(file, picture, title, words, forecasted);
                      return words.text("paper.written", file.getFileName());
                    }));
  }

  private static void write(
      Path file, Picture picture, String title, Wording words, Forecast forecasted)
      throws Exception {
    var format = PictureFormat.of(file);
    if (format.isPresent()) {
      AtomicFile.write(file, format.get().bytes(picture, title, words.locale()));
    } else {
      AtomicFile.write(file, ForecastCsv.of(forecasted));
    }
  }

  /** The menu in the main window. */
  JMenu menu() {
    Face now = face();
    JMenu menu = new JMenu(now.words().text("menu.tools"));
    menu.setName("menu.tools");
    menu.setMnemonic(KeyEvent.VK_T);
    menu.add(item(now, "menu.match", () -> appear(face().match())));
    menu.add(item(now, "menu.forecast", this::forecast));
    return menu;
  }

  private static JMenuItem item(Face face, String key, Runnable action) {
    JMenuItem item = new JMenuItem(face.words().text(key));
    item.setName(key);
    item.addActionListener(e -> action.run());
    return item;
  }

  private Face face() {
    if (face == null) {
      throw new IllegalStateException("not dressed yet");
    }
    return face;
  }

  private void forecast() {
    if (workbench.ready()) {
      if (!face().forecast().isVisible()) {
        face().forecastPanel().fill();
      }
      appear(face().forecast());
    }
  }

  private static void appear(SideWindow window) {
    window.setVisible(true);
    window.toFront();
  }

  /** Nobody waits any more. */
  void end() {
    match.cancel();
    forecast.cancel();
    unsubscribe.run();
    if (face != null) {
      face.match().dispose();
      face.forecast().dispose();
    }
  }
}
