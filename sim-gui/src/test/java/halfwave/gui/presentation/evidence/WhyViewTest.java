package halfwave.gui.presentation.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import halfwave.bench.Coat;
import halfwave.bench.Condition;
import halfwave.bench.Parameter;
import halfwave.circuit.Part;
import halfwave.circuit.Solved;
import halfwave.display.Sentences;
import halfwave.display.UnitSystem;
import halfwave.explain.FittedRod;
import halfwave.explain.MomentAccount;
import halfwave.explain.MomentAnswer;
import halfwave.explain.VoltageLadder;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.Benches;
import halfwave.gui.presentation.bench.DirectBench;
import halfwave.gui.presentation.bench.Intent;
import halfwave.gui.presentation.bench.MeterView;
import halfwave.gui.presentation.bench.Spot;
import halfwave.gui.presentation.bench.State;
import halfwave.instrument.HookUp;
import halfwave.instrument.LeadEnd;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.ShippedMeters;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.picture.scene.DrawnPart;
import halfwave.sequence.Deed;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The bench is explained as it is now, in every language. */
class WhyViewTest {

  private static final double OPEN = Double.POSITIVE_INFINITY;
  private static final long A_WHILE_MILLIS = 10_000;
  private static final State HEALTHY = Benches.opened();

  private static MomentAccount account(State state) {
    return WhyQuestion.of(state).answer().account();
  }

  private static List<MessageKey> keys(List<Message> messages) {
    return messages.stream().map(Message::key).toList();
  }

  private static WhyView view(State state, Locale locale) {
    return WhyView.of(WhyQuestion.of(state).answer(), Wording.of(locale, UnitSystem.METRIC));
  }

  private static State lostGround() {
    return Benches.later(Benches.with(HEALTHY, Parameter.GROUND, OPEN), A_WHILE_MILLIS);
  }

  @Test
  void tellsAHealthyBench() {
    MomentAccount account = account(HEALTHY);

    assertThat(keys(account.verdict())).startsWith(MessageKey.ACCOUNT_SENSE_GOOD);
    assertThat(keys(account.halfCycles()))
        .containsExactly(
            MessageKey.ACCOUNT_ROD_POSITIVE,
            MessageKey.ACCOUNT_ROD_NEGATIVE,
            MessageKey.ACCOUNT_RECTIFIES);
    assertThat(account.findings()).isEmpty();
    assertThat(account.depends()).isNotEmpty();
    assertThat(keys(account.meter())).containsExactly(MessageKey.ACCOUNT_METER_SLIGHT);
    assertThat(keys(account.board()))
        .containsExactly(MessageKey.ACCOUNT_BOARD, MessageKey.BOARD_PROVED);
    assertThat(view(HEALTHY, Locale.ENGLISH).title()).startsWith("Why 2.").endsWith("DC?");
  }

  @Test
  void aRodDrawnOutSidewaysIsComparedWithWhereItWasFitted() {
    State drawnOut =
        Benches.later(Benches.with(HEALTHY, Parameter.ROD_ACROSS, -1e-2), A_WHILE_MILLIS);
    MomentAnswer answer = MomentAnswer.of(drawnOut.moment());
    FittedRod fitted = Objects.requireNonNull(answer.fitted());
    MomentAnswer healthy = MomentAnswer.of(Benches.later(HEALTHY, A_WHILE_MILLIS).moment());

    assertThat(healthy.fitted()).isNull();
    // the rod in its new place has another temperature than the fitted one had: a per cent of DC
    assertThat(fitted.positiveAmps()).isCloseTo(crest(healthy.rodPositive()), withinPercentage(2));
    assertThat(fitted.negativeAmps()).isCloseTo(crest(healthy.rodNegative()), withinPercentage(2));
    assertThat(keys(account(drawnOut).halfCycles()))
        .endsWith(MessageKey.ACCOUNT_ROD_IN_FLAME, MessageKey.ACCOUNT_ROD_MOVED);
    assertThat(fitted.negativeAmps())
        .as("the rod collects fewer ions: what is taken from the DC shrinks, and the DC grows")
        .isGreaterThan(crest(answer.rodNegative()));
    assertThat(fitted.dcAmps())
        .isLessThan(((Solved) answer.loaded()).currentMeanAmps(Part.CONNECTOR));
    for (Locale locale : List.of(Locale.ENGLISH, Locale.forLanguageTag("es"))) {
      assertThat(view(drawnOut, locale).toString()).contains("µA").doesNotContain("{");
    }
  }

  private static double crest(@Nullable VoltageLadder ladder) {
    return Math.abs(Objects.requireNonNull(ladder).flameAmps());
  }

  @Test
  void tellsWhyThereIsNoFlame() {
    MomentAccount account = account(lostGround());

    assertThat(keys(account.verdict()))
        .containsExactly(MessageKey.ACCOUNT_UNLIT, MessageKey.ACCOUNT_IF_LIT);
    assertThat(keys(account.findings())).containsExactly(MessageKey.ACCOUNT_GROUND_LOST);
    assertThat(account.halfCycles()).isEmpty();
    assertThat(keys(account.board()))
        .as("why the gas was shut")
        .contains(MessageKey.BOARD_FLAME_LOST);
    assertThat(view(lostGround(), Locale.ENGLISH).title()).isEqualTo("Why no flame?");
  }

  @Test
  void tellsWhatTheMeterDoes() {
    State volts =
        Benches.after(
            HEALTHY, new Intent.Measure(MeterFunction.AC_VOLTS, Spot.TERMINAL_TO_COMMON.placing()));
    Meter blown = new Meter(ShippedMeters.service(), false, true);
    HookUp series = new HookUp.InSenseLead(LeadEnd.BOARD, true);
    State open =
        Benches.later(
            Benches.after(HEALTHY, new Deed.HookOn(blown, MeterFunction.DC_MICROAMPS, series)),
            5000);

    assertThat(keys(account(volts).meter())).contains(MessageKey.ACCOUNT_METER_LOADS);
    assertThat(keys(account(open).meter())).contains(MessageKey.ACCOUNT_METER_CUTS);
    assertThat(keys(account(Benches.after(HEALTHY, new Deed.TakeOff())).meter()))
        .containsExactly(MessageKey.ACCOUNT_METER_NONE);
  }

  @Test
  void tellsAWeakSignalFromOneThatIsHardlyRectified() {
    State resistance = Benches.later(Benches.with(HEALTHY, Parameter.CONNECTOR, 5e6));
    State film =
        Benches.after(
            HEALTHY, new Deed.Become(Condition.HEALTHY.withRodCoat(Coat.even(30e-6, 1e4))));

    assertThat(keys(account(resistance).verdict()))
        .contains(MessageKey.ACCOUNT_SENSE_WEAK)
        .doesNotContain(MessageKey.ACCOUNT_CONDUCTS_ONLY);
    assertThat(keys(account(film).verdict())).contains(MessageKey.ACCOUNT_CONDUCTS_ONLY);
    assertThat(keys(account(film).findings())).containsExactly(MessageKey.ACCOUNT_FILM);
  }

  @Test
  void tellsThatThereIsNoPower() {
    State off = Benches.later(Benches.after(HEALTHY, new Deed.Supply(false)));

    assertThat(keys(account(off).verdict()))
        .containsExactly(MessageKey.ACCOUNT_NO_POWER, MessageKey.ACCOUNT_UNLIT);
    assertThat(account(off).meter()).isEmpty();
  }

  @Test
  void namesByNameWhatHasNoSentenceOfItsOwn() {
    State moved = Benches.with(HEALTHY, Parameter.SENSE_SUPPLY, 0.9);

    assertThat(keys(account(moved).findings())).containsExactly(MessageKey.ACCOUNT_WRONG);
  }

  @Test
  void canBeSaidInEveryLanguage() {
    for (State state : List.of(HEALTHY, lostGround())) {
      for (Locale locale : Sentences.LANGUAGES) {
        WhyView view = view(state, locale);
        Stream<String> all =
            view.sections().stream()
                .flatMap(
                    s ->
                        Stream.concat(
                            Stream.of(s.heading(), view.title()),
                            s.sentences().stream().flatMap(t -> Stream.of(t.text(), t.spoken()))));
        assertThat(all)
            .allSatisfy(text -> assertThat(text).doesNotContain("{").doesNotContain("NaN"));
      }
    }
  }

  @Test
  void verdictComesFirstAndLightsTheBoard() {
    WhyView.Section first = view(HEALTHY, Locale.ENGLISH).sections().get(0);

    assertThat(first.heading()).isEmpty();
    assertThat(first.sentences().get(0).parts()).contains(DrawnPart.SENSE_TERMINAL);
    assertThat(first.sentences().get(0).spoken()).contains("sense terminal");
  }

  private static String first(WhyView view) {
    return view.sections().get(0).sentences().get(0).text().replace('\u00a0', ' ');
  }

  @Test
  void headlineMeterAndFirstSentenceHaveOneNumber() {
    for (State state : List.of(HEALTHY, Benches.with(HEALTHY, Parameter.CONNECTOR, 3e6))) {
      String number = MeterView.of(state, DirectBench.ENGLISH).number();

      assertThat(number).matches("[0-9.]+");
      assertThat(view(state, Locale.ENGLISH).title()).contains(' ' + number + ' ');
      assertThat(first(view(state, Locale.ENGLISH))).startsWith(number + ' ');
    }
  }

  @Test
  void onTheLineItSpeaksOfTheLineAndNotOfTheFlame() {
    State line =
        Benches.later(
            Benches.after(
                HEALTHY,
                new Intent.Measure(MeterFunction.AC_VOLTS, Spot.LINE_TO_NEUTRAL.placing())));
    String number = MeterView.of(line, DirectBench.ENGLISH).number();

    assertThat(view(line, Locale.ENGLISH).title()).contains(' ' + number + ' ');
    assertThat(first(view(line, Locale.ENGLISH)))
        .contains(' ' + number + " V AC")
        .contains("line")
        .contains("neutral");
    assertThat(view(line, Locale.ENGLISH).sections().get(0).sentences().get(1).text())
        .startsWith("That is the supply");
  }

  @Test
  void causesComeBeforeThePhysics() {
    State weak = Benches.later(Benches.with(HEALTHY, Parameter.CONNECTOR, 3e6));

    assertThat(view(weak, Locale.ENGLISH).sections().get(1).heading())
        .isEqualTo(DirectBench.ENGLISH.text("why.wrong"));
  }

  @Test
  void whyNoFlameBeginsWithWhatTheBoardDid() {
    MomentAccount account = account(lostGround());
    String did = DirectBench.ENGLISH.sentences().sentence(account.board().get(1));

    assertThat(first(view(lostGround(), Locale.ENGLISH))).isEqualTo(did);
  }

  @Test
  void theClockAloneRaisesNoNewQuestion() {
    WhyQuestion question = WhyQuestion.of(HEALTHY);

    assertThat(question.sameAs(WhyQuestion.of(Benches.later(HEALTHY)))).isTrue();
    assertThat(question.sameAs(WhyQuestion.of(lostGround()))).isFalse();
    assertThat(question.sameAs(WhyQuestion.of(Benches.with(HEALTHY, Parameter.CONNECTOR, 1e6))))
        .isFalse();
  }
}
