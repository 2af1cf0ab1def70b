package halfwave.io.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Change;
import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.board.Stage;
import halfwave.circuit.Part;
import halfwave.io.SchemaFile;
import halfwave.lesson.Claim;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Draft;
import halfwave.lesson.DraftPlace;
import halfwave.lesson.DraftPlace.Field;
import halfwave.lesson.DraftQuestion;
import halfwave.lesson.DraftStep;
import halfwave.lesson.DraftText;
import halfwave.lesson.Play;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Whatever is done to a draft, it comes back from its file as it went in. */
class DraftFilePropertyTest {

  private static final int COUNT = Boolean.getBoolean("halfwave.deep") ? 1000 : 60;
  private static final int EDITS = 40;

  private static final SchemaFile SCHEMA = new SchemaFile("demonstration.schema.json");

  @Test
  void anyDraftIsAFileThatGivesItBack() throws IOException {
    for (int seed = 0; seed < COUNT; seed++) {
      Random random = new Random(seed);
      Draft draft = empty();
      for (int k = 0; k < EDITS; k++) {
        draft = edited(draft, random);
      }
      String text = DemonstrationText.of(draft.demonstration());
      Demonstration read = DemonstrationFile.of(SchemaFile.value(text));

      assertThat(Draft.of(read)).as("seed " + seed).isEqualTo(draft);
      assertThat(Draft.of(read).gaps()).as("seed " + seed).isEqualTo(draft.gaps());
      assertThat(SCHEMA.errors(text)).as("seed " + seed).isEmpty();
    }
  }

  @Test
  void whatIsShippedHasNoGapsAndComesBack() {
    for (Demonstration shipped : ShippedDemonstrations.all()) {
      Draft draft = Draft.of(shipped);
      assertThat(draft.gaps()).as(shipped.name()).isEmpty();
      assertThat(draft.demonstration()).as(shipped.name()).isEqualTo(shipped);
    }
  }

  private static Draft empty() {
    return new Draft(
        "draft",
        DraftText.EMPTY,
        DraftText.EMPTY,
        ShippedBenches.standard(),
        null,
        1,
        Play.NOTHING,
        List.of(DraftStep.EMPTY));
  }

  private static Draft edited(Draft draft, Random random) {
    int step = random.nextInt(draft.steps().size());
    DraftStep one = draft.steps().get(step);
    DraftQuestion question = one.question();
    return switch (random.nextInt(16)) {
      case 0 -> draft.inserted(step, DraftStep.EMPTY);
      case 1 -> draft.duplicated(step);
      case 2 -> draft.removed(step);
      case 3 -> draft.moved(step, random.nextInt(draft.steps().size()));
      case 4 -> draft.with(step, one.with(question == null ? DraftQuestion.EMPTY : null));
      case 5 ->
          question == null || !question.mayGrow()
              ? draft
              : draft.with(step, one.with(question.grown()));
      case 6 -> question == null ? draft : answered(draft, step, question, random);
      case 7 -> draft.with(step, one.with(play(random)));
      case 8 -> draft.with(step, one.with(List.of(claim(random))));
      case 9 -> draft.with(step, one.with(Set.of(Part.FLAME)));
      case 10 -> written(draft, DraftPlace.whole(Field.TITLE), random);
      case 11 -> written(draft, DraftPlace.whole(Field.ABOUT), random);
      case 12 -> written(draft, DraftPlace.of(step, Field.HEADING), random);
      case 13 -> written(draft, DraftPlace.of(step, Field.SAY), random);
      case 14 -> written(draft, DraftPlace.of(step, Field.EXPLANATION), random);
      default -> question == null ? draft : written(draft, DraftPlace.of(step, Field.ASK), random);
    };
  }

  private static Draft answered(Draft draft, int step, DraftQuestion question, Random random) {
    DraftStep one = draft.steps().get(step);
    int answer = random.nextInt(question.answers().size());
    return switch (random.nextInt(5)) {
      case 0 -> draft.with(step, one.with(question.withRight(answer)));
      case 1 -> question.mayShrink() ? draft.with(step, one.with(question.without(answer))) : draft;
      case 2 -> draft.with(step, one.with(question.moved(0, answer)));
      case 3 -> {
        var claimed = question.answers().get(answer).with(List.of(claim(random)));
        yield draft.with(step, one.with(question.with(answer, claimed)));
      }
      default -> written(draft, DraftPlace.answer(step, answer), random);
    };
  }

  /** English and Spanish differ: where they are the same, one stands in for the other. */
  private static Draft written(Draft draft, DraftPlace place, Random random) {
    boolean english = random.nextBoolean();
    String text = random.nextInt(4) == 0 ? "" : (english ? "e" : "s") + random.nextInt(100);
    return draft.with(place, draft.text(place).with(english ? "en" : "es", text));
  }

  private static Play play(Random random) {
    long length = 1 + random.nextInt(100_000);
    List<Act> acts = new ArrayList<>();
    for (int k = random.nextInt(4); k > 0; k--) {
      Deed deed =
          random.nextBoolean()
              ? new Deed.Call(random.nextBoolean())
              : new Deed.Alter(Change.Turned.to(Parameter.GROUND, random.nextInt(1000)));
      acts.add(new Act((long) (random.nextDouble() * length), deed));
    }
    return new Play(acts, length, 0.05 + 10 * random.nextDouble());
  }

  private static Claim claim(Random random) {
    return random.nextBoolean()
        ? new Claim.At(Stage.values()[random.nextInt(Stage.values().length)])
        : new Claim.Enters(Stage.TRIAL, 1, 1 + random.nextInt(4));
  }
}
