package halfwave.lesson;

import halfwave.bench.Bench;
import halfwave.lesson.DraftPlace.Field;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A demonstration on its way: what {@link Demonstration} demands may still be missing. An immutable
 * value; each operation gives another one.
 *
 * @param name what commands and files will call it
 * @param title its title
 * @param about what it teaches
 * @param bench the bench at its beginning
 * @param board name of the shipped board, or null: the standard one for the bench
 * @param seed seed of all chance
 * @param start what is played before the first step
 * @param steps the steps, in order; at least one
 */
public record Draft(
    String name,
    DraftText title,
    DraftText about,
    Bench bench,
    @Nullable String board,
    long seed,
    Play start,
    List<DraftStep> steps) {

  /** Checks that there is a step and takes a copy. */
  public Draft {
    steps = List.copyOf(steps);
    if (steps.isEmpty()) {
      throw new IllegalArgumentException("steps: at least one");
    }
  }

  /** The draft of a finished demonstration. */
  public static Draft of(Demonstration d) {
    return new Draft(
        d.name(),
        DraftText.of(d.title()),
        DraftText.of(d.about()),
        d.bench(),
        d.board(),
        d.seed(),
        d.start(),
        d.steps().stream().map(DraftStep::of).toList());
  }

  /**
   * As a demonstration that can be kept in a file and played as far as it goes. Where it has {@link
   * #gaps} something stands in that {@link #of} takes for a gap again.
   */
  public Demonstration demonstration() {
    return new Demonstration(
        name,
        title.orStandIn(),
        about.orStandIn(),
        bench,
        board,
        seed,
        start,
        steps.stream().map(DraftStep::step).toList());
  }

  /** What is still missing, in the order in which it is read. */
  public List<DraftGap> gaps() {
    List<DraftGap> gaps = new ArrayList<>();
    addIfBlank(gaps, DraftPlace.whole(Field.TITLE));
    addIfBlank(gaps, DraftPlace.whole(Field.ABOUT));
    for (int k = 0; k < steps.size(); k++) {
      addIfBlank(gaps, DraftPlace.of(k, Field.HEADING));
      addIfBlank(gaps, DraftPlace.of(k, Field.SAY));
      DraftQuestion question = steps.get(k).question();
      if (question != null) {
        addIfBlank(gaps, DraftPlace.of(k, Field.ASK));
        for (int a = 0; a < question.answers().size(); a++) {
          addIfBlank(gaps, DraftPlace.answer(k, a));
        }
        if (question.answers().get(question.right()).claims().isEmpty()) {
          gaps.add(new DraftGap(DraftPlace.answer(k, question.right()), DraftGap.Kind.PROOF));
        }
      }
    }
    return gaps;
  }

  private void addIfBlank(List<DraftGap> gaps, DraftPlace place) {
    if (text(place).blank()) {
      gaps.add(new DraftGap(place, DraftGap.Kind.TEXT));
    }
  }

  /** Whether a rehearsal doubts only what stands in for a proof that is still missing. */
  public static boolean unproved(Rehearsal.Doubt doubt) {
    return DraftQuestion.UNPROVED.equals(doubt.claim());
  }

  /** The text that stands there. */
  public DraftText text(DraftPlace place) {
    return switch (place.field()) {
      case TITLE -> title;
      case ABOUT -> about;
      case HEADING -> steps.get(place.step()).heading();
      case SAY -> steps.get(place.step()).say();
      case EXPLANATION -> steps.get(place.step()).explanation();
      case ASK -> question(place.step()).ask();
      case ANSWER -> question(place.step()).answers().get(place.answer()).text();
    };
  }

  /** With another text there. */
  public Draft with(DraftPlace place, DraftText text) {
    int k = place.step();
    return switch (place.field()) {
      case TITLE -> new Draft(name, text, about, bench, board, seed, start, steps);
      case ABOUT -> new Draft(name, title, text, bench, board, seed, start, steps);
      case HEADING -> with(k, steps.get(k).withHeading(text));
      case SAY -> with(k, steps.get(k).withSay(text));
      case EXPLANATION -> with(k, steps.get(k).withExplanation(text));
      case ASK -> with(k, steps.get(k).with(question(k).with(text)));
      case ANSWER -> {
        DraftAnswer answer = question(k).answers().get(place.answer()).with(text);
        yield with(k, steps.get(k).with(question(k).with(place.answer(), answer)));
      }
    };
  }

  private DraftQuestion question(int step) {
    return Objects.requireNonNull(steps.get(step).question(), "no question");
  }

  /** Claims of a step, or of one of its answers. */
  public List<Claim> claims(int step, @Nullable Integer answer) {
    return answer == null
        ? steps.get(step).claims()
        : question(step).answers().get(answer).claims();
  }

  /** With other claims of a step, or of one of its answers. */
  public Draft withClaims(int step, @Nullable Integer answer, List<Claim> claims) {
    DraftStep one = steps.get(step);
    if (answer == null) {
      return with(step, one.with(claims));
    }
    DraftQuestion question = question(step);
    return with(step, one.with(question.with(answer, question.answers().get(answer).with(claims))));
  }

  /** Without a word: what the model judges. */
  public Draft wordless() {
    return new Draft(
        "wordless",
        DraftText.EMPTY,
        DraftText.EMPTY,
        bench,
        board,
        seed,
        start,
        steps.stream().map(DraftStep::wordless).toList());
  }

  /** Under another name. */
  public Draft withName(String other) {
    return new Draft(other, title, about, bench, board, seed, start, steps);
  }

  /** With another start. */
  public Draft withStart(Play other) {
    return new Draft(name, title, about, bench, board, seed, other, steps);
  }

  /** With the bench, board, seed and start of another. */
  public Draft withBenchOf(Draft other) {
    return new Draft(name, title, about, other.bench, other.board, other.seed, other.start, steps);
  }

  /** With another step in the place of one. */
  public Draft with(int step, DraftStep other) {
    List<DraftStep> all = new ArrayList<>(steps);
    all.set(step, other);
    return withSteps(all);
  }

  /** With a step more at that place. */
  public Draft inserted(int at, DraftStep step) {
    List<DraftStep> all = new ArrayList<>(steps);
    all.add(at, step);
    return withSteps(all);
  }

  /** With a step twice, one behind the other. */
  public Draft duplicated(int step) {
    return inserted(step + 1, steps.get(step));
  }

  /** Without a step; the last one leaves an empty one behind. */
  public Draft removed(int step) {
    List<DraftStep> all = new ArrayList<>(steps);
    all.remove(step);
    return withSteps(all.isEmpty() ? List.of(DraftStep.EMPTY) : all);
  }

  /** With a step at another place. */
  public Draft moved(int from, int to) {
    List<DraftStep> all = new ArrayList<>(steps);
    all.add(to, all.remove(from));
    return withSteps(all);
  }

  private Draft withSteps(List<DraftStep> all) {
    return new Draft(name, title, about, bench, board, seed, start, all);
  }
}
