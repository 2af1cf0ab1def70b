package halfwave.gui.swing;

import halfwave.forecast.Forecast;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.presentation.evidence.ForecastAnswer;
import halfwave.gui.presentation.evidence.ForecastModel;
import halfwave.gui.presentation.evidence.MatchModel;
import halfwave.gui.swing.evidence.ForecastCanvas;
import halfwave.gui.swing.evidence.ForecastPanel;
import halfwave.gui.swing.evidence.MatchPanel;
import halfwave.gui.swing.evidence.ReadingsFiles;
import halfwave.gui.swing.widget.FileChoices;
import halfwave.gui.swing.widget.TargetChooser;
import halfwave.gui.swing.widget.Theme;
import halfwave.io.AtomicFile;
import halfwave.io.evidence.ForecastCsv;
import halfwave.paper.PictureFormat;
import halfwave.picture.Picture;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.function.Consumer;
import javax.swing.JFrame;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;

/** The windows beside the main one that reckon something: a match, a forecast. */
final class Tools {

  private final JFrame over;
  private final Workbench workbench;
  private final FileChoices choices;
  private final MatchModel match;
  private final ForecastModel forecast;
  private final Consumer<String> help;
  private Runnable matches = () -> {};
  private Runnable forecasts = () -> {};
  private @Nullable Dress dress;
  private @Nullable SideWindow matchWindow;
  private @Nullable SideWindow forecastWindow;
  private @Nullable ForecastPanel forecastPanel;

  /** What they are made of in one language and look. */
  private record Dress(
      Theme theme, Wording words, BenchFiles files, TargetChooser chooser, LongWork work) {}

  Tools(
      JFrame over,
      Workbench workbench,
      FileChoices choices,
      MatchModel match,
      ForecastModel forecast,
      Consumer<String> help) {
    this.over = over;
    this.workbench = workbench;
    this.choices = choices;
    this.match = match;
    this.forecast = forecast;
    this.help = help;
  }

  /** Another language or look: what is open is made anew, the rest when it is opened. */
  void dress(Theme theme, Wording words, BenchFiles files, TargetChooser chooser, LongWork work) {
    dress = new Dress(theme, words, files, chooser, work);
    if (forecastPanel != null && forecastWindow != null && forecastWindow.isVisible()) {
      forecastPanel.keep();
    }
    matches.run();
    forecasts.run();
    matches = () -> {};
    forecasts = () -> {};
    matchWindow = SideWindow.anew(matchWindow, this::makeMatch);
    forecastWindow = SideWindow.anew(forecastWindow, this::makeForecast);
  }

  private SideWindow makeMatch() {
    Dress d = dress();
    MatchPanel panel =
        new MatchPanel(
            d.theme(),
            d.words(),
            match,
            workbench,
            new ReadingsFiles(d.words(), match, choices),
            d.files()::openFitted);
    matches = match.subscribe(panel::refresh);
    return window("match", d.words().text("match.title"), panel, d.theme(), 700);
  }

  private SideWindow makeForecast() {
    Dress d = dress();
    ForecastPanel panel = new ForecastPanel(d.theme(), d.words(), forecast, workbench, this::keep);
    forecastPanel = panel;
    SideWindow made = window("forecast", d.words().text("forecast.title"), panel, d.theme(), 740);
    if (workbench.ready()) {
      panel.fill();
    }
    forecasts = forecast.subscribe(panel::refresh);
    return made;
  }

  private SideWindow window(String name, String title, JPanel content, Theme theme, int height) {
    return new SideWindow(
        over, name, title, content, () -> help.accept(name), theme.px(1000), theme.px(height));
  }

  private void keep(ForecastCanvas canvas) {
    Wording words = dress().words();
    ForecastAnswer answer = forecast.answer();
    Picture picture = canvas.onPaper();
    if (picture == null
        || answer == null
        || !(answer.forecasted() instanceof Forecast forecasted)) {
      return;
    }
    String title = words.text("forecast.title");
    dress()
        .chooser()
        .file(title, title, words.text("forecast.files"), "png", "svg", "pdf", "csv")
        .ifPresent(
            file ->
                dress()
                    .work()
                    .begin(
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
    JMenu menu = new JMenu(dress().words().text("menu.tools"));
    menu.setName("menu.tools");
    menu.setMnemonic(KeyEvent.VK_T);
    menu.add(item("menu.match", this::match));
    menu.add(item("menu.forecast", this::forecast));
    return menu;
  }

  private JMenuItem item(String key, Runnable action) {
    JMenuItem item = new JMenuItem(dress().words().text(key));
    item.setName(key);
    item.addActionListener(e -> action.run());
    return item;
  }

  private Dress dress() {
    if (dress == null) {
      throw new IllegalStateException("not dressed yet");
    }
    return dress;
  }

  private void match() {
    matchWindow = SideWindow.shown(matchWindow, this::makeMatch);
  }

  private void forecast() {
    if (!workbench.ready()) {
      return;
    }
    if (forecastWindow != null && forecastPanel != null && !forecastWindow.isVisible()) {
      forecastPanel.fill();
    }
    forecastWindow = SideWindow.shown(forecastWindow, this::makeForecast);
  }

  /** Nobody waits any more. */
  void end() {
    match.cancel();
    forecast.cancel();
    matches.run();
    forecasts.run();
    if (matchWindow != null) {
      matchWindow.dispose();
    }
    if (forecastWindow != null) {
      forecastWindow.dispose();
    }
  }
}
