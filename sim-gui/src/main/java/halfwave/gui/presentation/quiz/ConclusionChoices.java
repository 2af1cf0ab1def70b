package halfwave.gui.presentation.quiz;

import halfwave.board.Ignition;
import halfwave.fault.FaultKind;
import halfwave.grading.Places;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.quiz.VisitDraft.Said;
import halfwave.quiz.ServiceCall;
import halfwave.work.FurnacePart;
import halfwave.work.Repair;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What may be said at the end of a service call. The first of each list says nothing.
 *
 * @param causes the first fault, or nothing wrong
 * @param seconds a second fault
 * @param places where
 * @param repairs what puts it right
 */
public record ConclusionChoices(
    List<Choice<Said>> causes,
    List<Choice<FaultKind>> seconds,
    List<Choice<FurnacePart>> places,
    List<Choice<Repair>> repairs) {

  /**
   * Something to choose.
   *
   * @param <T> what it is
   * @param value the thing, or null: nothing is said
   * @param text its name
   */
  public record Choice<T>(@Nullable T value, String text) {
    @Override
    public String toString() {
      return text;
    }
  }

  /** Takes copies. */
  public ConclusionChoices {
    causes = List.copyOf(causes);
    seconds = List.copyOf(seconds);
    places = List.copyOf(places);
    repairs = List.copyOf(repairs);
  }

  /** The choices of a call. */
  public static ConclusionChoices of(ServiceCall call, Wording words) {
    Ignition ignition = call.ignition();
    String open = words.text("visit.not-said");
    List<Choice<FaultKind>> kinds =
        Stream.of(FaultKind.values())
            .sorted(Comparator.comparing(FaultKind::group))
            .map(
                k ->
                    new Choice<>(
                        k, words.text("visit.kind", words.heading(k.group()), name(k, words))))
            .toList();
    List<Choice<Said>> causes = new ArrayList<>();
    causes.add(new Choice<>(null, open));
    causes.add(new Choice<>(Said.NOTHING_WRONG, words.text("visit.nothing-wrong")));
    kinds.forEach(k -> causes.add(new Choice<>(new Said(k.value()), k.text())));
    return new ConclusionChoices(
        causes,
        with(words.text("visit.no-second"), kinds),
        with(open, Places.all(ignition).stream().map(p -> named(p, words)).toList()),
        with(
            open,
            Stream.of(Repair.values())
                .filter(r -> r.possibleAt(ignition))
                .map(r -> named(r, words))
                .toList()));
  }

  private static String name(Enum<?> constant, Wording words) {
    return words.sentences().name(constant);
  }

  private static <T extends Enum<T>> Choice<T> named(T constant, Wording words) {
    return new Choice<>(constant, words.heading(constant));
  }

  private static <T> List<Choice<T>> with(String none, List<Choice<T>> others) {
    List<Choice<T>> all = new ArrayList<>();
    all.add(new Choice<>(null, none));
    all.addAll(others);
    return all;
  }
}
