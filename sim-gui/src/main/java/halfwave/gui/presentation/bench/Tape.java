package halfwave.gui.presentation.bench;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;
import java.util.RandomAccess;

/**
 * A list that grows at its end and shares everything before with the list that it grew from: every
 * step that can be undone holds the whole recording of its time. Immutable.
 *
 * @param <T> what is recorded
 */
final class Tape<T> extends AbstractList<T> implements RandomAccess {

  /** So many lie in one piece; all pieces but the last are full. */
  static final int PIECE = 256;

  private final List<List<T>> pieces;
  private final int size;

  private Tape(List<List<T>> pieces, int size) {
    this.pieces = pieces;
    this.size = size;
  }

  /** The same list, or its copy where it is another kind of list. */
  static <T> Tape<T> of(List<T> list) {
    return list instanceof Tape<T> tape ? tape : new Tape<T>(List.of(), 0).then(list);
  }

  /** Longer by these. */
  Tape<T> then(List<T> more) {
    if (more.isEmpty()) {
      return this;
    }
    List<List<T>> longer = new ArrayList<>(pieces);
    List<T> open = new ArrayList<>();
    if (size % PIECE != 0) {
      open.addAll(longer.remove(longer.size() - 1));
    }
    open.addAll(more);
    for (int from = 0; from < open.size(); from += PIECE) {
      longer.add(List.copyOf(open.subList(from, Math.min(open.size(), from + PIECE))));
    }
    return new Tape<>(List.copyOf(longer), size + more.size());
  }

  /** Only the first ones. */
  Tape<T> first(int count) {
    int whole = count / PIECE;
    return count >= size
        ? this
        : new Tape<>(List.copyOf(pieces.subList(0, whole)), whole * PIECE)
            .then(subList(whole * PIECE, count));
  }

  /** Only the last ones, and up to a piece more: pieces are never cut at their beginning. */
  Tape<T> last(int count) {
    int whole = Math.max(0, size - count) / PIECE;
    return whole == 0
        ? this
        : new Tape<>(List.copyOf(pieces.subList(whole, pieces.size())), size - whole * PIECE);
  }

  /** What is shared with others. */
  List<List<T>> pieces() {
    return pieces;
  }

  @Override
  public T get(int index) {
    return pieces.get(index / PIECE).get(index % PIECE);
  }

  @Override
  public int size() {
    return size;
  }
}
