package halfwave.gui.swing;

import halfwave.gui.presentation.DesktopMotion;
import halfwave.gui.presentation.Settings;
import halfwave.gui.presentation.SettingsFile;
import halfwave.gui.presentation.Wording;
import halfwave.gui.swing.widget.FileChoices;
import halfwave.paper.PaperSize;
import java.awt.Toolkit;
import java.nio.file.Path;
import java.util.Locale;

/** What a person has chosen, kept at once, and what stands where nothing was chosen. */
final class Preferences {

  private final SettingsFile file;
  private final boolean desktopMoves =
      DesktopMotion.moves(Toolkit.getDefaultToolkit().getDesktopProperty(DesktopMotion.PROPERTY));
  private final FileChoices choices =
      new FileChoices(() -> now().lastFolder(), folder -> keep(now().withFolder(folder)));
  private Settings settings;

  Preferences(SettingsFile file) {
    this.file = file;
    settings = file.read();
  }

  Settings now() {
    return settings;
  }

  void keep(Settings other) {
    settings = other;
    file.write(other);
  }

  void used(Path path) {
    keep(settings.withRecent(path.toAbsolutePath()));
  }

  /** Where files of any kind are asked for. */
  FileChoices choices() {
    return choices;
  }

  /** In the language that was chosen, else in the one that is given. */
  Wording words(Locale otherwise) {
    String tag = settings.language();
    return Wording.of(tag == null ? otherwise : Locale.forLanguageTag(tag), settings.units());
  }

  boolean moves() {
    return settings.moves(desktopMoves);
  }

  PaperSize sheet() {
    PaperSize chosen = settings.sheet();
    return chosen == null ? PaperSize.usual(Locale.getDefault()) : chosen;
  }

  Path folder() {
    return file.folder();
  }
}
