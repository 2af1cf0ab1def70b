package halfwave.gui.presentation;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.display.UnitSystem;
import halfwave.io.AtomicFile;
import halfwave.io.BadInputException;
import halfwave.paper.PaperSize;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

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
      JsonNode lessons = n.path("lessons");
      double text = n.path("textRatio").asDouble(1);
      return new Settings(
          n.path("language").isTextual() ? n.path("language").asText() : null,
          units(n.path("units").asText()),
          n.path("dark").asBoolean(),
          n.path("motion").isBoolean() ? n.path("motion").asBoolean() : null,
          Settings.TEXT_RATIOS.contains(text) ? text : 1,
          n.path("cautionsSeen").asBoolean(),
          PaperSize.of(n.path("sheet").asText()).orElse(null),
          place(n),
          recent(n),
          n.path("folder").isTextual() ? Path.of(n.path("folder").asText()) : null,
          new Settings.Lessons(frame(lessons), recent(lessons)));
    } catch (IOException | UncheckedIOException | InvalidPathException e) {
      return Settings.FIRST;
    }
  }

  private static UnitSystem units(String name) {
    return Arrays.stream(UnitSystem.values())
        .filter(u -> u.name().toLowerCase(Locale.ROOT).equals(name))
        .findFirst()
        .orElse(UnitSystem.METRIC);
  }

  private static Settings.Place place(JsonNode n) {
    return new Settings.Place(
        frame(n),
        n.path("lower").isInt() ? n.path("lower").asInt() : null,
        n.path("tab").asInt(),
        n.path("chart").asInt());
  }

  private static @Nullable List<Integer> frame(JsonNode of) {
    List<Integer> frame = new ArrayList<>();
    of.path("frame").forEach(v -> frame.add(v.asInt()));
    return frame.size() == 4 ? frame : null;
  }

  private static List<Path> recent(JsonNode of) {
    List<Path> recent = new ArrayList<>();
    of.path("recent").forEach(v -> recent.add(Path.of(v.asText())));
    return recent;
  }

  /** Keeps them, if that is possible. */
  public void write(Settings settings) {
    ObjectNode n = MAPPER.createObjectNode();
    n.put("language", settings.language());
    n.put("units", settings.units().name().toLowerCase(Locale.ROOT));
    n.put("dark", settings.dark());
    n.put("motion", settings.motion());
    n.put("textRatio", settings.textRatio());
    n.put("cautionsSeen", settings.cautionsSeen());
    PaperSize sheet = settings.sheet();
    n.put("sheet", sheet == null ? null : sheet.code());
    Path folder = settings.folder();
    n.put("folder", folder == null ? null : folder.toString());
    Settings.Place place = settings.place();
    n.put("lower", place.lower()).put("tab", place.tab()).put("chart", place.chart());
    put(n, place.frame(), settings.recent());
    put(n.putObject("lessons"), settings.lessons().frame(), settings.lessons().recent());
    try {
      Files.createDirectories(folder());
      AtomicFile.write(file, n.toPrettyString() + '\n');
    } catch (IOException | BadInputException e) {
      // the next start is as the first one was: no reason to disturb anyone
    }
  }

  private static void put(ObjectNode into, @Nullable List<Integer> frame, List<Path> recent) {
    if (frame != null) {
      ArrayNode array = into.putArray("frame");
      frame.forEach(array::add);
    }
    ArrayNode files = into.putArray("recent");
    recent.forEach(p -> files.add(p.toString()));
  }
}
