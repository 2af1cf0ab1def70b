package halfwave.validation;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/** The report for people: nothing in it but what the lines say. */
final class Page {

  static final String MAKE =
      "mvn -q test -pl sim-core -Dtest=ValidationReport -Dsurefire.failIfNoSpecifiedTests=false";

  /** Beside a share of this size somebody should know the reason (per cent). */
  private static final int TIGHT = 90;

  private final List<Row> rows;
  private final StringBuilder text = new StringBuilder();

  Page(List<Row> rows) {
    this.rows = rows;
  }

  String text() {
    head();
    summary();
    pictures();
    chapters(
        "Against sources, other programs and closed forms",
        r -> !r.practice() && !r.disagreement());
    line("## Against the practice of the trade");
    line("");
    line(
        "There is **no source** for these numbers: they are what technicians and trade texts commonly say, and the band is the tolerance.");
    line("To pass here is plausible, and no evidence.");
    line("");
    chapters("", Row::practice);
    disagreements();
    return text.toString();
  }

  private void line(String words) {
    text.append(words).append('\n');
  }

  private void head() {
    line("# Validation: every number that was compared with one from outside");
    line("");
    line("Written by `" + MAKE + "` (needs ngspice; some minutes); not by hand.");
    line(
        "The same sources give the same bytes; only the lines marked ° depend on the version of ngspice that was there.");
    line(
        "The lines as data: [validation/checks.json](validation/checks.json). Each test class compares its lines with that file");
    line("on every run, so that neither a check nor a number can change without this page.");
    line("What is modelled, and what the labels mean: [model.md](model.md).");
    line("");
    line(
        "This page says that the program computes what its model says, and how far the model meets what is known.");
    line("It does not say that a real furnace does the same: nobody has measured one for us.");
    line(
        "Where a source is a computation of our own with another program or method, its line says so: it tells that the code");
    line("computes the equation, not that the equation is right.");
    line("");
  }

  private void summary() {
    int points = rows.stream().mapToInt(Row::points).sum();
    Row tightest = rows.stream().max(Comparator.comparingInt(Row::usedPercent)).orElseThrow();
    line(
        "**%d checks with %d numbers, all inside their tolerance; %d of them are known disagreements.**"
            .formatted(rows.size(), points, rows.stream().filter(Row::disagreement).count()));
    line(
        "The tightest uses %d %% of its tolerance: %s (%s); %d use more than %d %%."
            .formatted(
                tightest.usedPercent(),
                tightest.subject(),
                tightest.test(),
                rows.stream().filter(r -> r.usedPercent() > TIGHT).count(),
                TIGHT));
    line("");
    line("| label | checks | numbers | median share used | largest share used |");
    line("|---|---|---|---|---|");
    for (Label label : Label.values()) {
      share(label.word(), r -> r.label() == label && !r.disagreement());
    }
    line("");
    line("| area | checks | numbers | median share used | largest share used |");
    line("|---|---|---|---|---|");
    for (Area area : Area.values()) {
      share(area.title(), r -> r.area() == area && !r.disagreement());
    }
    line("");
  }

  private void share(String name, Predicate<Row> which) {
    int[] used = rows.stream().filter(which).mapToInt(Row::usedPercent).sorted().toArray();
    int points = rows.stream().filter(which).mapToInt(Row::points).sum();
    if (used.length > 0) {
      line(
          "| %s | %d | %d | %s | %s |"
              .formatted(
                  name,
                  used.length,
                  points,
                  percent(used[used.length / 2]),
                  percent(Arrays.stream(used).max().orElseThrow())));
    }
  }

  private void pictures() {
    line("## Pictures");
    line("");
    for (Plot plot : Plot.values()) {
      line("![%s](validation/%s)".formatted(plot.title(), plot.file()));
      line("");
      line(plot.words());
      line("");
    }
    line("## How to read the tables");
    line("");
    line(
        "A line is one number, or all numbers of one kind (then their count is given, the ends of their range, and which is worst).");
    line(
        "*Deviation* is computed less expected, of the expected where that is larger than the tolerance, at the worst. *Used* is the share of the tolerance that the deviation");
    line(
        "uses up; of a band, the distance from its middle; of a limit, how near it is. After a semicolon: root mean square of all.");
    line("");
  }

  private void chapters(String title, Predicate<Row> which) {
    if (!title.isEmpty()) {
      line("## " + title);
      line("");
    }
    for (Area area : Area.values()) {
      List<Row> chosen = rows.stream().filter(r -> r.area() == area).filter(which).toList();
      if (!chosen.isEmpty()) {
        line("### " + area.title());
        line("");
        line(
            "| what | source | expected | computed | deviation | tolerance | used | why this tolerance |");
        line("|---|---|---|---|---|---|---|---|");
        chosen.forEach(this::row);
        line("");
      }
    }
  }

  private void row(Row r) {
    String many = r.points() == 1 ? "" : " (%d)".formatted(r.points());
    String rms = r.points() == 1 || r.usedPercent() == 0 ? "" : "; " + percent(r.rmsPercent());
    boolean same = r.kind() == Kind.SAME;
    cells(
        r.subject() + many + (r.live() ? " °" : ""),
        source(r),
        r.expected(),
        same ? "the same" : r.computed(),
        deviation(r),
        tolerance(r),
        same ? "" : percent(r.usedPercent()) + rms,
        r.reason());
  }

  private static String deviation(Row r) {
    boolean close = r.kind() == Kind.CLOSE || r.kind() == Kind.CLOSE_BY_SHARE;
    String number = close && r.deviation().isEmpty() ? "≈ 0" : r.deviation();
    return r.worst().isEmpty()
        ? number
        : number.isEmpty() ? "worst: " + r.worst() : number + ": " + r.worst();
  }

  private static String tolerance(Row r) {
    return r.allowed().isEmpty() || r.allowed().equals(Row.VARIES)
        ? r.allowed()
        : "± " + r.allowed();
  }

  private static String source(Row r) {
    return r.practice() ? r.source() : r.label().word() + ": " + r.source();
  }

  private static String percent(int share) {
    return share == 0 ? "< 1 %" : share + " %";
  }

  private void cells(String... words) {
    line(
        "| "
            + String.join(" | ", Arrays.stream(words).map(w -> w.replace("|", "\\|")).toList())
            + " |");
  }

  private void disagreements() {
    line("## Known disagreements");
    line("");
    line(
        "Here the model does not do what practice, or a measurement, says. A test holds each of them: it fails when the disagreement is gone, and when the");
    line(
        "model moves by more than the tolerance. More words, and what has no number, stand in [model.md](model.md), sections 6 to 8 and 13.");
    line("");
    line("| what | practice, or as named | model | held within | why |");
    line("|---|---|---|---|---|");
    for (Row r : rows) {
      if (r.disagreement()) {
        cells(
            r.subject(),
            r.expected() + " (" + r.source() + ")",
            r.computed(),
            r.allowed(),
            r.reason());
      }
    }
  }
}
