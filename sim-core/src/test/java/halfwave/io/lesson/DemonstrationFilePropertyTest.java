package halfwave.io.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Disorder;
import halfwave.bench.Intermittent;
import halfwave.bench.Parameter;
import halfwave.bench.ShippedBenches;
import halfwave.bench.Trigger;
import halfwave.board.BoardSettings;
import halfwave.board.ShippedBoards;
import halfwave.board.Stage;
import halfwave.board.StatusCode;
import halfwave.circuit.Part;
import halfwave.circuit.Point;
import halfwave.instrument.HookUp;
import halfwave.instrument.HookUp.Across;
import halfwave.instrument.HookUp.AcrossSupply;
import halfwave.instrument.HookUp.InSenseLead;
import halfwave.instrument.LeadEnd;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.ShippedMeters;
import halfwave.instrument.SupplyPoint;
import halfwave.io.SchemaFile;
import halfwave.lesson.Answer;
import halfwave.lesson.Claim;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Play;
import halfwave.lesson.Question;
import halfwave.lesson.Reading;
import halfwave.lesson.Step;
import halfwave.lesson.Words;
import halfwave.message.Quantity;
import halfwave.quantity.Dimension;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** Any demonstration comes back from its file as it went in, and its file follows the schema. */
class DemonstrationFilePropertyTest {

  private static final int COUNT = Boolean.getBoolean("halfwave.deep") ? 1000 : 60;

  private static final SchemaFile SCHEMA = new SchemaFile("demonstration.schema.json");

  @Test
  void demonstrationsComeBackEqualAndAreValid() throws IOException {
    for (int seed = 0; seed < COUNT; seed++) {
      Demonstration demonstration = new Maker(seed).demonstration();
      String text = DemonstrationText.of(demonstration);

      assertThat(DemonstrationFile.of(SchemaFile.value(text)))
          .as("seed " + seed)
          .isEqualTo(demonstration);
      assertThat(SCHEMA.errors(text)).as("seed " + seed).isEmpty();
    }
  }

  /** Random demonstrations; they need not make sense. */
  private static final class Maker {

    private static final String LETTERS = "aZ9 \"\\\n{}ñµ°";

    private final Random random;

    Maker(long seed) {
      random = new Random(seed);
    }

    Demonstration demonstration() {
      Bench bench = one(ShippedBenches.all());
      if (random.nextBoolean()) {
        bench = Parameter.GROUND.with(bench, random.nextInt(1000) / 7.0);
      }
      Bench chosen = bench;
      List<BoardSettings> boards =
          ShippedBoards.all().stream()
              .filter(b -> b.ignition().fits(chosen.design().ignition()))
              .toList();
      return new Demonstration(
          text(),
          words(),
          words(),
          bench,
          random.nextBoolean() ? one(boards).name() : null,
          random.nextLong(),
          play(1),
          some(1, 4, this::step));
    }

    private Step step() {
      return new Step(
          words(),
          words(),
          random.nextBoolean() ? question() : null,
          play(0.05 + 999 * random.nextDouble()),
          random.nextBoolean() ? words() : null,
          some(0, 4, this::claim),
          Set.copyOf(some(0, 3, () -> one(List.of(Part.values())))));
    }

    private Question question() {
      List<Answer> answers = some(2, 5, () -> new Answer(words(), some(1, 3, this::claim)));
      return new Question(words(), answers, random.nextInt(answers.size()));
    }

    private Play play(double speed) {
      long length = random.nextInt(5) == 0 ? 0 : 1 + random.nextInt(1_000_000);
      List<Act> acts =
          length == 0
              ? List.of()
              : some(0, 4, () -> new Act((long) (random.nextDouble() * length), deed()));
      return new Play(acts, length, speed);
    }

    private Deed deed() {
      return switch (random.nextInt(8)) {
        case 0 -> new Deed.Supply(random.nextBoolean());
        case 1 -> new Deed.Call(random.nextBoolean());
        case 2 -> new Deed.TakeOff();
        case 3 ->
            new Deed.HookOn(
                Meter.fresh(one(ShippedMeters.all())),
                one(List.of(MeterFunction.values())),
                hookUp());
        case 4 -> new Deed.Lurk(new Intermittent(one(List.of(Trigger.values())), change()));
        default -> new Deed.Alter(change());
      };
    }

    private Change change() {
      return switch (random.nextInt(4)) {
        case 0 -> Change.Turned.to(Parameter.ROD_FILM, random.nextDouble() * 1e-3);
        case 1 -> Change.Turned.to(Parameter.ROD_CRACKS, ohms());
        case 2 -> new Change.Upset(one(List.of(Disorder.values())), random.nextBoolean());
        default ->
            new Change.CarriedOver(
                random.nextBoolean() ? Double.POSITIVE_INFINITY : 0.1 + random.nextDouble());
      };
    }

    private double ohms() {
      return random.nextInt(3) == 0 ? Double.POSITIVE_INFINITY : random.nextDouble() * 1e9;
    }

    private HookUp hookUp() {
      return switch (random.nextInt(3)) {
        case 0 -> new InSenseLead(one(List.of(LeadEnd.values())), true);
        case 1 -> new Across(point(), point());
        default ->
            new AcrossSupply(
                one(List.of(SupplyPoint.values())), one(List.of(SupplyPoint.values())));
      };
    }

    private Point point() {
      return one(HookUp.REACHABLE.stream().sorted().toList());
    }

    private Claim claim() {
      return switch (random.nextInt(5)) {
        case 0 -> new Claim.At(one(List.of(Stage.values())));
        case 1 -> new Claim.Shows(one(List.of(StatusCode.values())));
        case 2 -> {
          int least = random.nextInt(5);
          int most = random.nextBoolean() ? least + random.nextInt(5) : Integer.MAX_VALUE;
          yield new Claim.Enters(one(List.of(Stage.values())), least, most);
        }
        case 3 -> {
          double least = random.nextDouble();
          double most = random.nextBoolean() ? 2 * least : Double.POSITIVE_INFINITY;
          yield new Claim.Compared(reading(), least, most);
        }
        default -> between(reading());
      };
    }

    private Claim between(Reading reading) {
      double low = random.nextGaussian();
      boolean open = reading.dimension() == Dimension.RESISTANCE && random.nextBoolean();
      double high = open ? Double.POSITIVE_INFINITY : low + random.nextDouble();
      return new Claim.Between(
          reading,
          random.nextBoolean() ? new Quantity(low, reading.dimension()) : null,
          new Quantity(high, reading.dimension()));
    }

    private Reading reading() {
      return switch (random.nextInt(4)) {
        case 0 -> new Reading.Signal();
        case 1 -> new Reading.Burners();
        case 2 ->
            new Reading.Display(
                one(List.of(Dimension.CURRENT, Dimension.VOLTAGE, Dimension.RESISTANCE)));
        default ->
            new Reading.Metered(
                one(
                    List.of(
                        MeterFunction.OHMS, MeterFunction.DC_MICROAMPS, MeterFunction.AC_VOLTS)),
                hookUp());
      };
    }

    private Words words() {
      Map<String, String> texts = new HashMap<>(Map.of("en", text()));
      for (String tag : some(0, 2, () -> one(List.of("es", "fr-CA", "de")))) {
        texts.put(tag, text());
      }
      return new Words(texts);
    }

    /** Never blank, otherwise of anything. */
    private String text() {
      StringBuilder text = new StringBuilder("t");
      for (int k = random.nextInt(12); k > 0; k--) {
        text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
      }
      return text.toString();
    }

    private <T> T one(List<T> of) {
      return of.get(random.nextInt(of.size()));
    }

    private <T> List<T> some(int least, int most, Supplier<T> make) {
      List<T> all = new ArrayList<>();
      for (int k = least + random.nextInt(most - least + 1); k > 0; k--) {
        all.add(make.get());
      }
      return all;
    }
  }
}
