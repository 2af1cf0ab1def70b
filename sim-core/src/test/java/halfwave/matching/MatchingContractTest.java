package halfwave.matching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import halfwave.bench.Bench;
import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.instrument.ShippedMeters;
import halfwave.matching.Match.Ambiguity;
import halfwave.matching.Match.Proposal;
import halfwave.quantity.RejectedValueException;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What readings fix, what they leave open, what would help, and what is refused. */
class MatchingContractTest {

  private static final Bench BENCH = ShippedBenches.standard();

  private static TakenReading taken(ReadingKind kind, Setting setting, double si) {
    return TakenReading.of(new Sight(kind, setting, ShippedMeters.service()), si);
  }

  private static Match match(Set<Unknown> unknowns, TakenReading... readings) {
    return (Match) Matching.of(BENCH, unknowns, List.of(readings));
  }

  /** Ohm's law has no say with the lead off: the voltmeter hardly loads the source. */
  @Test
  void whatNoReadingShowsIsSaidToBeUnseen() {
    Match match =
        match(
            EnumSet.of(Unknown.SOURCE_VOLTS, Unknown.BURNER_ATTACHMENT),
            taken(ReadingKind.LEAD_OFF_VOLTS, Setting.AS_FOUND, 90));

    assertThat(match.ambiguities())
        .extracting(Ambiguity::unknowns)
        .containsExactly(List.of(Unknown.BURNER_ATTACHMENT));
    // a per cent of the meter, and a little of the prior
    assertThat(match.estimate(Unknown.SOURCE_VOLTS).orElseThrow().value().si())
        .isCloseTo(110, within(1.5));
  }

  /** One current, two numbers that raise it: only their combination is known. */
  @Test
  void whatMakesUpForEachOtherCannotBeToldApart() {
    Match match =
        match(
            EnumSet.of(Unknown.FILM, Unknown.BURNER_ATTACHMENT),
            taken(ReadingKind.SERIES_DC, Setting.AS_FOUND, 1.2e-6));

    Ambiguity ambiguity = match.ambiguities().get(0);
    assertThat(match.ambiguities()).hasSize(1);
    assertThat(ambiguity.unknowns())
        .containsExactlyInAnyOrder(Unknown.FILM, Unknown.BURNER_ATTACHMENT);
  }

  /** The reading that is proposed, taken as expected, does what was promised of it. */
  @Test
  void theProposedReadingTellsThemApart() {
    TakenReading first = taken(ReadingKind.SERIES_DC, Setting.AS_FOUND, 1.2e-6);
    Set<Unknown> unknowns = EnumSet.of(Unknown.FILM, Unknown.BURNER_ATTACHMENT);
    Proposal further =
        Objects.requireNonNull(match(unknowns, first).ambiguities().get(0).further());

    Match after = match(unknowns, first, new TakenReading(further.sight(), further.expected()));

    assertThat(further.remainingRatio()).isLessThan(0.5);
    assertThat(after.ambiguities()).isEmpty();
    assertThat(after.plausible()).isTrue();
  }

  @Test
  void cleaningTellsTheFilm() {
    Match match =
        match(
            EnumSet.of(Unknown.FILM, Unknown.ION_STRENGTH),
            taken(ReadingKind.SERIES_DC, Setting.AS_FOUND, 1.2e-6),
            taken(ReadingKind.SERIES_DC, Setting.CLEANED, 2.45e-6));

    assertThat(match.ambiguities()).isEmpty();
    assertThat(match.estimate(Unknown.FILM).orElseThrow().low().si()).isGreaterThan(30e-6);
    assertThat(Parameter.ROD_FILM.of(match.bench())).isGreaterThan(30e-6);
    assertThat(match.bench().name()).isEqualTo(BENCH.name() + "-matched");
  }

  /** The lead-off reading fixes the source at half its voltage, which cannot give that current. */
  @Test
  void readingsThatDoNotBelongTogetherAreImplausible() {
    Match match =
        match(
            EnumSet.of(Unknown.SOURCE_VOLTS),
            taken(ReadingKind.SERIES_DC, Setting.AS_FOUND, 2.4e-6),
            taken(ReadingKind.LEAD_OFF_VOLTS, Setting.AS_FOUND, 45));

    assertThat(match.plausible()).isFalse();
  }

  @Test
  void aRodInMetalIsAValue() {
    Matched matched =
        Matching.of(
            BENCH,
            EnumSet.of(Unknown.FILM),
            List.of(taken(ReadingKind.SERIES_DC, new Setting(false, 0, 0, -20e-3), 2e-6)));

    assertThat(matched).isInstanceOf(Matched.Impossible.class);
  }

  @Test
  void nothingToFitOrToFitItToIsRefused() {
    TakenReading reading = taken(ReadingKind.SERIES_DC, Setting.AS_FOUND, 2e-6);

    assertThatExceptionOfType(RejectedValueException.class)
        .isThrownBy(() -> Matching.of(BENCH, EnumSet.of(Unknown.FILM), List.of()))
        .matches(e -> e.field().equals("readings"));
    assertThatExceptionOfType(RejectedValueException.class)
        .isThrownBy(() -> Matching.of(BENCH, Set.of(), List.of(reading)))
        .matches(e -> e.field().equals("unknowns"));
    assertThatExceptionOfType(RejectedValueException.class)
        .isThrownBy(() -> taken(ReadingKind.SERIES_DC, Setting.AS_FOUND, 2.4));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> taken(ReadingKind.SERIES_AC, Setting.AS_FOUND, Double.NaN));
  }

  @Test
  void whatCleaningLeftIsOnlyAskedForWhereItWasRead() {
    TakenReading found = taken(ReadingKind.SERIES_DC, Setting.AS_FOUND, 2e-6);
    TakenReading cleaned = taken(ReadingKind.SERIES_DC, Setting.CLEANED, 2e-6);

    assertThat(Matching.usual(List.of(found))).doesNotContain(Unknown.FILM_LEFT);
    assertThat(Matching.usual(List.of(found, cleaned))).containsExactlyInAnyOrder(Unknown.values());
  }
}
