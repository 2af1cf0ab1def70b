package halfwave.gui.presentation.lesson;

import halfwave.gui.presentation.Wording;
import halfwave.lesson.Playthrough;
import halfwave.lesson.Question;
import halfwave.lesson.Step;
import halfwave.lesson.Words;
import java.util.ArrayList;
import java.util.List;

/** What an instructor knows about a step before the class does. */
public final class LessonNotes {

  private LessonNotes() {}

  /** The notes to where a demonstration stands, a paragraph each. */
  public static List<String> of(Playthrough at, Wording words) {
    List<String> notes = new ArrayList<>();
    Step step = at.step();
    Question question = step.question();
    if (question != null && !at.revealed()) {
      String letter = String.valueOf((char) ('A' + question.right()));
      String answer = question.answers().get(question.right()).text().in(words.locale());
      notes.add(words.text("lesson.notes-right", letter, answer));
    }
    Words explanation = step.explanation();
    if (explanation != null && !at.revealed()) {
      notes.add(explanation.in(words.locale()));
    }
    if (at.hasNext()) {
      Step next = at.demonstration().steps().get(at.stepIndex() + 1);
      notes.add(words.text("lesson.notes-next", next.heading().in(words.locale())));
    }
    return notes;
  }
}
