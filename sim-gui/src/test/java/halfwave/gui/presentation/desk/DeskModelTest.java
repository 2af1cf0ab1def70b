package halfwave.gui.presentation.desk;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.ShippedBenches;
import halfwave.fault.FaultKind;
import halfwave.grading.CallMarks;
import halfwave.grading.ClassReport;
import halfwave.grading.SheetMarks;
import halfwave.gui.presentation.ManualExecutor;
import halfwave.gui.presentation.Wording;
import halfwave.gui.presentation.bench.DirectBench;
import halfwave.gui.presentation.quiz.SmallQuiz;
import halfwave.io.quiz.QuizFile;
import halfwave.lesson.Words;
import halfwave.paper.PaperSize;
import halfwave.quiz.Assembly;
import halfwave.quiz.BlueprintRow;
import halfwave.quiz.Hidden;
import halfwave.quiz.Level;
import halfwave.quiz.Objective;
import halfwave.quiz.Quiz;
import halfwave.quiz.Rules;
import halfwave.quiz.ServiceCall;
import halfwave.work.Finding;
import halfwave.work.Look;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An instructor's way: make a quiz, hand it out, mark what comes back, keep it. */
class DeskModelTest {

  private static final Wording WORDS = DirectBench.ENGLISH;
  private static final Assembly ROD =
      new Assembly(new BlueprintRow(Objective.ROD, Level.BASIC, 2), 2);

  @TempDir private Path folder;

  private final List<Throwable> failures = new ArrayList<>();

  private DeskModel model() {
    DeskModel model =
        new DeskModel(
            Runnable::run,
            Runnable::run,
            () -> SmallQuiz.under(Rules.STANDARD),
            SmallQuiz.OUTLOOKS,
            () -> Instant.EPOCH,
            failures::add);
    model.begin();
    return model;
  }

  private static DeskDraft draft(DeskModel model) {
    return Objects.requireNonNull(model.state().draft());
  }

  private DeskModel drawn() {
    DeskModel model = model();
    model.keep(draft(model).withName("spring").withSeed(3).withRow(ROD));
    model.draw();
    return model;
  }

  private DeskModel marked(Path sheets) throws Exception {
    DeskModel model = drawn();
    Files.createDirectories(sheets);
    SmallClass.handIn(sheets, draft(model).quiz().orElseThrow());
    model.collect(sheets);
    return model;
  }

  @Test
  void aQuizIsDrawnSavedAndHandedOut() throws Exception {
    DeskModel model = drawn();
    assertThat(model.said(WORDS)).isEqualTo("Calls drawn: 2.");
    Path own = folder.resolve("own.json");
    Path out = folder.resolve("out.json");
    assertThat(model.state().unsaved()).isTrue();
    model.save(own);
    assertThat(model.state().unsaved()).isFalse();
    model.handOut(out);
    Quiz saved = QuizFile.read(own).quiz();
    assertThat(saved).isEqualTo(draft(model).quiz().orElseThrow());
    assertThat(QuizFile.read(out).sealed()).isTrue();
    assertThat(Files.readString(out)).doesNotContain("rod-silica");

    DeskModel other = model();
    other.open(out);
    assertThat(other.said(WORDS)).contains("out.json", "sealed").doesNotContain("\n");
    assertThat(draft(other).calls()).isEmpty();
    other.open(own);
    assertThat(draft(other)).isEqualTo(DeskDraft.of(saved));
    assertThat(failures).isEmpty();
  }

  @Test
  void whatCannotBeDrawnOrWrittenIsSaid() {
    DeskModel model = model();
    model.save(folder.resolve("none.json"));
    assertThat(model.said(WORDS)).contains("no calls yet");
    model.draw();
    assertThat(model.said(WORDS)).contains("no rows yet");
    model.keep(draft(model).withRow(new Assembly(ROD.row(), 3)));
    model.draw();
    assertThat(model.said(WORDS)).contains("there are 2");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void aCallIsWrittenAndWhatIsWrongInItIsSaid() {
    DeskModel model = model();
    model.create(WORDS);
    model.create(WORDS);
    assertThat(draft(model).calls())
        .extracting(ServiceCall::name)
        .containsExactly("new-call", "new-call-2");
    ServiceCall call = draft(model).calls().get(0);
    CallDraft.Told told = new CallDraft.Told("Cold shop", "It is cold.");
    CallDraft typed =
        new CallDraft(
            told,
            new CallDraft.Told("", ""),
            ShippedBenches.standard(),
            List.of(
                List.of(
                    new CallDraft.Typed(FaultKind.ROD_SILICA, "5 km"),
                    new CallDraft.Typed(FaultKind.CONNECTOR_OFF, ""))),
            Set.of(Look.ROD),
            45,
            8,
            Objective.SENSE_PATH,
            Level.ADVANCED,
            Finding.SINCE_WEEKS);
    model.change(call, typed, WORDS);
    assertThat(model.said(WORDS)).startsWith("5 km is not possible");
    assertThat(draft(model).calls().get(0)).isEqualTo(call);
    CallDraft better =
        new CallDraft(
            told,
            typed.spanish(),
            typed.bench(),
            List.of(
                List.of(
                    new CallDraft.Typed(FaultKind.ROD_SILICA, "5.00 µm"),
                    typed.alternatives().get(0).get(1)),
                List.of(new CallDraft.Typed(FaultKind.CONNECTOR_OFF, "")),
                List.of()),
            typed.closed(),
            typed.minutes(),
            typed.partsUnits(),
            typed.objective(),
            typed.level(),
            typed.since());
    model.change(call, better, WORDS);
    ServiceCall made = draft(model).calls().get(0);
    assertThat(made.name()).isEqualTo("cold-shop");
    assertThat(made.title().texts()).containsOnlyKeys(Words.FALLBACK);
    assertThat(made.hidden())
        .extracting(h -> h.faults().stream().map(Hidden.Part::kind).toList())
        .containsExactly(
            List.of(FaultKind.ROD_SILICA, FaultKind.CONNECTOR_OFF),
            List.of(FaultKind.CONNECTOR_OFF),
            List.of());
    assertThat(CallDraft.of(made, WORDS)).isEqualTo(better);
  }

  @Test
  void aNewCallIsNamedByItsFirstTitleAndKeepsTheName() {
    DeskModel model = model();
    model.create(WORDS);
    model.create(WORDS);
    titled(model, 0, "Cold shop");
    titled(model, 1, "Cold shop");
    titled(model, 0, "Warm shop");
    assertThat(draft(model).calls())
        .extracting(ServiceCall::name)
        .containsExactly("cold-shop", "cold-shop-2");
    assertThat(draft(model).calls().get(0).title().in(Locale.ENGLISH)).isEqualTo("Warm shop");
  }

  private static void titled(DeskModel model, int row, String title) {
    ServiceCall call = draft(model).calls().get(row);
    CallDraft form = CallDraft.of(call, WORDS);
    model.change(
        call,
        new CallDraft(
            new CallDraft.Told(title, form.english().complaint()),
            form.spanish(),
            form.bench(),
            form.alternatives(),
            form.closed(),
            form.minutes(),
            form.partsUnits(),
            form.objective(),
            form.level(),
            form.since()),
        WORDS);
  }

  @Test
  void whatIsWrongInAnAlternativeIsSaidWithItsNumber() {
    DeskModel model = model();
    model.create(WORDS);
    ServiceCall call = draft(model).calls().get(0);
    CallDraft first = CallDraft.of(call, WORDS);
    List<CallDraft.Typed> twice =
        List.of(
            new CallDraft.Typed(FaultKind.CONNECTOR_OFF, ""),
            new CallDraft.Typed(FaultKind.CONNECTOR_OFF, ""));
    CallDraft typed =
        new CallDraft(
            first.english(),
            first.spanish(),
            first.bench(),
            List.of(first.alternatives().get(0), twice),
            first.closed(),
            first.minutes(),
            first.partsUnits(),
            first.objective(),
            first.level(),
            first.since());
    model.change(call, typed, WORDS);
    assertThat(model.said(WORDS)).startsWith("Alternative 2: The same thing cannot");
    assertThat(draft(model).calls().get(0)).isEqualTo(call);
  }

  @Test
  void sheetsAreMarkedAndTheOddOneIsNamed() throws Exception {
    DeskModel model = marked(folder.resolve("sheets"));
    assertThat(failures).isEmpty();
    DeskClass marked = Objects.requireNonNull(model.state().marked());
    DeskTables tables = new DeskTables(WORDS);
    ClassReport report = marked.report();
    assertThat(report.sheets())
        .extracting(s -> s.sheet().learner())
        .containsExactlyInAnyOrderElementsOf(SmallClass.LEARNERS);
    assertThat(tables.told(marked)).singleElement().asString().contains(SmallClass.ODD);
    assertThat(model.said(WORDS)).isEqualTo("Answer sheets marked: 3; refused: 1.");
    assertThat(tables.summary(marked)).contains(": 3 sheets, ").doesNotContain("odd");
    assertThat(tables.learners(report).rows()).hasSize(3).allMatch(r -> r.size() == 5);
    assertThat(tables.items(report).rows()).hasSize(2);
    assertThat(tables.objectives(report).rows()).hasSize(1);
    SheetMarks best = report.sheets().get(0);
    assertThat(tables.moves(best.calls().get(0)).rows()).hasSameSizeAs(best.calls().get(0).moves());
    assertThat(tables.remarks(best, best.calls().get(0))).isEmpty();

    Path marks = folder.resolve("marks.json");
    model.write(DeskOutput.MARKS, marks, PaperSize.A4, "", WORDS);
    model.compare(marks);
    assertThat(Objects.requireNonNull(model.state().marked()).changes()).isEmpty();
    Files.writeString(
        marks,
        Files.readString(marks)
            .replaceFirst("(\"call\"[^,]*,\\s*\"totalRatio\" : )[0-9.]+", "$10.001"));
    model.compare(marks);
    assertThat(Objects.requireNonNull(model.state().marked()).changes())
        .singleElement()
        .matches(c -> c.beforeRatio() == 0.001);
  }

  @Test
  void everyChangeOfAQuizIsUndoneAndDoneAgain() {
    DeskModel model = drawn();
    DeskDraft drawn = draft(model);
    for (String typed : List.of("C", "Co", "Cold")) {
      model.keep(draft(model).withTitle(typed, ""));
    }
    DeskDraft titled = draft(model);
    model.remove(drawn.calls().get(0));
    DeskDraft shorter = draft(model);
    model.undo();
    assertThat(draft(model)).isEqualTo(titled);
    model.undo();
    assertThat(draft(model)).as("typed in one go").isEqualTo(drawn);
    model.redo();
    model.redo();
    assertThat(draft(model)).isEqualTo(shorter);
    assertThat(model.mayRedo()).isFalse();
    model.undo();
    model.keep(draft(model).withPassRatio(0.5));
    assertThat(model.mayRedo()).as("something else was done").isFalse();
    while (model.mayUndo()) {
      model.undo();
    }
    assertThat(draft(model).calls()).isEmpty();
    model.fresh();
    assertThat(model.mayUndo() || model.mayRedo()).as("another quiz").isFalse();
  }

  @Test
  void thatSomethingIsOddAboutASheetIsToldWithTheClass() throws Exception {
    Path sheets = folder.resolve("sheets");
    DeskModel model = marked(sheets);
    Path one = sheets.resolve(SmallClass.LEARNERS.get(0) + ".json");
    Files.writeString(
        one, Files.readString(one).replace("\"quizHash\" : \"", "\"quizHash\" : \"other-"));
    model.collect(sheets);
    assertThat(new DeskTables(WORDS).summary(Objects.requireNonNull(model.state().marked())))
        .endsWith("Something is odd about one sheet: it stands above its marks.");
  }

  @Test
  void aContestedCallIsPlayedAgainAsItStood() throws Exception {
    DeskModel model = marked(folder.resolve("sheets"));
    SheetMarks sheet = Objects.requireNonNull(model.state().marked()).report().sheets().get(0);
    CallMarks call = sheet.calls().get(0);
    assertThat(model.replay(call)).isEmpty();
    model.playAgain(sheet, call);
    DeskReplay replay = model.replay(call).orElseThrow();
    assertThat(model.replay(sheet.calls().get(1))).isEmpty();
    assertThat(replay.acts()).hasSameSizeAs(call.moves());
    List<List<String>> rows = new DeskTables(WORDS).moves(call).rows();
    int readings = 0;
    for (int k = 0; k < rows.size(); k++) {
      // the table beside the picture tells of the same move
      ReplayView view = ReplayView.of(replay, k, WORDS);
      assertThat(view.move()).isEqualTo((k + 1) + " of " + rows.size() + ": " + rows.get(k).get(1));
      assertThat(view.standing()).startsWith("Minute " + rows.get(k).get(0) + " · power o");
      assertThat(view.reading()).isIn("", rows.get(k).get(2));
      readings += view.reading().isEmpty() ? 0 : 1;
    }
    assertThat(readings).as("moves with a meter").isPositive();
    assertThat(failures).isEmpty();
  }

  @Test
  void everythingThatCanBeWrittenIsWritten() throws Exception {
    DeskModel model = marked(folder.resolve("sheets"));
    for (DeskOutput output : DeskOutput.OF_CLASS) {
      Path file = folder.resolve(output + "." + output.ending());
      model.write(output, file, PaperSize.A4, "https://school.example/furnaces", WORDS);
      assertThat(file).as("%s: %s %s", output, model.said(WORDS), failures).isNotEmptyFile();
    }
    for (DeskOutput output : DeskOutput.OF_QUIZ) {
      Path file = folder.resolve(output + "." + output.ending());
      model.write(output, file, PaperSize.A4, 1, WORDS);
      assertThat(file).as("%s: %s", output, failures).isNotEmptyFile();
    }
    DeskClass marked = Objects.requireNonNull(model.state().marked());
    Path record = folder.resolve("record.pdf");
    model.record(marked.report().sheets().get(0), record, PaperSize.LETTER, WORDS);
    assertThat(record).isNotEmptyFile();
    Path odd = folder.resolve("odd.jsonl");
    model.write(DeskOutput.XAPI, odd, PaperSize.A4, "my school", WORDS);
    assertThat(model.said(WORDS)).contains("my school");
    assertThat(odd).doesNotExist();
  }

  @Test
  void whatIsGivenUpChangesNothing() {
    ManualExecutor background = new ManualExecutor();
    DeskModel model =
        new DeskModel(
            background,
            Runnable::run,
            () -> SmallQuiz.under(Rules.STANDARD),
            SmallQuiz.OUTLOOKS,
            () -> Instant.EPOCH,
            failures::add);
    model.begin();
    background.run();
    model.add(SmallQuiz.under(Rules.STANDARD).calls().get(0));
    model.tryCalls();
    model.giveUp();
    assertThat(model.busy()).isFalse();
    background.run();
    assertThat(model.state().checks()).isEmpty();
    assertThat(model.said(WORDS)).isEqualTo("Stopped.");
  }

  @Test
  void callsAreTried() {
    DeskModel model = model();
    model.add(SmallQuiz.under(Rules.STANDARD).calls().get(1));
    model.tryCalls();
    assertThat(model.state().checks()).singleElement().matches(c -> c.solved());
    assertThat(new DeskTables(WORDS).calls(model.state()).rows().get(0).get(5)).isNotEmpty();
    model.keep(draft(model).withSeed(99));
    assertThat(model.state().checks()).isEmpty();
  }
}
