package halfwave.grading;

import halfwave.diagnosis.Cause;
import halfwave.message.Message;
import halfwave.quiz.ServiceCall;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All marks of one service call.
 *
 * @param call the call
 * @param truth what was wrong
 * @param said what was concluded; null where nothing was
 * @param marks one for each criterion, in their order
 * @param moves each move
 * @param remarks what is odd about what was handed in
 * @param totalRatio all marks together, after the gate (1)
 * @param facts what earns no marks
 */
public record CallMarks(
    ServiceCall call,
    Cause truth,
    @Nullable Cause said,
    List<Mark> marks,
    List<MarkedMove> moves,
    List<Message> remarks,
    double totalRatio,
    Facts facts) {

  /**
   * What happened, whatever it counts.
   *
   * @param done whether it was handed in at all
   * @param minutes simulated minutes to the end
   * @param partsUnits what parts cost (units)
   * @param needlessParts good parts replaced
   * @param needlessUnits what they cost (units)
   * @param dangerous dangerous acts
   * @param whole whether the furnace heats at the end with nothing left wrong
   * @param proved whether a call and a reading after the last repair showed it
   * @param causeRight whether the cause was named
   */
  public record Facts(
      boolean done,
      int minutes,
      int partsUnits,
      int needlessParts,
      int needlessUnits,
      int dangerous,
      boolean whole,
      boolean proved,
      boolean causeRight) {}

  /** Takes copies. */
  public CallMarks {
    marks = List.copyOf(marks);
    moves = List.copyOf(moves);
    remarks = List.copyOf(remarks);
  }

  /** The mark for a criterion. */
  public Mark mark(Criterion criterion) {
    return marks.get(criterion.ordinal());
  }

  /** Marks of the way, or of the result, over what they count (1). */
  public double ratio(boolean process) {
    double got = 0;
    double all = 0;
    for (Mark mark : marks) {
      if (mark.criterion().process() == process) {
        got += mark.ratio() * mark.points();
        all += mark.points();
      }
    }
    return all > 0 ? got / all : 0;
  }
}
