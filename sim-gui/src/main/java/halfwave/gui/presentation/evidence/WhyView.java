package halfwave.gui.presentation.evidence;

import halfwave.display.MeterText;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.BoardView;
import halfwave.gui.presentation.bench.MeterView;
import halfwave.gui.presentation.bench.PartCard;
import halfwave.instrument.Figure;
import halfwave.instrument.HookUp;
import halfwave.instrument.Measurement;
import halfwave.instrument.Shown;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.picture.scene.DrawnPart;
import halfwave.quantity.Dimension;
import halfwave.sequence.Hooked;
import halfwave.sequence.Moment;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

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
    boolean dark = dark(answer);
    sections.add(new Section("", first(answer, dark, words)));
    // who asks why wants the causes before the physics
    section(sections, words.text("why.wrong"), account.findings(), words);
    section(sections, words.text("why.half-cycles"), account.halfCycles(), words);
    if (account.findings().isEmpty()) {
      Sentence well = sentence(words.text("why.all-well"), Set.of(), words);
      sections.add(new Section(words.text("why.wrong"), List.of(well)));
    }
    section(sections, words.text("why.depends"), account.depends(), words);
    section(sections, words.text("why.meter"), account.meter(), words);
    List<Sentence> board = new ArrayList<>(dark ? List.of() : sentences(account.board(), words));
    Moment moment = answer.question().moment();
    String next = BoardView.next(moment.board().stage(), moment.settings(), words);
    board.add(sentence(next, Set.of(DrawnPart.BOARD), words));
    sections.add(new Section(words.text("why.board"), List.copyOf(board)));
    return new WhyView(title(answer, words), List.copyOf(sections));
  }

  private static String title(WhyAnswer answer, Wording words) {
    Moment moment = answer.question().moment();
    if (dark(answer)) {
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

  /** Whether it is the flame that is missing: what a meter finds on the line has other reasons. */
  private static boolean dark(WhyAnswer answer) {
    return answer.question().moment().furnace().growthRatio() <= 0 && !onSupply(answer);
  }

  private static boolean onSupply(WhyAnswer answer) {
    Hooked hooked = answer.question().moment().hooked();
    return hooked != null && hooked.hookUp() instanceof HookUp.AcrossSupply;
  }

  /** What the board did where there is no flame, else what is measured; then the verdict. */
  private static List<Sentence> first(WhyAnswer answer, boolean dark, Wording words) {
    List<Sentence> said = new ArrayList<>();
    if (dark) {
      List<Message> board = new ArrayList<>(answer.account().board());
      // what it did comes before the name of where it is
      Collections.rotate(board, -1);
      said.addAll(sentences(board, words));
    }
    Hooked hooked = answer.question().moment().hooked();
    Figure amps = senseAmps(answer);
    if (!dark && hooked != null && amps == null && answer.measured().isPresent()) {
      said.add(
          sentence(
              words.text(
                  "why.shows",
                  MeterText.text(answer.measured().get().shown(), words.sentences()),
                  MeterView.place(hooked.hookUp(), words)),
              Set.of(DrawnPart.METER),
              words));
    }
    if (onSupply(answer)) {
      said.add(sentence(words.text("why.supply"), Set.of(DrawnPart.SUPPLY), words));
    }
    List<Message> verdict =
        answer.account().verdict().stream()
            .map(m -> amps == null ? m : read(m, amps, words))
            .toList();
    said.addAll(sentences(verdict, words));
    return List.copyOf(said);
  }

  /** What a meter in series shows of the current that leaves the board; null: it shows no such. */
  private static @Nullable Figure senseAmps(WhyAnswer answer) {
    Hooked hooked = answer.question().moment().hooked();
    Shown shown = answer.measured().map(Measurement::shown).orElse(null);
    // with the leads swapped it shows the other sign
    boolean series =
        hooked != null
            && !hooked.opening()
            && hooked.hookUp() instanceof HookUp.InSenseLead in
            && in.redTowardsBoard();
    if (!series) {
      return null;
    }
    Figure figure =
        shown instanceof Shown.Direct direct
            ? direct.figure()
            : shown instanceof Shown.Both both ? both.direct() : null;
    boolean amps =
        figure instanceof Figure.Value value && value.quantity().dimension() == Dimension.CURRENT;
    return amps ? figure : null;
  }

  /** The computed DC gives way to what stands on the display, so that both are one number. */
  private static Message read(Message message, Figure amps, Wording words) {
    return switch (message.key()) {
      case ACCOUNT_SENSE_GOOD,
          ACCOUNT_SENSE_WEAK,
          ACCOUNT_SENSE_SMALL,
          ACCOUNT_SENSE_REVERSED,
          ACCOUNT_SENSE_NOTHING -> {
        List<Argument> arguments = new ArrayList<>(message.arguments());
        arguments.set(0, Argument.text(MeterText.text(amps, words.sentences())));
        yield Message.of(message.key(), arguments.toArray(Argument[]::new));
      }
      default -> message;
    };
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
