package halfwave.gui.presentation.editor;

import halfwave.display.DisplayUnit;
import halfwave.display.Sentences;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.MeterView;
import halfwave.lesson.Claim;
import halfwave.lesson.Draft;
import halfwave.lesson.DraftActs;
import halfwave.lesson.DraftGap;
import halfwave.lesson.DraftPlace;
import halfwave.lesson.DraftStep;
import halfwave.lesson.Play;
import halfwave.lesson.Rehearsal;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import halfwave.sequence.Deeds;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What an editor of demonstrations says of a draft. */
public final class EditorWords {

  private EditorWords() {}

  /**
   * Something that is not as it should be.
   *
   * @param step in which step, or {@link DraftPlace#WHOLE}
   * @param answer of which answer, or null
   * @param text what
   */
  public record Doubt(int step, @Nullable Integer answer, String text) {}

  /** The name of an answer. */
  public static String letter(int answer) {
    return String.valueOf((char) ('A' + answer));
  }

  /** A step in a list: its number and its heading. */
  public static String step(Draft draft, int step, Wording words) {
    if (step == DraftPlace.WHOLE) {
      return words.text("editor.whole");
    }
    DraftStep one = draft.steps().get(step);
    String heading =
        one.heading().blank()
            ? words.text("editor.no-heading")
            : one.heading().words().map(w -> w.in(words.locale())).orElse("");
    return words.text("editor.step", step + 1, heading);
  }

  /** Acts, one line each: when and what. */
  public static List<String> acts(Play play, Wording words) {
    return play.acts().stream().map(act -> act(act, words)).toList();
  }

  private static String act(Act act, Wording words) {
    String time = words.sentences().quantities().time(act.timeMillis() / 100 * 100);
    String what =
        act.deed() instanceof Deed.HookOn hook
            ? words.text(
                "editor.meter-on",
                words.sentences().name(hook.function()),
                MeterView.place(hook.hookUp(), words))
            : words.sentences().sentence(Deeds.said(act.deed()));
    return words.text("editor.act", time, what);
  }

  /** What is missing, and what the model does otherwise; nothing before anyone asked. */
  public static List<Doubt> doubts(Draft draft, DraftCheck check, Wording words) {
    List<Doubt> doubts = new ArrayList<>();
    if (!check.wanted()) {
      return doubts;
    }
    draft.gaps().forEach(gap -> doubts.add(gap(gap, words)));
    check
        .of(draft)
        .ifPresent(
            r ->
                r.doubts().stream()
                    .filter(d -> !Draft.unproved(d))
                    .forEach(d -> doubts.add(doubt(d, words))));
    return doubts;
  }

  private static Doubt gap(DraftGap gap, Wording words) {
    DraftPlace place = gap.place();
    boolean answer = place.field() == DraftPlace.Field.ANSWER;
    if (gap.kind() == DraftGap.Kind.PROOF) {
      return new Doubt(
          place.step(),
          place.answer(),
          words.text("editor.doubt-unproved", letter(place.answer())));
    }
    String field =
        answer
            ? words.text("editor.answer", letter(place.answer()))
            : words.text(fieldKey(place.field()));
    return new Doubt(
        place.step(), answer ? place.answer() : null, words.text("editor.doubt-missing", field));
  }

  /** Where the bundle keeps the name of a text. */
  public static String fieldKey(DraftPlace.Field field) {
    return switch (field) {
      case TITLE -> "editor.title";
      case ABOUT -> "editor.about";
      case HEADING -> "editor.heading";
      case SAY -> "editor.say";
      case ASK -> "editor.ask";
      case ANSWER -> "editor.answers";
      case EXPLANATION -> "editor.explanation";
    };
  }

  private static Doubt doubt(Rehearsal.Doubt doubt, Wording words) {
    Claim claim = doubt.claim();
    Integer answer = doubt.answerIndex();
    String text;
    if (claim == null) {
      text = words.text("editor.doubt-wrong", answer == null ? "" : letter(answer));
    } else if (answer == null) {
      text = words.text("editor.doubt-claim", ClaimWords.sentence(claim, words));
    } else {
      text = words.text("editor.doubt-right", letter(answer), ClaimWords.sentence(claim, words));
    }
    return new Doubt(doubt.stepIndex(), answer, text);
  }

  /** How far the check is and what it found, in a line; empty before anyone asked. */
  public static String status(Draft draft, DraftCheck check, Wording words) {
    if (check.busy()) {
      return words.text(
          "editor.checking", words.sentences().quantities().fixed(100 * check.share(), 0));
    } else if (!check.wanted()) {
      return "";
    } else if (check.of(draft).isEmpty()) {
      return words.text("editor.check-stale");
    }
    int count = doubts(draft, check, words).size();
    return count == 0
        ? words.text("editor.check-good")
        : words.text(count == 1 ? "editor.check-one" : "editor.check-doubts", count);
  }

  /** Why an act cannot be done where it stands. */
  public static String blocked(DraftActs.Blocked blocked, Draft draft, Wording words) {
    String act = blocked.act() == null ? "" : act(blocked.act(), words);
    String reason = words.sentences().text(Sentences.allowed(blocked.reason()));
    return words.text("editor.blocked", step(draft, blocked.step(), words), act, reason);
  }

  /** The doubts of one step. */
  public static List<Doubt> of(int step, List<Doubt> doubts) {
    return doubts.stream().filter(d -> d.step() == step).toList();
  }

  /** How long a recording is by now. */
  public static String recordingTime(Take.Taken taken, Wording words) {
    return words.text(
        "editor.recording",
        words.sentences().quantities().fixed(taken.lengthMillis() / 1000.0, DisplayUnit.SECOND, 1));
  }

  /** What was done while it was recorded, one line each, and what of it cannot be kept. */
  public static String recorded(Take.Taken taken, Wording words) {
    List<String> lines = new ArrayList<>();
    taken.acts().forEach(act -> lines.add(act(act, words)));
    taken
        .leftOut()
        .forEach(m -> lines.add(words.text("editor.left-out", words.sentences().sentence(m))));
    return lines.isEmpty() ? words.text("editor.no-acts") : String.join("\n", lines);
  }
}
