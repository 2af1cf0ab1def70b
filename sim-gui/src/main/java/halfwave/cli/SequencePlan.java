package halfwave.cli;

import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Trigger;
import halfwave.board.BoardSettings;
import halfwave.board.Ignition;
import halfwave.board.ShippedBoards;
import halfwave.display.Sentences;
import halfwave.fault.Fault;
import halfwave.io.BadInputException;
import halfwave.io.Typed;
import halfwave.io.bench.ChangeWords;
import halfwave.io.bench.FaultWords;
import halfwave.io.sequence.ActWords;
import halfwave.io.sequence.ScriptFile;
import halfwave.io.sequence.TimeWords;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.quantity.RejectedValueException;
import halfwave.sequence.Act;
import halfwave.sequence.Changes;
import halfwave.sequence.Deed;
import halfwave.sequence.Moment;
import halfwave.sequence.Playback;
import halfwave.sequence.Script;
import halfwave.work.Handling;
import halfwave.work.Repair;
import halfwave.work.Work;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a sequence is to be, put together from options and script; whatever cannot be is refused
 * here, before time passes.
 */
final class SequencePlan {

  static final String BOARD = "--board";
  static final String FAULT = "--fault";
  static final String ACT = "--act";
  static final String FOR = "--for";

  /** As long as a sequence is at least, and after its last act, where nothing is said (ms). */
  private static final long LEAST_MILLIS = 120_000;

  private static final long AFTER_MILLIS = 60_000;

  private final String command;
  private final @Nullable Path file;
  private final @Nullable Script script;
  private final List<String> typed;
  private final List<Act> typedActs = new ArrayList<>();
  private final List<Message> faults = new ArrayList<>();
  private final Moment start;
  private final long untilMillis;
  private final List<Act> acts;

  /** The options as they were typed; what was not is null or empty. */
  record Options(
      String bench,
      @Nullable String board,
      List<String> faults,
      List<String> acts,
      @Nullable Path script,
      String lengthOption,
      @Nullable String length,
      @Nullable Long seed) {}

  SequencePlan(String command, Options options) {
    this.command = command;
    file = options.script();
    script = file == null ? null : ScriptFile.read(file);
    typed = options.acts();
    Bench bench = BenchArgument.resolve(options.bench());
    BoardSettings board = board(bench, options.board());
    Bench asBuilt = bench;
    Set<String> kinds = new HashSet<>();
    for (String fault : options.faults()) {
      checkOnce(asBuilt, bench, fault, kinds);
      bench = with(bench, fault);
    }
    Typed where = new Typed(command, ACT);
    typed.forEach(text -> typedActs.add(ActWords.act(where, text)));
    List<Act> asked = new ArrayList<>(script == null ? List.of() : script.acts());
    asked.addAll(typedActs);
    untilMillis = until(asked, options.lengthOption(), options.length());
    acts = Script.withStart(asked).stream().filter(act -> act.timeMillis() < untilMillis).toList();
    checkActs(bench);
    start = Moment.cold(bench, board, seed(options.seed()));
  }

  /** The moment it begins. */
  Moment start() {
    return start;
  }

  /** When it ends (ms). */
  long untilMillis() {
    return untilMillis;
  }

  /** What is done meanwhile. */
  List<Act> acts() {
    return acts;
  }

  /** Board, seed and length, and the faults there are from the start. */
  List<Message> about(Sentences sentences) {
    List<Message> about = new ArrayList<>();
    about.add(
        Message.of(
            MessageKey.SEQUENCE_ABOUT,
            boardName(),
            Argument.text(Long.toString(start.seed())),
            Argument.text(sentences.quantities().time(untilMillis))));
    about.addAll(faults);
    return about;
  }

  /** A board that was edited must not pass for the shipped one of its name. */
  private Argument boardName() {
    BoardSettings board = start.settings();
    Argument name = Argument.text(board.name());
    return ShippedBoards.named(board.name()).filter(b -> !b.equals(board)).isPresent()
        ? Argument.nested(Message.of(MessageKey.SEQUENCE_EDITED, name))
        : name;
  }

  private BoardSettings board(Bench bench, @Nullable String option) {
    String named = script == null ? null : script.board();
    if (option != null || named == null) {
      return BoardArgument.fitted(command, bench, option);
    }
    BoardSettings board = ShippedBoards.named(named).orElseThrow();
    if (!board.ignition().fits(bench.design().ignition())) {
      throw BadInputException.ofField(
          Objects.toString(file), "board", Argument.text(named), BoardArgument.fitting(bench));
    }
    return board;
  }

  private long seed(@Nullable Long option) {
    Long scripted = script == null ? null : script.seed();
    return option != null ? option : scripted != null ? scripted : 1;
  }

  private Bench with(Bench bench, String fault) {
    Typed where = new Typed(command, FAULT);
    Optional<Fault> kind = FaultWords.fault(where, fault);
    if (kind.isPresent()) {
      faults.add(said(kind.get()));
      return kind.get().on(bench);
    }
    Deed deed = ChangeWords.fault(where, fault);
    try {
      Bench changed = Playback.done(bench, deed);
      Playback.impossible(changed, List.of())
          .ifPresent(
              impossible -> {
                throw impossible.reason();
              });
      faults.add(said(deed));
      return changed;
    } catch (RejectedValueException e) {
      throw where.refused(fault, Sentences.allowed(e));
    }
  }

  /** A second fault of a kind, or a number that is set already, would hide the first one. */
  private void checkOnce(Bench asBuilt, Bench bench, String text, Set<String> kinds) {
    Typed where = new Typed(command, FAULT);
    Optional<Fault> kind = FaultWords.fault(where, text);
    boolean again =
        kind.map(k -> !kinds.add(k.trigger() + ":" + k.kind()))
            .orElseGet(() -> hides(asBuilt, bench, ChangeWords.fault(where, text), kinds));
    if (again) {
      throw where.refused(text, Message.of(MessageKey.ALLOWED_FAULT_ONCE));
    }
  }

  private static boolean hides(Bench asBuilt, Bench bench, Deed deed, Set<String> kinds) {
    if (deed instanceof Deed.Lurk lurk) {
      Change change = lurk.intermittent().change();
      return !kinds.add(lurk.intermittent().trigger() + ":" + what(change));
    }
    Change change = ((Deed.Alter) deed).change();
    boolean turnedBefore =
        change instanceof Change.Turned turned
            && turned.parameter().of(bench) != turned.parameter().of(asBuilt);
    return !kinds.add(what(change)) || turnedBefore;
  }

  private static String what(Change change) {
    if (change instanceof Change.Turned turned) {
      return turned.parameter().id();
    }
    return change instanceof Change.Upset upset ? upset.disorder().name() : "carry-over";
  }

  private static Message said(Fault fault) {
    Trigger trigger = fault.trigger();
    Argument name = Argument.name(fault.kind());
    return trigger == null
        ? Message.of(MessageKey.SEQUENCE_FAULT, name)
        : Message.of(MessageKey.SEQUENCE_LURKS, Argument.name(trigger), name);
  }

  private static Message said(Deed deed) {
    if (deed instanceof Deed.Lurk lurk) {
      return Message.of(
          MessageKey.SEQUENCE_LURKS,
          Argument.name(lurk.intermittent().trigger()),
          said(lurk.intermittent().change()));
    }
    return Message.of(MessageKey.SEQUENCE_FAULT, said(((Deed.Alter) deed).change()));
  }

  /** What is so, where nothing becomes so. */
  private static Argument said(Change change) {
    if (change instanceof Change.Upset upset) {
      return Argument.name(upset.disorder());
    } else if (change instanceof Change.Turned turned) {
      return Argument.nested(
          Message.of(MessageKey.SEQUENCE_VALUE, Argument.name(turned.parameter()), turned.value()));
    }
    return Argument.nested(Changes.said(change));
  }

  private long until(List<Act> asked, String name, @Nullable String option) {
    long last = asked.stream().mapToLong(Act::timeMillis).max().orElse(-1);
    if (option != null) {
      Typed where = new Typed(command, name);
      long length = TimeWords.millis(where, option, 1, TimeWords.LONGEST_MILLIS);
      checkEnd(length);
      return last < length
          ? length
          : TimeWords.millis(where, option, last + 1, TimeWords.LONGEST_MILLIS);
    }
    if (script != null) {
      checkEnd(script.lengthMillis());
      return script.lengthMillis();
    }
    return Math.min(TimeWords.LONGEST_MILLIS, Math.max(LEAST_MILLIS, last + AFTER_MILLIS));
  }

  /** Names the act that comes too late. */
  private void checkEnd(long lengthMillis) {
    for (int k = 0; k < typedActs.size(); k++) {
      if (typedActs.get(k).timeMillis() >= lengthMillis) {
        throw new Typed(command, ACT).refused(typed.get(k), TimeWords.allowed(0, lengthMillis - 1));
      }
    }
  }

  private void checkActs(Bench bench) {
    Playback.impossible(bench, acts)
        .ifPresent(
            impossible -> {
              Act act = Objects.requireNonNull(impossible.act());
              throw refused(act, impossible.reason(), allowed(act, impossible.reason(), bench));
            });
  }

  /** Work on a part that the bench lacks is answered with the names of what can be done to it. */
  private static Message allowed(Act act, RejectedValueException reason, Bench bench) {
    List<? extends Work> all = List.of();
    if (act.deed() instanceof Deed.PutRight) {
      all = List.of(Repair.values());
    } else if (act.deed() instanceof Deed.Mishandle) {
      all = List.of(Handling.values());
    }
    Ignition ignition = bench.design().ignition();
    List<String> names = all.stream().filter(w -> w.possibleAt(ignition)).map(Work::id).toList();
    return names.isEmpty() || names.contains(reason.value())
        ? Sentences.allowed(reason)
        : Message.of(MessageKey.ALLOWED_ONE_OF, Argument.text(String.join(", ", names)));
  }

  private BadInputException refused(Act act, RejectedValueException reason, Message allowed) {
    for (int k = 0; k < typedActs.size(); k++) {
      // the same act, not an equal one
      if (typedActs.get(k) == act) {
        return new Typed(command, ACT).refused(typed.get(k), allowed);
      }
    }
    int at = script == null ? -1 : script.acts().indexOf(act);
    return BadInputException.ofField(
        Objects.toString(file), "acts[" + at + "]", Argument.text(reason.value()), allowed);
  }
}
