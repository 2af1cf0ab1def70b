package halfwave.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import halfwave.display.Sentences;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file is written whole or not at all. */
class AtomicFileTest {

  @TempDir Path folder;

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  private static String refusal(Path target) {
    BadInputException e =
        catchThrowableOfType(BadInputException.class, () -> AtomicFile.write(target, "new"));
    assertThat(e).isNotNull();
    return e.line(Sentences.in(Locale.ENGLISH));
  }

  @Test
  void newFileHoldsTheText() throws IOException {
    AtomicFile.write(folder.resolve("a"), "µ\n");

    assertThat(folder.resolve("a")).hasContent("µ\n");
    assertThat(names()).containsExactly("a");
  }

  @Test
  void oldFileIsReplaced() throws IOException {
    Files.writeString(folder.resolve("a"), "old and longer");

    AtomicFile.write(folder.resolve("a"), "new");

    assertThat(Files.readString(folder.resolve("a"))).isEqualTo("new");
    assertThat(names()).containsExactly("a");
  }

  @Test
  void linkStaysALink() throws IOException {
    assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
    Path real = Files.writeString(folder.resolve("real"), "old");
    Path link = Files.createSymbolicLink(folder.resolve("link"), real);

    AtomicFile.write(link, "new");

    assertThat(link).isSymbolicLink();
    assertThat(Files.readString(real)).isEqualTo("new");
  }

  @Test
  void folderIsNoTarget() throws IOException {
    assertThat(refusal(folder)).isEqualTo(folder + ": allowed is a file, not a folder");
    assertThat(names()).isEmpty();
  }

  @Test
  void fileIsNoFolder() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "old");

    assertThat(refusal(file.resolve("below"))).contains("below: allowed is a file in a folder");
    assertThat(Files.readString(file)).isEqualTo("old");
    assertThat(names()).containsExactly("file");
  }

  @Test
  void missingFolderIsNotMade() throws IOException {
    assertThat(refusal(folder.resolve("missing").resolve("a"))).contains("a file in a folder");
    assertThat(names()).isEmpty();
  }

  @Test
  void whatIsNotKeptLeavesTheOldFileAndNoTrace() throws IOException {
    Path target = folder.resolve("long.csv");
    Files.writeString(target, "old");

    try (AtomicFile file = AtomicFile.open(target)) {
      file.stream().write(new byte[100_000]);
    }
    assertThat(Files.readString(target)).isEqualTo("old");
    assertThat(folder).isDirectoryContaining(target::equals);
    try (AtomicFile file = AtomicFile.open(target)) {
      file.stream().write("new".getBytes(StandardCharsets.UTF_8));
      file.keep();
    }

    assertThat(Files.readString(target)).isEqualTo("new");
    try (var all = Files.list(folder)) {
      assertThat(all).containsExactly(target);
    }
  }
}
