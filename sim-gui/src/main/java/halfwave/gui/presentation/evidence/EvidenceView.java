package halfwave.gui.presentation.evidence;

import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.diagnosis.CheckAdvice;
import halfwave.diagnosis.Entry;
import halfwave.diagnosis.Reasons;
import halfwave.diagnosis.RepairAdvice;
import halfwave.diagnosis.Step;
import halfwave.gui.presentation.Wording;
import halfwave.message.Argument;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Evidence as the window shows it.
 *
 * @param found what was found, with what each did
 * @param causes the probable ones
 * @param next what to do next
 * @param checks what the best checks would bring
 * @param repairs the order in which to repair
 * @param customer a sentence for the customer
 */
public record EvidenceView(
    List<Line> found,
    List<Bar> causes,
    List<String> next,
    List<Offer> checks,
    List<Bar> repairs,
    String customer) {

  /** So many of each are shown; the rest is next to nothing. */
  private static final int SHOWN = 8;

  private static final int OFFERED = 6;
  private static final double LEAST_PROBABILITY = 0.005;

  /** From here on a check tells much, or at least something (bits) [judgement]. */
  private static final double MUCH_BITS = 1;

  private static final double SOME_BITS = 0.3;

  /**
   * Something that was found.
   *
   * @param text what
   * @param reasons what it did
   * @param surprising whether it is hard to believe
   */
  public record Line(String text, List<String> reasons, boolean surprising) {}

  /**
   * A probability before and after the last line.
   *
   * @param name of what
   * @param before 0 to 1
   * @param after 0 to 1
   * @param text the same in words
   */
  public record Bar(String name, double before, double after, String text) {}

  /**
   * A check that may be done.
   *
   * @param check which
   * @param name of it
   * @param share its information over that of the best, 0 to 1
   * @param text what it brings, in words
   * @param pays whether it saves more than it takes
   */
  public record Offer(Check check, String name, double share, String text, boolean pays) {}

  /** The view of an answer. */
  public static EvidenceView of(EvidenceAnswer answer, Wording words) {
    List<Step> steps = answer.belief().steps();
    Map<Cause, Double> now = answer.belief().now();
    Map<Cause, Double> before = steps.isEmpty() ? now : steps.get(steps.size() - 1).before();
    List<Bar> causes = new ArrayList<>();
    now.entrySet().stream()
        .filter(e -> e.getValue() >= LEAST_PROBABILITY)
        .limit(SHOWN)
        .forEach(e -> causes.add(cause(e, before.getOrDefault(e.getKey(), 0.0), words)));
    return new EvidenceView(
        steps.stream().map(s -> line(s, words)).toList(),
        causes,
        Reasons.next(answer.advice()).stream().map(words.sentences()::sentence).toList(),
        offers(answer.advice().checks(), words),
        answer.advice().repairs().stream().limit(OFFERED).map(r -> repair(r, words)).toList(),
        words.sentences().text(Reasons.customer(answer.belief(), answer.advice())));
  }

  /** Lines that nothing is known of yet. */
  public static List<Line> noted(List<Entry> log, Wording words) {
    return log.stream()
        .map(e -> new Line(words.sentences().sentence(Reasons.line(e)), List.of(), false))
        .toList();
  }

  /** The name of a check as a heading. */
  public static String name(Check check, Wording words) {
    return words.sentences().sentence(Reasons.name(check));
  }

  private static Line line(Step step, Wording words) {
    return new Line(
        words.sentences().sentence(Reasons.line(step.entry())),
        Reasons.of(step).stream().map(words.sentences()::text).toList(),
        step.surprising());
  }

  private static Bar cause(Map.Entry<Cause, Double> entry, double before, Wording words) {
    String name = words.sentences().sentence(Reasons.name(entry.getKey()));
    String after = percent(entry.getValue(), words);
    return new Bar(name, before, entry.getValue(), after);
  }

  private static String percent(double probability, Wording words) {
    Argument percent = Reasons.percent(probability);
    return words.sentences().text(percent);
  }

  private static Bar repair(RepairAdvice advice, Wording words) {
    String name = words.heading(advice.repair());
    double cures = advice.curesProbability();
    String text =
        words.text(
            "evidence.cures", percent(cures, words), Math.round(advice.effortSeconds() / 60));
    return new Bar(name, cures, cures, text);
  }

  private static List<Offer> offers(List<CheckAdvice> checks, Wording words) {
    double most = checks.stream().mapToDouble(CheckAdvice::gainBits).max().orElse(0);
    return checks.stream()
        .limit(OFFERED)
        .map(
            c ->
                new Offer(
                    c.check(),
                    name(c.check(), words),
                    most > 0 ? c.gainBits() / most : 0,
                    words.text(
                        c.pays() ? "evidence.tells" : "evidence.tells-in-vain",
                        words.text(amount(c.gainBits())),
                        Math.round(c.effortSeconds() / 60)),
                    c.pays()))
        .toList();
  }

  /** Bits are for whoever wants to follow the sum; half a bit halves two suspects in two. */
  private static String amount(double bits) {
    if (bits >= MUCH_BITS) {
      return "evidence.much";
    }
    return bits >= SOME_BITS ? "evidence.some" : "evidence.little";
  }
}
