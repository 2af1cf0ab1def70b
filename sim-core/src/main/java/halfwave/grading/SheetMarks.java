package halfwave.grading;

import halfwave.message.Message;
import halfwave.quiz.AnswerSheet;
import halfwave.quiz.Quiz;
import java.util.List;
import java.util.function.ToDoubleFunction;

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

  /**
   * Something of all calls together, each by what it counts in the quiz.
   *
   * @param quiz the quiz
   * @param calls all of its calls
   * @param of what
   */
  public static double mean(Quiz quiz, List<CallMarks> calls, ToDoubleFunction<CallMarks> of) {
    double got = 0;
    double all = 0;
    for (CallMarks call : calls) {
      double weight = quiz.weight(call.call());
      got += weight * of.applyAsDouble(call);
      all += weight;
    }
    return all > 0 ? got / all : 0;
  }
}
