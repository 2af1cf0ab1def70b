package halfwave.lesson;

/**
 * Something that a draft still lacks before it is a demonstration.
 *
 * @param place where
 * @param kind what
 */
public record DraftGap(DraftPlace place, Kind kind) {

  /** What may be lacking. */
  public enum Kind {
    /** Nothing is written there. */
    TEXT,
    /** The right answer has no claim that proves it. */
    PROOF
  }
}
