package halfwave.gui.presentation.evidence;

import halfwave.bench.Bench;
import halfwave.display.Sentences;
import halfwave.gui.presentation.Wording;
import halfwave.io.evidence.MatchWords;
import halfwave.matching.Match;
import halfwave.matching.TakenReading;
import halfwave.matching.Unknown;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A fit as the window shows it.
 *
 * @param bars the fitted numbers
 * @param lines the readings beside those of the fitted bench
 * @param said what follows from it
 * @param warning why it is to be doubted, or why there is none; else empty
 * @param bench the fitted bench, or null where there is none
 */
public record MatchView(
    List<Bar> bars, List<Line> lines, List<String> said, String warning, @Nullable Bench bench) {

  /** So many standard deviations off is worth a look. */
  private static final double FAR_COUNT = 3;

  /** So many widths of what was known before a bar spans to a side. */
  private static final double WIDTHS = 2.5;

  /**
   * A number with its interval.
   *
   * @param name its name
   * @param text its value and interval, with units
   * @param low place of one end of the interval, 0 to 1 of the bar
   * @param best place of the value
   * @param high place of the other end
   * @param start place of the value on the bench that the fit started from
   * @param tip what the bar shows
   */
  public record Bar(
      String name, String text, double low, double best, double high, double start, String tip) {}

  /**
   * A reading.
   *
   * @param name what was read, and under what
   * @param read what was read
   * @param fitted what the fitted bench gives
   * @param off how many standard deviations lie between
   * @param far whether that is much
   */
  public record Line(String name, String read, String fitted, String off, boolean far) {}

  /** The view of an answer. */
  public static MatchView of(MatchAnswer answer, Wording words) {
    Sentences sentences = words.sentences();
    if (!(answer.matched() instanceof Match match)) {
      String why = sentences.sentence(MatchWords.failure(answer.matched()));
      return new MatchView(List.of(), List.of(), List.of(), why, null);
    }
    List<String> said = new ArrayList<>();
    MatchWords.conclusions(match).forEach(m -> said.add(said(sentences.text(m))));
    if (match.estimates().stream().anyMatch(e -> !e.holds(e.value().si()))) {
      said.add(words.text("match.outside"));
    }
    // the first of them says so where no such bench gives the readings
    boolean doubted = !match.plausible();
    return new MatchView(
        match.estimates().stream().map(e -> bar(e, answer.start(), words)).toList(),
        match.compared().stream().map(c -> line(c, words)).toList(),
        List.copyOf(doubted ? said.subList(1, said.size()) : said),
        doubted ? said.get(0) : "",
        match.bench());
  }

  /** What belongs to the line before is indented by the core; here it has an arrow. */
  private static String said(String text) {
    return (text.startsWith(" ") ? "→ " : "") + Wording.capital(text.strip());
  }

  /** What was read, and under what. */
  public static String name(TakenReading reading, Wording words) {
    return Wording.capital(words.sentences().text(MatchWords.said(reading.sight())));
  }

  private static Line line(Match.Compared c, Wording words) {
    Sentences sentences = words.sentences();
    return new Line(
        name(c.taken(), words),
        sentences.text(c.taken().value()),
        sentences.text(c.fitted()),
        sentences.quantities().fixed(c.deviationCount(), 1),
        Math.abs(c.deviationCount()) >= FAR_COUNT);
  }

  private static Bar bar(Match.Estimate e, Bench start, Wording words) {
    Sentences sentences = words.sentences();
    Unknown unknown = e.unknown();
    double side = WIDTHS * unknown.widthRatio();
    double left = unknown.isWear() ? 0 : -side;
    double a = place(unknown.u(start, e.low().si()), left, side);
    double b = place(unknown.u(start, e.high().si()), left, side);
    String value = sentences.text(e.value());
    String interval = sentences.text(Message.of(MessageKey.MATCH_INTERVAL, e.low(), e.high()));
    return new Bar(
        words.heading(unknown),
        words.text("match.value-interval", value, interval),
        Math.min(a, b),
        place(unknown.u(start, e.value().si()), left, side),
        Math.max(a, b),
        place(0, left, side),
        words.text(unknown.isWear() ? "match.bar-wear" : "match.bar-size"));
  }

  private static double place(double u, double left, double right) {
    return Math.max(0, Math.min(1, (u - left) / (right - left)));
  }
}
