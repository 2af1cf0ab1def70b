package halfwave.notebook.kernel;

import com.google.gson.GsonBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The folder by which notebook programs find the kernel. */
final class KernelSpec {

  /** Its name, which the notebooks name. */
  static final String NAME = "halfwave";

  private static final String FILE = "kernel.json";

  private final Path folder;

  /**
   * The one below a data folder.
   *
   * @param data where notebook programs look: the user's, or one that {@code JUPYTER_PATH} names
   */
  KernelSpec(Path data) {
    folder = data.resolve("kernels").resolve(NAME);
  }

  /** The user's data folder, as notebook programs work it out. */
  static Path usual(Map<String, String> environment, String system, Path home) {
    String named = environment.getOrDefault("JUPYTER_DATA_DIR", "");
    if (!named.isEmpty()) {
      return Path.of(named);
    }
    if (system.startsWith("Mac")) {
      return home.resolve("Library").resolve("Jupyter");
    }
    String roaming = environment.getOrDefault("APPDATA", "");
    if (system.startsWith("Windows") && !roaming.isEmpty()) {
      return Path.of(roaming).resolve("jupyter");
    }
    String shared = environment.getOrDefault("XDG_DATA_HOME", "");
    Path base = shared.isEmpty() ? home.resolve(".local").resolve("share") : Path.of(shared);
    return base.resolve("jupyter");
  }

  Path folder() {
    return folder;
  }

  /**
   * Writes it, over one that is there.
   *
   * @param java the program that runs Java
   * @param classPath what it finds the kernel in
   */
  void write(Path java, String classPath) throws IOException {
    Map<String, Object> spec = new LinkedHashMap<>();
    spec.put(
        "argv",
        List.of(
            java.toString(),
            "-Djava.awt.headless=true",
            "-Dfile.encoding=UTF-8",
            // cells are compiled all the time and run once: a quick start counts for more than
            // speed
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-cp",
            classPath,
            Main.class.getName(),
            Main.CONNECT,
            "{connection_file}"));
    spec.put("display_name", "Halfwave (Java)");
    spec.put("language", "java");
    spec.put("interrupt_mode", "message");
    Files.createDirectories(folder);
    Files.writeString(
        folder.resolve(FILE),
        new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create().toJson(spec) + "\n");
  }

  /** Takes it away; false where there is none. */
  boolean remove() throws IOException {
    boolean removed = Files.deleteIfExists(folder.resolve(FILE));
    if (removed) {
      Files.deleteIfExists(folder);
    }
    return removed;
  }
}
