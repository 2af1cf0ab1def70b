package halfwave.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.Configuration.consideringOnlyDependenciesInDiagram;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.adhereToPlantUmlDiagram;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.net.URL;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.NullMarked;

/**
 * The rules of the house. {@link LayersTest} applies them, {@link HouseRulesTest} shows each one
 * biting.
 */
final class HouseRules {
  private HouseRules() {}

  static final URL DIAGRAM = Objects.requireNonNull(HouseRules.class.getResource("/layers.puml"));

  /** Unit names a double in a record may end with. The one place to add a unit. */
  static final List<String> UNIT_SUFFIXES =
      List.of(
          // electricity
          "Volts",
          "Amps",
          "Ohms",
          "Siemens",
          "Farads",
          "Henrys",
          "Coulombs",
          "Watts",
          "Joules",
          "AmpsPerRootVolt",
          "AmpsPerSquareMeter",
          "VoltsPerMeter",
          "VoltsPerSecond",
          "AmpsPerSecond",
          "OhmMeters",
          "OhmSquareMeters",
          "SiemensPerMeter",
          "FaradsPerMeter",
          "SquareMetersPerVoltSecond",
          // time and rate
          "Seconds",
          "Minutes",
          "Hertz",
          "PerSecond",
          "RadiansPerSecond",
          // marks and costs
          "Points",
          "Units",
          // geometry
          "Meters",
          "SquareMeters",
          "CubicMeters",
          "PerMeter",
          "Radians",
          "MetersPerSecond",
          "SquareMetersPerSecond",
          "CubicMetersPerSecond",
          // matter and heat
          "Kelvin",
          "KelvinPerSecond",
          "Pascals",
          "Kilograms",
          "KilogramsPerCubicMeter",
          "Moles",
          "PerCubicMeter",
          "PerCubicMeterSecond",
          "JoulesPerCubicMeter",
          "JoulesPerKelvin",
          "WattsPerKelvin",
          "WattsPerMeterKelvin",
          "WattsPerSquareMeter",
          // pure numbers
          "Ratio",
          "Probability",
          "LogOdds",
          "Bits",
          "Count");

  /** What java.lang.Math defines to the last bit. Everything else may differ by an ulp. */
  static final Set<String> EXACT_MATHS =
      Set.of(
          "sqrt",
          "fma",
          "abs",
          "min",
          "max",
          "floor",
          "ceil",
          "rint",
          "round",
          "signum",
          "copySign",
          "ulp",
          "nextUp",
          "nextDown",
          "nextAfter",
          "scalb",
          "getExponent",
          "absExact",
          "addExact",
          "subtractExact",
          "multiplyExact",
          "incrementExact",
          "decrementExact",
          "negateExact",
          "toIntExact",
          "floorDiv",
          "floorMod",
          "multiplyFull",
          "multiplyHigh");

  static final ArchRule DIAGRAM_IS_OBEYED =
      classes()
          .should(adhereToPlantUmlDiagram(DIAGRAM, consideringOnlyDependenciesInDiagram()))
          .allowEmptyShould(true);

  /** Subpackages count as slices of their own. */
  static final ArchRule NO_CYCLES =
      slices().matching("halfwave.(**)").should().beFreeOfCycles().allowEmptyShould(true);

  static final ArchRule NO_JUNK_DRAWERS =
      noClasses()
          .should()
          .resideInAnyPackage("..util..", "..common..", "..helper..", "..manager..")
          .because("such a name says nothing about what belongs in it")
          .allowEmptyShould(true);

  static final ArchRule PACKAGES_ARE_DESCRIBED =
      classes().should(haveNullMarkedPackageInfo()).allowEmptyShould(true);

  static final ArchRule PICTURES_STAY_IN_PICTURE =
      noClasses()
          .that()
          .resideOutsideOfPackages("halfwave.picture..", "halfwave.paper..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "java.awt..",
              "javax.swing..",
              "org.jfree..",
              "org.apache.pdfbox..",
              "org.apache.batik..")
          .allowEmptyShould(true);

  /** Pixels may differ by an ulp; numbers, sentences and files may not. */
  static final ArchRule SAME_BITS_EVERYWHERE =
      noClasses()
          .that()
          .resideOutsideOfPackages("halfwave.picture..", "halfwave.paper..")
          .should()
          .accessTargetWhere(
              describe(
                  "is a method of Math that may differ by an ulp",
                  access ->
                      access.getTargetOwner().isEquivalentTo(Math.class)
                          && !EXACT_MATHS.contains(access.getTarget().getName())))
          .because("StrictMath and FastMath give the same bits on every machine")
          .allowEmptyShould(true);

  static final ArchRule NO_HIDDEN_INPUT =
      noClasses()
          .should()
          .accessTargetWhere(
              describe("reads the clock or unseeded chance", HouseRules::readsClockOrChance))
          .because("time and seed are arguments")
          .allowEmptyShould(true);

  static final ArchRule NO_PRINTING =
      noClasses()
          .should()
          .accessTargetWhere(describe("prints to the console", HouseRules::prints))
          .because("the core answers with values")
          .allowEmptyShould(true);

  static final ArchRule UNITS_IN_NAMES =
      classes().that().areRecords().should(nameTheirUnits()).allowEmptyShould(true);

  private static boolean readsClockOrChance(JavaAccess<?> access) {
    JavaClass owner = access.getTargetOwner();
    String name = access.getTarget().getName();
    return (owner.isEquivalentTo(System.class)
            && Set.of("currentTimeMillis", "nanoTime").contains(name))
        || (owner.getPackageName().equals("java.time")
            && (name.equals("now") || name.startsWith("system")))
        || (owner.isEquivalentTo(java.util.Date.class) && name.equals("<init>"))
        || owner.isAssignableTo(java.util.Random.class)
        || (owner.isEquivalentTo(java.util.UUID.class) && name.equals("randomUUID"));
  }

  private static boolean prints(JavaAccess<?> access) {
    String name = access.getTarget().getName();
    return (access.getTargetOwner().isEquivalentTo(System.class)
            && Set.of("out", "err").contains(name))
        || (access.getTargetOwner().isAssignableTo(Throwable.class)
            && name.equals("printStackTrace"));
  }

  private static ArchCondition<JavaClass> haveNullMarkedPackageInfo() {
    return new ArchCondition<>("be in a package with a @NullMarked package-info") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        boolean marked =
            type.getPackage()
                .tryGetPackageInfo()
                .map(info -> info.isAnnotatedWith(NullMarked.class))
                .orElse(false);
        String message = type.getPackageName() + " has no @NullMarked package-info.java";
        events.add(new SimpleConditionEvent(type, marked, message));
      }
    };
  }

  private static ArchCondition<JavaClass> nameTheirUnits() {
    return new ArchCondition<>("end the name of every double with its SI unit") {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        for (JavaField field : type.getFields()) {
          if (!field.getModifiers().contains(JavaModifier.STATIC) && holdsDoubles(field)) {
            String message =
                field.getFullName() + " names no unit of HouseRules.UNIT_SUFFIXES at its end";
            events.add(new SimpleConditionEvent(field, endsWithUnit(field.getName()), message));
          }
        }
      }
    };
  }

  /** Arrays of any depth count as well. */
  private static boolean holdsDoubles(JavaField field) {
    JavaClass base = field.getRawType().getBaseComponentType();
    return base.isEquivalentTo(double.class)
        || base.isEquivalentTo(Double.class)
        || base.isEquivalentTo(OptionalDouble.class);
  }

  /** A name may also be the bare unit: {@code ohms}. */
  static boolean endsWithUnit(String name) {
    return !name.isEmpty()
        && UNIT_SUFFIXES.stream()
            .anyMatch(
                unit ->
                    name.endsWith(unit)
                        || name.equals(Character.toLowerCase(unit.charAt(0)) + unit.substring(1)));
  }
}
