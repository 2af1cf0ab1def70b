package halfwave.gui.presentation;

import halfwave.io.RecoveryFile;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;

/** How it is asked whether a bench shall come back. */
public final class RecoveryWords {

  private RecoveryWords() {}

  /** The question, and under it which bench. */
  public static String question(RecoveryFolder.Found found, Wording words) {
    String when =
        DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
            .withLocale(words.locale())
            .withZone(ZoneId.systemDefault())
            .format(found.kept());
    RecoveryFile content = found.content();
    String name = BarView.benchName(content.bench().name(), content.file(), words);
    return words.text("recovery.ask") + "\n\n" + words.text("recovery.which", name, when);
  }
}
