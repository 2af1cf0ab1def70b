package halfwave.gui.presentation.bench;

import halfwave.board.Ignition;
import halfwave.gui.presentation.Wording;
import halfwave.work.Caution;
import halfwave.work.FurnacePart;
import halfwave.work.Handling;
import halfwave.work.Hazard;
import halfwave.work.Look;
import halfwave.work.Repair;
import halfwave.work.Tool;
import halfwave.work.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Something that can be done at the furnace.
 *
 * @param work what
 * @param name its name
 * @param part where
 * @param sort what sort of work
 * @param minutes how long it takes, getting there included
 * @param needs what has to be at hand and in which state, or empty
 * @param hazards what can hurt, or empty
 * @param cautions what has to be said before it
 */
public record WorkCard(
    Work work,
    String name,
    String part,
    Sort sort,
    String minutes,
    String needs,
    String hazards,
    List<String> cautions) {

  /** Whether it is a question to people, and no look at a part. */
  public boolean asks() {
    return work == Look.ASK_WHAT_HAPPENS || work == Look.ASK_SINCE_WHEN;
  }

  /** Sorts of work. */
  public enum Sort {
    /** Finds something out. */
    LOOK,
    /** Puts something right. */
    REPAIR,
    /** Goes wrong: to see what comes of it. */
    MISHAP;

    static Sort of(Work work) {
      if (work instanceof Repair) {
        return REPAIR;
      }
      return work instanceof Handling ? MISHAP : LOOK;
    }
  }

  /** Everything of a sort. */
  public static List<WorkCard> all(Sort sort, State state, Wording words) {
    return Stream.<Work[]>of(Look.values(), Repair.values(), Handling.values())
        .flatMap(Stream::of)
        .filter(work -> Sort.of(work) == sort)
        .map(work -> of(work, state, words))
        .toList();
  }

  /** Everything that can be done at a part. */
  public static List<WorkCard> at(FurnacePart part, State state, Wording words) {
    return Stream.of(Sort.values())
        .flatMap(sort -> all(sort, state, words).stream())
        .filter(card -> card.work.part() == part)
        .toList();
  }

  static WorkCard of(Work work, State state, Wording words) {
    Ignition ignition = state.moment().bench().design().ignition();
    String hazards =
        work.hazards(ignition).stream()
            .map((Hazard h) -> words.sentences().name(h))
            .collect(Collectors.joining(", "));
    return new WorkCard(
        work,
        words.heading((Enum<?>) work),
        words.heading(work.part()),
        Sort.of(work),
        words.text("work.minutes", work.minutes()),
        needs(work, words),
        hazards.isEmpty() ? "" : words.text("work.hazards", hazards),
        work.cautions(ignition).stream()
            .map((Caution c) -> Wording.capital(words.sentences().name(c)))
            .toList());
  }

  private static String needs(Work work, Wording words) {
    List<String> needs = new ArrayList<>();
    for (Tool tool : work.tools()) {
      if (tool != Tool.HANDS) {
        needs.add(words.sentences().name(tool));
      }
    }
    if (work.powerOff()) {
      needs.add(words.text("work.power-off"));
    }
    if (work.gasOff()) {
      needs.add(words.text("work.gas-off"));
    }
    if (work.needsFlame()) {
      needs.add(words.text("work.flame"));
    }
    return needs.isEmpty() ? "" : words.text("work.needs", String.join(", ", needs));
  }

  /** What was done so far, the latest first. */
  public static List<String> done(State state, Wording words) {
    List<String> lines = new ArrayList<>();
    for (WorkDone done : state.standing().work()) {
      String name = words.heading((Enum<?>) done.work());
      String minutes = words.text("work.minutes", done.work().minutes());
      lines.add(0, done.said(words.text("work.done", name, minutes), words));
    }
    return lines;
  }

  /** Minutes of all work so far. */
  public static int minutesSpent(State state) {
    return state.standing().work().stream().mapToInt(done -> done.work().minutes()).sum();
  }
}
