package halfwave.grading;

import halfwave.grading.QuizStudy.Taken;
import halfwave.io.evidence.PriorsFile;
import halfwave.quantity.Noise;
import halfwave.quiz.Quiz;
import halfwave.quiz.ServiceCall;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.apache.commons.math3.util.FastMath;

/** The study of the quiz in words and numbers. */
final class QuizStudyReport {

  private static final int QUIZZES = 20;
  private static final int CALLS = 10;

  private final Quiz bank;
  private final List<Taken> all;
  private final StringBuilder text = new StringBuilder();

  QuizStudyReport(Quiz bank, List<Taken> all) {
    this.bank = bank;
    this.all = all;
  }

  String text() {
    line("# Do the marks mean something?");
    line("");
    line(
        "Written by `mvn -q test -pl sim-core -Dtest=QuizStudy -Dsurefire.failIfNoSpecifiedTests=false`; the"
            + " same seeds give the same numbers. All learners here are simulated and share the engine's view of"
            + " causes; they show whether the marks order ways of working, not how people fare. What follows from the last run is in [quiz-guide.md](quiz-guide.md#how-far-the-marks-can-be-trusted).");
    line("");
    line("## Who took it");
    line("");
    line(
        "%d learners of each of five habits took all %d calls of the shipped bank; their slips rise evenly from"
            + " none to one act in two. A slip is another test (82 %%), a part replaced (15 %%), or power and gas left on"
            + " (3 %%).",
        all.size() / Habit.values().length, bank.calls().size());
    marks();
    facts();
    reliability();
    items();
    return text.toString();
  }

  private void line(String format, Object... arguments) {
    text.append(arguments.length == 0 ? format : String.format(Locale.ROOT, format, arguments))
        .append('\n');
  }

  private List<Taken> of(Habit habit) {
    return all.stream().filter(t -> t.habit() == habit).toList();
  }

  private DescriptiveStatistics over(Habit habit, ToDoubleFunction<SheetMarks> what) {
    DescriptiveStatistics sums = new DescriptiveStatistics();
    of(habit).forEach(t -> sums.addValue(what.applyAsDouble(t.marks())));
    return sums;
  }

  private static double mean(SheetMarks marks, ToDoubleFunction<CallMarks> what) {
    return marks.calls().stream().mapToDouble(what).average().orElse(Double.NaN);
  }

  private void marks() {
    line("");
    line("## Marks");
    line("");
    line(
        "| habit | mean mark | standard deviation | safety | tests | interpretation | cause | repair | waste |");
    line("|---|---|---|---|---|---|---|---|---|");
    for (Habit habit : Habit.values()) {
      DescriptiveStatistics total = over(habit, SheetMarks::totalRatio);
      StringBuilder row = new StringBuilder();
      for (Criterion criterion : Criterion.values()) {
        row.append(
            String.format(
                Locale.ROOT,
                " %.2f |",
                over(habit, m -> mean(m, c -> c.mark(criterion).ratio())).getMean()));
      }
      line(
          "| %s | %.1f %% | %.1f |%s",
          name(habit), 100 * total.getMean(), 100 * total.getStandardDeviation(), row);
    }
    line("");
    separated("mean mark", SheetMarks::totalRatio, true);
  }

  private static String name(Habit habit) {
    return habit.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Says of neighbours in the order whether they differ by more than chance. */
  private void separated(String what, ToDoubleFunction<SheetMarks> of, boolean rising) {
    Habit[] habits = Habit.values();
    for (int k = 1; k < habits.length; k++) {
      DescriptiveStatistics a = over(habits[k - 1], of);
      DescriptiveStatistics b = over(habits[k], of);
      double difference = (rising ? 1 : -1) * (b.getMean() - a.getMean());
      double error = FastMath.sqrt(a.getVariance() / a.getN() + b.getVariance() / b.getN());
      String said =
          difference > 2 * error
              ? "in this order"
              : difference < -2 * error ? "**the other way round**" : "cannot be separated";
      line(
          "- %s, %s before %s: %s (difference %.3g, standard error %.2g)",
          what, name(habits[k - 1]), name(habits[k]), said, difference, error);
    }
  }

  private void facts() {
    line("");
    line("## What earns no marks");
    line("");
    line(
        "Minutes to a proven repair: simulated minutes of a call; one that ends without a proven repair counts its whole budget."
            + " What a call costs: these minutes, and the parts at half a minute for a unit, as the advice weighs them.");
    line("");
    line(
        "| habit | minutes to a proven repair | proven | good parts replaced a call | dangerous acts a call | what a call costs, min |");
    line("|---|---|---|---|---|---|");
    for (Habit habit : Habit.values()) {
      line(
          "| %s | %.0f | %.0f %% | %.2f | %.3f | %.0f |",
          name(habit),
          over(habit, QuizStudyReport::minutes).getMean(),
          100 * over(habit, m -> mean(m, c -> proven(c) ? 1 : 0)).getMean(),
          over(habit, QuizStudyReport::needless).getMean(),
          over(habit, QuizStudyReport::dangerous).getMean(),
          over(habit, QuizStudyReport::cost).getMean());
    }
    line("");
    separated("minutes", QuizStudyReport::minutes, false);
    separated("good parts", QuizStudyReport::needless, false);
    separated("dangerous acts", QuizStudyReport::dangerous, false);
    separated("cost", QuizStudyReport::cost, false);
  }

  private static boolean proven(CallMarks call) {
    return call.facts().whole() && call.facts().proved();
  }

  private static double minutes(SheetMarks marks) {
    return mean(marks, c -> proven(c) ? c.facts().minutes() : c.call().minutes());
  }

  private static double cost(SheetMarks marks) {
    double unitMinutes = PriorsFile.shipped().costUnitSeconds() / 60;
    return minutes(marks) + unitMinutes * mean(marks, c -> c.facts().partsUnits());
  }

  private static double needless(SheetMarks marks) {
    return mean(marks, c -> c.facts().needlessParts());
  }

  private static double dangerous(SheetMarks marks) {
    return mean(marks, c -> c.facts().dangerous());
  }

  private void reliability() {
    line("");
    line("## Reliability");
    line("");
    line(
        "Cronbach's alpha (Cronbach, Psychometrika 16 (1951) 297) of quizzes of %d calls drawn from the bank, over all these"
            + " learners and over those of one habit alone, who differ by their slips and by luck only. Aim: 0.8.",
        CALLS);
    line("");
    line("| learners | mean | lowest | highest |");
    line("|---|---|---|---|");
    line("| all | %s |", alphas(all));
    for (Habit habit : Habit.values()) {
      line("| %s | %s |", name(habit), alphas(of(habit)));
    }
  }

  private String alphas(List<Taken> learners) {
    DescriptiveStatistics alphas = new DescriptiveStatistics();
    for (int quiz = 0; quiz < QUIZZES; quiz++) {
      List<Integer> calls = drawn(quiz);
      double[][] marks =
          learners.stream()
              .map(
                  t ->
                      calls.stream()
                          .mapToDouble(c -> t.marks().calls().get(c).totalRatio())
                          .toArray())
              .toArray(double[][]::new);
      alphas.addValue(Reliability.alpha(marks));
    }
    return String.format(
        Locale.ROOT, "%.2f | %.2f | %.2f", alphas.getMean(), alphas.getMin(), alphas.getMax());
  }

  private List<Integer> drawn(int quiz) {
    List<Integer> places =
        new ArrayList<>(IntStream.range(0, bank.calls().size()).boxed().toList());
    places.sort(Comparator.comparingDouble(p -> Noise.uniform(quiz, Noise.Purpose.VARIANT, p)));
    return places.subList(0, Math.min(CALLS, places.size()));
  }

  private void items() {
    ClassReport report = ClassReport.of(bank, all.stream().map(Taken::marks).toList());
    line("");
    line("## Calls");
    line("");
    long negative = report.items().stream().filter(i -> i.discriminationRatio() < 0).count();
    line("Calls with a negative discrimination: %d.", negative);
    line("");
    line(
        "| call | objective | level | mean mark | discrimination | median min | most frequent wrong turn |");
    line("|---|---|---|---|---|---|---|");
    for (ItemReport item : report.items()) {
      ServiceCall call = item.call();
      String turn = item.wrongTurns().isEmpty() ? "" : item.wrongTurns().get(0).what();
      line(
          "| %s | %s | %s | %.0f %% | %.2f | %.0f | %s |",
          call.name(),
          call.objective().name().toLowerCase(Locale.ROOT).replace('_', ' '),
          call.level().name().toLowerCase(Locale.ROOT),
          100 * item.difficultyRatio(),
          item.discriminationRatio(),
          item.medianMinutes(),
          turn);
    }
  }
}
