package halfwave.io.lesson;

import halfwave.bench.Bench;
import halfwave.circuit.Part;
import halfwave.display.Sentences;
import halfwave.io.BadInputException;
import halfwave.io.JsonFields;
import halfwave.io.JsonFile;
import halfwave.io.JsonValue;
import halfwave.io.LanguageWords;
import halfwave.io.bench.BenchField;
import halfwave.io.sequence.ScriptFile;
import halfwave.io.sequence.TimeWords;
import halfwave.lesson.Answer;
import halfwave.lesson.Claim;
import halfwave.lesson.Demonstration;
import halfwave.lesson.Play;
import halfwave.lesson.Question;
import halfwave.lesson.Step;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.sequence.Act;
import halfwave.sequence.Playback;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The file of a demonstration, {@code "format": "halfwave-demonstration", "version": 1}. Its schema
 * is {@code docs/schemas/demonstration.schema.json}; {@link DemonstrationText} writes it. Acts are
 * those of a script, with times from the beginning of their step.
 */
public final class DemonstrationFile {

  /** What such a file calls itself. */
  public static final String FORMAT = "halfwave-demonstration";

  static final int VERSION = 1;

  private DemonstrationFile() {}

  /**
   * Reads a file.
   *
   * @param file the file
   * @return the demonstration; what it claims of the model is not checked
   * @throws BadInputException if anything in it is not as the schema says, or an act cannot be done
   */
  public static Demonstration read(Path file) {
    return of(JsonFile.read(file));
  }

  /** The same for a file that was already read. */
  public static Demonstration of(JsonValue value) {
    JsonFields f = fields(value);
    Demonstration demonstration = unplayed(f);
    checkActs(f, demonstration);
    return demonstration;
  }

  /** One on its way: some of its acts may not be possible where they stand. */
  static Demonstration unplayed(JsonValue value) {
    return unplayed(fields(value));
  }

  private static JsonFields fields(JsonValue value) {
    return value.file(
        FORMAT, VERSION, "format", "version", "name", "title", "about", "bench", "board", "seed",
        "start", "steps");
  }

  private static Demonstration unplayed(JsonFields f) {
    Bench bench = BenchField.bench(f.get("bench"));
    return new Demonstration(
        LanguageWords.filled(f.get("name")),
        LanguageWords.of(f.get("title")),
        LanguageWords.of(f.get("about")),
        bench,
        f.has("board") ? BenchField.board(f.get("board"), bench.design().ignition()) : null,
        f.orElse("seed", JsonValue::wholeNumber, 1L),
        play(f.get("start").fields("seconds", "acts")),
        f.get("steps")
            .filledList(
                DemonstrationFile::step,
                Message.of(MessageKey.ALLOWED_ENTRIES, Argument.count(1))));
  }

  private static Step step(JsonValue value) {
    JsonFields f =
        value.fields(
            "heading",
            "say",
            "question",
            "seconds",
            "speed",
            "acts",
            "explanation",
            "claims",
            "lit");
    return new Step(
        LanguageWords.of(f.get("heading")),
        LanguageWords.of(f.get("say")),
        f.has("question") ? question(f.get("question")) : null,
        play(f),
        f.has("explanation") ? LanguageWords.of(f.get("explanation")) : null,
        claims(f),
        Set.copyOf(f.orElse("lit", v -> v.list(e -> e.oneOf(Part.class)), List.of())));
  }

  private static Question question(JsonValue value) {
    JsonFields f = value.fields("ask", "answers", "right");
    List<Answer> answers = f.get("answers").list(DemonstrationFile::answer);
    if (answers.size() < Question.LEAST_ANSWERS || answers.size() > Question.MOST_ANSWERS) {
      throw f.get("answers")
          .refused(
              Message.of(
                  MessageKey.ALLOWED_ANSWERS,
                  Argument.count(Question.LEAST_ANSWERS),
                  Argument.count(Question.MOST_ANSWERS)));
    }
    long right = f.get("right").wholeNumber();
    if (!(right >= 0 && right < answers.size())) {
      throw f.get("right").refused(JsonValue.between(0, answers.size() - 1.0));
    }
    if (answers.get((int) right).claims().isEmpty()) {
      f.get("answers")
          .list(v -> v)
          .get((int) right)
          .child("claims")
          .filledList(ClaimFile::claim, Message.of(MessageKey.ALLOWED_PROVED));
    }
    return new Question(LanguageWords.of(f.get("ask")), answers, (int) right);
  }

  private static Answer answer(JsonValue value) {
    JsonFields f = value.fields("text", "claims");
    return new Answer(LanguageWords.of(f.get("text")), claims(f));
  }

  private static List<Claim> claims(JsonFields f) {
    return f.orElse("claims", v -> v.list(ClaimFile::claim), List.of());
  }

  private static Play play(JsonFields f) {
    List<Act> none = List.of();
    boolean acts = f.has("acts") && !f.get("acts").list(v -> v).isEmpty();
    long length =
        acts || f.has("seconds")
            ? TimeWords.millis(f.get("seconds"), acts ? 1 : 0, TimeWords.LONGEST_MILLIS)
            : 0;
    double speed = f.orElse("speed", JsonValue::number, 1.0);
    if (!(speed >= Play.SLOWEST_RATIO && speed <= Play.FASTEST_RATIO)) {
      throw f.get("speed").refused(JsonValue.between(Play.SLOWEST_RATIO, Play.FASTEST_RATIO));
    }
    return new Play(
        f.orElse("acts", v -> v.list(a -> ScriptFile.act(a, length)), none), length, speed);
  }

  /** Does all acts in thought, in their order of time, and refuses the first that is impossible. */
  private static void checkActs(JsonFields f, Demonstration demonstration) {
    List<JsonValue> plays =
        Stream.concat(Stream.of(f.get("start")), f.get("steps").list(v -> v).stream()).toList();
    Bench bench = demonstration.bench();
    for (int k = 0; k < plays.size(); k++) {
      Play play = k == 0 ? demonstration.start() : demonstration.steps().get(k - 1).play();
      Playback.Impossible found = Playback.impossible(bench, play.acts()).orElse(null);
      if (found != null) {
        throw where(plays.get(k), play, found.act()).refused(Sentences.allowed(found.reason()));
      }
      List<Act> ordered = new ArrayList<>(play.acts());
      ordered.sort(Comparator.comparingLong(Act::timeMillis));
      for (Act act : ordered) {
        bench = Playback.done(bench, act.deed());
      }
    }
  }

  private static JsonValue where(JsonValue play, Play read, @Nullable Act act) {
    return act == null ? play : play.child("acts").list(v -> v).get(read.acts().indexOf(act));
  }
}
