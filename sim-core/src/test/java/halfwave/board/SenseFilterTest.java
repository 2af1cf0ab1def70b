package halfwave.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import halfwave.quantity.RejectedValueException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the sense filter takes for a flame. */
class SenseFilterTest {

  /** Pick-up 0.8, drop-out 0.5, warning 1.5, short from 20 µA, τ 0.2 s. */
  private static final Sensing SENSING = ShippedBoards.all().get(0).sensing();

  /** 150 time constants: the filter shows its input, to the bit. */
  private static final double LONG_SECONDS = 30;

  private static FlameSignal settled(SenseFilter from, double meanAmps, double rmsAmps) {
    return from.after(SENSING, meanAmps, rmsAmps, LONG_SECONDS).signal();
  }

  private static SenseFilter with(FlameSignal signal) {
    return new SenseFilter(0, 0, signal);
  }

  @ParameterizedTest
  @CsvSource({
    "0.79e-6, NONE, NONE",
    "0.80e-6, NONE, WEAK",
    "0.79e-6, SHORTED, NONE",
    "0.80e-6, SHORTED, WEAK",
    "0.79e-6, WEAK, WEAK",
    "0.50e-6, WEAK, WEAK",
    "0.50e-6, GOOD, WEAK",
    "0.49e-6, WEAK, NONE",
    "0.49e-6, GOOD, NONE",
    "1.49e-6, NONE, WEAK",
    "1.50e-6, NONE, GOOD",
    "1.60e-6, WEAK, WEAK",
    "1.66e-6, WEAK, GOOD",
    "1.60e-6, GOOD, GOOD"
  })
  void aFlameIsPickedUpAboveWhereItDropsOut(
      double meanAmps, FlameSignal before, FlameSignal after) {
    assertThat(settled(with(before), meanAmps, 5e-6)).isEqualTo(after);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 19.9e-6, NONE",
    "0, 20e-6, SHORTED",
    "0, 100e-6, SHORTED",
    "0.4e-6, 100e-6, SHORTED",
    "4e-6, 100e-6, GOOD"
  })
  void muchCurrentWithoutDcIsAShort(double meanAmps, double rmsAmps, FlameSignal signal) {
    assertThat(settled(SenseFilter.QUIET, meanAmps, rmsAmps)).isEqualTo(signal);
  }

  @Test
  void noTimeChangesNoCurrent() {
    SenseFilter before = new SenseFilter(2e-6, 5e-6, FlameSignal.GOOD);
    assertThat(before.after(SENSING, -4e-6, 1e-3, 0)).isEqualTo(before);
  }

  @Test
  void itComesToRest() {
    SenseFilter rest = SenseFilter.QUIET.after(SENSING, 4e-6, 8e-6, LONG_SECONDS);
    SenseFilter next = rest.after(SENSING, 4e-6, 8e-6, 0.01);
    assertThat(next).isEqualTo(new SenseFilter(4e-6, 8e-6, FlameSignal.GOOD));
    assertThat(next.after(SENSING, 4e-6, 8e-6, 0.01)).isEqualTo(next);
  }

  /** A number that is none would stay in the filter for ever. */
  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void whatIsNoNumberIsRefused(double value) {
    assertThatThrownBy(() -> SenseFilter.QUIET.after(SENSING, value, 0, 1))
        .isInstanceOf(RejectedValueException.class)
        .hasMessageContaining("throughMeanAmps");
    assertThatThrownBy(() -> SenseFilter.QUIET.after(SENSING, 0, value, 1))
        .isInstanceOf(RejectedValueException.class)
        .hasMessageContaining("throughRmsAmps");
    assertThatThrownBy(() -> SenseFilter.QUIET.after(SENSING, 0, 0, value))
        .isInstanceOf(RejectedValueException.class)
        .hasMessageContaining("seconds");
  }
}
