package halfwave.gui.presentation.lesson;

import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.LitParts;
import halfwave.lesson.Answer;
import halfwave.lesson.Playthrough;
import halfwave.lesson.Question;
import halfwave.lesson.Step;
import halfwave.picture.scene.DrawnPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A step of a demonstration as the class sees it.
 *
 * @param title title of the demonstration
 * @param heading heading of the step
 * @param position which step of how many
 * @param say what there is to say
 * @param ask the question, or empty
 * @param choices the predictions to choose from
 * @param explanation what there is to say once the answer is out; empty before
 * @param revealed whether it is out
 * @param takesVotes whether votes count
 * @param forward what the space bar does next
 * @param hasBack whether there is a step before
 * @param ended whether this is the last step and its answer is out
 * @param lit parts to light up in the drawing
 */
public record LessonView(
    String title,
    String heading,
    String position,
    String say,
    String ask,
    List<Choice> choices,
    String explanation,
    boolean revealed,
    boolean takesVotes,
    String forward,
    boolean hasBack,
    boolean ended,
    Set<DrawnPart> lit) {

  /**
   * One prediction.
   *
   * @param letter its letter
   * @param text what it says
   * @param votes how many chose it
   * @param share that over all votes, 0 to 1
   * @param right whether it is known to be right
   */
  public record Choice(String letter, String text, int votes, double share, boolean right) {}

  /** Whether only votes are between the two. */
  public boolean sameSheet(LessonView other) {
    return title.equals(other.title)
        && position.equals(other.position)
        && revealed == other.revealed;
  }

  /** The view of a playthrough. */
  public static LessonView of(Playthrough at, Wording words) {
    Step step = at.step();
    Question question = step.question();
    boolean ended = at.revealed() && !at.hasNext();
    String forward =
        at.revealed()
            ? ended ? "lesson.end" : "lesson.next"
            : question == null ? "lesson.show" : "lesson.reveal";
    return new LessonView(
        at.demonstration().title().in(words.locale()),
        step.heading().in(words.locale()),
        words.text("lesson.position", at.stepIndex() + 1, at.demonstration().steps().size()),
        step.say().in(words.locale()),
        question == null ? "" : question.ask().in(words.locale()),
        question == null ? List.of() : choices(question, at, words),
        at.revealed() && step.explanation() != null ? step.explanation().in(words.locale()) : "",
        at.revealed(),
        at.takesVotes(),
        words.text(forward),
        at.hasBack(),
        ended,
        at.revealed() ? LitParts.of(step.lit()) : Set.of());
  }

  private static List<Choice> choices(Question question, Playthrough at, Wording words) {
    int all = Math.max(1, at.tally().stream().mapToInt(Integer::intValue).sum());
    List<Choice> choices = new ArrayList<>();
    for (int k = 0; k < question.answers().size(); k++) {
      Answer answer = question.answers().get(k);
      int votes = at.tally().get(k);
      choices.add(
          new Choice(
              String.valueOf((char) ('A' + k)),
              answer.text().in(words.locale()),
              votes,
              votes / (double) all,
              at.revealed() && k == question.right()));
    }
    return choices;
  }
}
