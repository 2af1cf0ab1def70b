package halfwave.gui.presentation.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.DirectBench;
import halfwave.gui.presentation.editor.NewDraft;
import halfwave.io.lesson.ShippedDemonstrations;
import halfwave.lesson.Draft;
import halfwave.lesson.DraftPlace;
import halfwave.lesson.DraftText;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What can be put on paper: shipped demonstrations and one's own. */
class LessonSourceTest {

  private static final Wording WORDS = DirectBench.ENGLISH;
  private static final int SHIPPED = ShippedDemonstrations.all().size();

  private static List<String> own(List<LessonSource> all) {
    return all.stream().skip(SHIPPED).map(LessonSource::name).toList();
  }

  @Test
  void shippedOnesComeFirstAndAnyFileLast() {
    List<LessonSource> all = LessonSource.all(null, null, List.of(), WORDS);

    assertThat(all).hasSize(SHIPPED + 1);
    assertThat(all.get(0).demonstration()).isEqualTo(ShippedDemonstrations.all().get(0));
    assertThat(all.get(SHIPPED).asks()).isTrue();
    assertThat(all.stream().limit(SHIPPED)).noneMatch(LessonSource::asks);
  }

  @Test
  void whatIsBeingEditedIsOfferedAsItStands() {
    Draft draft = NewDraft.of(DirectBench.untouched());
    assertThat(own(LessonSource.all(draft, null, List.of(), WORDS)))
        .containsExactly("without a title (being edited)", "Another file…");
    Draft titled = draft.with(DraftPlace.whole(DraftPlace.Field.TITLE), title("My own"));
    LessonSource offered = LessonSource.all(titled, null, List.of(), WORDS).get(SHIPPED);

    assertThat(offered.name()).isEqualTo("My own (being edited)");
    assertThat(offered.demonstration()).isEqualTo(titled.demonstration());
  }

  @Test
  void filesOfOnesOwnAreOfferedButNotBesideTheirDraft() {
    Path first = Path.of("lessons", "first.json");
    Path second = Path.of("lessons", "second.json");
    Draft draft = NewDraft.of(DirectBench.untouched());

    assertThat(own(LessonSource.all(null, null, List.of(second, first), DirectBench.SPANISH)))
        .containsExactly("Archivo: second.json", "Archivo: first.json", "Otro archivo…");
    assertThat(own(LessonSource.all(draft, first, List.of(second, first), WORDS)))
        .containsExactly("without a title (being edited)", "File: second.json", "Another file…");
  }

  private static DraftText title(String english) {
    return DraftText.EMPTY.with("en", english);
  }
}
