package halfwave.gui.presentation.desk;

import halfwave.io.quiz.QuizRecoveryFile;
import halfwave.lesson.Words;
import halfwave.quiz.Assembly;
import halfwave.quiz.BlueprintRow;
import halfwave.quiz.Quiz;
import halfwave.quiz.Rules;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Weights;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A quiz as an instructor makes it: other than a {@link Quiz} it may have no calls yet.
 *
 * @param name what files call it; not blank
 * @param title its title
 * @param about what it is for
 * @param seed of all chance in it
 * @param passRatio share of the marks that passes (1)
 * @param weights what each mark counts
 * @param rules how it is taken
 * @param rows how much of it is about what, and how many calls of the bank
 * @param calls its calls, each name once
 */
public record DeskDraft(
    String name,
    Words title,
    Words about,
    long seed,
    double passRatio,
    Weights weights,
    Rules rules,
    List<Assembly> rows,
    List<ServiceCall> calls) {

  private static final String FIRST_NAME = "quiz";

  /** Takes copies. */
  public DeskDraft {
    rows = List.copyOf(rows);
    calls = List.copyOf(calls);
  }

  /** Nothing yet, with everything else as a bank has it. */
  static DeskDraft fresh(Quiz bank) {
    return of(bank).withName(FIRST_NAME).withRows(List.of()).withCalls(List.of());
  }

  /** A quiz that is there. */
  static DeskDraft of(Quiz quiz) {
    List<Assembly> rows =
        quiz.blueprint().stream()
            .map(r -> new Assembly(r, Math.max(1, Assembly.fitting(quiz, r).size())))
            .toList();
    return new DeskDraft(
        quiz.name(),
        quiz.title(),
        quiz.about(),
        quiz.seed(),
        quiz.passRatio(),
        quiz.weights(),
        quiz.rules(),
        rows,
        quiz.calls());
  }

  /** One that was left behind. */
  static DeskDraft of(QuizRecoveryFile left) {
    DeskDraft draft = of(left.quiz());
    List<Assembly> rows = new ArrayList<>();
    for (int k = 0; k < draft.rows.size(); k++) {
      rows.add(new Assembly(draft.rows.get(k).row(), left.counts().get(k)));
    }
    return draft.withRows(rows).withCalls(left.begun() ? draft.calls : List.of());
  }

  /** What is kept of it in case the program does not end as it should. */
  QuizRecoveryFile kept(Quiz bank) {
    Quiz whole = calls.isEmpty() ? withCalls(bank.calls().subList(0, 1)).made() : made();
    return new QuizRecoveryFile(
        whole, !calls.isEmpty(), rows.stream().map(Assembly::count).toList());
  }

  private Quiz made() {
    List<BlueprintRow> blueprint = rows.stream().map(Assembly::row).toList();
    return new Quiz(name, title, about, seed, passRatio, weights, rules, blueprint, calls);
  }

  /** The quiz; nothing while it has no calls. */
  public Optional<Quiz> quiz() {
    return calls.isEmpty() ? Optional.empty() : Optional.of(made());
  }

  /** What a call counts in the whole (1). */
  double share(ServiceCall call) {
    Quiz whole = quiz().orElseThrow();
    double all = calls.stream().mapToDouble(whole::weight).sum();
    return all > 0 ? whole.weight(call) / all : 0;
  }

  /** What is different in it that marks depend on, calls aside. */
  boolean marksLike(DeskDraft other) {
    return seed == other.seed && weights.equals(other.weights) && rules.equals(other.rules);
  }

  /** Under another name. */
  public DeskDraft withName(String other) {
    return new DeskDraft(other, title, about, seed, passRatio, weights, rules, rows, calls);
  }

  /** With another title; Spanish that is left blank is the English one. */
  public DeskDraft withTitle(String english, String spanish) {
    Words other = CallDraft.merged(title, english, spanish);
    return new DeskDraft(name, other, about, seed, passRatio, weights, rules, rows, calls);
  }

  /** With other chance. */
  public DeskDraft withSeed(long other) {
    return new DeskDraft(name, title, about, other, passRatio, weights, rules, rows, calls);
  }

  /** With another share that passes (1). */
  public DeskDraft withPassRatio(double other) {
    return new DeskDraft(name, title, about, seed, other, weights, rules, rows, calls);
  }

  /** With other weights. */
  public DeskDraft withWeights(Weights other) {
    return new DeskDraft(name, title, about, seed, passRatio, other, rules, rows, calls);
  }

  /** Under other rules. */
  public DeskDraft withRules(Rules other) {
    return new DeskDraft(name, title, about, seed, passRatio, weights, other, rows, calls);
  }

  /** With one more row; one of the same objective and level gives way. */
  public DeskDraft withRow(Assembly row) {
    List<Assembly> all = new ArrayList<>(rows);
    all.removeIf(
        r -> r.row().objective() == row.row().objective() && r.row().level() == row.row().level());
    all.add(row);
    return withRows(all);
  }

  /** With one row less. */
  public DeskDraft withoutRow(int index) {
    List<Assembly> all = new ArrayList<>(rows);
    all.remove(index);
    return withRows(all);
  }

  private DeskDraft withRows(List<Assembly> other) {
    return new DeskDraft(name, title, about, seed, passRatio, weights, rules, other, calls);
  }

  /** With other calls. */
  DeskDraft withCalls(List<ServiceCall> other) {
    return new DeskDraft(name, title, about, seed, passRatio, weights, rules, rows, other);
  }

  /** With one more call, unless one of its name is there. */
  DeskDraft with(ServiceCall call) {
    List<ServiceCall> all = new ArrayList<>(calls);
    if (calls.stream().noneMatch(c -> c.name().equals(call.name()))) {
      all.add(call);
    }
    return withCalls(all);
  }

  /** Without the call of that name. */
  DeskDraft without(ServiceCall call) {
    return withCalls(calls.stream().filter(c -> !c.name().equals(call.name())).toList());
  }

  /** With a call in the place of another. */
  DeskDraft replaced(ServiceCall old, ServiceCall made) {
    return withCalls(calls.stream().map(c -> c.name().equals(old.name()) ? made : c).toList());
  }

  /** A name that no call has. */
  String freeName(String wanted) {
    Set<String> taken = calls.stream().map(ServiceCall::name).collect(Collectors.toSet());
    String name = wanted;
    for (int k = 2; taken.contains(name); k++) {
      name = wanted + '-' + k;
    }
    return name;
  }
}
