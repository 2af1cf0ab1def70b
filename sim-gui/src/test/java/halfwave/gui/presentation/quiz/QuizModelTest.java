package halfwave.gui.presentation.quiz;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.diagnosis.Cause;
import halfwave.diagnosis.Check;
import halfwave.fault.FaultGroup;
import halfwave.fault.FaultKind;
import halfwave.grading.Grader;
import halfwave.grading.Places;
import halfwave.gui.presentation.ManualExecutor;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.DirectBench;
import halfwave.io.AtomicFile;
import halfwave.io.quiz.Engine;
import halfwave.io.quiz.QuizText;
import halfwave.io.quiz.SheetFile;
import halfwave.quiz.AnswerSheet;
import halfwave.quiz.CallSheet;
import halfwave.quiz.Ending;
import halfwave.quiz.Move;
import halfwave.quiz.Quiz;
import halfwave.quiz.Rules;
import halfwave.quiz.ServiceCall;
import halfwave.quiz.Sitting;
import halfwave.quiz.Temptation;
import halfwave.quiz.Visit;
import halfwave.work.FurnacePart;
import halfwave.work.Look;
import halfwave.work.Repair;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A quiz as it is taken: every move stands on the disk, and the disk is enough to go on. */
class QuizModelTest {

  private static final Wording WORDS = DirectBench.ENGLISH;
  private static final long SECOND = 1_000_000_000L;

  private static final List<Move> MOVES =
      List.of(
          new Move.Checked(new Check.Call()),
          new Move.Suspects(Set.of(FaultGroup.ROD, FaultGroup.LEAD)),
          new Move.Note("weak flame?"),
          new Move.Power(false),
          new Move.Gas(false),
          new Move.Repaired(Repair.CLEAN_ROD_WITH_PAD),
          new Move.Gas(true),
          new Move.Power(true),
          new Move.Checked(new Check.Call()));

  @TempDir private Path folder;

  private final List<Throwable> failures = new ArrayList<>();
  private @Nullable QuizModel before;
  private long nanos = 5;
  private Instant today = Instant.ofEpochSecond(1_000_000);

  private QuizModel model() {
    return new QuizModel(
        Runnable::run, Runnable::run, () -> nanos, () -> today, SmallQuiz.OUTLOOKS, failures::add);
  }

  private Path sheet() {
    return folder.resolve("sheet.json");
  }

  /** Another program; the one before was closed, or crashed. */
  private QuizModel begun(Rules rules, String learner) {
    if (before != null) {
      before.release();
    }
    QuizModel model = model();
    before = model;
    model.open(SmallQuiz.file(folder, rules));
    model.keep(model.start().withLearner(learner).withSheet(sheet()));
    model.begin();
    assertThat(failures).isEmpty();
    return model;
  }

  private AnswerSheet onDisk() {
    return SheetFile.read(sheet(), SmallQuiz.under(Rules.STANDARD));
  }

  private static VisitDraft rodFilm() {
    return VisitDraft.EMPTY.concluding(
        new VisitDraft.Said(FaultKind.ROD_SILICA),
        null,
        FurnacePart.ROD,
        Repair.CLEAN_ROD_WITH_PAD);
  }

  @Test
  void theFirstCallIsOpenWithItsComplaintAndNothingElse() {
    QuizModel model = begun(Rules.STANDARD, "A-17");
    VisitView view = VisitView.of(model, model.visit(), WORDS);
    assertThat(view.title()).isEqualTo("Cold mornings");
    assertThat(view.complaint()).startsWith("It lights");
    assertThat(view.log()).isEmpty();
    assertThat(model.hints()).isFalse();
    assertThat(CallRow.all(model, WORDS))
        .extracting(CallRow::standing)
        .containsExactly("begun", "not begun");
    assertThat(onDisk().learner()).isEqualTo("A-17");
  }

  @Test
  void afterEachMoveTheFileLeadsToTheSamePlace() {
    QuizModel model = begun(Rules.STANDARD, "A-17");
    for (Move move : MOVES) {
      nanos += 3 * SECOND;
      model.want(move);
      assertThat(model.said(WORDS)).as("%s", move).isEmpty();
      QuizModel again = begun(Rules.STANDARD, "A-17");
      Visit one = Objects.requireNonNull(model.visit());
      Visit other = Objects.requireNonNull(again.visit());
      assertThat(other.log()).isEqualTo(one.log());
      assertThat(other.minutes()).isEqualTo(one.minutes());
      assertThat(other.partsUnits()).isEqualTo(one.partsUnits());
      assertThat(other.left()).isEqualTo(one.left());
      assertThat(other.power()).isEqualTo(one.power());
      assertThat(other.gas()).isEqualTo(one.gas());
      assertThat(VisitView.of(again, other, WORDS)).isEqualTo(VisitView.of(model, one, WORDS));
    }
    assertThat(onDisk().calls().get(0).moves())
        .extracting(CallSheet.Logged::wallSeconds)
        .containsExactly(3L, 6L, 9L, 12L, 15L, 18L, 21L, 24L, 27L);
  }

  @Test
  void whatIsHandedInIsOverAndTheNextCallWaits() {
    QuizModel model = begun(Rules.STANDARD, "A-17");
    model.want(MOVES.get(0));
    model.keep(rodFilm());
    model.conclude(Objects.requireNonNull(model.draft().conclusion()));
    assertThat(model.closed()).isTrue();
    assertThat(model.over()).isFalse();
    assertThat(model.handedIn()).isTrue();
    assertThat(model.draft()).as("as it was handed in").isEqualTo(rodFilm());
    model.want(MOVES.get(0));
    assertThat(model.said(WORDS)).isEqualTo("Not possible: the call is over.");
    QuizModel again = begun(Rules.STANDARD, "A-17");
    assertThat(Objects.requireNonNull(again.call()).name()).isEqualTo("after-the-move");
    again.want(new Move.Tempted(Temptation.LIGHTING_BY_HAND));
    assertThat(again.over()).isTrue();
    again.choose(Objects.requireNonNull(again.quiz()).calls().get(0));
    assertThat(again.draft()).as("read at the end").isEqualTo(rodFilm());
    assertThat(Objects.requireNonNull(again.visit()).log()).hasSize(1);
    assertThat(again.closed()).isTrue();
    assertThat(CallRow.ending(again, WORDS)).contains(sheet().toString());
    assertThat(onDisk().call("cold-mornings").orElseThrow().conclusion())
        .isEqualTo(rodFilm().conclusion());
  }

  @Test
  void somebodyIsExaminedFromTheBeginningToTheEnd() {
    QuizModel model = model();
    model.open(SmallQuiz.file(folder, Rules.STANDARD));
    assertThat(model.taken()).as("only opened").isFalse();
    model.keep(model.start().withLearner("A-17").withSheet(sheet()));
    model.begin();
    model.want(MOVES.get(0));
    assertThat(model.taken()).isTrue();
    model.release();
    assertThat(begun(Rules.STANDARD, "A-17").taken()).as("gone on after a crash").isTrue();
    model.handIn();
    assertThat(model.taken()).isFalse();
  }

  @Test
  void theTimeWhileTheProgramWasClosedCountsAndIsTold() {
    Rules rules = new Rules(30, false);
    QuizModel model = begun(rules, "A-17");
    nanos += 600 * SECOND;
    today = today.plusSeconds(600);
    model.want(MOVES.get(0));
    assertThat(model.secondsLeft()).hasValue(1200);
    // ten minutes later another program goes on, its own clock from any zero
    today = today.plusSeconds(600);
    nanos = 77;
    QuizModel again = begun(rules, "A-17");
    assertThat(again.secondsLeft()).hasValue(600);
    nanos += 60 * SECOND;
    again.want(MOVES.get(1));
    AnswerSheet sheet = onDisk();
    assertThat(sheet.sitting().restarts()).containsExactly(new Sitting.Restart(600, 1200));
    assertThat(sheet.wallSeconds()).isEqualTo(1260);
    Quiz quiz = SmallQuiz.under(rules);
    assertThat(
            new Grader(quiz, QuizText.hash(quiz), Engine.text(), SmallQuiz.OUTLOOKS)
                .grade(sheet)
                .remarks())
        .extracting(WORDS.sentences()::text)
        .singleElement()
        .asString()
        .contains("at 10 min", "at 20 min", "counts");
    today = today.plusSeconds(3600);
    assertThat(begun(rules, "A-17").timeUp()).isTrue();
  }

  @Test
  void aClockThatWasPutBackOrAnOldSheetIsSaidToBeUnknown() {
    QuizModel model = begun(Rules.STANDARD, "A-17");
    nanos += 600 * SECOND;
    model.want(MOVES.get(0));
    today = today.minusSeconds(5000);
    begun(Rules.STANDARD, "A-17");
    assertThat(onDisk().sitting().restarts()).containsExactly(new Sitting.Restart(600, 600));
    AtomicFile.write(sheet(), SheetFile.text(onDisk().with(Sitting.UNKNOWN)));
    begun(Rules.STANDARD, "A-17");
    assertThat(onDisk().sitting())
        .isEqualTo(new Sitting(0, List.of(new Sitting.Restart(600, 600)), false));
  }

  @Test
  void whatIsDangerousStopsTheCallAndSaysWhatToMind() {
    QuizModel model = begun(Rules.STANDARD, "A-17");
    model.want(new Move.Repaired(Repair.REMAKE_CONNECTOR));
    VisitView view = VisitView.of(model, model.visit(), WORDS);
    assertThat(view.stopped()).contains("stopped");
    assertThat(view.cautions()).containsExactly("Turn off gas and power before opening.");
    assertThat(model.closed()).isTrue();
    model.conclude(Objects.requireNonNull(rodFilm().conclusion()));
    assertThat(onDisk().calls().get(0).conclusion()).isNull();
  }

  @Test
  void whatIsClosedIsNotOfferedAndTemptationsLookLikeTheRest() {
    Quiz quiz = SmallQuiz.under(Rules.STANDARD);
    ServiceCall call = quiz.calls().get(0);
    List<Offer> checks = Offer.checks(call, WORDS);
    assertThat(checks)
        .noneMatch(
            o ->
                o.move() instanceof Move.Checked c
                    && c.check().work().equals(java.util.Optional.of(Look.ROD)));
    List<Offer> repairs = Offer.repairs(call, WORDS);
    List<Offer> tempting = repairs.stream().filter(o -> o.move() instanceof Move.Tempted).toList();
    assertThat(tempting).hasSize(Temptation.values().length - 1);
    for (Offer offer : tempting) {
      assertThat(repairs).anyMatch(o -> o.part() == offer.part() && !tempting.contains(o));
      Temptation temptation = ((Move.Tempted) offer.move()).temptation();
      assertThat(offer.cautions()).doesNotContain(WORDS.heading(temptation.caution()));
      assertThat(offer.costs()).matches("\\d+ min, parts 0");
      assertThat(repairs)
          .as("what is on is said of it as of the rest of the part")
          .anyMatch(
              o ->
                  o.part() == offer.part()
                      && !tempting.contains(o)
                      && o.stillOn(true, true, WORDS).equals(offer.stillOn(true, true, WORDS)));
    }
    assertThat(repairs).isSortedAccordingTo(java.util.Comparator.comparing(Offer::part));
    assertThat(checks).anyMatch(o -> o.has("RÓD gap"));
  }

  @Test
  void whatIsStillOnIsNamedAndNothingWhereAllIsOff() {
    Offer connector =
        Offer.repairs(SmallQuiz.under(Rules.STANDARD).calls().get(0), WORDS).stream()
            .filter(o -> o.move().equals(new Move.Repaired(Repair.REMAKE_CONNECTOR)))
            .findFirst()
            .orElseThrow();
    assertThat(connector.stillOn(true, true, WORDS)).startsWith("Power and gas are still on.");
    assertThat(connector.stillOn(true, false, WORDS)).startsWith("Power is still on.");
    assertThat(connector.stillOn(false, false, WORDS)).isEmpty();
  }

  @Test
  void onlyWhatCanBeAtFaultIsOfferedAsAPlace() {
    ServiceCall call = SmallQuiz.under(Rules.STANDARD).calls().get(0);
    List<FurnacePart> places = new java.util.ArrayList<>();
    ConclusionChoices.of(call, WORDS).places().forEach(c -> places.add(c.value()));
    assertThat(places)
        .contains(FurnacePart.ROD, FurnacePart.BOARD, FurnacePart.GROUND_STRAP)
        .doesNotContain(FurnacePart.CUSTOMER, FurnacePart.STATUS_LIGHT, FurnacePart.SIGHT_GLASS);
    for (FaultKind kind : FaultKind.values()) {
      assertThat(places).as("%s", kind).containsAnyElementsOf(Places.of(Cause.of(kind)));
    }
  }

  @Test
  void theClockOnTheWallEndsIt() {
    QuizModel model = begun(new Rules(2, false), "A-17");
    assertThat(CallRow.clock(model, WORDS)).isEqualTo("Left: 2:00");
    nanos += 119 * SECOND;
    model.want(MOVES.get(0));
    assertThat(model.over()).isFalse();
    nanos += SECOND;
    model.want(MOVES.get(1));
    assertThat(model.over()).isTrue();
    assertThat(onDisk().calls().get(0).moves()).hasSize(1);
    QuizModel again = begun(new Rules(2, false), "A-17");
    assertThat(again.secondsLeft()).hasValue(1);
  }

  @Test
  void extraTimeIsKeptInTheSheet() {
    QuizModel model = model();
    model.open(SmallQuiz.file(folder, new Rules(2, false)));
    model.keep(model.start().withLearner("B").withExtra(50).withSheet(sheet()));
    model.begin();
    assertThat(model.secondsLeft()).hasValue(180);
    assertThat(onDisk().extraTimeRatio()).isEqualTo(1.5);
  }

  @Test
  void nobodyWritesOverTheSheetOfAnother() throws Exception {
    begun(Rules.STANDARD, "A-17");
    String before = Files.readString(sheet());
    QuizModel other = begun(Rules.STANDARD, "B-3");
    assertThat(other.attempt()).isNull();
    assertThat(other.said(WORDS)).contains("A-17");
    assertThat(Files.readString(sheet())).isEqualTo(before);
  }

  @Test
  void aSheetIsOpenInOneWindowOnly() throws Exception {
    QuizModel model = begun(Rules.STANDARD, "A-17");
    QuizModel other = model();
    other.open(SmallQuiz.file(folder, Rules.STANDARD));
    other.keep(other.start().withLearner("A-17").withSheet(folder.resolve("./sheet.json")));
    other.begin();
    assertThat(other.attempt()).isNull();
    assertThat(other.said(WORDS)).contains("sheet.json", "open in another window");
    model.leave();
    other.begin();
    assertThat(other.attempt()).isNotNull();
    other.release();
    assertThat(folder).isDirectoryNotContaining("glob:**.lock");
    assertThat(failures).isEmpty();
  }

  @Test
  void whatTakesLongerThanTheCallHasLeftSaysSo() {
    QuizModel model = begun(Rules.STANDARD, "A-17");
    ServiceCall call = Objects.requireNonNull(model.call());
    Move watch = MOVES.get(0);
    Offer offer =
        Offer.checks(call, WORDS).stream()
            .filter(o -> o.move().equals(watch))
            .findFirst()
            .orElseThrow();
    Visit visit = Objects.requireNonNull(model.visit());
    int each = visit.after(watch).minutes();
    while (visit.minutes() + each <= call.minutes()) {
      assertThat(offer.warnings(visit, WORDS)).isEmpty();
      visit = visit.after(watch);
    }
    int left = call.minutes() - visit.minutes();
    assertThat(offer.warnings(visit, WORDS))
        .singleElement()
        .asString()
        .contains("the call has left: " + left + " min");
    assertThat(visit.after(watch).ending()).contains(Ending.TIME_UP);
  }

  @Test
  void whoEndedTheQuizDoesNothingMoreInIt() throws Exception {
    QuizModel model = begun(Rules.STANDARD, "A-17");
    model.want(MOVES.get(0));
    model.handIn();
    String before = Files.readString(sheet());
    assertThat(onDisk().sitting().handedIn()).isTrue();
    assertThat(model.closed()).isTrue();
    model.want(MOVES.get(0));
    assertThat(model.said(WORDS)).isEqualTo("Not possible: the call is over.");
    model.conclude(Objects.requireNonNull(rodFilm().conclusion()));
    assertThat(Files.readString(sheet())).isEqualTo(before);
    QuizModel again = begun(Rules.STANDARD, "A-17");
    assertThat(again.attempt()).isNull();
    assertThat(again.said(WORDS)).contains("sheet.json", "handed in");
    assertThat(Files.readString(sheet())).isEqualTo(before);
  }

  @Test
  void atTheEndACallThatWasNotBegunStaysSo() throws Exception {
    QuizModel model = begun(Rules.STANDARD, "A-17");
    model.handIn();
    String before = Files.readString(sheet());
    assertThat(CallRow.all(model, WORDS)).extracting(CallRow::free).containsExactly(false, false);
    model.choose(Objects.requireNonNull(model.quiz()).calls().get(1));
    assertThat(Objects.requireNonNull(model.call()).name()).isEqualTo("cold-mornings");
    assertThat(Files.readString(sheet())).isEqualTo(before);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "{}", "no json", "{\"format\": \"halfwave-quiz\", \"version\": 9}"})
  void aFileThatIsNoQuizIsRefusedInOneLine(String text) {
    Path file = folder.resolve("odd.json");
    AtomicFile.write(file, text);
    QuizModel model = model();
    model.open(file);
    assertThat(model.quiz()).isNull();
    assertThat(model.said(WORDS)).contains("odd.json").doesNotContain("\n");
    assertThat(failures).isEmpty();
  }

  @Test
  void aSheetThatIsNoneOrHasAnImpossibleMoveIsLeftAlone() throws Exception {
    Quiz quiz = SmallQuiz.under(Rules.STANDARD);
    AtomicFile.write(sheet(), "letter to a friend");
    assertThat(begun(Rules.STANDARD, "A-17").said(WORDS)).contains("sheet.json");
    CallSheet odd =
        new CallSheet(
            "cold-mornings", List.of(new CallSheet.Logged(new Move.Gas(true), 0, 0, "")), null);
    AnswerSheet sheet =
        new AnswerSheet("e", quiz.name(), QuizText.hash(quiz), "A-17", 1, List.of(odd));
    AtomicFile.write(sheet(), SheetFile.text(sheet));
    QuizModel model = begun(Rules.STANDARD, "A-17");
    assertThat(model.said(WORDS)).contains("cannot be gone on with");
    assertThat(Files.readString(sheet())).isEqualTo(SheetFile.text(sheet));
  }

  @Test
  void aDiskThatRefusesIsToldAndTriedAgain() throws Exception {
    QuizModel model = begun(Rules.STANDARD, "A-17");
    Files.delete(sheet());
    Files.createDirectory(sheet());
    model.want(MOVES.get(0));
    assertThat(model.unsaved()).isTrue();
    assertThat(model.said(WORDS)).contains("sheet.json");
    Files.delete(sheet());
    model.save();
    assertThat(model.unsaved()).isFalse();
    assertThat(onDisk().calls().get(0).moves()).hasSize(1);
  }

  @Test
  void whileSomethingIsPlayedNothingElseIsBegun() {
    ManualExecutor background = new ManualExecutor();
    QuizModel model =
        new QuizModel(
            background, Runnable::run, () -> nanos, () -> today, SmallQuiz.OUTLOOKS, failures::add);
    model.open(SmallQuiz.file(folder, Rules.STANDARD));
    background.run();
    model.keep(model.start().withLearner("A").withSheet(sheet()));
    model.begin();
    background.run();
    model.want(MOVES.get(0));
    model.want(MOVES.get(3));
    assertThat(model.busy()).isTrue();
    background.run();
    assertThat(Objects.requireNonNull(model.visit()).log()).hasSize(1);
    assertThat(failures).isEmpty();
  }

  @Test
  void theNameOfASheetIsOneForAnyDisk() {
    assertThat(QuizStart.EMPTY.withLearner(" Ñandú/7 ").sheetName("Two calls"))
        .isEqualTo("two-calls-nandu-7");
    assertThat(QuizStart.about(SmallQuiz.under(new Rules(30, true)), WORDS))
        .contains("Two calls", "30 min", "Hints");
  }
}
