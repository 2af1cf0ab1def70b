package halfwave.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The core obeys the rules of the house. */
@AnalyzeClasses(packages = "halfwave", importOptions = DoNotIncludeTests.class)
class LayersTest {
  @ArchTest static final ArchRule diagram = HouseRules.DIAGRAM_IS_OBEYED;
  @ArchTest static final ArchRule cycles = HouseRules.NO_CYCLES;
  @ArchTest static final ArchRule junkDrawers = HouseRules.NO_JUNK_DRAWERS;
  @ArchTest static final ArchRule packageInfo = HouseRules.PACKAGES_ARE_DESCRIBED;
  @ArchTest static final ArchRule pictures = HouseRules.PICTURES_STAY_IN_PICTURE;
  @ArchTest static final ArchRule sameBits = HouseRules.SAME_BITS_EVERYWHERE;
  @ArchTest static final ArchRule hiddenInput = HouseRules.NO_HIDDEN_INPUT;
  @ArchTest static final ArchRule printing = HouseRules.NO_PRINTING;
  @ArchTest static final ArchRule units = HouseRules.UNITS_IN_NAMES;

  /** ArchUnit reads arrows, not order, so a diagram with a cycle in it would be obeyed too. */
  @Test
  void arrowsOfTheDiagramPointUpwards() throws IOException {
    try (InputStream drawing = HouseRules.DIAGRAM.openStream()) {
      String read = new String(drawing.readAllBytes(), StandardCharsets.UTF_8);
      assertThat(arrowsNotPointingUpwards(read)).isEmpty();
    }
  }

  @Test
  void anArrowPointingDownwardsIsFound() {
    String drawing = "[a] <<..a..>>\n[b] <<..b..>>\n[b] --> [a]\n[a] --> [b]\n[b] --> [b]\n";
    assertThat(arrowsNotPointingUpwards(drawing)).containsExactly("[a] --> [b]", "[b] --> [b]");
  }

  private static List<String> arrowsNotPointingUpwards(String drawing) {
    List<String> order = new ArrayList<>();
    Matcher component = Pattern.compile("(?m)^\\[(\\w+)] <<").matcher(drawing);
    while (component.find()) {
      order.add(component.group(1));
    }
    assertThat(order).isNotEmpty().doesNotHaveDuplicates();
    List<String> wrong = new ArrayList<>();
    Matcher arrow = Pattern.compile("(?m)^\\[(\\w+)] --> \\[(\\w+)]$").matcher(drawing);
    while (arrow.find()) {
      if (order.indexOf(arrow.group(2)) >= order.indexOf(arrow.group(1))) {
        wrong.add(arrow.group());
      }
    }
    return wrong;
  }
}
