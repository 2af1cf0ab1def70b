package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.swing.bench.DrawingPanel;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.swing.JEditorPane;
import javax.swing.JTabbedPane;
import javax.swing.text.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whoever adds a file of words adds a language; what the file lacks is English. */
class AddedLanguageRobotTest {

  /** No program takes so long to answer, nor to open a window: it hangs (s). */
  private static final long HANG_SECONDS = 120;

  @TempDir private Path folder;
  private Path words;

  @BeforeEach
  void write() throws IOException {
    words = folder.resolve("words");
    put("halfwave/display/sentences_eo.properties", "message.report-go-on=Plu: halfwave --help\n");
    put(
        "halfwave/gui/presentation/window_eo.properties",
        "tab.condition=Stato\nseal.spent=Jen {7}\n");
    put("halfwave/gui/presentation/help/eo/drawing.md", "# Desegno\n\nJen la desegno.\n");
  }

  private void put(String path, String text) throws IOException {
    Path file = words.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  /** In a process of its own: a class path is what it was when a program was started. */
  private String run(String type, String... arguments) throws Exception {
    String classes =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                words + System.getProperty("path.separator") + classes,
                type));
    command.addAll(Arrays.asList(arguments));
    Path said = folder.resolve("said");
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile()).start();
    boolean ended = process.waitFor(HANG_SECONDS, TimeUnit.SECONDS);
    process.destroyForcibly();
    String text = Files.readString(said, StandardCharsets.UTF_8);
    assertThat(ended).as(text).isTrue();
    return text;
  }

  @Test
  void commandsSpeakIt() throws Exception {
    assertThat(run("halfwave.app.Main", "--language", "eo"))
        .contains("Plu: halfwave --help")
        .as("English stands in")
        .contains("flame");
    assertThat(run("halfwave.app.Main", "solve", "--help", "--language", "eo"))
        .contains("en, es, eo");
    assertThat(run("halfwave.app.Main", "--language", "xx")).contains("en, es, eo");
  }

  @Test
  void theWindowSpeaksIt() throws Exception {
    OpenWindow.needDisplay();

    assertThat(run(Shown.class.getName(), folder.toString()).lines())
        .containsExactly("Stato", "Why?", "Desegno");
  }

  /** Chooses it in the menu and says what it sees. */
  static final class Shown {
    private Shown() {}

    /** Settings lie in the folder that is the only argument. */
    public static void main(String[] args) throws Exception {
      try (OpenWindow open = OpenWindow.plain(Path.of(args[0]))) {
        Hand hand = new Hand(open);
        hand.menu("language.eo");
        JTabbedPane tabs = hand.find(JTabbedPane.class, "tabs");
        System.out.println(OpenWindow.onScreen(() -> tabs.getTitleAt(0)));
        System.out.println(OpenWindow.onScreen(() -> tabs.getTitleAt(1)));
        OpenWindow.onScreen(hand.find(DrawingPanel.class, "drawing")::requestFocusInWindow);
        open.await("the keyboard", () -> "drawing".equals(hand.focusOwner().getName()));
        hand.key(java.awt.event.KeyEvent.VK_F1);
        JEditorPane page = hand.find(JEditorPane.class, "help.page");
        Document text = page.getDocument();
        System.out.println(
            OpenWindow.onScreen(() -> text.getText(0, text.getLength()).strip().split("\n")[0]));
      }
      System.exit(0);
    }
  }
}
