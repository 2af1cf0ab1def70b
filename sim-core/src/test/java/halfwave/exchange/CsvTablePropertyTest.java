package halfwave.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * What is written is read again by the grammar of RFC 4180 (Y. Shafranovich, Common Format and MIME
 * Type for Comma-Separated Values Files, 2005), and no cell that somebody typed begins a formula.
 */
class CsvTablePropertyTest {

  private static final long SEED = 11;
  private static final int TABLES = 500;
  private static final String LETTERS = "ab =+-@,\"\r\n\t'ñ李;1";

  private static String typed(Random random) {
    StringBuilder typed = new StringBuilder();
    int length = random.nextInt(6);
    for (int k = 0; k < length; k++) {
      typed.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
    }
    return typed.toString();
  }

  @Test
  void whateverIsTypedComesBackAndIsNoFormula() {
    Random random = new Random(SEED);
    for (int t = 0; t < TABLES; t++) {
      List<List<String>> typed = new ArrayList<>();
      CsvTable table = new CsvTable(List.of("a", "b"));
      for (int row = 0; row < 3; row++) {
        List<String> cells = List.of(typed(random), typed(random));
        typed.add(cells);
        table.row(cells.stream().map(CsvTable::text).toList());
      }
      List<List<String>> read = Csv.records(table.text());
      assertThat(read).as("seed %d, table %d", SEED, t).hasSize(4);
      for (int row = 0; row < 3; row++) {
        for (int column = 0; column < 2; column++) {
          String was = typed.get(row).get(column);
          boolean formula = was.matches("(?s)[=+\\-@\\t\\r\\n].*");
          assertThat(read.get(row + 1).get(column))
              .as("seed %d, table %d", SEED, t)
              .isEqualTo(formula ? "'" + was : was)
              .doesNotMatch("(?s)[=+\\-@].*");
        }
      }
    }
  }

  @Test
  void numbersStayNumbers() {
    assertThat(CsvTable.number(-0.25)).isEqualTo("-0.25");
    assertThat(CsvTable.number(Double.NaN)).isEmpty();
  }
}
