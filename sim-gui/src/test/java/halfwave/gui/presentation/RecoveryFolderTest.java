package halfwave.gui.presentation;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Bench;
import halfwave.bench.Condition;
import halfwave.bench.ShippedBenches;
import halfwave.gui.presentation.RecoveryFolder.Found;
import halfwave.gui.presentation.RecoveryFolder.Owner;
import halfwave.io.bench.RecoveryFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a crash leaves is found once, and what cannot be read stops nobody. */
class RecoveryFolderTest {

  private static final Owner CRASHED = new Owner(11, 1000);
  private static final Owner EARLIER = new Owner(12, 900);
  private static final Owner OTHER = new Owner(13, 2000);
  private static final Owner OWN = new Owner(14, 3000);
  private static final Set<Owner> RUNNING = Set.of(OTHER, OWN);

  private static final Bench SAVED = ShippedBenches.standard();

  @TempDir private Path folder;

  private RecoveryFolder<RecoveryFile> of(Owner owner) {
    return new RecoveryFolder<>(folder, RecoveryFolder.BENCH, owner, RUNNING::contains);
  }

  private static RecoveryFile content(double ohms) {
    Bench bench = SAVED.with(Condition.HEALTHY.withConnector(ohms));
    return new RecoveryFile(bench, SAVED, "nitride-learning", Path.of("work", "bench.json"));
  }

  private List<String> names() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void bringsBackWhatWasKept() {
    for (RecoveryFile content :
        List.of(
            content(1e6),
            content(Double.POSITIVE_INFINITY),
            new RecoveryFile(SAVED, SAVED, "carbide-four-trials", null))) {
      of(CRASHED).keep(content);

      Found<RecoveryFile> found = of(OWN).find().orElseThrow();

      assertThat(found.content()).isEqualTo(content);
      of(OWN).drop(found);
    }
  }

  @Test
  void makesTheFolder() {
    Path deep = folder.resolve("not/there");
    new RecoveryFolder<>(deep, RecoveryFolder.BENCH, CRASHED, RUNNING::contains).keep(content(1));

    assertThat(new RecoveryFolder<>(deep, RecoveryFolder.BENCH, OWN, RUNNING::contains).find())
        .isPresent();
  }

  @Test
  void leavesAloneWhatBelongsToARunningProgram() {
    of(OTHER).keep(content(1));
    of(OWN).keep(content(2));

    assertThat(of(OWN).find()).isEmpty();
  }

  @Test
  void takesAFileOverSoThatNoOtherWindowAsks() throws IOException {
    of(CRASHED).keep(content(1));

    assertThat(of(OWN).find()).isPresent();
    assertThat(of(OTHER).find()).isEmpty();
    assertThat(names()).containsExactly("recovery-14-3000-found.json");
  }

  @Test
  void whatNobodyDecidedAboutIsFoundAgainByTheNextProgram() {
    of(CRASHED).keep(content(1));
    of(OWN).find();

    RecoveryFolder<RecoveryFile> next =
        new RecoveryFolder<>(folder, RecoveryFolder.BENCH, new Owner(15, 4000), o -> false);

    assertThat(next.find().map(Found::content)).contains(content(1));
  }

  @Test
  void asksAboutTheLatestFirst() throws IOException {
    of(CRASHED).keep(content(1));
    of(EARLIER).keep(content(2));
    Files.setLastModifiedTime(folder.resolve("recovery-12-900.json"), FileTime.fromMillis(5000));

    Optional<Found<RecoveryFile>> found = of(OWN).find();

    assertThat(found.map(Found::content)).contains(content(1));
    assertThat(names()).contains("recovery-12-900.json");
  }

  @Test
  void putsAsideWhatIsBrokenAndGoesOn() throws IOException {
    of(EARLIER).keep(content(2));
    Files.setLastModifiedTime(folder.resolve("recovery-12-900.json"), FileTime.fromMillis(5000));
    Files.writeString(folder.resolve("recovery-11-1000.json"), "{\"format\": \"halfwave-re");

    assertThat(of(OWN).find().map(Found::content)).contains(content(2));
    assertThat(names())
        .containsExactly("recovery-11-1000.json.broken", "recovery-14-3000-found.json");
  }

  @Test
  void refusesAnotherFormatOrVersion() throws IOException {
    String text = content(1).text();
    for (String other :
        List.of(
            text.replace("halfwave-recovery", "halfwave-bench"),
            text.replaceFirst("\"version\" : 1", "\"version\" : 2"),
            text.replaceFirst("\"board\"", "\"plank\""))) {
      assertThat(other).isNotEqualTo(text);
      Files.writeString(folder.resolve("recovery-11-1000.json"), other);

      assertThat(of(OWN).find()).isEmpty();
    }
  }

  @Test
  void takesNoNoticeOfOtherFilesAndFolders() throws IOException {
    Files.writeString(folder.resolve("settings.json"), "{}");
    Files.writeString(folder.resolve("recovery-notes.json"), "{}");
    Files.createDirectory(folder.resolve("recovery-11-1000.json"));

    assertThat(of(OWN).find()).isEmpty();
    assertThat(names()).hasSize(3);
  }

  @Test
  void keepsNothingOnceItHasEnded() throws IOException {
    RecoveryFolder<RecoveryFile> own = of(OWN);
    own.keep(content(1));
    own.end();
    own.keep(content(2));

    assertThat(names()).isEmpty();
  }

  @Test
  void aFolderThatCannotBeThereSpoilsNothing() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "");
    RecoveryFolder<RecoveryFile> none =
        new RecoveryFolder<>(file.resolve("x"), RecoveryFolder.BENCH, OWN, RUNNING::contains);

    none.keep(content(1));

    assertThat(none.find()).isEmpty();
    none.end();
  }

  @Test
  void knowsItselfToRunAndANumberGivenOutAgainNotToBeTheSame() {
    Owner self = Owner.current();

    assertThat(self.running()).isTrue();
    assertThat(new Owner(self.process(), self.startMillis() + 60_000).running()).isFalse();
    // no system counts so far
    assertThat(new Owner(999_999_999_999L, 1).running()).isFalse();
  }
}
