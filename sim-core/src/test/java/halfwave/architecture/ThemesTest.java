package halfwave.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The themes of files and of pictures have an order, which the diagram of layers does not draw. */
@AnalyzeClasses(packages = "halfwave", importOptions = DoNotIncludeTests.class)
class ThemesTest {

  /** Each may use those before it, as DEVELOPERS.md has them. */
  private static final List<String> THEMES =
      List.of(
          "io",
          "io.bench",
          "io.sequence",
          "io.evidence",
          "io.lesson",
          "io.quiz",
          "picture",
          "picture.chart",
          "picture.scene",
          "picture.flame",
          "picture.bench");

  private static final String ROOT = "halfwave.";

  @ArchTest
  static final ArchRule themesKeepTheirOrder =
      classes()
          .should(
              new ArchCondition<JavaClass>("use no theme after their own") {
                @Override
                public void check(JavaClass type, ConditionEvents events) {
                  if (!themed(type)) {
                    return;
                  }
                  for (Dependency use : type.getDirectDependenciesFromSelf()) {
                    JavaClass used = use.getTargetClass();
                    boolean later = themed(used) && order(used) > order(type);
                    events.add(new SimpleConditionEvent(type, !later, use.getDescription()));
                  }
                }
              })
          .allowEmptyShould(true);

  private static boolean themed(JavaClass type) {
    return inside(type).matches("(io|picture)(\\..*)?");
  }

  /** A package that is no theme comes after all, and may be used by none. */
  private static int order(JavaClass type) {
    int theme = THEMES.indexOf(inside(type));
    return theme < 0 ? THEMES.size() : theme;
  }

  private static String inside(JavaClass type) {
    String name = type.getPackageName();
    return name.contains(ROOT) ? name.substring(name.lastIndexOf(ROOT) + ROOT.length()) : "";
  }

  @Test
  void theRuleBites() {
    var bad = new ClassFileImporter().importPackages("halfwave.architecture.bad");

    assertThat(themesKeepTheirOrder.evaluate(bad).getFailureReport().toString())
        .contains("io.bench.EarlyTheme", "io.quiz.LateTheme");
  }
}
