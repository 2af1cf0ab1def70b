package halfwave.validation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * One line of the report: a check, or all points of one subject. Words as they are printed.
 *
 * @param test the class that checks
 * @param area chapter
 * @param label label of the source
 * @param source the source
 * @param live whether another program is run anew, so that digits depend on its version
 * @param kind how it is judged
 * @param subject what is checked
 * @param points how many numbers
 * @param expected what the source says
 * @param computed what the simulator gives
 * @param deviation the difference, at the worst point
 * @param allowed the tolerance
 * @param usedPercent share of the tolerance that the worst point uses up
 * @param rmsPercent the same, root mean square of all points
 * @param worst the worst point, where there are several
 * @param reason why that tolerance
 */
record Row(
    String test,
    Area area,
    Label label,
    String source,
    boolean live,
    Kind kind,
    String subject,
    int points,
    String expected,
    String computed,
    String deviation,
    String allowed,
    int usedPercent,
    int rmsPercent,
    String worst,
    String reason) {

  /** Tolerance of a line whose points have each their own. */
  static final String VARIES = "varies";

  /** Lines of a class, by the names of their subjects. */
  static List<Row> of(String test, Area area, List<Checked> checks) {
    Map<String, List<Checked>> bySubject = new LinkedHashMap<>();
    for (Checked check : checks) {
      bySubject.computeIfAbsent(check.subject(), s -> new ArrayList<>()).add(check);
    }
    // the order of tests in a class is the runner's own affair
    return bySubject.values().stream()
        .map(points -> line(test, area, points))
        .sorted(Comparator.comparing(Row::subject))
        .toList();
  }

  private static Row line(String test, Area area, List<Checked> points) {
    Checked first = points.get(0);
    if (points.stream()
        .anyMatch(p -> !p.reference().equals(first.reference()) || p.kind() != first.kind())) {
      throw new IllegalStateException("one subject, two sources or verdicts: " + first.subject());
    }
    Checked worst =
        points.stream()
            .max(Comparator.comparingDouble(Checked::usedRatio).thenComparing(Checked::at))
            .orElseThrow();
    double squares = points.stream().mapToDouble(p -> p.usedRatio() * p.usedRatio()).sum();
    int used = percent(worst.usedRatio());
    return new Row(
        test,
        area,
        first.reference().label(),
        first.reference().source(),
        first.reference().live(),
        first.kind(),
        first.subject(),
        points.size(),
        expected(points),
        computed(points),
        used == 0 ? "" : deviation(worst),
        words(points, Checked::allowedWords, VARIES),
        used,
        percent(Math.sqrt(squares / points.size())),
        // what only rounding tells apart may differ from machine to machine
        used == 0 || points.size() == 1 ? "" : worst.at(),
        points.stream().map(Checked::reason).distinct().collect(Collectors.joining("; ")));
  }

  private static int percent(double ratio) {
    return (int) Math.round(100 * ratio);
  }

  private static String words(List<Checked> points, Function<Checked, String> of, String many) {
    List<String> distinct = points.stream().map(of).distinct().toList();
    return distinct.size() == 1 ? distinct.get(0) : many;
  }

  private static String expected(List<Checked> points) {
    boolean close =
        points.get(0).kind() == Kind.CLOSE || points.get(0).kind() == Kind.CLOSE_BY_SHARE;
    return words(
        points, Checked::expectedWords, close ? range(points, Checked::expected) : "each its own");
  }

  private static String computed(List<Checked> points) {
    boolean named = points.get(0).kind() == Kind.SAME;
    return words(
        points, Checked::computedWords, named ? "each its own" : range(points, Checked::computed));
  }

  /** Ends of a range, no finer than the coarsest tolerance in it is worth. */
  private static String range(List<Checked> points, ToDoubleFunction<Checked> number) {
    double step = points.stream().mapToDouble(Checked::step).max().orElseThrow();
    Unit unit = points.get(0).unit();
    return unit.number(points.stream().mapToDouble(number).min().orElseThrow(), step)
        + " to "
        + unit.text(points.stream().mapToDouble(number).max().orElseThrow(), step);
  }

  private static String deviation(Checked worst) {
    double difference = worst.computed() - worst.expected();
    return switch (worst.kind()) {
      case CLOSE, CLOSE_BY_SHARE ->
          Math.abs(worst.expected()) <= worst.allowed()
              ? worst.unit().text(difference, Math.abs(difference) / 10)
              : Unit.PERCENT.text(
                  difference / Math.abs(worst.expected()),
                  Math.abs(difference / worst.expected()) / 10);
      case BAND, AT_LEAST, BELOW, ABOVE, SAME, DISAGREEMENT -> "";
    };
  }

  /** What does not depend on the version of another program. */
  Row lasting() {
    return live
        ? new Row(
            test, area, label, source, true, kind, subject, 0, "", "", "", allowed, 0, 0, "",
            reason)
        : this;
  }

  /** The line in a few words, for a message. */
  String words() {
    return "%s (%d): expected %s, computed %s, %d %% used"
        .formatted(subject, points, expected, computed, usedPercent);
  }

  boolean practice() {
    return label == Label.PRACTICE && kind != Kind.DISAGREEMENT;
  }

  boolean disagreement() {
    return kind == Kind.DISAGREEMENT;
  }
}
