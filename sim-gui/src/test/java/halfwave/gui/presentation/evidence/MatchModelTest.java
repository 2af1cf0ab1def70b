package halfwave.gui.presentation.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Parameter;
import halfwave.display.UnitSystem;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Benches;
import halfwave.gui.presentation.bench.DirectBench;
import halfwave.gui.presentation.bench.State;
import halfwave.matching.ReadingKind;
import halfwave.matching.Setting;
import halfwave.matching.Unknown;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Readings as they are typed, and the fit that they get. */
class MatchModelTest {

  private static final Wording WORDS = DirectBench.ENGLISH;

  private final Deque<Runnable> background = new ArrayDeque<>();
  private final List<Throwable> failures = new ArrayList<>();
  private final MatchModel model = new MatchModel(background::add, Runnable::run, failures::add);

  private static ReadingForm.Read typed(
      ReadingKind kind, boolean cleaned, String value, String along) {
    return new ReadingForm(kind, cleaned, value, "", "", along).read(WORDS);
  }

  private void add(ReadingKind kind, boolean cleaned, String value) {
    model.add(typed(kind, cleaned, value, "").reading());
  }

  private void runAll() {
    while (!background.isEmpty()) {
      background.remove().run();
    }
  }

  @Test
  void aReadingIsTypedInTheUnitOfItsField() {
    var reading = typed(ReadingKind.SERIES_DC, true, "2,4", "-5").reading();
    assertThat(reading.value().si()).isEqualTo(2.4e-6);
    assertThat(reading.sight().setting()).isEqualTo(new Setting(true, 0, 0, -5e-3));
    assertThat(typed(ReadingKind.LEAD_OFF_VOLTS, false, "84", "").reading().value().si())
        .isEqualTo(84);
    assertThat(typed(ReadingKind.SERIES_DC, false, "900 nA", "").reading().value().si())
        .isEqualTo(900e-9);
  }

  @Test
  void inchesAreForThoseWhoWantThem() {
    Wording inches = Wording.of(Locale.ENGLISH, UnitSystem.INCH);
    var read = new ReadingForm(ReadingKind.SERIES_DC, false, "2", "", "", "1").read(inches);
    assertThat(read.reading().sight().setting().alongMeters()).isEqualTo(0.0254);
  }

  @Test
  void whatIsNoReadingIsRefusedBesideItsField() {
    assertThat(typed(ReadingKind.SERIES_DC, false, "2.4 V", ""))
        .satisfies(r -> assertThat(r.wrong()).isEqualTo(ReadingForm.Field.VALUE))
        .satisfies(r -> assertThat(r.refusal()).contains("µA"));
    assertThat(typed(ReadingKind.TERMINAL_VOLTS, false, "-3", "").refusal()).contains("600");
    assertThat(typed(ReadingKind.SERIES_DC, false, "2.4", "far").wrong())
        .isEqualTo(ReadingForm.Field.ALONG);
  }

  @Test
  void unknownsAreTheUsualOnesUntilSomebodyChooses() {
    assertThat(model.unknowns()).doesNotContain(Unknown.FILM_LEFT);
    add(ReadingKind.SERIES_DC, true, "2.9");
    assertThat(model.unknowns()).contains(Unknown.FILM_LEFT);
    model.choose(Unknown.LEAKAGE, false);
    assertThat(model.unknowns()).doesNotContain(Unknown.LEAKAGE).contains(Unknown.FILM_LEFT);
  }

  @Test
  void aFitHasBarsConclusionsAndABench() {
    add(ReadingKind.SERIES_DC, false, "1.2");
    add(ReadingKind.SERIES_DC, true, "2.9");
    for (Unknown u : Unknown.values()) {
      model.choose(u, u == Unknown.FILM || u == Unknown.ION_STRENGTH);
    }
    State shown = Benches.opened();
    model.fit(shown);
    assertThat(model.busy()).isTrue();
    assertThat(model.ready()).as("not twice at a time").isFalse();
    runAll();

    assertThat(failures).isEmpty();
    assertThat(model.fresh()).isTrue();
    MatchView view = MatchView.of(model.answer(), WORDS);
    assertThat(view.bars()).hasSize(2);
    for (MatchView.Bar bar : view.bars()) {
      assertThat(bar.low()).isBetween(0.0, bar.high());
      assertThat(bar.high()).isBetween(bar.low(), 1.0);
      assertThat(bar.best()).isBetween(0.0, 1.0);
    }
    assertThat(view.bars().get(1).text()).contains("µm", "90 %");
    assertThat(view.lines()).hasSize(2);
    assertThat(view.said()).anySatisfy(t -> assertThat(t).contains("the model's own error"));
    assertThat(Parameter.ROD_FILM.of(view.bench())).isGreaterThan(1e-6);
    model.remove(0);
    assertThat(model.fresh()).isFalse();
  }

  @Test
  void aFitThatIsGivenUpChangesNothing() {
    add(ReadingKind.SERIES_DC, false, "1.2");
    model.fit(Benches.opened());
    model.cancel();
    runAll();
    assertThat(model.busy()).isFalse();
    assertThat(model.answer()).isNull();
  }

  @Test
  void readingsGoToAFileAndComeBack(@TempDir Path folder) {
    add(ReadingKind.SERIES_DC, true, "2.9");
    add(ReadingKind.FLAME_OUT_VOLTS, false, "90");
    var before = model.readings();
    model.save(folder.resolve("r.json"));
    model.readings(List.of());
    model.open(folder.resolve("r.json"));
    assertThat(model.readings()).isEqualTo(before);
  }
}
