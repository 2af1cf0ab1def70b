package halfwave.gui.presentation.editor;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.board.Stage;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.DirectBench;
import halfwave.gui.presentation.editor.ClaimForm.Kind;
import halfwave.gui.presentation.editor.ClaimForm.Subject;
import halfwave.lesson.Claim;
import halfwave.lesson.Performance;
import halfwave.lesson.Play;
import halfwave.lesson.Reading;
import halfwave.quantity.Dimension;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is filled in from the bench is so on the bench, in every language. */
class ClaimFormTest {

  /** The call ends on a running furnace. */
  private static final Performance ENDED =
      new Play(List.of(new Act(100, new Deed.Call(false))), 8000, 1)
          .from(DirectBench.untouched().moment())
          .performed();

  private static final Found FOUND = Found.of(ENDED.after(), ENDED.before(), ENDED.events(), null);

  private static final Found RUNNING = Found.of(ENDED.before(), ENDED.before(), List.of(), null);

  static Stream<Wording> languages() {
    return Stream.of(DirectBench.ENGLISH, DirectBench.SPANISH);
  }

  @ParameterizedTest
  @MethodSource("languages")
  void whatTheBenchShowsHolds(Wording words) {
    for (Performance shown :
        List.of(ENDED, new Performance(ENDED.before(), List.of(), ENDED.before()))) {
      Found found = Found.of(shown.after(), shown.before(), shown.events(), null);
      for (Subject subject : ClaimForm.subjects(found)) {
        for (double margin : new double[] {0.05, 0.1, 0.2}) {
          ClaimForm.of(subject, found, margin, words)
              .claim(words)
              .filter(c -> !(c instanceof Claim.Enters) || !found.entered().isEmpty())
              .ifPresent(
                  claim -> {
                    String sentence = ClaimWords.sentence(claim, words);
                    assertThat(claim.holds(shown)).as(sentence).isTrue();
                    assertThat(found.holds(claim)).as(sentence).contains(true);
                  });
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("languages")
  void aClaimComesBackFromItsForm(Wording words) {
    for (Subject subject : ClaimForm.subjects(RUNNING)) {
      ClaimForm form = ClaimForm.of(subject, RUNNING, 0.1, words);
      form.claim(words)
          .ifPresent(
              claim ->
                  assertThat(ClaimForm.of(claim, RUNNING, words).claim(words)).contains(claim));
    }
    assertThat(ClaimForm.subjects(RUNNING)).hasSizeGreaterThan(7);
  }

  @Test
  void theReadingComesFirstAndHasRoom() {
    Subject first = ClaimForm.subjects(RUNNING).get(0);
    assertThat(first).isEqualTo(new Subject(Kind.READING, new Reading.Display(Dimension.CURRENT)));
    String said =
        ClaimForm.of(first, RUNNING, 0.1, DirectBench.ENGLISH)
            .claim(DirectBench.ENGLISH)
            .map(c -> ClaimWords.sentence(c, DirectBench.ENGLISH))
            .orElseThrow();
    assertThat(said).matches("Current on the meter: 2\\.\\d\\d µA to 2\\.\\d\\d µA");
  }

  @Test
  void whatHappenedMeanwhileIsCounted() {
    ClaimForm form = ClaimForm.of(new Subject(Kind.ENTERS, null), FOUND, 0.1, DirectBench.ENGLISH);
    assertThat(form.claim(DirectBench.ENGLISH).orElseThrow().holds(ENDED)).isTrue();
    assertThat(form.least()).isEqualTo("1");
    Found blind = Found.of(ENDED.after(), null, List.of(), null);
    assertThat(blind.holds(new Claim.Enters(Stage.TRIAL, 1, 1))).isEmpty();
  }

  @Test
  void whatMakesNoSenseIsNoClaim() {
    Wording words = DirectBench.ENGLISH;
    ClaimForm form = ClaimForm.of(ClaimForm.subjects(RUNNING).get(0), RUNNING, 0.1, words);
    assertThat(form.with("3 µA", "2 µA").claim(words)).isEmpty();
    assertThat(form.with("much", "").claim(words)).isEmpty();
    assertThat(form.with("", "").claim(words)).isEmpty();
    assertThat(form.with("2 V", "").claim(words)).isEmpty();
    assertThat(form.with("2.5 µA", "").claim(words)).isPresent();
    ClaimForm share =
        ClaimForm.of(new Subject(Kind.SHARE, new Reading.Signal()), RUNNING, 0.1, words);
    assertThat(share.with("", "").claim(words)).isEmpty();
    assertThat(share.with("80 %", "").claim(words)).isPresent();
    ClaimForm enters = ClaimForm.of(new Subject(Kind.ENTERS, null), RUNNING, 0.1, words);
    assertThat(enters.with("2", "1").claim(words)).isEmpty();
    assertThat(enters.with("2000", "").claim(words)).isEmpty();
  }
}
