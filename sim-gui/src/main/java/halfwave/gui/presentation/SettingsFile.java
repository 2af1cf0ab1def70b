package halfwave.gui.presentation;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.display.UnitSystem;
import halfwave.io.AtomicFile;
import halfwave.io.BadInputException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Where settings are kept. A file that cannot be read, or not written, spoils nobody's lesson. */
public final class SettingsFile {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final Path file;

  /** Kept in that file. */
  public SettingsFile(Path file) {
    this.file = file;
  }

  /** Where a user's settings usually lie. */
  public static Path usual(String home, String configured) {
    Path folder = configured.isEmpty() ? Path.of(home).resolve(".config") : Path.of(configured);
    return folder.resolve("halfwave").resolve("settings.json");
  }

  /** The folder it lies in. */
  public Path folder() {
    return file.toAbsolutePath().resolveSibling("").normalize();
  }

  /** What is kept; what cannot be read is as on the first start. */
  public Settings read() {
    try {
      JsonNode n = MAPPER.readTree(Files.readString(file));
      List<Integer> frame = new ArrayList<>();
      n.path("frame").forEach(v -> frame.add(v.asInt()));
      List<Path> recent = new ArrayList<>();
      n.path("recent").forEach(v -> recent.add(Path.of(v.asText())));
      double text = n.path("textRatio").asDouble(1);
      return new Settings(
          n.path("language").isTextual() ? n.path("language").asText() : null,
          n.path("units").asText().equals("inch") ? UnitSystem.INCH : UnitSystem.METRIC,
          n.path("dark").asBoolean(),
          n.path("motion").asBoolean(true),
          Settings.TEXT_RATIOS.contains(text) ? text : 1,
          n.path("cautionsSeen").asBoolean(),
          frame.size() == 4 ? frame : null,
          recent);
    } catch (IOException | UncheckedIOException | InvalidPathException e) {
      return Settings.FIRST;
    }
  }

  /** Keeps them, if that is possible. */
  public void write(Settings settings) {
    ObjectNode n = MAPPER.createObjectNode();
    n.put("language", settings.language());
    n.put("units", settings.units() == UnitSystem.INCH ? "inch" : "metric");
    n.put("dark", settings.dark());
    n.put("motion", settings.motion());
    n.put("textRatio", settings.textRatio());
    n.put("cautionsSeen", settings.cautionsSeen());
    if (settings.frame() != null) {
      ArrayNode frame = n.putArray("frame");
      settings.frame().forEach(frame::add);
    }
    ArrayNode recent = n.putArray("recent");
    settings.recent().forEach(p -> recent.add(p.toString()));
    try {
      Files.createDirectories(folder());
      AtomicFile.write(file, n.toPrettyString() + '\n');
    } catch (IOException | BadInputException e) {
      // the next start is as the first one was: no reason to disturb anyone
    }
  }
}
