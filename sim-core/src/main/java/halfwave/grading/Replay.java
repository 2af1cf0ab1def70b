package halfwave.grading;

import halfwave.diagnosis.Reasons;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quiz.Appearances;
import halfwave.quiz.CallSheet;
import halfwave.quiz.Done;
import halfwave.quiz.Found;
import halfwave.quiz.Moves;
import halfwave.quiz.Refusal;
import halfwave.quiz.Variant;
import halfwave.quiz.Visit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A call played again from its moves alone. What a sheet says was found, or how long it took, is
 * compared and never counted.
 *
 * @param visit the visit as it really went
 * @param remarks where the sheet says otherwise, or what could not have been done
 */
public record Replay(Visit visit, List<Message> remarks) {

  /** How many differences are told one by one. */
  private static final int TOLD = 5;

  /** Takes a copy. */
  public Replay {
    remarks = List.copyOf(remarks);
  }

  /**
   * Plays it.
   *
   * @param variant the furnace of that learner
   * @param sheet what was handed in
   * @param hints whether hints were given
   * @param appearances what is remembered of benches
   */
  public static Replay of(
      Variant variant, CallSheet sheet, boolean hints, Appearances appearances) {
    Visit visit = Visit.begin(variant, appearances, hints);
    List<Message> remarks = new ArrayList<>();
    int number = 0;
    for (CallSheet.Logged logged : sheet.moves()) {
      number++;
      Optional<Refusal> refusal = visit.refusal(logged.move());
      if (refusal.isPresent()) {
        remarks.add(
            Message.of(
                MessageKey.GRADE_IMPOSSIBLE,
                Argument.count(number),
                Argument.nested(Moves.said(logged.move())),
                Argument.name(refusal.get())));
        return new Replay(visit, cut(remarks));
      }
      visit = visit.after(logged.move());
      compare(remarks, number, logged, visit.last());
    }
    return new Replay(visit, cut(remarks));
  }

  private static void compare(
      List<Message> remarks, int number, CallSheet.Logged logged, Done done) {
    boolean differs = !logged.found().equals(Found.text(done));
    if (differs && done.outcome() != null) {
      remarks.add(
          Message.of(
              MessageKey.GRADE_FOUND_DIFFERS,
              Argument.count(number),
              Argument.nested(Moves.said(logged.move())),
              Argument.text(logged.found()),
              Argument.nested(Reasons.said(done.outcome()))));
    } else if (logged.minute() != done.minute()) {
      remarks.add(
          Message.of(
              MessageKey.GRADE_MINUTE_DIFFERS,
              Argument.count(number),
              Argument.count(logged.minute()),
              Argument.count(done.minute())));
    }
  }

  private static List<Message> cut(List<Message> remarks) {
    if (remarks.size() <= TOLD) {
      return remarks;
    }
    List<Message> few = new ArrayList<>(remarks.subList(0, TOLD));
    few.add(Message.of(MessageKey.GRADE_MORE, Argument.count(remarks.size() - TOLD)));
    return few;
  }
}
