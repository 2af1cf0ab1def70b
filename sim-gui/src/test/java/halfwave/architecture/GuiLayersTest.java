package halfwave.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.Configuration.consideringOnlyDependenciesInDiagram;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.adhereToPlantUmlDiagram;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** The front end obeys the diagram it shares with the core. */
@AnalyzeClasses(packages = "halfwave", importOptions = DoNotIncludeTests.class)
class GuiLayersTest {
  /** Includes the core, so that a package that sits in both modules is seen whole. */
  @ArchTest
  static final ArchRule diagram =
      classes()
          .should(
              adhereToPlantUmlDiagram(
                  Objects.requireNonNull(GuiLayersTest.class.getResource("/layers.puml")),
                  consideringOnlyDependenciesInDiagram()))
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule cycles =
      slices().matching("halfwave.(**)").should().beFreeOfCycles().allowEmptyShould(true);

  @ArchTest
  static final ArchRule junkDrawers =
      noClasses()
          .should()
          .resideInAnyPackage("..util..", "..common..", "..helper..", "..manager..")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule onlyPanelsNeedADisplay =
      noClasses()
          .that(resideInAnyPackage("..halfwave.cli..", "..halfwave.gui.presentation.."))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("javax.swing..", "java.awt..")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule packagesAreDescribed =
      classes()
          .should(
              new ArchCondition<JavaClass>("be in a package with a @NullMarked package-info") {
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
              })
          .allowEmptyShould(true);

  /** Themes of the window in their order. */
  private static final List<String> THEMES =
      List.of("widget", "bench", "charts", "evidence", "lesson", "editor", "desk", "quiz");

  private static final String WINDOW = "halfwave.gui.";

  /** All may use the parent of presentation; the parent of the panels may use all. */
  @ArchTest
  static final ArchRule themesKeepTheirOrder =
      classes()
          .that(resideInAnyPackage("..halfwave.gui.."))
          .should(
              new ArchCondition<JavaClass>("use no theme after their own, in either layer") {
                @Override
                public void check(JavaClass type, ConditionEvents events) {
                  for (Dependency use : type.getDirectDependenciesFromSelf()) {
                    JavaClass used = use.getTargetClass();
                    boolean later =
                        used.getPackageName().contains(WINDOW) && order(used) > order(type);
                    events.add(new SimpleConditionEvent(type, !later, use.getDescription()));
                  }
                }
              })
          .allowEmptyShould(true);

  /**
   * Its place among the themes; a package that is none comes after all, and may be used by none.
   */
  private static int order(JavaClass type) {
    String name = type.getPackageName();
    String inside = name.substring(name.lastIndexOf(WINDOW) + WINDOW.length());
    if (inside.equals("presentation")) {
      return -1;
    }
    int theme = THEMES.indexOf(inside.replaceFirst("^(presentation|swing)\\.", ""));
    return theme < 0 ? THEMES.size() : theme;
  }

  /**
   * An arrow that nothing needs is taken out, so that the diagram shows what is and not what might
   * be. Asked here, where the core is seen too; not for the notebooks, which are not.
   */
  @ArchTest
  static void everyArrowIsNeeded(JavaClasses all) throws IOException {
    assertThat(arrowsNotNeeded(drawing(), all))
        .as("arrows of docs/architecture/layers.puml that no class follows")
        .isEmpty();
  }

  private static String drawing() throws IOException {
    try (InputStream drawing =
        Objects.requireNonNull(GuiLayersTest.class.getResourceAsStream("/layers.puml"))) {
      return new String(drawing.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static List<String> arrowsNotNeeded(String drawing, JavaClasses all) {
    Map<String, String> packages = new HashMap<>();
    Matcher component = Pattern.compile("(?m)^\\[(\\w+)] <<\\.\\.(.+)\\.\\.>>$").matcher(drawing);
    while (component.find()) {
      packages.put(component.group(1), component.group(2));
    }
    Set<List<String>> followed = new HashSet<>();
    for (JavaClass type : all) {
      for (Dependency use : type.getDirectDependenciesFromSelf()) {
        followed.add(List.of(part(type, packages), part(use.getTargetClass(), packages)));
      }
    }
    List<String> idle = new ArrayList<>();
    Matcher arrow = Pattern.compile("(?m)^\\[(\\w+)] --> \\[(\\w+)]$").matcher(drawing);
    while (arrow.find()) {
      if (!arrow.group(1).equals("notebook")
          && !followed.contains(List.of(arrow.group(1), arrow.group(2)))) {
        idle.add(arrow.group());
      }
    }
    return idle;
  }

  private static String part(JavaClass type, Map<String, String> packages) {
    String place = type.getPackageName() + ".";
    return packages.entrySet().stream()
        .filter(part -> place.startsWith(part.getValue() + "."))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse("");
  }

  @Test
  void anArrowThatNothingNeedsIsFound() throws IOException {
    var all =
        new ClassFileImporter()
            .withImportOption(new DoNotIncludeTests())
            .importPackages("halfwave");
    assertThat(arrowsNotNeeded(drawing() + "\n[circuit] --> [message]\n", all))
        .containsExactly("[circuit] --> [message]");
  }

  /** The other rules are shown to bite in the core; these are this module's own. */
  @Test
  void rulesBite() {
    var bad = new ClassFileImporter().importPackages("halfwave.architecture.bad");
    assertThat(onlyPanelsNeedADisplay.evaluate(bad).getFailureReport().toString())
        .contains("java.awt.Color");
    assertThat(packagesAreDescribed.evaluate(bad).getFailureReport().toString())
        .contains("halfwave.architecture.bad.halfwave.cli has no");
    assertThat(themesKeepTheirOrder.evaluate(bad).getFailureReport().toString())
        .contains("presentation.bench.EarlyTheme", "presentation.quiz.LateTheme");
  }
}
