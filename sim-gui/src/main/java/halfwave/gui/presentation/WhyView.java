package halfwave.gui.presentation;

import halfwave.display.MeterText;
import halfwave.instrument.Shown;
import halfwave.message.Message;
import halfwave.picture.DrawnPart;
import halfwave.sequence.Moment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The present reading explained in plain words.
 *
 * @param title the question
 * @param sections the answer
 */
public record WhyView(String title, List<Section> sections) {

  private static final Pattern UNIT_SPACE = Pattern.compile("(?<=\\d) (?=\\S)");

  /**
   * Sentences that belong together.
   *
   * @param heading what they are about; empty for the verdict
   * @param sentences the sentences
   */
  public record Section(String heading, List<Sentence> sentences) {}

  /**
   * A sentence and what it speaks about.
   *
   * @param text the sentence
   * @param parts which parts of the drawing
   * @param spoken their names, for who hears the screen; empty where there are none
   */
  public record Sentence(String text, Set<DrawnPart> parts, String spoken) {}

  /** The view of an answer. */
  public static WhyView of(WhyAnswer answer, Wording words) {
    List<Section> sections = new ArrayList<>();
    var account = answer.account();
    section(sections, "", account.verdict(), words);
    section(sections, words.text("why.half-cycles"), account.halfCycles(), words);
    List<Sentence> wrong = new ArrayList<>(sentences(account.findings(), words));
    if (wrong.isEmpty()) {
      wrong.add(sentence(words.text("why.all-well"), Set.of(), words));
    }
    sections.add(new Section(words.text("why.wrong"), List.copyOf(wrong)));
    section(sections, words.text("why.depends"), account.depends(), words);
    section(sections, words.text("why.meter"), account.meter(), words);
    List<Sentence> board = new ArrayList<>(sentences(account.board(), words));
    Moment moment = answer.question().moment();
    String next = BoardView.next(moment.board().stage(), moment.settings(), words);
    board.add(sentence(next, Set.of(DrawnPart.BOARD), words));
    sections.add(new Section(words.text("why.board"), List.copyOf(board)));
    return new WhyView(title(answer, words), List.copyOf(sections));
  }

  private static String title(WhyAnswer answer, Wording words) {
    Moment moment = answer.question().moment();
    if (moment.furnace().growthRatio() <= 0) {
      return words.text("why.no-flame");
    } else if (answer.measured().isEmpty()) {
      double amps = moment.filter().meanAmps();
      return words.text("why.signal", BoardView.microamps(amps, words));
    }
    Shown shown = answer.measured().get().shown();
    boolean figure = !(shown instanceof Shown.Nothing || shown instanceof Shown.Unsolved);
    String text = MeterText.text(shown, words.sentences());
    return words.text(figure ? "why.reading" : "why.display", text);
  }

  private static void section(
      List<Section> sections, String heading, List<Message> messages, Wording words) {
    if (!messages.isEmpty()) {
      sections.add(new Section(heading, sentences(messages, words)));
    }
  }

  private static List<Sentence> sentences(List<Message> messages, Wording words) {
    return messages.stream()
        .map(m -> sentence(words.sentences().sentence(m), SaidParts.of(m), words))
        .toList();
  }

  /** A number stays with its unit where lines break. */
  private static String joined(String text) {
    return UNIT_SPACE.matcher(text).replaceAll("\u00a0");
  }

  private static Sentence sentence(String text, Set<DrawnPart> parts, Wording words) {
    String names =
        parts.stream()
            .sorted(Comparator.naturalOrder())
            .map(p -> words.text(PartCard.key(p)))
            .collect(Collectors.joining(", "));
    return new Sentence(
        joined(text), parts, names.isEmpty() ? "" : words.text("why.lights", names));
  }
}
