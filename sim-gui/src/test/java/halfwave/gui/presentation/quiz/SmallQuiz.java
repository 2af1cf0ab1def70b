package halfwave.gui.presentation.quiz;

import halfwave.bench.ShippedBenches;
import halfwave.fault.FaultKind;
import halfwave.grading.Outlooks;
import halfwave.io.AtomicFile;
import halfwave.io.evidence.CachedOutlooks;
import halfwave.io.evidence.CaseCache;
import halfwave.io.quiz.QuizText;
import halfwave.lesson.Words;
import halfwave.quiz.Hidden;
import halfwave.quiz.Level;
import halfwave.quiz.Objective;
import halfwave.quiz.Quiz;
import halfwave.quiz.Rules;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Weights;
import halfwave.work.Look;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/** A quiz of two invented calls. */
public final class SmallQuiz {

  /** Judgement from the tables that come with the program. */
  public static final Outlooks OUTLOOKS =
      new CachedOutlooks(new CaseCache(null), (done, all) -> true);

  private SmallQuiz() {}

  private static Words words(String english, String spanish) {
    return new Words(Map.of("en", english, "es", spanish));
  }

  private static ServiceCall call(
      String name, Words title, Words complaint, Set<halfwave.work.Work> closed, FaultKind kind) {
    return new ServiceCall(
        name,
        title,
        complaint,
        ShippedBenches.standard(),
        null,
        List.of(new Hidden(List.of(new Hidden.Part(kind, null)))),
        closed,
        90,
        20,
        Objective.ROD,
        Level.BASIC,
        null);
  }

  /** Practice with it, on the thread of whoever asks. */
  public static PracticeModel practice(Path settings, Consumer<Throwable> failed) {
    PracticeModel model =
        new PracticeModel(
            Runnable::run,
            Runnable::run,
            () -> under(Rules.STANDARD),
            OUTLOOKS,
            new ProgressKeeper(settings),
            failed);
    model.open();
    return model;
  }

  /** The quiz under those rules. */
  public static Quiz under(Rules rules) {
    return new Quiz(
        "two-calls",
        words("Two calls", "Dos avisos"),
        words("To see how a quiz is taken.", "Para ver cómo se hace un examen."),
        7,
        0.7,
        Weights.STANDARD,
        rules,
        List.of(),
        List.of(
            call(
                "cold-mornings",
                words("Cold mornings", "Mañanas frías"),
                words(
                    "It lights, and goes out after a few seconds. In the morning the house is cold.",
                    "Enciende y se apaga a los pocos segundos. Por la mañana la casa está fría."),
                Set.of(Look.ROD),
                FaultKind.ROD_SILICA),
            call(
                "after-the-move",
                words("After the move", "Después de la mudanza"),
                words(
                    "Since we moved in, it has to be started three times until it stays on.",
                    "Desde la mudanza hay que arrancarlo tres veces hasta que se queda."),
                Set.of(),
                FaultKind.CONNECTOR_OFF)));
  }

  /** The quiz as it is handed out. */
  public static Path file(Path folder, Rules rules) {
    Path file = folder.resolve("two-calls.json");
    AtomicFile.write(file, QuizText.sealed(under(rules)));
    return file;
  }
}
