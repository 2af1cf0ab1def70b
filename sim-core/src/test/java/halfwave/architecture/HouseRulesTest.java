package halfwave.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every rule of the house bites on a deliberately bad class. */
class HouseRulesTest {
  private static final JavaClasses BAD =
      new ClassFileImporter().importPackages("halfwave.architecture.bad");

  /** The diagram rule refuses classes that are not drawn, so it is shown only those that are. */
  private static final JavaClasses DRAWN =
      new ClassFileImporter().importPackages("halfwave.architecture.bad.halfwave");

  static Stream<Arguments> bites() {
    return Stream.of(
        Arguments.of(HouseRules.DIAGRAM_IS_OBEYED, DRAWN, "UsesALayerBelow"),
        Arguments.of(HouseRules.NO_CYCLES, BAD, "architecture.bad.left"),
        Arguments.of(HouseRules.NO_JUNK_DRAWERS, BAD, "bad.util.Odds"),
        Arguments.of(HouseRules.PACKAGES_ARE_DESCRIBED, BAD, "halfwave.architecture.bad has no"),
        Arguments.of(HouseRules.PICTURES_STAY_IN_PICTURE, BAD, "java.awt.Color"),
        Arguments.of(HouseRules.SAME_BITS_EVERYWHERE, BAD, "Math.exp(double)"),
        Arguments.of(HouseRules.SAME_BITS_EVERYWHERE, BAD, "Math.sin(double)"),
        Arguments.of(HouseRules.SAME_BITS_EVERYWHERE, BAD, "Math.hypot(double, double)"),
        Arguments.of(HouseRules.NO_HIDDEN_INPUT, BAD, "System.nanoTime()"),
        Arguments.of(HouseRules.NO_HIDDEN_INPUT, BAD, "System.currentTimeMillis()"),
        Arguments.of(HouseRules.NO_HIDDEN_INPUT, BAD, "java.time.Instant.now()"),
        Arguments.of(HouseRules.NO_HIDDEN_INPUT, BAD, "java.util.Random.<init>()"),
        Arguments.of(HouseRules.NO_PRINTING, BAD, "System.out"),
        Arguments.of(HouseRules.NO_PRINTING, BAD, "printStackTrace()"),
        Arguments.of(HouseRules.UNITS_IN_NAMES, BAD, "UnitlessRecord.current "),
        Arguments.of(HouseRules.UNITS_IN_NAMES, BAD, "UnitlessRecord.samples "),
        Arguments.of(HouseRules.UNITS_IN_NAMES, BAD, "UnitlessRecord.table "),
        Arguments.of(HouseRules.UNITS_IN_NAMES, BAD, "UnitlessRecord.leadMilliamps "));
  }

  @ParameterizedTest
  @MethodSource("bites")
  void ruleBites(ArchRule rule, JavaClasses classes, String culprit) {
    assertThat(rule.evaluate(classes).getFailureReport().toString()).contains(culprit);
  }

  @Test
  void ruleLetsExactMathsPass() {
    assertThat(HouseRules.SAME_BITS_EVERYWHERE.evaluate(BAD).getFailureReport().toString())
        .doesNotContain("Math.sqrt");
  }

  @Test
  void ruleLetsNamedUnitsPass() {
    assertThat(HouseRules.UNITS_IN_NAMES.evaluate(BAD).getFailureReport().toString())
        .doesNotContain("goodVolts", "UnitlessRecord.ohms", "steps");
  }

  /** Otherwise "timeMilliseconds" or "leadMilliamps" would slip through. */
  @Test
  void noUnitIsFoundInsideALargerWord() {
    assertThat(HouseRules.endsWithUnit("timeMilliseconds")).isFalse();
    assertThat(HouseRules.endsWithUnit("discount")).isFalse();
    assertThat(HouseRules.endsWithUnit("timeSeconds")).isTrue();
    assertThat(HouseRules.endsWithUnit("logOdds")).isTrue();
  }
}
