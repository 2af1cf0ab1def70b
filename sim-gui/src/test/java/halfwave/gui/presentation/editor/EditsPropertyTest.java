package halfwave.gui.presentation.editor;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.presentation.bench.DirectBench;
import halfwave.lesson.Draft;
import halfwave.lesson.DraftPlace;
import halfwave.lesson.DraftStep;
import halfwave.lesson.DraftText;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Undo leads back through every edit, and redo forth again. */
class EditsPropertyTest {

  private static final int COUNT = Boolean.getBoolean("halfwave.deep") ? 1000 : 100;

  private static Draft fresh() {
    return NewDraft.of(DirectBench.untouched());
  }

  @Test
  void undoRestoresEveryVersionAndRedoTheLast() {
    for (int seed = 0; seed < COUNT; seed++) {
      Random random = new Random(seed);
      Edits edits = Edits.of(fresh(), DraftPlace.WHOLE);
      List<Edits.Version> versions = new ArrayList<>(List.of(edits.now()));
      for (int k = 0; k < 30; k++) {
        Draft next = edited(edits.now().draft(), random);
        edits = edits.then(next, 0, null);
        if (!versions.get(versions.size() - 1).draft().equals(next)) {
          versions.add(edits.now());
        } else {
          versions.set(versions.size() - 1, edits.now());
        }
      }
      Edits last = edits;
      for (int k = versions.size() - 1; k > 0; k--) {
        assertThat(edits.now()).as("seed " + seed).isEqualTo(versions.get(k));
        edits = edits.undone();
      }
      assertThat(edits.now().draft()).as("seed " + seed).isEqualTo(fresh());
      assertThat(edits.unsaved()).as("seed " + seed).isFalse();
      assertThat(edits.undone()).as("there is no more").isEqualTo(edits);
      while (edits.mayRedo()) {
        edits = edits.redone();
      }
      assertThat(edits.now().draft()).as("seed " + seed).isEqualTo(last.now().draft());
    }
  }

  private static Draft edited(Draft draft, Random random) {
    int step = random.nextInt(draft.steps().size());
    DraftPlace place = DraftPlace.of(step, DraftPlace.Field.SAY);
    return switch (random.nextInt(5)) {
      case 0 -> draft.inserted(step, DraftStep.EMPTY);
      case 1 -> draft.duplicated(step);
      case 2 -> draft.removed(step);
      case 3 -> draft.moved(step, random.nextInt(draft.steps().size()));
      default -> draft.with(place, DraftText.EMPTY.with("en", "t" + random.nextInt(9)));
    };
  }

  @Test
  void whatIsTypedInOneGoIsOneEdit() {
    Draft draft = fresh();
    DraftPlace place = DraftPlace.whole(DraftPlace.Field.TITLE);
    Edits edits = Edits.of(draft, DraftPlace.WHOLE);
    for (String text : List.of("A", "A ", "A d")) {
      Draft typed = draft.with(place, DraftText.EMPTY.with("en", text));
      edits = edits.then(typed, DraftPlace.WHOLE, "title");
    }
    assertThat(edits.undone().now().draft()).isEqualTo(draft);
    Edits elsewhere = edits.at(0);
    Draft more = draft.with(place, DraftText.EMPTY.with("en", "A dirty"));
    assertThat(elsewhere.then(more, 0, "title").undone().now().draft())
        .isEqualTo(edits.now().draft());
  }

  @Test
  void savingGivesANameAndLosesNothing() {
    Edits edits = Edits.of(fresh(), 0).then(fresh().inserted(0, DraftStep.EMPTY), 0, null);
    assertThat(edits.unsaved()).isTrue();
    Edits saved = edits.saved("mine");
    assertThat(saved.unsaved()).isFalse();
    assertThat(saved.now().draft().name()).isEqualTo("mine");
    assertThat(saved.undone().unsaved()).isTrue();
    assertThat(saved.undone().redone().unsaved()).isFalse();
  }
}
