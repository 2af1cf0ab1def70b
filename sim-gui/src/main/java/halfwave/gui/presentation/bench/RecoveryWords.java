package halfwave.gui.presentation.bench;

import halfwave.gui.presentation.RecoveryFolder.Found;
import halfwave.gui.presentation.Wording;
import halfwave.io.bench.RecoveryFile;
import halfwave.io.lesson.DraftRecoveryFile;
import halfwave.io.quiz.QuizRecoveryFile;
import halfwave.io.quiz.RoutineRecoveryFile;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;

/** How it is asked whether something that was left behind shall come back. */
public final class RecoveryWords {

  private RecoveryWords() {}

  /** The question about a bench, and under it which. */
  public static String bench(Found<RecoveryFile> found, Wording words) {
    RecoveryFile content = found.content();
    String name = BarView.benchName(content.bench().name(), content.file(), words);
    return question("recovery.ask", name, found.kept(), words);
  }

  /** The question about a demonstration that was being made, and under it which. */
  public static String draft(Found<DraftRecoveryFile> found, Wording words) {
    String name =
        found
            .content()
            .draft()
            .title()
            .words()
            .map(title -> title.in(words.locale()))
            .orElse(words.text("editor.window-new"));
    return question("recovery.ask-draft", name, found.kept(), words);
  }

  /** The question about a quiz at the instructor's desk, and under it which. */
  public static String quiz(Found<QuizRecoveryFile> found, Wording words) {
    String name = found.content().quiz().title().in(words.locale());
    return question("recovery.ask-quiz", name, found.kept(), words);
  }

  /** The question about an order of work, and under it which. */
  public static String routine(Found<RoutineRecoveryFile> found, Wording words) {
    String name = found.content().draft().name();
    return question(
        "recovery.ask-routine",
        name.isBlank() ? words.text("routine.title") : name,
        found.kept(),
        words);
  }

  private static String question(String key, String name, Instant kept, Wording words) {
    String when =
        DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
            .withLocale(words.locale())
            .withZone(ZoneId.systemDefault())
            .format(kept);
    return words.text(key) + "\n\n" + words.text("recovery.which", name, when);
  }
}
