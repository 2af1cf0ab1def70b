package halfwave.gui.presentation.desk;

import halfwave.diagnosis.Reasons;
import halfwave.display.Sentences;
import halfwave.grading.Better;
import halfwave.grading.CallMarks;
import halfwave.grading.Mark;
import halfwave.grading.MarkedMove;
import halfwave.gui.presentation.Wording;
import halfwave.quiz.Moves;
import java.util.List;

/**
 * Marks as the window shows them.
 *
 * @param total all of them together, in words
 * @param truth what was wrong, and what was said to be
 * @param marks one for each criterion
 * @param moves each move, in order
 */
public record MarksView(String total, List<String> truth, List<Line> marks, List<Line> moves) {

  /**
   * A mark, or a move.
   *
   * @param name for what
   * @param share its share, 0 to 1; NaN where it is not marked so
   * @param text the share in words, or what kind of move it was
   * @param reasons why, and what would have been better
   */
  public record Line(String name, double share, String text, List<String> reasons) {
    /** Takes a copy. */
    public Line {
      reasons = List.copyOf(reasons);
    }
  }

  /** Takes copies. */
  public MarksView {
    truth = List.copyOf(truth);
    marks = List.copyOf(marks);
    moves = List.copyOf(moves);
  }

  /** The view of the marks. */
  public static MarksView of(CallMarks marks, Wording words) {
    Sentences s = words.sentences();
    String truth = words.text("practice.truth", s.text(Reasons.name(marks.truth())));
    String said =
        marks.said() == null
            ? words.text("practice.said-nothing")
            : words.text("practice.said", s.text(Reasons.name(marks.said())));
    return new MarksView(
        words.text("practice.total", Math.round(100 * marks.totalRatio())),
        List.of(truth, said),
        marks.marks().stream().map(m -> line(m, words)).toList(),
        marks.moves().stream().map(m -> line(m, words)).toList());
  }

  private static Line line(Mark mark, Wording words) {
    return new Line(
        words.heading(mark.criterion()),
        mark.ratio(),
        words.text(
            "practice.points", Math.round(mark.ratio() * mark.points()), Math.round(mark.points())),
        mark.reasons().stream().map(words.sentences()::sentence).toList());
  }

  private static Line line(MarkedMove move, Wording words) {
    return new Line(
        Wording.capital(words.sentences().text(Moves.said(move.done().move()))),
        move.ratio(),
        words.sentences().name(move.kind()),
        better(move, words));
  }

  /** How good a move was, and what would have been better; nothing where it is not marked so. */
  static List<String> better(MarkedMove move, Wording words) {
    return Double.isNaN(move.ratio())
        ? List.of()
        : List.of(words.sentences().sentence(Better.said(move)));
  }
}
