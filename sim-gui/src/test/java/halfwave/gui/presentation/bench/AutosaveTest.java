package halfwave.gui.presentation.bench;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Parameter;
import halfwave.gui.presentation.Keeper;
import halfwave.gui.presentation.ProcessFolder;
import halfwave.gui.presentation.RecoveryFolder;
import halfwave.gui.presentation.RecoveryFolder.Found;
import halfwave.gui.presentation.RecoveryFolder.Owner;
import halfwave.io.bench.RecoveryFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A changed bench is kept until it is saved or left, and no longer. */
class AutosaveTest {

  private static final State OPENED = Benches.opened();
  private static final State CHANGED = Benches.with(OPENED, Parameter.CONNECTOR, 1e6);
  private static final State MORE = Benches.with(OPENED, Parameter.CONNECTOR, 2e6);

  @TempDir private Path folder;

  private int written;
  private long process = 1;

  private Autosave next() {
    RecoveryFolder<RecoveryFile> own =
        ProcessFolder.of(
            folder,
            RecoveryFolder.BENCH,
            new Owner(process, 1),
            owner -> owner.process() == process);
    return new Autosave(
        own,
        task -> {
          written++;
          task.run();
        },
        Runnable::run);
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.toList();
    }
  }

  private static List<Found<RecoveryFile>> look(Autosave autosave) {
    List<Found<RecoveryFile>> found = new ArrayList<>();
    autosave.look(found::add, () -> {});
    return found;
  }

  @Test
  void keepsNothingOfABenchThatIsAsItWasSaved() throws IOException {
    next().tick(OPENED, 0);

    assertThat(files()).isEmpty();
  }

  @Test
  void keepsAChangeAndAnotherOneNotBeforeItsTime() {
    Autosave autosave = next();
    autosave.tick(CHANGED, 0);
    autosave.tick(MORE, Keeper.PACE_MILLIS - 1);
    assertThat(written).isEqualTo(1);

    autosave.tick(MORE, Keeper.PACE_MILLIS);
    autosave.tick(MORE, 5 * Keeper.PACE_MILLIS);
    assertThat(written).as("only what changed").isEqualTo(2);
  }

  @Test
  void dropsItWhenTheBenchIsSaved() throws IOException {
    Autosave autosave = next();
    autosave.tick(CHANGED, 0);
    Path file = folder.resolve("bench.json");
    State saved = Benches.after(CHANGED, new Intent.Saved(CHANGED.moment().bench(), file));
    autosave.tick(saved, 1);

    assertThat(files()).isEmpty();
  }

  @Test
  void leavesNoFileAfterACleanEnd() throws IOException {
    Autosave autosave = next();
    autosave.tick(CHANGED, 0);
    autosave.end();

    assertThat(files()).isEmpty();
    process++;
    assertThat(look(next())).isEmpty();
  }

  @Test
  void bringsTheBenchBackAsUnsaved() throws IOException {
    next().tick(CHANGED, 0);
    process++;
    Autosave autosave = next();
    Found<RecoveryFile> found = look(autosave).get(0);
    State back = Benches.after(OPENED, autosave.bringBack(found));

    assertThat(back.moment().bench()).isEqualTo(CHANGED.moment().bench());
    assertThat(back.paper()).isEqualTo(CHANGED.paper());
    assertThat(back.unsaved()).isTrue();

    autosave.tick(OPENED, 0);
    assertThat(files()).as("stays until it is kept anew").hasSize(1);
    autosave.tick(back, 1);
    assertThat(files()).hasSize(1);
    autosave.end();
    assertThat(files()).isEmpty();
  }

  @Test
  void forgetsTheBenchThatIsLeft() throws IOException {
    next().tick(CHANGED, 0);
    process++;
    Autosave autosave = next();
    look(autosave);
    autosave.leave();

    assertThat(files()).isEmpty();
  }

  @Test
  void aBoardThatIsNoMoreGivesWayToOneThatFits() {
    var content =
        new RecoveryFile(CHANGED.moment().bench(), OPENED.moment().bench(), "no-such-board", null);
    ProcessFolder.of(folder, RecoveryFolder.BENCH, new Owner(9, 1), o -> true).keep(content);
    Autosave autosave = next();
    State back = Benches.after(OPENED, autosave.bringBack(look(autosave).get(0)));

    assertThat(back.moment().settings()).isEqualTo(OPENED.moment().settings());
  }
}
