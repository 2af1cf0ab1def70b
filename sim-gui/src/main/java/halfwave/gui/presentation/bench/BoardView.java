package halfwave.gui.presentation.bench;

import halfwave.board.BoardSettings;
import halfwave.board.BoardState;
import halfwave.board.Counting;
import halfwave.board.Sensing;
import halfwave.board.Stage;
import halfwave.board.StatusCode;
import halfwave.board.Times;
import halfwave.display.DisplayUnit;
import halfwave.display.QuantityText;
import halfwave.gui.presentation.Wording;
import halfwave.sequence.Event;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;

/**
 * What the board does, with the numbers that made it do so.
 *
 * @param headline what it is doing
 * @param light what its status light says
 * @param longFlashes long flashes of the light
 * @param shortFlashes short flashes after them
 * @param lockout whether it has given up
 * @param signal its flame signal, with unit
 * @param gauge where that signal stands among its limits
 * @param clock how long the stage has lasted and may last, or empty
 * @param counts failed trials and lost flames
 * @param next what ends this state
 * @param cause the last thing it did, and why
 * @param spoken all of it, for who hears the screen
 */
public record BoardView(
    String headline,
    String light,
    int longFlashes,
    int shortFlashes,
    boolean lockout,
    String signal,
    Gauge gauge,
    String clock,
    String counts,
    String next,
    String cause,
    String spoken) {

  /**
   * The signal on a scale from zero.
   *
   * @param share the signal's place, 0 to 1
   * @param marks limits, in order
   * @param full what stands at the end of the scale
   */
  public record Gauge(double share, List<Mark> marks, String full) {}

  /**
   * A limit.
   *
   * @param share its place, 0 to 1
   * @param words its name and value
   */
  public record Mark(double share, String words) {}

  /** How the light flashes; one flash has a word of its own. */
  public String flashes(Wording words) {
    return words.text(
        "board.flashes",
        words.text(longFlashes == 1 ? "board.long-one" : "board.long-many", longFlashes),
        words.text(shortFlashes == 1 ? "board.short-one" : "board.short-many", shortFlashes));
  }

  /** The view of a state. */
  public static BoardView of(State state, Wording words) {
    BoardState board = state.moment().board();
    BoardSettings settings = state.moment().settings();
    StatusCode code = state.readout().code();
    String headline = headline(state, words);
    String signal = microamps(state.moment().filter().meanAmps(), words);
    String next = next(board.stage(), settings, words);
    String light = words.text("board.light", words.sentences().name(code));
    return new BoardView(
        headline,
        light,
        code.longFlashes(),
        code.shortFlashes(),
        board.stage().lockout(),
        signal,
        gauge(settings.sensing(), state.moment().filter().meanAmps(), words),
        clock(board, settings, words),
        counts(board, settings.counting(), words),
        next,
        cause(state.recording().events(), words),
        words.text("board.spoken", headline, signal, light, next));
  }

  private static String headline(State state, Wording words) {
    Stage stage = state.moment().board().stage();
    String name = words.heading(stage);
    return stage == Stage.RUN
        ? words.text(
            "board.running", name, words.sentences().name(state.moment().filter().signal()))
        : name;
  }

  /** A current as boards have it, in µA. */
  public static String microamps(double amps, Wording words) {
    return words.sentences().quantities().fixed(amps, DisplayUnit.MICROAMP, 2);
  }

  private static Gauge gauge(Sensing sensing, double amps, Wording words) {
    double full = Math.max(4e-6, 2 * sensing.warningAmps());
    List<Mark> marks = new ArrayList<>();
    marks.add(mark("board.drop-out", sensing.dropOutAmps(), full, words));
    marks.add(mark("board.pick-up", sensing.pickUpAmps(), full, words));
    if (sensing.warningAmps() > sensing.dropOutAmps()) {
      marks.add(mark("board.warning", sensing.warningAmps(), full, words));
    }
    QuantityText numbers = words.sentences().quantities();
    return new Gauge(
        Math.max(0, Math.min(1, amps / full)),
        List.copyOf(marks),
        numbers.text(full, DisplayUnit.MICROAMP, 2));
  }

  private static Mark mark(String key, double amps, double full, Wording words) {
    String value = words.sentences().quantities().text(amps, DisplayUnit.MICROAMP, 2);
    return new Mark(amps / full, words.text(key, value));
  }

  private static String clock(BoardState board, BoardSettings settings, Wording words) {
    OptionalLong limit = limit(board.stage(), settings);
    boolean trial = board.stage() == Stage.TRIAL || board.stage() == Stage.PROVING;
    long passed = trial ? board.valveMillis() : board.stageMillis();
    if (limit.isEmpty()) {
      return "";
    }
    return words.text(
        "board.clock",
        // what is done at the end of a stage takes its instant: that is no time above the limit
        tenths(Math.min(passed, limit.getAsLong()), words),
        words.sentences().quantities().time(limit.getAsLong()));
  }

  private static String tenths(long millis, Wording words) {
    boolean minutes = millis >= 120_000;
    return words
        .sentences()
        .quantities()
        .fixed(millis / 1000.0, minutes ? DisplayUnit.MINUTE : DisplayUnit.SECOND, 1);
  }

  private static OptionalLong limit(Stage stage, BoardSettings settings) {
    Times times = settings.times();
    return switch (stage) {
      case RESTART -> OptionalLong.of(times.restartMillis());
      case SELF_CHECK -> OptionalLong.of(times.selfCheckMillis());
      case PRESSURE_PROOF -> OptionalLong.of(times.pressureProofMillis());
      case PRESSURE_FAULT -> OptionalLong.of(times.pressureRetryMillis());
      case PRE_PURGE -> OptionalLong.of(times.prePurgeMillis());
      case WARM_UP -> OptionalLong.of(times.warmUpMillis());
      case TRIAL, PROVING -> OptionalLong.of(times.trialMillis());
      case INTER_PURGE -> OptionalLong.of(times.interPurgeMillis());
      case POST_PURGE -> OptionalLong.of(times.postPurgeMillis());
      case SOFT_LOCKOUT -> orEmpty(settings.counting().lockoutMillis());
      case OFF, STANDBY, RUN, LIMIT_OPEN, FALSE_FLAME, HARD_LOCKOUT -> OptionalLong.empty();
    };
  }

  private static OptionalLong orEmpty(@Nullable Long millis) {
    return millis == null ? OptionalLong.empty() : OptionalLong.of(millis);
  }

  private static String counts(BoardState board, Counting counting, Wording words) {
    String trials = words.text("board.trials", board.failedTrials(), counting.mostTrials());
    return board.losses() == 0
        ? trials
        : words.text("board.trials-and-losses", trials, board.losses());
  }

  /** What comes after a stage. */
  public static String next(Stage stage, BoardSettings settings, Wording words) {
    QuantityText numbers = words.sentences().quantities();
    return switch (stage) {
      case OFF -> words.text("next.off");
      case STANDBY -> words.text("next.standby");
      case SELF_CHECK, RESTART -> words.text("next.self-check");
      case PRESSURE_PROOF -> words.text("next.pressure-proof");
      case PRESSURE_FAULT -> words.text("next.pressure-fault");
      case PRE_PURGE -> words.text("next.pre-purge");
      case WARM_UP -> words.text("next.warm-up");
      case TRIAL -> words.text("next.trial", microamps(settings.sensing().pickUpAmps(), words));
      case PROVING -> words.text("next.proving", numbers.time(settings.times().provingMillis()));
      case RUN ->
          words.text(
              "next.run",
              microamps(settings.sensing().dropOutAmps(), words),
              numbers.time(settings.sensing().responseMillis()));
      case INTER_PURGE -> words.text("next.inter-purge");
      case POST_PURGE -> words.text("next.post-purge");
      case LIMIT_OPEN -> words.text("next.limit-open");
      case FALSE_FLAME -> words.text("next.false-flame");
      case SOFT_LOCKOUT -> softLockout(settings.counting(), words);
      case HARD_LOCKOUT ->
          words.text("next.hard-lockout", numbers.time(settings.counting().powerResetMillis()));
    };
  }

  private static String softLockout(Counting counting, Wording words) {
    QuantityText numbers = words.sentences().quantities();
    List<String> ways = new ArrayList<>();
    if (counting.lockoutMillis() != null) {
      ways.add(words.text("next.after", numbers.time(counting.lockoutMillis())));
    }
    if (counting.callResetMillis() != null) {
      ways.add(words.text("next.call-off", numbers.time(counting.callResetMillis())));
    }
    ways.add(words.text("next.power-off", numbers.time(counting.powerResetMillis())));
    return words.text("next.soft-lockout", String.join(words.text("next.or"), ways));
  }

  private static String cause(List<Event> events, Wording words) {
    for (int k = events.size() - 1; k >= 0; k--) {
      if (events.get(k).subject() == Event.Subject.BOARD) {
        return words.sentences().sentence(events.get(k).message());
      }
    }
    return "";
  }
}
