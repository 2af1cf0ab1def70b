package halfwave.paper;

import halfwave.display.Sentences;
import halfwave.lesson.Answer;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Playthrough;
import halfwave.lesson.Question;
import halfwave.lesson.Step;
import halfwave.lesson.Words;
import halfwave.picture.Picture;
import halfwave.picture.scene.DrawnBench;
import halfwave.sequence.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A demonstration as a sequence of pictures of 1920 by 1080: for each step what is said, what is
 * asked, and what came of it, with drawing, reading and board as they are then. Long texts take
 * several pictures.
 *
 * <pre>{@code
 * List<Slide> slides = LessonSlides.of(demonstration, sentences, locale);
 * SlideFiles.write(folder, slides, watch);
 * SlideFiles.animation(file, slides, watch);
 * }</pre>
 */
public final class LessonSlides {

  /** Words that a class takes in in a second, read aloud [practice: 130 to 160 a minute]. */
  private static final double WORDS_PER_SECOND = 2.4;

  /** Time to look at the drawing (s). */
  private static final double LOOK_SECONDS = 2;

  private final Demonstration demonstration;
  private final PaperWords words;
  private final DrawnMoments moments;
  private final SlidePainter painter;
  private final List<Slide> slides = new ArrayList<>();

  private LessonSlides(Demonstration demonstration, PaperWords words) {
    this.demonstration = demonstration;
    this.words = words;
    moments = new DrawnMoments(words.sentences());
    painter = new SlidePainter(words);
  }

  /**
   * The slides; plays the whole demonstration, which takes some seconds. They are painted when they
   * are wanted.
   *
   * @param demonstration what they are of
   * @param sentences language and units
   * @param reader the same language
   */
  public static List<Slide> of(Demonstration demonstration, Sentences sentences, Locale reader) {
    LessonSlides made = new LessonSlides(demonstration, new PaperWords(sentences, reader));
    List<Moment> at = Playthrough.moments(demonstration);
    for (int k = 0; k < demonstration.steps().size(); k++) {
      made.step(k, made.moments.of(at.get(k)), made.moments.of(at.get(k + 1)));
    }
    return List.copyOf(made.slides);
  }

  private String in(Words text) {
    return text.in(words.reader());
  }

  private static SlideText text() {
    return new SlideText(SlidePainter.TEXT_WIDTH, SlidePainter.TEXT_HEIGHT);
  }

  private void step(int index, DrawnBench before, DrawnBench after) {
    Step step = demonstration.steps().get(index);
    told(index, "said", before, in(step.say()));
    Question question = step.question();
    if (question != null) {
      add(index, "asked", before, asked(question, -1));
      add(index, "answered", after, asked(question, question.right()));
    }
    Words explanation = step.explanation();
    if (explanation != null) {
      told(index, "explained", after, in(explanation));
    } else if (question == null && step.play().lasts()) {
      add(index, "shown", after, text());
    }
  }

  private void told(int index, String phase, DrawnBench drawn, String whole) {
    for (String part : SlideText.parts(whole, SlidePainter.TEXT_WIDTH, SlidePainter.TEXT_HEIGHT)) {
      add(index, phase, drawn, text().paragraph(part, SlideText.BODY));
    }
  }

  /** The question with its answers, and which one is right; below zero: none is told. */
  private SlideText asked(Question question, int right) {
    SlideText text = text().paragraph(in(question.ask()), SlideText.STRONG);
    for (int k = 0; k < question.answers().size(); k++) {
      Answer answer = question.answers().get(k);
      text.answer(HandoutPages.letter(k), in(answer.text()), k == right);
    }
    return right < 0
        ? text
        : text.paragraph(words.text("slide.right", HandoutPages.letter(right)), SlideText.STRONG);
  }

  private void add(int index, String phase, DrawnBench drawn, SlideText text) {
    Step step = demonstration.steps().get(index);
    String place = words.text("slide.step", index + 1, demonstration.steps().size());
    for (List<SlideText.Line> column : text.columns()) {
      Picture picture = painter.slide(in(step.heading()), place, drawn, column);
      String name =
          String.format(Locale.ROOT, "%03d-step-%02d-%s", slides.size() + 1, index + 1, phase);
      long count = column.stream().mapToLong(l -> l.text.split(" ", -1).length).sum();
      slides.add(new Slide(name, picture, LOOK_SECONDS + count / WORDS_PER_SECOND));
    }
  }
}
