package halfwave.notebook.kernel;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** The notebook program of the system, which runs notebooks through the real kernel. */
final class Jupyter {

  /** Where a kernel does not answer nothing else ends the wait (s). */
  private static final int PATIENCE_SECONDS = 300;

  private final Path data;

  /** With the kernel of this build, installed below a folder. */
  Jupyter(Path data) throws IOException {
    this.data = data.toAbsolutePath();
    new KernelSpec(this.data).write(Main.java(), Main.classPath());
  }

  /** Debian's own first: another Python on the path need not have the packages. */
  private static Optional<Path> program() {
    String path = "/usr/bin" + File.pathSeparator + System.getenv("PATH");
    return Stream.of(path.split(File.pathSeparator))
        .map(folder -> Path.of(folder, "jupyter-nbconvert"))
        .filter(Files::isExecutable)
        .findFirst();
  }

  static boolean present() {
    return program().isPresent();
  }

  /**
   * Runs a notebook to its end, past cells that fail.
   *
   * @param notebook the file
   * @param folder where the file with its outputs goes
   * @return that file
   */
  Path run(Path notebook, Path folder) throws IOException, InterruptedException {
    Files.createDirectories(folder);
    Path log = folder.resolve(notebook.getFileName() + ".log");
    ProcessBuilder builder =
        new ProcessBuilder(
            List.of(
                program().orElseThrow().toString(),
                "--to",
                "notebook",
                "--execute",
                "--allow-errors",
                "--output-dir",
                folder.toAbsolutePath().toString(),
                notebook.toAbsolutePath().toString()));
    Map<String, String> environment = builder.environment();
    environment.put("PATH", "/usr/bin" + File.pathSeparator + environment.get("PATH"));
    environment.put("JUPYTER_PATH", data.toString());
    // nothing of the user's own settings
    environment.put("JUPYTER_CONFIG_DIR", data.resolve("settings").toString());
    environment.put("IPYTHONDIR", data.resolve("ipython").toString());
    Process process = builder.redirectErrorStream(true).redirectOutput(log.toFile()).start();
    if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      process.destroyForcibly();
    }
    if (process.waitFor() != 0) {
      throw new IOException(
          notebook.getFileName() + ": " + Files.readString(log, StandardCharsets.UTF_8));
    }
    return folder.resolve(notebook.getFileName());
  }
}
