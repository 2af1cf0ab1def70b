package halfwave.lesson;

/**
 * Where in a draft a text stands.
 *
 * @param step which step, from zero; {@value #WHOLE} for what belongs to the whole
 * @param field which text
 * @param answer of which answer, from zero; zero where it belongs to none
 */
public record DraftPlace(int step, Field field, int answer) {

  /** Belongs to no step. */
  public static final int WHOLE = -1;

  /** A text of the whole or of a step. */
  public enum Field {
    /** Its title. */
    TITLE,
    /** What it teaches. */
    ABOUT,
    /** Heading of a step. */
    HEADING,
    /** What there is to say before the question. */
    SAY,
    /** The question. */
    ASK,
    /** One of the answers. */
    ANSWER,
    /** What there is to say after the play. */
    EXPLANATION
  }

  /** The title or what it teaches. */
  public static DraftPlace whole(Field field) {
    return new DraftPlace(WHOLE, field, 0);
  }

  /** A text of a step. */
  public static DraftPlace of(int step, Field field) {
    return new DraftPlace(step, field, 0);
  }

  /** The text of an answer. */
  public static DraftPlace answer(int step, int answer) {
    return new DraftPlace(step, Field.ANSWER, answer);
  }
}
