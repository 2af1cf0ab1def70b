package halfwave.notebook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Installing the kernel and taking it away. */
class MainTest {
  @TempDir Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int command(String... arguments) {
    return Main.command(
        List.of(arguments),
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8));
  }

  private String said(ByteArrayOutputStream stream) {
    return stream.toString(StandardCharsets.UTF_8);
  }

  @Test
  void installsWithAbsolutePathsAndRemoves() throws IOException {
    Path spec = folder.resolve("kernels").resolve("halfwave").resolve("kernel.json");
    assertThat(command("--to", folder.toString())).isZero();
    assertThat(said(out)).contains(spec.getParent().toString(), "JUPYTER_PATH", "jupyter lab");
    assertThat(Files.readString(spec))
        .contains("\"" + Main.java() + "\"", "--connect", "{connection_file}");
    assertThat(command("--remove", "--to", folder.toString())).isZero();
    assertThat(spec.getParent()).doesNotExist();
    assertThat(command("--remove", "--to", folder.toString())).isZero();
    assertThat(said(err)).isEmpty();
  }

  @Test
  void badInputIsOneLineAndStatusTwo() {
    assertThat(command("--form", "x")).isEqualTo(2);
    assertThat(command("--to")).isEqualTo(2);
    assertThat(command("--to", "--remove")).isEqualTo(2);
    assertThat(said(err).lines()).hasSize(3);
    assertThat(said(out)).isEmpty();
  }

  @Test
  void aFolderThatCannotBeIsNamed() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "");
    assertThat(command("--to", file.toString())).isEqualTo(2);
    assertThat(said(err).lines()).singleElement().asString().contains(file.toString(), "--to DIR");
  }

  @Test
  void bothLanguagesSayTheSame() throws IOException {
    assertThat(keys("kernel_es.properties")).isNotEmpty().isEqualTo(keys("kernel.properties"));
  }

  private static Set<String> keys(String file) throws IOException {
    Properties words = new Properties();
    try (InputStream in = Main.class.getResourceAsStream(file)) {
      words.load(in);
    }
    return words.stringPropertyNames();
  }

  @Test
  void theUsualFolderIsThatOfTheSystem() {
    Path home = Path.of("home");
    assertThat(KernelSpec.usual(Map.of("JUPYTER_DATA_DIR", "d"), "Linux", home))
        .isEqualTo(Path.of("d"));
    assertThat(KernelSpec.usual(Map.of(), "Linux", home))
        .isEqualTo(Path.of("home", ".local", "share", "jupyter"));
    assertThat(KernelSpec.usual(Map.of(), "Mac OS X", home))
        .isEqualTo(Path.of("home", "Library", "Jupyter"));
    assertThat(KernelSpec.usual(Map.of("APPDATA", "r"), "Windows 11", home))
        .isEqualTo(Path.of("r", "jupyter"));
  }
}
