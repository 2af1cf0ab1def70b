package halfwave.gui.presentation.lesson;

import halfwave.board.Sensing;
import halfwave.display.DisplayUnit;
import halfwave.display.QuantityText;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.BarView;
import halfwave.gui.presentation.bench.BoardView;
import halfwave.gui.presentation.bench.MeterView;
import halfwave.gui.presentation.bench.State;
import halfwave.gui.presentation.charts.Trace;
import halfwave.lesson.Playthrough;
import halfwave.sequence.Sample;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What a class sees on the wall: few words, large.
 *
 * @param heading the step of the demonstration, or the bench
 * @param place which step of how many, or the time on the bench
 * @param reading what the meter shows
 * @param meterPlace where its leads are
 * @param stage what the board does
 * @param light what its light says
 * @param words what the demonstration says and asks now; empty without one
 * @param signal the flame signal of the last minutes
 */
public record ProjectorView(
    String heading,
    String place,
    String reading,
    String meterPlace,
    String stage,
    String light,
    List<Block> words,
    Signal signal) {

  /**
   * A paragraph.
   *
   * @param sign the letter of an answer, or empty
   * @param text what it says
   * @param votes how many of the class chose it, or empty
   * @param strong whether it is the question, or the answer that is right
   * @param right whether it is the answer that is right
   */
  public record Block(String sign, String text, String votes, boolean strong, boolean right) {}

  /**
   * A curve with two limits, on a scale from zero.
   *
   * @param trace the curve
   * @param pickUp height of the limit above which a flame is taken for one, 0 to 1
   * @param dropOut height of the limit below which it is given up, 0 to 1
   * @param now the last value in words
   * @param most what stands at the top of the scale
   * @param span how much time it shows, in words
   * @param spoken all of it in a sentence
   */
  public record Signal(
      Trace trace,
      double pickUp,
      double dropOut,
      String now,
      String most,
      String span,
      String spoken) {}

  private static final long SPAN_MILLIS = 120_000;
  private static final int COLUMNS = 600;

  /**
   * The view of a state.
   *
   * @param state the bench
   * @param at where the demonstration stands, or null
   * @param asking whether its question is shown rather than what is said before it
   */
  public static ProjectorView of(
      State state, @Nullable Playthrough at, boolean asking, Wording words) {
    MeterView meter = MeterView.of(state, words);
    BoardView board = BoardView.of(state, words);
    BarView bar = BarView.of(state, words);
    LessonView lesson = at == null ? null : LessonView.of(at, words);
    return new ProjectorView(
        lesson == null ? bar.bench() : lesson.heading(),
        lesson == null ? bar.clock() : lesson.position(),
        (meter.number() + '\u2009' + meter.unit()).strip(),
        meter.place(),
        board.headline(),
        board.light(),
        lesson == null ? List.of() : blocks(lesson, asking, words),
        signal(state, words));
  }

  /** What is said, then what is asked, then what came of it: never more than fits on the wall. */
  private static List<Block> blocks(LessonView lesson, boolean asking, Wording words) {
    List<Block> blocks = new ArrayList<>();
    boolean asked = !lesson.ask().isEmpty();
    if (lesson.revealed() && (asked || !lesson.explanation().isEmpty())) {
      lesson.choices().stream()
          .filter(LessonView.Choice::right)
          .forEach(c -> blocks.add(new Block(c.letter(), c.text(), votes(c), true, true)));
      if (lesson.choices().stream().anyMatch(c -> c.votes() > 0)) {
        String all =
            lesson.choices().stream()
                .map(c -> c.letter() + '\u2009' + c.votes())
                .collect(Collectors.joining(" \u00b7 "));
        blocks.add(new Block("", words.text("projector.votes", all), "", false, false));
      }
      blocks.add(new Block("", lesson.explanation(), "", false, false));
    } else if (asked && asking) {
      blocks.add(new Block("", lesson.ask(), "", true, false));
      for (LessonView.Choice choice : lesson.choices()) {
        blocks.add(new Block(choice.letter(), choice.text(), votes(choice), false, false));
      }
    } else {
      blocks.add(new Block("", lesson.say(), "", false, false));
    }
    return blocks;
  }

  private static String votes(LessonView.Choice choice) {
    return choice.votes() == 0 ? "" : Integer.toString(choice.votes());
  }

  private static Signal signal(State state, Wording words) {
    QuantityText numbers = words.sentences().quantities();
    Sensing sensing = state.moment().settings().sensing();
    long now = state.moment().timeMillis();
    List<Sample> samples =
        state.recording().samples().stream()
            .filter(s -> s.timeMillis() >= now - SPAN_MILLIS)
            .toList();
    double mostAmps = 1.5 * sensing.pickUpAmps();
    for (Sample sample : samples) {
      mostAmps = Math.max(mostAmps, sample.filteredAmps());
    }
    double most = Math.ceil(1.1 * DisplayUnit.MICROAMP.fromSi(mostAmps));
    double[] at = new double[samples.size()];
    double[] levels = new double[samples.size()];
    for (int k = 0; k < at.length; k++) {
      at[k] = 1 - (now - samples.get(k).timeMillis()) / (double) SPAN_MILLIS;
      levels[k] = Math.max(0, DisplayUnit.MICROAMP.fromSi(samples.get(k).filteredAmps()) / most);
    }
    double amps = state.moment().filter().meanAmps();
    String here = numbers.fixed(amps, DisplayUnit.MICROAMP, 1);
    return new Signal(
        Trace.reduced(at, levels, COLUMNS),
        DisplayUnit.MICROAMP.fromSi(sensing.pickUpAmps()) / most,
        DisplayUnit.MICROAMP.fromSi(sensing.dropOutAmps()) / most,
        here,
        numbers.fixed(1e-6 * most, DisplayUnit.MICROAMP, 0),
        words.text("projector.span"),
        words.text("projector.spoken", here));
  }
}
