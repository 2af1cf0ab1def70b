package halfwave.notebook;

import halfwave.bench.Bench;
import halfwave.board.ShippedBoards;
import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Entry;
import halfwave.diagnosis.Outlook;
import halfwave.diagnosis.Priors;
import halfwave.diagnosis.Reasons;
import halfwave.grading.Grader;
import halfwave.instrument.ShippedMeters;
import halfwave.io.Typed;
import halfwave.io.evidence.CachedOutlooks;
import halfwave.io.evidence.CallLogWords;
import halfwave.io.evidence.CaseCache;
import halfwave.io.evidence.PriorsFile;
import halfwave.io.quiz.Engine;
import halfwave.io.quiz.QuizText;
import halfwave.matching.ReadingKind;
import halfwave.matching.Setting;
import halfwave.matching.Sight;
import halfwave.quiz.Quiz;

/** What cells about diagnosis, matching and marks do again and again, by short names. */
public final class Casework {

  private Casework() {}

  /**
   * The shipped table of cases of a shipped bench, with the shipped judgement of how often causes
   * are met. Of another bench the table is computed, which takes minutes.
   */
  public static Outlook outlook(Bench bench) {
    Priors priors = PriorsFile.shipped();
    return new Outlook(
        new CaseCache(null)
            .get(
                bench,
                ShippedBoards.standard(bench.design().ignition()),
                priors.causes(),
                (done, all) -> true)
            .orElseThrow(),
        priors);
  }

  /** A line of a call's log in the words of the command {@code diagnose}. */
  public static Entry entry(Bench bench, String line) {
    return CallLogWords.entry(new Typed("entry", line), line, bench.design().ignition());
  }

  /** What a cause is called. */
  public static String cause(Cause cause) {
    return Lab.ENGLISH.text(Reasons.name(cause));
  }

  /** A reading with the usual multimeter. */
  public static Sight sight(ReadingKind kind, Setting setting) {
    return new Sight(kind, setting, ShippedMeters.service());
  }

  /** A number as a display shows it, in whole steps of its last digit. */
  public static double rounded(double value, double step) {
    return Math.rint(value / step) * step;
  }

  /** Marks a quiz by the shipped tables and judgement. */
  public static Grader grader(Quiz quiz) {
    return new Grader(
        quiz,
        QuizText.hash(quiz),
        Engine.text(),
        new CachedOutlooks(new CaseCache(null), (done, all) -> true));
  }
}
