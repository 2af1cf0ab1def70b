package halfwave.gui.swing;

import halfwave.grading.Outlooks;
import halfwave.gui.presentation.desk.DeskModel;
import halfwave.gui.presentation.evidence.EvidenceModel;
import halfwave.gui.presentation.evidence.ForecastModel;
import halfwave.gui.presentation.evidence.MatchModel;
import halfwave.gui.presentation.quiz.PracticeModel;
import halfwave.gui.presentation.quiz.ProgressKeeper;
import halfwave.gui.presentation.quiz.QuizModel;
import halfwave.io.CacheFolder;
import halfwave.io.evidence.CachedOutlooks;
import halfwave.io.evidence.CaseCache;
import halfwave.io.quiz.ShippedQuizzes;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/**
 * Makes the models of what may take a minute; each has a thread of its own, so that nobody has to
 * wait for another.
 */
final class ModelMaker {

  private final Consumer<Throwable> trouble;
  private final CaseCache cases = new CaseCache(CacheFolder.path());
  private final Outlooks outlooks = new CachedOutlooks(cases, (done, all) -> true);

  /** Failures of the program itself are told to that. */
  ModelMaker(Consumer<Throwable> trouble) {
    this.trouble = trouble;
  }

  private static Executor own(String name) {
    return task -> {
      Thread thread = new Thread(task, name);
      thread.setDaemon(true);
      thread.start();
    };
  }

  EvidenceModel evidence() {
    return new EvidenceModel(cases, own("evidence"), SwingUtilities::invokeLater, trouble);
  }

  MatchModel match() {
    return new MatchModel(own("match"), SwingUtilities::invokeLater, trouble);
  }

  ForecastModel forecast() {
    return new ForecastModel(own("forecast"), SwingUtilities::invokeLater, LocalDate::now, trouble);
  }

  QuizModel quiz() {
    return new QuizModel(
        own("quiz"),
        SwingUtilities::invokeLater,
        System::nanoTime,
        Instant::now,
        outlooks,
        trouble);
  }

  PracticeModel practice(Path folder) {
    return new PracticeModel(
        own("practice"),
        SwingUtilities::invokeLater,
        ShippedQuizzes::bank,
        outlooks,
        new ProgressKeeper(folder),
        trouble);
  }

  DeskModel desk() {
    return new DeskModel(
        own("desk"),
        SwingUtilities::invokeLater,
        ShippedQuizzes::bank,
        outlooks,
        Instant::now,
        trouble);
  }
}
