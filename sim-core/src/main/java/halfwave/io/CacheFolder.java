package halfwave.io;

import java.nio.file.Path;
import java.util.Objects;

/** Where tables that take long to make are kept between two runs. */
public final class CacheFolder {

  /** Where a property of this name says so. */
  private static final String PROPERTY = "halfwave.cache";

  private CacheFolder() {}

  /** The folder, whether it is there or not. */
  public static Path path() {
    String property = System.getProperty(PROPERTY);
    if (property != null) {
      return Path.of(property);
    }
    String caches = Objects.requireNonNullElse(System.getenv("XDG_CACHE_HOME"), "");
    Path folder =
        caches.isEmpty() ? Path.of(System.getProperty("user.home"), ".cache") : Path.of(caches);
    return folder.resolve("halfwave");
  }
}
