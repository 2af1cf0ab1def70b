package halfwave.gui.swing;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.State;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Hands that know nothing click and type: the window bears it, and undo leads back. */
class RandomHandsRobotTest {

  private static final int EVENTS = 600;

  /** Every so many events the event thread and the engine have to answer. */
  private static final int ANSWER_EVERY = 50;

  @TempDir private Path folder;

  /** One seed; five with halfwave.deep. */
  static Stream<Integer> seeds() {
    return Boolean.getBoolean("halfwave.deep") ? Stream.of(1, 2, 3, 4, 5) : Stream.of(1);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void nothingIsThrownAndTheWindowStillAnswers(int seed) throws Exception {
    try (OpenWindow w = OpenWindow.with(folder, OpenWindow.PLAIN.withMotion(true))) {
      // a chooser begins where the last file was: that has to stay where files may go
      RandomHands hands = new RandomHands(w, folder.resolve("home"), seed);
      new Hand(w).takeKeyboard();
      w.want(new Intent.Play(true));
      for (int k = 0; k < EVENTS; k++) {
        hands.anything();
        if (k % ANSWER_EVERY == 0) {
          w.settle();
          assertThat(w.uncaught()).as("seed %s, up to event %s", seed, k).isEmpty();
        }
      }
      hands.closeDialogs();
      w.want(new Intent.Play(false));
      State last = w.shown();
      for (int k = last.history().done().size(); k > 0; k--) {
        w.want(new Intent.Undo());
      }
      assertThat(w.shown().history().done()).as("seed %s", seed).isEmpty();
      assertThat(w.frame().isShowing()).as("seed %s", seed).isTrue();
      assertThat(w.uncaught()).as("seed %s", seed).isEmpty();
    }
    assertNothingOutside();
  }

  /**
   * Only benches that a chooser was given lie in the folder, the settings, and what was practised.
   */
  private void assertNothingOutside() throws Exception {
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.map(f -> String.valueOf(f.getFileName())))
          .allMatch(
              name ->
                  name.equals("settings.json")
                      || name.equals("progress.json")
                      || name.equals("home")
                      || name.matches("bench\\d\\.json"));
    }
  }
}
