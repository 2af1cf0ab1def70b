package halfwave.gui.presentation.quiz;

import halfwave.diagnosis.Outcome;
import halfwave.diagnosis.Reasons;
import halfwave.gui.presentation.Wording;
import halfwave.quiz.Done;
import halfwave.quiz.Ending;
import halfwave.quiz.Moves;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Visit;
import java.util.ArrayList;
import java.util.List;

/**
 * A service call as the window shows it.
 *
 * @param title what a list of calls says
 * @param complaint what the customer says
 * @param minutes minutes used and allowed
 * @param parts units used and meant
 * @param minutesShare share of the minutes that is used, 0 to 1
 * @param partsShare share of the units that is used, 0 to 1
 * @param log what was done and found, in order
 * @param stopped how it ended before its conclusion; empty where it did not
 * @param cautions what should have been minded; empty where nothing dangerous was done
 */
public record VisitView(
    String title,
    String complaint,
    String minutes,
    String parts,
    double minutesShare,
    double partsShare,
    List<Line> log,
    String stopped,
    List<String> cautions) {

  /**
   * Something that was done.
   *
   * @param minute simulated minute at which it was done with
   * @param text what, and what was found
   * @param more what a hint says, or what follows from it; empty otherwise
   */
  public record Line(String minute, String text, List<String> more) {
    /** Takes a copy. */
    public Line {
      more = List.copyOf(more);
    }
  }

  /** Takes copies. */
  public VisitView {
    log = List.copyOf(log);
    cautions = List.copyOf(cautions);
  }

  /** The view of a visit. */
  public static VisitView of(Visiting visiting, Visit visit, Wording words) {
    ServiceCall call = visit.variant().call();
    List<Line> log = new ArrayList<>();
    List<String> cautions = new ArrayList<>();
    for (int k = 0; k < visit.log().size(); k++) {
      Done done = visit.log().get(k);
      log.add(line(visiting, done, k, words));
      if (done.danger() != null) {
        cautions.add(words.heading(done.danger()));
      }
    }
    return new VisitView(
        call.title().in(words.locale()),
        call.complaint().in(words.locale()),
        words.text("visit.minutes-of", visit.minutes(), call.minutes()),
        words.text(
            visit.partsUnits() > call.partsUnits() ? "visit.parts-over" : "visit.parts-of",
            visit.partsUnits(),
            call.partsUnits()),
        Math.min(1, (double) visit.minutes() / call.minutes()),
        visit.partsUnits() == 0
            ? 0
            : Math.min(1, visit.partsUnits() / Math.max(1.0, call.partsUnits())),
        log,
        visit.ending().map(e -> stopped(e, words)).orElse(""),
        cautions);
  }

  private static String stopped(Ending ending, Wording words) {
    return words.text(
        switch (ending) {
          case DANGER -> "visit.danger";
          case TIME_UP -> "visit.time-up";
        });
  }

  private static Line line(Visiting visiting, Done done, int index, Wording words) {
    String what = Wording.capital(words.sentences().text(Moves.said(done.move())));
    Outcome outcome = done.outcome();
    String text =
        outcome == null
            ? what
            : words.text("visit.line", what, words.sentences().text(Reasons.said(outcome)));
    return new Line(
        words.text("visit.minute", done.minute()), text, visiting.remarks(index, words));
  }
}
