package halfwave.gui.presentation.bench;

import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Condition;
import halfwave.bench.Disorder;
import halfwave.bench.Parameter;
import halfwave.gui.presentation.Wording;
import halfwave.sequence.Deed;
import halfwave.work.Aspect;
import java.util.ArrayList;
import java.util.List;

/**
 * Something about the bench that is wrong now, and can be taken away without a repair: who teaches
 * puts faults on and takes them off.
 *
 * @param aspect what
 * @param name its name
 * @param removal what takes it away, as one act
 */
public record PresentFault(Aspect aspect, String name, List<Deed> removal) {
  /** Takes a copy. */
  public PresentFault {
    removal = List.copyOf(removal);
  }

  /** All that is wrong with a bench, or lurks. */
  public static List<PresentFault> of(Bench bench, Wording words) {
    return Aspect.amiss(bench.condition()).stream()
        .map(aspect -> new PresentFault(aspect, words.heading(aspect), removal(aspect, bench)))
        .toList();
  }

  /** One change after the other where they get there: the history can name those. */
  private static List<Deed> removal(Aspect aspect, Bench bench) {
    Condition right = aspect.righted(bench.condition());
    Bench righted = bench.with(right);
    List<Deed> deeds = new ArrayList<>();
    Bench there = bench;
    for (Parameter parameter : Parameter.values()) {
      double value = parameter.of(righted);
      if (Double.compare(parameter.of(bench), value) != 0 && parameter.accepts(value)) {
        Change change = Change.Turned.to(parameter, value);
        deeds.add(new Deed.Alter(change));
        there = change.on(there);
      }
    }
    for (Disorder disorder : Disorder.values()) {
      if (there.condition().appliance().has(disorder) && !right.appliance().has(disorder)) {
        Change change = new Change.Upset(disorder, false);
        deeds.add(new Deed.Alter(change));
        there = change.on(there);
      }
    }
    return there.equals(righted) ? deeds : List.of(new Deed.Become(right));
  }
}
