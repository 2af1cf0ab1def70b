package halfwave.gui.presentation.quiz;

import halfwave.board.Ignition;
import halfwave.diagnosis.Check;
import halfwave.gui.presentation.HelpPage;
import halfwave.gui.presentation.Wording;
import halfwave.quiz.Move;
import halfwave.quiz.Moves;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Temptation;
import halfwave.quiz.Visit;
import halfwave.work.Caution;
import halfwave.work.FurnacePart;
import halfwave.work.Repair;
import halfwave.work.StillOn;
import halfwave.work.Work;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Something that may be done on a service call.
 *
 * @param move what
 * @param part where
 * @param place where, as a heading
 * @param name what, as a heading
 * @param costs what it takes: minutes, and units where a part is changed
 * @param cautions what has to be said before it
 */
public record Offer(
    Move move, FurnacePart part, String place, String name, String costs, List<String> cautions) {

  /**
   * What it would do as the call stands now that nobody may want: on with power or gas, or the last
   * thing before the time of the call is used up.
   */
  public List<String> warnings(Visit visit, Wording words) {
    List<String> all = new ArrayList<>();
    String on = stillOn(visit.power(), visit.gas(), words);
    if (!on.isEmpty()) {
      all.add(on);
    }
    int left = visit.variant().call().minutes() - visit.minutes();
    if (minutes() > left) {
      all.add(words.text("visit.last-minutes", left));
    }
    return all;
  }

  private int minutes() {
    if (move instanceof Move.Checked checked) {
      return checked.check().minutes();
    }
    return move instanceof Move.Repaired repaired
        ? repaired.repair().minutes()
        : part.access().minutes() + MINUTES;
  }

  /**
   * What is on that has to be off for it, in a sentence; empty where all is as it has to be. What
   * nobody may do needs off what its part needs: it stands among the rest.
   */
  public String stillOn(boolean power, boolean gas, Wording words) {
    return needs(power, gas)
        .map(
            on ->
                words.text(
                    "visit.still-on", words.heading(on), words.heading(Caution.OFF_BEFORE_OPENING)))
        .orElse("");
  }

  private Optional<StillOn> needs(boolean power, boolean gas) {
    if (move instanceof Move.Checked checked) {
      return checked.check().work().flatMap(w -> w.stillOn(power, gas));
    }
    return move instanceof Move.Repaired repaired
        ? repaired.repair().stillOn(power, gas)
        : part.access().stillOn(power, gas);
  }

  /** At the part itself, for what nobody has ever timed. */
  private static final int MINUTES = 2;

  /** Takes a copy. */
  public Offer {
    cautions = List.copyOf(cautions);
  }

  /** What may be looked at and measured, part by part. */
  public static List<Offer> checks(ServiceCall call, Wording words) {
    return call.checks().stream()
        .map(c -> check(c, call.ignition(), words))
        .sorted(Comparator.comparing(Offer::part))
        .toList();
  }

  private static Offer check(Check check, Ignition ignition, Wording words) {
    FurnacePart part = check.work().map(Work::part).orElse(FurnacePart.THERMOSTAT);
    Set<Caution> cautions =
        check.work().map(w -> w.cautions(ignition)).orElse(EnumSet.noneOf(Caution.class));
    return of(
        new Move.Checked(check),
        part,
        words.text("visit.minutes", check.minutes()),
        cautions,
        words);
  }

  /**
   * What may be repaired, part by part; what nobody may do stands among it like the rest: to leave
   * it is the learner's part.
   */
  public static List<Offer> repairs(ServiceCall call, Wording words) {
    Ignition ignition = call.ignition();
    Stream<Offer> repairs =
        Stream.of(Repair.values())
            .filter(r -> r.possibleAt(ignition))
            .map(
                r ->
                    of(
                        new Move.Repaired(r),
                        r.part(),
                        words.text("visit.minutes-units", r.minutes(), r.costUnits()),
                        r.cautions(ignition),
                        words));
    Stream<Offer> temptations =
        Stream.of(Temptation.values())
            .filter(t -> t != Temptation.METER_ON_THE_SPARK || !ignition.hotSurface())
            .map(t -> tempting(t, ignition, words));
    return Stream.concat(repairs, temptations)
        .sorted(Comparator.comparing(Offer::part).thenComparing(Offer::name))
        .toList();
  }

  private static Offer tempting(Temptation temptation, Ignition ignition, Wording words) {
    FurnacePart part = place(temptation);
    return of(
        new Move.Tempted(temptation),
        part,
        words.text("visit.minutes-units", part.access().minutes() + MINUTES, 0),
        common(part, ignition),
        words);
  }

  private static FurnacePart place(Temptation temptation) {
    return switch (temptation) {
      case JUMPER_AT_THE_ROD -> FurnacePart.BOARD_CONNECTOR;
      case JUMPER_ACROSS_A_SWITCH -> FurnacePart.PRESSURE_SWITCH;
      case LIGHTING_BY_HAND, METER_ON_THE_SPARK -> FurnacePart.IGNITER;
      case RESET_WITHOUT_PURGE -> FurnacePart.BOARD;
    };
  }

  /** What has to be said before any repair of a part: its own caution would give it away. */
  private static Set<Caution> common(FurnacePart part, Ignition ignition) {
    Set<Caution> all = EnumSet.allOf(Caution.class);
    for (Repair repair : Repair.values()) {
      if (repair.part() == part && repair.possibleAt(ignition)) {
        Set<Caution> others = EnumSet.noneOf(Caution.class);
        others.addAll(repair.cautions(ignition));
        others.removeAll(repair.ownCautions());
        all.retainAll(others);
      }
    }
    return all;
  }

  private static Offer of(
      Move move, FurnacePart part, String costs, Set<Caution> cautions, Wording words) {
    return new Offer(
        move,
        part,
        words.heading(part),
        Wording.capital(words.sentences().text(Moves.said(move))),
        costs,
        cautions.stream().map(words::heading).toList());
  }

  /** Whether all the words that somebody typed are in it. */
  public boolean has(String typed) {
    return HelpPage.holds(place + ' ' + name, typed);
  }
}
