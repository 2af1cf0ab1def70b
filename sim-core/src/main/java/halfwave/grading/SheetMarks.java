package halfwave.grading;

import halfwave.message.Message;
import halfwave.quiz.AnswerSheet;
import java.util.List;

/**
 * All marks of one answer sheet.
 *
 * @param sheet the sheet
 * @param calls every call of the quiz, in its order
 * @param totalRatio all calls together by their weights (1)
 * @param passed whether that is enough
 * @param remarks what is odd about the sheet
 */
public record SheetMarks(
    AnswerSheet sheet,
    List<CallMarks> calls,
    double totalRatio,
    boolean passed,
    List<Message> remarks) {

  /** Takes copies. */
  public SheetMarks {
    calls = List.copyOf(calls);
    remarks = List.copyOf(remarks);
  }
}
