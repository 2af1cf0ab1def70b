package halfwave.gui.presentation;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.display.UnitSystem;
import halfwave.paper.PaperSize;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Settings from one start to the next, also where the file is missing or spoilt. */
class SettingsFileTest {

  @TempDir private Path folder;

  private Path path() {
    return folder.resolve("deep").resolve("settings.json");
  }

  @Test
  void keepsEverything() {
    Settings all =
        new Settings(
            "es",
            UnitSystem.INCH,
            true,
            false,
            1.5,
            true,
            PaperSize.LETTER,
            new Settings.Place(List.of(10, 20, 1200, 800), 300, 5, 2),
            List.of(folder.resolve("a.json"), folder.resolve("b c.json")),
            folder.resolve("sheets"),
            new Settings.Lessons(List.of(5, 6, 1000, 720), List.of(folder.resolve("d.json"))));
    new SettingsFile(path()).write(all);
    assertThat(new SettingsFile(path()).read()).isEqualTo(all);
    Settings millibars = all.withUnits(UnitSystem.MILLIBAR);
    new SettingsFile(path()).write(millibars);
    assertThat(new SettingsFile(path()).read()).isEqualTo(millibars);
  }

  @Test
  void keepsThatNothingWasChosen() {
    new SettingsFile(path()).write(Settings.FIRST);
    assertThat(new SettingsFile(path()).read()).isEqualTo(Settings.FIRST);
  }

  @Test
  void theFlameMovesAsTheDesktopHasItUntilSomebodyChooses() {
    assertThat(DesktopMotion.moves(null)).isTrue();
    assertThat(DesktopMotion.moves(1)).isTrue();
    assertThat(DesktopMotion.moves(0)).isFalse();
    assertThat(Settings.FIRST.moves(false)).isFalse();
    assertThat(Settings.FIRST.moves(true)).isTrue();
    assertThat(Settings.FIRST.withMotion(true).moves(false)).isTrue();
    // what nobody chose is not written as a choice
    new SettingsFile(path()).write(Settings.FIRST.withDark(true));
    assertThat(new SettingsFile(path()).read().moves(false)).isFalse();
  }

  @Test
  void aMissingFileIsTheFirstStart() {
    assertThat(new SettingsFile(path()).read()).isEqualTo(Settings.FIRST);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "{", "null", "[]", "12", "\"x\"", "{\"frame\": 3}", "\u0000\u0000"})
  void aSpoiltFileIsTheFirstStart(String text) throws IOException {
    Files.createDirectories(path().getParent());
    Files.writeString(path(), text);
    assertThat(new SettingsFile(path()).read()).isEqualTo(Settings.FIRST);
  }

  @Test
  void whatMakesNoSenseInAFileIsLeftOut() throws IOException {
    Files.createDirectories(path().getParent());
    Files.writeString(
        path(),
        "{\"language\": 7, \"sheet\": \"b5\", \"motion\": \"no\", \"units\": [], \"dark\": true, \"textRatio\": 40, \"frame\": [1, 2],"
            + " \"recent\": 5}");
    assertThat(new SettingsFile(path()).read()).isEqualTo(Settings.FIRST.withDark(true));
  }

  @Test
  void whereItCannotBeWrittenNobodyIsDisturbed() throws IOException {
    Path file = Files.writeString(folder.resolve("plain"), "a file, no folder");
    SettingsFile impossible = new SettingsFile(file.resolve("settings.json"));
    impossible.write(Settings.FIRST.withDark(true));
    assertThat(impossible.read()).isEqualTo(Settings.FIRST);
  }

  @Test
  void liesWhereSettingsUsuallyLie() {
    assertThat(SettingsFile.usual("/home/x", ""))
        .isEqualTo(Path.of("/home/x/.config/halfwave/settings.json"));
    assertThat(SettingsFile.usual("/home/x", "/set"))
        .isEqualTo(Path.of("/set/halfwave/settings.json"));
  }

  @Test
  void theLatestFilesComeFirstAndOnlyOnce() {
    Settings s = Settings.FIRST;
    for (int k = 0; k < 12; k++) {
      s = s.withRecent(Path.of("b" + k));
    }
    s = s.withRecent(Path.of("b9"));
    assertThat(s.recent()).hasSize(8).startsWith(Path.of("b9"), Path.of("b11"), Path.of("b10"));
    assertThat(s.recent()).doesNotHaveDuplicates();
    assertThat(s.withRecent(folder.resolve("b.json")).lastFolder()).isEqualTo(folder);
    assertThat(s.withFolder(folder.resolve("sheets")).lastFolder())
        .as("whatever kind of file it was")
        .isEqualTo(folder.resolve("sheets"));
  }
}
