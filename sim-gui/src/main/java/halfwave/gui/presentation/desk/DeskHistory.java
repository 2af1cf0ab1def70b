package halfwave.gui.presentation.desk;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A quiz on the desk as it was before each change. What is typed into one field in one go is one
 * change.
 *
 * @param past what it was, oldest first
 * @param future what was undone, the next to redo last
 * @param field what the last change was typed into; null: the next one stands for itself
 */
record DeskHistory(List<DeskDraft> past, List<DeskDraft> future, @Nullable Field field) {

  /** Nothing was changed yet. */
  static final DeskHistory NONE = new DeskHistory(List.of(), List.of(), null);

  private static final int MOST = 500;

  /** What is typed. */
  enum Field {
    NAME,
    TITLE,
    SEED,
    PASS,
    RULES,
    WEIGHTS
  }

  /** Takes copies. */
  DeskHistory {
    past = List.copyOf(past);
    future = List.copyOf(future);
  }

  /** One change more. */
  DeskHistory then(DeskDraft before, DeskDraft after) {
    Field typed = field(before, after);
    if (typed != null && typed == field) {
      return new DeskHistory(past, List.of(), typed);
    }
    List<DeskDraft> longer = with(past, before);
    return new DeskHistory(
        longer.subList(Math.max(0, longer.size() - MOST), longer.size()), List.of(), typed);
  }

  private static @Nullable Field field(DeskDraft before, DeskDraft after) {
    if (!before.calls().equals(after.calls()) || !before.rows().equals(after.rows())) {
      return null;
    } else if (!before.name().equals(after.name())) {
      return Field.NAME;
    } else if (!before.title().equals(after.title())) {
      return Field.TITLE;
    } else if (before.seed() != after.seed()) {
      return Field.SEED;
    } else if (before.passRatio() != after.passRatio()) {
      return Field.PASS;
    }
    return before.rules().equals(after.rules()) ? Field.WEIGHTS : Field.RULES;
  }

  private static List<DeskDraft> with(List<DeskDraft> some, DeskDraft last) {
    List<DeskDraft> more = new ArrayList<>(some);
    more.add(last);
    return more;
  }

  private static List<DeskDraft> withoutLast(List<DeskDraft> some) {
    return some.subList(0, some.size() - 1);
  }

  /** What it was before the last change; only where there was one. */
  DeskDraft before() {
    return past.get(past.size() - 1);
  }

  /** What was undone last; only where something was. */
  DeskDraft after() {
    return future.get(future.size() - 1);
  }

  /** After the last change was undone. */
  DeskHistory undone(DeskDraft now) {
    return new DeskHistory(withoutLast(past), with(future, now), null);
  }

  /** After what was undone was done again. */
  DeskHistory redone(DeskDraft now) {
    return new DeskHistory(with(past, now), withoutLast(future), null);
  }
}
