package halfwave.bench;

import static halfwave.bench.Hookups.HEALTHY;
import static halfwave.bench.Hookups.STANDARD;
import static halfwave.bench.Hookups.shifted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.InstanceOfAssertFactories.type;

import halfwave.flame.Rod;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a bench accepts. */
class BenchTest {

  private static void refused(ThrowingCallable making, String field, Allowed allowed) {
    assertThatThrownBy(making)
        .asInstanceOf(type(RejectedValueException.class))
        .satisfies(
            e -> {
              assertThat(e.field()).isEqualTo(field);
              assertThat(e.allowed()).isEqualTo(allowed);
            });
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "Upper", "two words", "-a", "a-", "a--b", "a/b", "é"})
  void badNames(String name) {
    refused(() -> new Bench(name, STANDARD.design(), HEALTHY), "name", Allowed.NAME);
  }

  @ParameterizedTest
  @ValueSource(strings = {"a", "a-1", "hot-surface-2"})
  void goodNames(String name) {
    assertThat(new Bench(name, STANDARD.design(), HEALTHY).name()).isEqualTo(name);
  }

  @Test
  void rodInsideTheTubeIsRefused() {
    refused(() -> shifted(0, 0, -16e-3), "design.rod.path", Allowed.CLEAR_OF_BURNER);
    RodPosition swungIn = new RodPosition(0, 0, 0, -0.7, 0, 0);
    refused(
        () -> STANDARD.with(HEALTHY.withRodPosition(swungIn)),
        "design.rod.path",
        Allowed.CLEAR_OF_BURNER);
    refused(
        () -> shifted(0, 0, -14.9e-3).with(STANDARD.design().withRod(below())),
        "design.rod.path",
        Allowed.CLEAR_OF_BURNER);
  }

  private static Rod below() {
    return Rod.across(14e-3, 5e-3, -40e-3, 12e-3, 1.6e-3);
  }

  @Test
  void touchingMetalIsAShort() {
    // the axis 1.5 mm in front of the face, the rod 1.6 mm thick on either side
    Bench touching = shifted(0, 0, -13.5e-3);
    assertThat(touching.rodClearanceMeters()).isZero();
    // no DC, exactly but for rounding of 50 µA
    assertThat(Hookups.dc(touching)).isCloseTo(0, within(1e-18));
    assertThat(shifted(0, 0, -13.3e-3).rodClearanceMeters()).isCloseTo(0.1e-3, within(1e-9));
  }

  @Test
  void aRodBesideTheTubeIsFine() {
    // across at z below the face, above the wall of 13.5 mm
    Bench beside = shifted(0, 15e-3, -25e-3);
    assertThat(beside.rodClearanceMeters()).isPositive();
  }

  @Test
  void notANumberIsRefusedEverywhere() {
    everyNumberRefusesNaN(HEALTHY);
    everyNumberRefusesNaN(RodPosition.FITTED);
    everyNumberRefusesNaN(Coat.CLEAN);
  }

  private static void everyNumberRefusesNaN(Record value) {
    RecordComponent[] parts = value.getClass().getRecordComponents();
    List<String> numbers = new ArrayList<>();
    for (int k = 0; k < parts.length; k++) {
      if (parts[k].getType() == double.class) {
        numbers.add(parts[k].getName());
        int at = k;
        refusesNaN(value, parts, at);
      }
    }
    assertThat(numbers).isNotEmpty();
  }

  private static void refusesNaN(Record value, RecordComponent[] parts, int at) {
    assertThatThrownBy(() -> copyWithNaN(value, parts, at))
        .as(parts[at].getName())
        .isInstanceOf(RejectedValueException.class)
        .hasMessageContaining(parts[at].getName());
  }

  private static void copyWithNaN(Record value, RecordComponent[] parts, int at) throws Throwable {
    Object[] arguments = new Object[parts.length];
    for (int k = 0; k < parts.length; k++) {
      arguments[k] = parts[k].getAccessor().invoke(value);
    }
    arguments[at] = Double.NaN;
    Class<?>[] types = Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new);
    Constructor<?> constructor = value.getClass().getDeclaredConstructor(types);
    try {
      constructor.newInstance(arguments);
    } catch (InvocationTargetException e) {
      throw e.getCause();
    }
  }
}
