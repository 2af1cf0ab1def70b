package halfwave.gui.swing;

import halfwave.explain.Causes;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.bench.Workbench;
import halfwave.gui.presentation.charts.DataTable;
import halfwave.gui.swing.charts.ChartsPanel;
import halfwave.gui.swing.charts.Clip;
import halfwave.gui.swing.editor.LessonChoice;
import halfwave.gui.swing.widget.TargetChooser;
import halfwave.gui.swing.widget.Theme;
import halfwave.io.AtomicFile;
import halfwave.lesson.Demonstration;
import halfwave.message.Message;
import halfwave.paper.BenchPages;
import halfwave.paper.BenchPicture;
import halfwave.paper.BenchSubject;
import halfwave.paper.Document;
import halfwave.paper.HandoutPages;
import halfwave.paper.LessonSlides;
import halfwave.paper.PaperSize;
import halfwave.paper.PictureFormat;
import halfwave.paper.Slide;
import halfwave.paper.SlideFiles;
import halfwave.picture.Picture;
import halfwave.picture.scene.DrawnView;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Supplier;

/**
 * What leaves the window: files and printed sheets of what is seen. Every choice is made on the
 * event thread, all work is done elsewhere.
 */
final class PaperFiles {

  private final Wording words;
  private final Theme theme;
  private final Workbench workbench;
  private final Supplier<DrawnView> view;
  private final ChartsPanel charts;
  private final TargetChooser chooser;
  private final LongWork work;
  private final Printing printing;
  private final LessonChoice lessons;
  private final Supplier<PaperSize> size;

  PaperFiles(
      Wording words,
      Theme theme,
      Workbench workbench,
      Supplier<DrawnView> view,
      ChartsPanel charts,
      TargetChooser chooser,
      LongWork work,
      Printing printing,
      LessonChoice lessons,
      Supplier<PaperSize> size) {
    this.words = words;
    this.theme = theme;
    this.workbench = workbench;
    this.view = view;
    this.charts = charts;
    this.chooser = chooser;
    this.work = work;
    this.printing = printing;
    this.lessons = lessons;
    this.size = size;
  }

  void unlessSealed(Runnable action) {
    if (workbench.shown().sealed()) {
      printing.say(words.text("seal.no-paper"));
    } else {
      action.run();
    }
  }

  void drawing() {
    State state = workbench.shown();
    DrawnView from = view.get();
    String name = state.moment().bench().name();
    picture(words.text("paper.drawing"), name, () -> drawn(state, from));
  }

  private Picture drawn(State state, DrawnView from) {
    return BenchPicture.of(state.moment(), from, words.sentences());
  }

  void chart() {
    picture(words.text("paper.chart"), charts.title(), this::chartOnPaper);
  }

  private Picture chartOnPaper() {
    return EventThread.painted(charts.picture(), theme);
  }

  private void picture(String title, String name, Supplier<Picture> picture) {
    chooser
        .file(title, fileName(name), words.text("paper.pictures"), "png", "svg", "pdf")
        .ifPresent(
            file ->
                work.begin(
                    watch -> {
                      PictureFormat format = PictureFormat.of(file).orElseThrow();
                      AtomicFile.write(file, format.bytes(picture.get(), name, words.locale()));
                      return written(file);
                    }));
  }

  /** A name that every system takes for a file. */
  private static String fileName(String name) {
    return name.strip().replaceAll("[^\\p{L}\\p{N}-]+", "-").replaceAll("^-|-$", "");
  }

  private String written(Path file) {
    return words.text("paper.written", file.getFileName());
  }

  void data() {
    String tabbed = charts.data();
    if (tabbed.isEmpty()) {
      printing.say(words.text("paper.no-data"));
      return;
    }
    chooser
        .file(words.text("paper.data"), fileName(charts.title()), "CSV", "csv")
        .ifPresent(
            file ->
                work.begin(
                    watch -> {
                      AtomicFile.write(
                          file, DataTable.csv(tabbed).getBytes(StandardCharsets.UTF_8));
                      return written(file);
                    }));
  }

  void report() {
    State state = workbench.shown();
    pdf("paper.report", state.moment().bench().name(), () -> reportOf(state));
  }

  private Document reportOf(State state) {
    List<Message> causes = Causes.of(state.moment().board().stage(), state.recording().events());
    return BenchPages.of(
        BenchSubject.of(state.moment(), causes),
        size.get(),
        words.sentences(),
        words.locale(),
        LocalDate.now(ZoneId.systemDefault()));
  }

  void handout(boolean key) {
    lessons
        .ask()
        .ifPresent(
            shown ->
                pdf(
                    key ? "paper.handout-key" : "paper.handout",
                    shown.name(),
                    () ->
                        HandoutPages.of(
                            shown, size.get(), words.sentences(), words.locale(), key)));
  }

  private void pdf(String key, String name, Supplier<Document> document) {
    chooser
        .file(words.text(key), fileName(name), "PDF", "pdf")
        .ifPresent(
            file ->
                work.begin(
                    watch -> {
                      AtomicFile.check(file);
                      AtomicFile.write(file, document.get().pdf());
                      return written(file);
                    }));
  }

  void slides() {
    lessons
        .ask()
        .ifPresent(
            shown ->
                chooser
                    .folder(words.text("paper.folder"))
                    .ifPresent(
                        folder ->
                            work.begin(
                                watch -> {
                                  SlideFiles.prepare(folder);
                                  boolean all =
                                      SlideFiles.write(folder, slidesOf(shown), watch).isPresent();
                                  return all ? written(folder) : null;
                                })));
  }

  private List<Slide> slidesOf(Demonstration shown) {
    return LessonSlides.of(shown, words.sentences(), words.locale());
  }

  void animation() {
    lessons
        .ask()
        .ifPresent(
            shown ->
                chooser
                    .file(words.text("paper.animation"), shown.name(), "GIF", "gif")
                    .ifPresent(
                        file ->
                            work.begin(
                                watch -> {
                                  AtomicFile.check(file);
                                  boolean all = SlideFiles.animation(file, slidesOf(shown), watch);
                                  return all ? written(file) : null;
                                })));
  }

  void printDrawing() {
    State state = workbench.shown();
    DrawnView from = view.get();
    printing.print(
        words.text("paper.page-drawing"), size.get(), true, () -> List.of(drawn(state, from)));
  }

  void printChart() {
    printing.print(charts.title(), size.get(), true, () -> List.of(chartOnPaper()));
  }

  void printReport() {
    State state = workbench.shown();
    printing.print(state.moment().bench().name(), size.get(), false, () -> reportOf(state).pages());
  }

  void copyDrawing() {
    State state = workbench.shown();
    DrawnView from = view.get();
    work.begin(
        watch -> {
          Clip.copy(drawn(state, from));
          return words.text("paper.copied-drawing");
        });
  }
}
