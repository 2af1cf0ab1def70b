package halfwave.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import halfwave.quantity.RejectedValueException;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.assertj.core.api.AbstractStringAssert;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Settings that contradict each other are refused by name. */
class BoardSettingsTest {

  private static Arguments refused(
      String field, Supplier<SmallBoard> board, Consumer<SmallBoard> edit) {
    return arguments(field, board, edit);
  }

  static Stream<Arguments> contradictions() {
    return Stream.of(
        refused("provingMillis", SmallBoard::spark, b -> b.proving = b.trial),
        refused("ignitionActivationMillis", SmallBoard::spark, b -> b.activation = b.trial + 1),
        refused("times.ignitionActivationMillis", SmallBoard::spark, b -> b.activation = 0),
        refused("times.ignitionActivationMillis", SmallBoard::pilot, b -> b.activation = 0),
        refused("times.warmUpMillis", SmallBoard::hotSurface, b -> b.warmUp = 0),
        refused("times.retryWarmUpMillis", SmallBoard::hotSurface, b -> b.retryWarmUp = 0),
        refused("times.warmUpMillis", SmallBoard::learning, b -> b.warmUp = 3),
        refused("trialMillis", SmallBoard::spark, b -> b.trial = 0),
        refused("pressureRetryMillis", SmallBoard::hotSurface, b -> b.pressureRetry = 0),
        refused("responseMillis", SmallBoard::spark, b -> b.response = 5),
        refused("fadeMillis", SmallBoard::spark, b -> b.fade = b.response - 1),
        refused("prePurgeMillis", SmallBoard::spark, b -> b.prePurge = -1),
        refused("mostTrials", SmallBoard::spark, b -> b.mostTrials = 0),
        refused("mostTrials", SmallBoard::spark, b -> b.mostTrials = 10),
        refused("mostLosses", SmallBoard::spark, b -> b.mostLosses = -1),
        refused("clearAfterMillis", SmallBoard::spark, b -> b.clearAfter = 0),
        refused("powerResetMillis", SmallBoard::spark, b -> b.powerReset = 0),
        refused("falseFlameClearMillis", SmallBoard::spark, b -> b.falseFlameClear = 0),
        refused("lockoutMillis", SmallBoard::spark, b -> b.lockout = -1),
        refused("callResetMillis", SmallBoard::spark, b -> b.callReset = -1),
        refused("falseFlameLockoutMillis", SmallBoard::spark, b -> b.falseFlameLockout = -1),
        refused("name", SmallBoard::spark, b -> b.name = "Two Words"),
        refused("name", SmallBoard::spark, b -> b.name = ""));
  }

  @ParameterizedTest
  @MethodSource("contradictions")
  void aContradictionIsRefused(
      String field, Supplier<SmallBoard> board, Consumer<SmallBoard> edit) {
    SmallBoard small = board.get();
    assertThat(small.build()).isNotNull();
    edit.accept(small);
    refusing(small::build).isEqualTo(field);
  }

  private enum Amps {
    PICK_UP("pickUpAmps", 0.8e-6, x -> new Sensing(x, 0.5e-6, 1.5e-6, 2e-5, 0.2, 800, 3000, false)),
    DROP_OUT(
        "dropOutAmps", 0.5e-6, x -> new Sensing(0.8e-6, x, 1.5e-6, 2e-5, 0.2, 800, 3000, false)),
    WARNING(
        "warningAmps", 1.5e-6, x -> new Sensing(0.8e-6, 0.5e-6, x, 2e-5, 0.2, 800, 3000, false)),
    SHORTED(
        "shortRmsAmps", 2e-5, x -> new Sensing(0.8e-6, 0.5e-6, 1.5e-6, x, 0.2, 800, 3000, false)),
    FILTER(
        "filterSeconds", 0.2, x -> new Sensing(0.8e-6, 0.5e-6, 1.5e-6, 2e-5, x, 800, 3000, false));

    final String field;
    final double good;
    final DoubleFunction<Sensing> make;

    Amps(String field, double good, DoubleFunction<Sensing> make) {
      this.field = field;
      this.good = good;
      this.make = make;
    }
  }

  @ParameterizedTest
  @EnumSource(Amps.class)
  void whatIsNoNumberIsRefused(Amps amps) {
    assertThat(amps.make.apply(amps.good)).isNotNull();
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, 0, -amps.good}) {
      refusing(() -> amps.make.apply(bad)).isEqualTo(amps.field);
    }
  }

  @Test
  void thresholdsKeepTheirOrder() {
    refusing(() -> Amps.DROP_OUT.make.apply(0.81e-6)).isEqualTo("dropOutAmps");
    refusing(() -> Amps.WARNING.make.apply(0.49e-6)).isEqualTo("warningAmps");
    refusing(() -> Amps.SHORTED.make.apply(0.79e-6)).isEqualTo("shortRmsAmps");
  }

  @Test
  void learningKeepsItsOrder() {
    refusing(() -> new WarmUpLearning(0, 1, 2)).isEqualTo("stepMillis");
    refusing(() -> new WarmUpLearning(1, 0, 2)).isEqualTo("leastMillis");
    refusing(() -> new WarmUpLearning(1, 3, 2)).isEqualTo("mostMillis");
  }

  private static AbstractStringAssert<?> refusing(ThrowingCallable call) {
    return assertThatThrownBy(call)
        .asInstanceOf(InstanceOfAssertFactories.type(RejectedValueException.class))
        .extracting(RejectedValueException::field, InstanceOfAssertFactories.STRING);
  }
}
