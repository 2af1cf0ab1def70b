package halfwave.gui.presentation.quiz;

import halfwave.diagnosis.Cause;
import halfwave.fault.FaultGroup;
import halfwave.fault.FaultKind;
import halfwave.quiz.Conclusion;
import halfwave.work.FurnacePart;
import halfwave.work.Repair;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What is written in the forms of a service call and not handed in yet.
 *
 * @param note what is to be written down
 * @param suspects groups that are ticked as possible still
 * @param cause the first fault, {@link Said#NOTHING_WRONG}, or null: nothing is said yet
 * @param second a second fault, or null
 * @param place where, or null
 * @param repair what puts it right, or null
 */
public record VisitDraft(
    String note,
    Set<FaultGroup> suspects,
    @Nullable Said cause,
    @Nullable FaultKind second,
    @Nullable FurnacePart place,
    @Nullable Repair repair) {

  /** Nothing. */
  public static final VisitDraft EMPTY = new VisitDraft("", Set.of(), null, null, null, null);

  /**
   * What may be said of the cause.
   *
   * @param kind the fault, or null: nothing is wrong
   */
  public record Said(@Nullable FaultKind kind) {
    /** Nothing is wrong. */
    public static final Said NOTHING_WRONG = new Said(null);
  }

  /** Takes a copy. */
  public VisitDraft {
    suspects = Set.copyOf(suspects);
  }

  /** As it stood when it was handed in. */
  static VisitDraft of(Conclusion handedIn) {
    List<FaultKind> kinds = handedIn.cause().kinds();
    return EMPTY.concluding(
        new Said(kinds.isEmpty() ? null : kinds.get(0)),
        kinds.size() < 2 ? null : kinds.get(1),
        handedIn.place(),
        handedIn.repair());
  }

  /** With another note. */
  public VisitDraft withNote(String other) {
    return new VisitDraft(other, suspects, cause, second, place, repair);
  }

  /** With other groups ticked. */
  public VisitDraft withSuspects(Set<FaultGroup> others) {
    return new VisitDraft(note, others, cause, second, place, repair);
  }

  /** With another conclusion. */
  public VisitDraft concluding(
      @Nullable Said first,
      @Nullable FaultKind other,
      @Nullable FurnacePart where,
      @Nullable Repair what) {
    return new VisitDraft(note, suspects, first, other, where, what);
  }

  /** What would be handed in, or null where the cause is not said yet. */
  public @Nullable Conclusion conclusion() {
    Said first = cause;
    if (first == null) {
      return null;
    }
    FaultKind kind = first.kind();
    List<FaultKind> kinds =
        kind == null
            ? List.of()
            : Stream.of(kind, second).filter(k -> k != null).distinct().toList();
    return new Conclusion(new Cause(kinds), place, repair);
  }
}
