package halfwave.grading;

import halfwave.quiz.Moves;
import halfwave.quiz.Objective;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * What the marks of a class say about the calls and about what was learnt.
 *
 * @param quiz the quiz
 * @param sheets the marks, best first
 * @param items one for each call, in the order of the quiz
 * @param objectives one for each objective the quiz asks for, weakest first
 * @param alphaRatio reliability of the quiz: Cronbach's alpha (1); NaN for fewer than two sheets or
 *     calls
 */
public record ClassReport(
    Quiz quiz,
    List<SheetMarks> sheets,
    List<ItemReport> items,
    List<ObjectiveReport> objectives,
    double alphaRatio) {

  private static final int TOLD_TURNS = 5;

  /** Fewer than this is no correlation. */
  private static final int LEAST_SHEETS = 3;

  /** Takes copies. */
  public ClassReport {
    sheets = List.copyOf(sheets);
    items = List.copyOf(items);
    objectives = List.copyOf(objectives);
  }

  /** From the marks of a class. */
  public static ClassReport of(Quiz quiz, List<SheetMarks> sheets) {
    List<SheetMarks> ordered =
        sheets.stream()
            .sorted(
                Comparator.comparingDouble(SheetMarks::totalRatio)
                    .reversed()
                    .thenComparing(s -> s.sheet().learner()))
            .toList();
    double[][] marks = marks(ordered);
    List<ItemReport> items = new ArrayList<>();
    for (int k = 0; k < quiz.calls().size(); k++) {
      items.add(item(quiz.calls().get(k), k, ordered, marks));
    }
    return new ClassReport(
        quiz, ordered, items, objectives(quiz, ordered), Reliability.alpha(marks));
  }

  /** Row: sheet, column: call. */
  private static double[][] marks(List<SheetMarks> sheets) {
    return sheets.stream()
        .map(s -> s.calls().stream().mapToDouble(CallMarks::totalRatio).toArray())
        .toArray(double[][]::new);
  }

  private static ItemReport item(
      ServiceCall call, int column, List<SheetMarks> sheets, double[][] marks) {
    List<CallMarks> all =
        sheets.stream().map(s -> s.calls().get(column)).filter(c -> c.facts().done()).toList();
    double[] minutes = all.stream().mapToDouble(c -> c.facts().minutes()).toArray();
    return new ItemReport(
        call,
        all.size(),
        mean(marks, column),
        discrimination(marks, column),
        minutes.length == 0 ? Double.NaN : new Median().evaluate(minutes),
        frequent(all.stream().flatMap(ClassReport::wrongTurns)),
        frequent(
            all.stream()
                .filter(c -> !c.facts().causeRight() && c.said() != null)
                .map(c -> Objects.requireNonNull(c.said()).id())));
  }

  private static double mean(double[][] marks, int column) {
    double sum = 0;
    for (double[] row : marks) {
      sum += row[column];
    }
    return marks.length == 0 ? Double.NaN : sum / marks.length;
  }

  private static double discrimination(double[][] marks, int column) {
    if (marks.length < LEAST_SHEETS || marks[0].length < 2) {
      return Double.NaN;
    }
    double[] item = new double[marks.length];
    double[] rest = new double[marks.length];
    for (int k = 0; k < marks.length; k++) {
      item[k] = marks[k][column];
      for (int c = 0; c < marks[k].length; c++) {
        rest[k] += c == column ? 0 : marks[k][c];
      }
    }
    return new PearsonsCorrelation().correlation(item, rest);
  }

  /** Each wrong turn of a learner once. */
  private static Stream<String> wrongTurns(CallMarks call) {
    return call.moves().stream()
        .filter(
            m ->
                switch (m.kind()) {
                  case REDUNDANT, IRRELEVANT, ON_SUSPICION, DESTROYS_EVIDENCE, DANGEROUS -> true;
                  default -> false;
                })
        .map(m -> Moves.id(m.done().move()))
        .filter(id -> !id.isEmpty())
        .distinct();
  }

  private static List<ItemReport.Turn> frequent(Stream<String> what) {
    Map<String, Long> counts =
        what.collect(Collectors.groupingBy(w -> w, TreeMap::new, Collectors.counting()));
    return counts.entrySet().stream()
        .sorted(Map.Entry.<String, Long>comparingByValue().reversed())
        .limit(TOLD_TURNS)
        .map(e -> new ItemReport.Turn(e.getKey(), e.getValue().intValue()))
        .toList();
  }

  private static List<ObjectiveReport> objectives(Quiz quiz, List<SheetMarks> sheets) {
    List<ObjectiveReport> reports = new ArrayList<>();
    for (Objective objective : Objective.values()) {
      List<ServiceCall> calls =
          quiz.calls().stream().filter(c -> c.objective() == objective).toList();
      if (!calls.isEmpty()) {
        double ratio =
            sheets.stream()
                .flatMap(s -> s.calls().stream())
                .filter(c -> c.call().objective() == objective)
                .mapToDouble(CallMarks::totalRatio)
                .average()
                .orElse(0);
        reports.add(new ObjectiveReport(objective, calls.size(), ratio, ratio >= quiz.passRatio()));
      }
    }
    reports.sort(Comparator.comparingDouble(ObjectiveReport::ratio));
    return reports;
  }
}
