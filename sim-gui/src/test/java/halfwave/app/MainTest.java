package halfwave.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The program as a process of its own. */
class MainTest {

  /** Somebody gives away the jar alone. */
  @Test
  void withoutItsFolderItSaysSoInOneLine() throws Exception {
    Process process = started("--help");
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

    assertThat(process.waitFor()).isEqualTo(1);
    assertThat(said.lines())
        .containsExactly(
            "halfwave: halfwave.jar needs the folder lib beside it: copy the whole folder.");
  }

  private static Process started(String argument) throws IOException, URISyntaxException {
    Path alone = Path.of(Main.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Djava.awt.headless=true",
            "-cp",
            alone.toString(),
            Main.class.getName(),
            argument)
        .redirectErrorStream(true)
        .start();
  }
}
