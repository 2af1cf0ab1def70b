package halfwave.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.Configuration.consideringOnlyDependenciesInDiagram;
import static com.tngtech.archunit.library.plantuml.rules.PlantUmlArchCondition.adhereToPlantUmlDiagram;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Objects;

/** The notebooks' code obeys the diagram it shares with the core. */
@AnalyzeClasses(packages = "halfwave", importOptions = DoNotIncludeTests.class)
class NotebookLayersTest {
  @ArchTest
  static final ArchRule diagram =
      classes()
          .should(
              adhereToPlantUmlDiagram(
                  Objects.requireNonNull(NotebookLayersTest.class.getResource("/layers.puml")),
                  consideringOnlyDependenciesInDiagram()));

  @ArchTest
  static final ArchRule cycles = slices().matching("halfwave.(**)").should().beFreeOfCycles();
}
