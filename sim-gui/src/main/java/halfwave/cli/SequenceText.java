package halfwave.cli;

import halfwave.board.Output;
import halfwave.board.Stage;
import halfwave.board.Transition;
import halfwave.display.DisplayUnit;
import halfwave.display.Sentences;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.sequence.Event;
import halfwave.sequence.Moment;
import halfwave.sequence.Sample;
import halfwave.sequence.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** A sequence as a table of its events in plain text. */
final class SequenceText {

  private static final int TIME_DECIMALS = 3;
  private static final int AMPS_DECIMALS = 2;

  /** The whole table is no wider, unless its numbers leave the words no room. */
  private static final int WIDTH = Wrapping.WIDTH;

  private static final int LEAST_WORDS = 40;

  private final Sentences sentences;
  private final List<List<String>> rows = new ArrayList<>();

  SequenceText(Sentences sentences) {
    this.sentences = sentences;
    rows.add(
        List.of(
            withUnit(MessageKey.SEQUENCE_TIME, DisplayUnit.SECOND),
            say(MessageKey.SEQUENCE_STAGE),
            say(MessageKey.SEQUENCE_LIGHT),
            say(MessageKey.SEQUENCE_RUNS),
            withUnit(MessageKey.SEQUENCE_DC, DisplayUnit.MICROAMP),
            say(MessageKey.SEQUENCE_WHAT)));
  }

  /** The events of a slice. Whenever something happens, a sample is taken. */
  void add(Segment slice) {
    int k = 0;
    for (int e = 0; e < slice.events().size(); e++) {
      Event event = slice.events().get(e);
      while (slice.samples().get(k).timeMillis() < event.timeMillis()) {
        k++;
      }
      Sample sample = slice.samples().get(k);
      rows.add(row(event, stage(slice.events(), e).orElse(sample.stage()), sample));
    }
  }

  /** The stage after an event, where the board goes on at the same instant. */
  private static Optional<Stage> stage(List<Event> events, int at) {
    Event event = events.get(at);
    if (event.transition() != null) {
      return Optional.of(event.transition().to());
    }
    // what is done comes first, and the board answers
    return events.subList(at, events.size()).stream()
        .takeWhile(later -> later.timeMillis() == event.timeMillis())
        .map(Event::transition)
        .filter(Objects::nonNull)
        .findFirst()
        .map(Transition::from);
  }

  private List<String> row(Event event, Stage stage, Sample sample) {
    return List.of(
        sentences.quantities().fixed(event.timeMillis() / 1000.0, TIME_DECIMALS),
        sentences.name(stage),
        Flashes.of(sample.code()),
        Output.running(sample.outputs()).stream()
            .map(sentences::name)
            .collect(Collectors.joining(" ")),
        sentences
            .quantities()
            .fixed(DisplayUnit.MICROAMP.fromSi(sample.filteredAmps()), AMPS_DECIMALS),
        sentences.sentence(event.message()));
  }

  /** The whole text. */
  String text(Moment start, List<Message> about) {
    StringBuilder page = new StringBuilder();
    Argument bench = Argument.text(start.bench().name());
    String title = sentences.text(Message.of(MessageKey.SEQUENCE_TITLE, bench));
    page.append(title).append('\n').append("=".repeat(title.length())).append('\n');
    about.forEach(line -> page.append(sentences.text(line)).append('\n'));
    page.append('\n');
    table(page);
    page.append('\n');
    String foot =
        String.join(
            " ",
            say(MessageKey.CAUTION_GAS_AND_POWER),
            say(MessageKey.CAUTION_NEVER_BYPASS),
            say(MessageKey.CAUTION_TEACHING));
    for (String paragraph : List.of(say(MessageKey.SEQUENCE_FLASHES), foot)) {
      Wrapping.lines(paragraph, WIDTH).forEach(line -> page.append(line).append('\n'));
    }
    return page.toString();
  }

  private void table(StringBuilder page) {
    int words = rows.get(0).size() - 1;
    int[] width = new int[words];
    for (List<String> row : rows) {
      for (int c = 0; c < words; c++) {
        width[c] = Math.max(width[c], row.get(c).length());
      }
    }
    int before = 0;
    for (int w : width) {
      before += w + 2;
    }
    int room = Math.max(LEAST_WORDS, WIDTH - before);
    for (List<String> row : rows) {
      for (int c = 0; c < words; c++) {
        String gap = " ".repeat(width[c] - row.get(c).length());
        // numbers line up to the right, words to the left
        boolean number = c == 0 || c == words - 1;
        page.append(number ? gap + row.get(c) : row.get(c) + gap).append("  ");
      }
      page.append(String.join("\n" + " ".repeat(before), Wrapping.lines(row.get(words), room)));
      page.append('\n');
    }
  }

  private String withUnit(MessageKey name, DisplayUnit unit) {
    return sentences.text(
        Message.of(MessageKey.CHART_AXIS, Argument.text(say(name)), Argument.text(unit.symbol())));
  }

  private String say(MessageKey key) {
    return sentences.text(Message.of(key));
  }
}
