package halfwave.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.grading.CallMarks;
import halfwave.grading.ClassReport;
import halfwave.grading.ItemReport;
import halfwave.grading.SheetMarks;
import halfwave.quiz.InventedClass;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The tables say what the marks say. */
class GradebookCsvTest {

  private static final ClassReport REPORT =
      ClassReport.of(InventedClass.quiz(), InventedClass.marks());

  @Test
  void everyLearnerHasARowWithEveryMark() {
    List<List<String>> rows = Csv.records(GradebookCsv.learners(REPORT));

    assertThat(rows.get(0))
        .containsExactly(
            "learner",
            "totalRatio",
            "passed",
            "processRatio",
            "resultRatio",
            "the-bakery",
            "the-boat-house",
            "the-school");
    assertThat(rows).hasSize(1 + REPORT.sheets().size());
    for (int k = 0; k < REPORT.sheets().size(); k++) {
      SheetMarks sheet = REPORT.sheets().get(k);
      List<String> row = rows.get(k + 1);
      assertThat(row.get(0)).endsWith(sheet.sheet().learner());
      assertThat(Double.parseDouble(row.get(1))).isEqualTo(sheet.totalRatio());
      assertThat(row.get(2)).isEqualTo(sheet.passed() ? "1" : "0");
      for (int c = 0; c < sheet.calls().size(); c++) {
        CallMarks call = sheet.calls().get(c);
        String mark = call.facts().done() ? Double.toString(call.totalRatio()) : "";
        assertThat(row.get(5 + c)).isEqualTo(mark);
      }
    }
  }

  @Test
  void aNameIsNoFormula() {
    assertThat(GradebookCsv.learners(REPORT)).contains("\r\n'" + InventedClass.FORMULA + ",");
  }

  @Test
  void wayAndResultTogetherAreTheWholeWhereNothingWasDangerous() {
    List<String> row = Csv.records(GradebookCsv.learners(REPORT)).get(1);
    double process = 0.7 * Double.parseDouble(row.get(3));
    double result = 0.3 * Double.parseDouble(row.get(4));
    // marks of the way count 70 of 100 points, sums of a few doubles
    assertThat(process + result)
        .isCloseTo(Double.parseDouble(row.get(1)), org.assertj.core.api.Assertions.within(1e-12));
  }

  @Test
  void itemsAndObjectivesHaveARowEach() {
    List<List<String>> items = Csv.records(GradebookCsv.items(REPORT));
    assertThat(items).hasSize(1 + REPORT.items().size());
    for (int k = 0; k < REPORT.items().size(); k++) {
      ItemReport item = REPORT.items().get(k);
      assertThat(items.get(k + 1).subList(0, 4))
          .containsExactly(
              item.call().name(),
              Integer.toString(item.count()),
              Double.toString(item.difficultyRatio()),
              Double.toString(item.discriminationRatio()));
      assertThat(items.get(k + 1).get(5)).contains("replace-board:1");
    }
    List<List<String>> objectives = Csv.records(GradebookCsv.objectives(REPORT));
    assertThat(objectives).hasSize(1 + REPORT.objectives().size());
    assertThat(objectives.get(1)).hasSize(4).doesNotContain("NaN");
  }

  @Test
  void whatIsNoNumberIsEmpty() {
    ClassReport one = ClassReport.of(InventedClass.quiz(), InventedClass.marks().subList(0, 1));
    assertThat(Csv.records(GradebookCsv.items(one)).get(1).get(3)).isEmpty();
  }
}
