package halfwave.io.lesson;

import halfwave.io.JsonFile;
import halfwave.lesson.Demonstration;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The demonstrations that come with the program, each a file among its resources. All names and
 * stories in them are invented.
 */
public final class ShippedDemonstrations {

  private static final List<String> NAMES =
      List.of(
          "what-rectification-is",
          "a-small-rod-and-a-large-burner",
          "a-dirty-rod",
          "where-the-rod-sits",
          "the-burner-is-the-other-electrode",
          "the-lost-ground",
          "a-leaking-insulator",
          "a-jumper-fools-nobody",
          "lights-goes-out-locks-out",
          "what-the-meter-does",
          "a-cold-rod-and-a-hot-rod",
          "gas-air-and-a-lifting-flame");

  private ShippedDemonstrations() {}

  /** Reads them once, and only if someone asks. */
  private static final class Holder {
    static final List<Demonstration> ALL = NAMES.stream().map(ShippedDemonstrations::read).toList();
  }

  /** All of them, in the order in which to teach them. */
  public static List<Demonstration> all() {
    return Holder.ALL;
  }

  /** The one of that name. */
  public static Optional<Demonstration> named(String name) {
    return all().stream().filter(d -> d.name().equals(name)).findFirst();
  }

  /** The text of its file, to copy and edit; nothing if there is none of that name. */
  public static Optional<byte[]> file(String name) {
    return NAMES.contains(name) ? Optional.of(bytes(name)) : Optional.empty();
  }

  private static Demonstration read(String name) {
    return DemonstrationFile.of(JsonFile.parse(name, bytes(name)));
  }

  private static byte[] bytes(String name) {
    try (InputStream in =
        Objects.requireNonNull(
            Demonstration.class.getResourceAsStream(name + ".json"), () -> name + ".json")) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
