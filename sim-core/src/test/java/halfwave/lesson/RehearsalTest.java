package halfwave.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import halfwave.board.Stage;
import halfwave.board.StatusCode;
import halfwave.circuit.Point;
import halfwave.instrument.HookUp.Across;
import halfwave.instrument.MeterFunction;
import halfwave.lesson.Reading.Burners;
import halfwave.lesson.Reading.Display;
import halfwave.lesson.Reading.Metered;
import halfwave.lesson.Reading.Signal;
import halfwave.lesson.Rehearsal.Doubt;
import halfwave.message.Quantity;
import halfwave.quantity.Dimension;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Claims are judged by the model, and what is not so is found. */
class RehearsalTest {

  /** The lead is pulled on a running furnace. */
  private static final Performance PULLED =
      Lessons.pull()
          .from(Playthrough.begin(Lessons.demonstration(Lessons.step(null, Play.NOTHING))).moment())
          .performed();

  private static final Performance BEFORE =
      new Performance(PULLED.before(), List.of(), PULLED.before());

  private static final Reading DC = new Metered(MeterFunction.DC_MICROAMPS, Lessons.SERIES);

  private static Quantity amps(double amps) {
    return new Quantity(amps, Dimension.CURRENT);
  }

  @Test
  void readingsAreBetweenTheirBounds() {
    assertThat(new Claim.Between(DC, amps(2e-6), amps(3e-6)).holds(BEFORE)).isTrue();
    assertThat(new Claim.Between(DC, amps(3e-6), null).holds(BEFORE)).isFalse();
    assertThat(new Claim.Between(DC, null, amps(2e-6)).holds(BEFORE)).isFalse();
    assertThat(new Claim.Between(new Signal(), amps(2e-6), null).holds(BEFORE)).isTrue();
    assertThat(new Claim.Between(new Signal(), null, amps(1e-8)).holds(PULLED)).isTrue();
  }

  @Test
  void burnersAreCounted() {
    Quantity three = new Quantity(3, Dimension.NUMBER);
    assertThat(new Claim.Between(new Burners(), three, three).holds(BEFORE)).isTrue();
    assertThat(new Claim.Between(new Burners(), three, null).holds(PULLED)).isFalse();
  }

  /** The meter that is there shows current and nothing else. */
  @Test
  void theDisplayShowsWhatItIsSetTo() {
    Claim amps = new Claim.Between(new Display(Dimension.CURRENT), amps(2e-6), null);
    Claim volts =
        new Claim.Between(
            new Display(Dimension.VOLTAGE), new Quantity(-1e6, Dimension.VOLTAGE), null);

    assertThat(amps.holds(BEFORE)).isTrue();
    assertThat(volts.holds(BEFORE)).isFalse();
  }

  /** With the lead off, the terminal rises to nearly the open voltage, and the DC is gone. */
  @Test
  void sharesAreOfTheBeginning() {
    Reading volts = new Metered(MeterFunction.AC_VOLTS, new Across(Point.TERMINAL, Point.CHASSIS));

    assertThat(new Claim.Compared(volts, 1.05, 1.3).holds(PULLED)).isTrue();
    assertThat(new Claim.Compared(volts, 0, 1).holds(PULLED)).isFalse();
    assertThat(new Claim.Compared(DC, 0, 0.01).holds(PULLED)).isTrue();
    assertThat(new Claim.Compared(DC, 0.9, Double.POSITIVE_INFINITY).holds(BEFORE)).isTrue();
  }

  /** There is no share of nothing. */
  @Test
  void nothingHasNoShares() {
    Performance dead = new Performance(PULLED.after(), List.of(), PULLED.after());
    Reading burners = new Burners();

    assertThat(new Claim.Compared(burners, 0, Double.POSITIVE_INFINITY).holds(dead)).isFalse();
  }

  @Test
  void theBoardIsAskedForStageLightAndWay() {
    assertThat(new Claim.At(Stage.INTER_PURGE).holds(PULLED)).isTrue();
    assertThat(new Claim.At(Stage.RUN).holds(PULLED)).isFalse();
    assertThat(new Claim.Shows(StatusCode.FLAME_LOST).holds(PULLED)).isTrue();
    assertThat(new Claim.Shows(StatusCode.FLAME).holds(PULLED)).isFalse();
    assertThat(new Claim.Enters(Stage.INTER_PURGE, 1, 1).holds(PULLED)).isTrue();
    assertThat(new Claim.Enters(Stage.INTER_PURGE, 2, 9).holds(PULLED)).isFalse();
    assertThat(new Claim.Enters(Stage.SOFT_LOCKOUT, 0, 0).holds(PULLED)).isTrue();
  }

  @Test
  void whatIsNotSoIsFound() {
    Claim runs = new Claim.At(Stage.RUN);
    Claim lost = new Claim.Shows(StatusCode.FLAME_LOST);
    Question wrongly =
        new Question(
            Lessons.words("what?"),
            List.of(Lessons.answer(runs), Lessons.answer(lost), Lessons.answer()),
            0);
    Question rightly = new Question(wrongly.ask(), wrongly.answers(), 1);

    assertThat(
            Rehearsal.of(Lessons.demonstration(Lessons.step(wrongly, Lessons.pull(), lost, runs)))
                .doubts())
        .containsExactly(new Doubt(0, null, runs), new Doubt(0, 0, runs), new Doubt(0, 1, null));
    assertThat(
            Rehearsal.of(Lessons.demonstration(Lessons.step(rightly, Lessons.pull(), lost)))
                .doubts())
        .isEmpty();
  }

  @Test
  void aQuestionIsAChoiceWithAProof() {
    Answer proved = Lessons.answer(new Claim.At(Stage.RUN));
    Words ask = Lessons.words("what?");

    assertThatIllegalArgumentException().isThrownBy(() -> new Question(ask, List.of(proved), 0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Question(ask, List.of(proved, proved), 2));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Question(ask, List.of(proved, Lessons.answer()), 1))
        .withMessageContaining("no claim");
  }

  @Test
  void claimsSaySomethingThatCanBe() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Claim.Between(DC, null, null));
    assertThatIllegalArgumentException().isThrownBy(() -> new Claim.Between(DC, amps(2), amps(1)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Claim.Between(DC, new Quantity(2, Dimension.VOLTAGE), null));
    assertThatIllegalArgumentException().isThrownBy(() -> new Claim.Compared(DC, 2, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Claim.Compared(DC, Double.NaN, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Claim.Enters(Stage.RUN, 2, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Metered(MeterFunction.AC_AND_DC_MICROAMPS, Lessons.SERIES));
  }
}
