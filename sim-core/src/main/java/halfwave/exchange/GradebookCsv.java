package halfwave.exchange;

import halfwave.grading.CallMarks;
import halfwave.grading.ClassReport;
import halfwave.grading.ItemReport;
import halfwave.grading.ObjectiveReport;
import halfwave.grading.SheetMarks;
import halfwave.io.JsonValue;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Marks of a class as tables, the same in every language: shares of one with every digit, dots as
 * decimal signs, 1 for yes and 0 for no; empty where there is no number.
 */
public final class GradebookCsv {

  private GradebookCsv() {}

  /**
   * A row for each learner, best first: {@code learner, totalRatio, passed, processRatio,
   * resultRatio}, and the mark of each call under its name. A call that was not handed in is empty
   * and counts as zero.
   */
  public static String learners(ClassReport report) {
    List<String> columns =
        new ArrayList<>(List.of("learner", "totalRatio", "passed", "processRatio", "resultRatio"));
    report.quiz().calls().stream().map(ServiceCall::name).forEach(columns::add);
    CsvTable table = new CsvTable(columns);
    for (SheetMarks sheet : report.sheets()) {
      List<String> row = new ArrayList<>();
      row.add(CsvTable.text(sheet.sheet().learner()));
      row.add(CsvTable.number(sheet.totalRatio()));
      row.add(CsvTable.bit(sheet.passed()));
      row.add(CsvTable.number(ratio(report.quiz(), sheet, true)));
      row.add(CsvTable.number(ratio(report.quiz(), sheet, false)));
      for (CallMarks call : sheet.calls()) {
        row.add(call.facts().done() ? CsvTable.number(call.totalRatio()) : "");
      }
      table.row(row);
    }
    return table.text();
  }

  /** Marks of the way, or of the result, in the whole quiz (1). */
  private static double ratio(Quiz quiz, SheetMarks sheet, boolean process) {
    return SheetMarks.mean(quiz, sheet.calls(), call -> call.ratio(process));
  }

  /**
   * A row for each call: {@code call, count, difficultyRatio, discrimination, medianMinutes,
   * wrongTurns, wrongCauses}; the last two in the words of the files, each with how often.
   */
  public static String items(ClassReport report) {
    CsvTable table =
        new CsvTable(
            List.of(
                "call",
                "count",
                "difficultyRatio",
                "discrimination",
                "medianMinutes",
                "wrongTurns",
                "wrongCauses"));
    for (ItemReport item : report.items()) {
      table.row(
          List.of(
              CsvTable.text(item.call().name()),
              CsvTable.number(item.count()),
              CsvTable.number(item.difficultyRatio()),
              CsvTable.number(item.discriminationRatio()),
              CsvTable.number(item.medianMinutes()),
              CsvTable.text(turns(item.wrongTurns())),
              CsvTable.text(turns(item.wrongCauses()))));
    }
    return table.text();
  }

  private static String turns(List<ItemReport.Turn> turns) {
    return turns.stream().map(t -> t.what() + ":" + t.count()).collect(Collectors.joining(" "));
  }

  /** A row for each objective, weakest first: {@code objective, calls, ratio, mastered}. */
  public static String objectives(ClassReport report) {
    CsvTable table = new CsvTable(List.of("objective", "calls", "ratio", "mastered"));
    for (ObjectiveReport objective : report.objectives()) {
      table.row(
          List.of(
              CsvTable.text(JsonValue.spelling(objective.objective())),
              CsvTable.number(objective.calls()),
              CsvTable.number(objective.ratio()),
              CsvTable.bit(objective.mastered())));
    }
    return table.text();
  }
}
