package halfwave.io.sequence;

import halfwave.bench.Intermittent;
import halfwave.bench.Trigger;
import halfwave.instrument.Meter;
import halfwave.instrument.MeterFunction;
import halfwave.instrument.MeterModel;
import halfwave.instrument.ShippedMeters;
import halfwave.io.BadInputException;
import halfwave.io.JsonFields;
import halfwave.io.JsonFile;
import halfwave.io.JsonValue;
import halfwave.io.bench.BenchField;
import halfwave.io.bench.ChangeFile;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import halfwave.sequence.Script;
import halfwave.work.Handling;
import halfwave.work.Repair;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The file of a script, {@code "format": "halfwave-script", "version": 1}: what is done to an
 * appliance, and when. Its schema is {@code docs/schemas/script.schema.json}. The words are those
 * of {@link ActWords}.
 */
public final class ScriptFile {

  private static final String FORMAT = "halfwave-script";
  private static final int VERSION = 1;

  private ScriptFile() {}

  /**
   * Reads a file.
   *
   * @param file the file
   * @return the script; its acts in the order of the file
   * @throws BadInputException if anything in it is not as the schema says
   */
  public static Script read(Path file) {
    return of(JsonFile.read(file));
  }

  /** The same for a file that was already read. */
  static Script of(JsonValue value) {
    JsonFields f =
        value.file(FORMAT, VERSION, "format", "version", "seconds", "board", "seed", "acts");
    long length = TimeWords.millis(f.get("seconds"), 1, TimeWords.LONGEST_MILLIS);
    List<Act> acts = f.get("acts").list(act -> act(act, length));
    return new Script(
        length,
        f.has("board") ? BenchField.board(f.get("board")) : null,
        f.has("seed") ? f.get("seed").wholeNumber() : null,
        acts);
  }

  /**
   * One act of a script or of a demonstration.
   *
   * @param length of its stretch, before the end of which it has to be (ms)
   * @throws BadInputException if anything in it is not as the schema says
   */
  public static Act act(JsonValue value, long length) {
    ActWord word = value.anyFields().get("act").oneOf(ActWord.class);
    List<String> names = new ArrayList<>(List.of("seconds", "act"));
    names.addAll(further(word));
    JsonFields f = value.fields(names.toArray(String[]::new));
    return new Act(TimeWords.millis(f.get("seconds"), 0, length - 1), deed(word, f));
  }

  /**
   * A shipped meter by its name.
   *
   * @throws BadInputException if there is none of that name
   */
  public static MeterModel meter(JsonValue value) {
    String names =
        ShippedMeters.all().stream().map(MeterModel::name).collect(Collectors.joining(", "));
    return ShippedMeters.all().stream()
        .filter(m -> m.name().equals(value.text()))
        .findFirst()
        .orElseThrow(
            () -> value.refused(Message.of(MessageKey.ALLOWED_ONE_OF, Argument.text(names))));
  }

  private static List<String> further(ActWord word) {
    return switch (word) {
      case METER_ON -> List.of("function", "leads", "meter");
      case SET -> List.of("parameter", "value");
      case BREAK, MEND -> List.of("disorder");
      case CARRY_OVER -> List.of("carryOverSeconds");
      case LURK -> List.of("trigger", "change");
      case REPAIR -> List.of("repair");
      case MISHANDLE -> List.of("handling");
      default -> List.of();
    };
  }

  private static Deed deed(ActWord word, JsonFields f) {
    return switch (word) {
      case METER_ON ->
          new Deed.HookOn(
              Meter.fresh(f.orElse("meter", ScriptFile::meter, ShippedMeters.service())),
              f.get("function").oneOf(MeterFunction.class),
              LeadWords.hookUp(f.get("leads")));
      case SET -> new Deed.Alter(ChangeFile.withUnits().turned(f));
      case BREAK -> new Deed.Alter(ChangeFile.upset(f, true));
      case MEND -> new Deed.Alter(ChangeFile.upset(f, false));
      case CARRY_OVER -> new Deed.Alter(ChangeFile.carriedOver(f));
      case LURK ->
          new Deed.Lurk(
              new Intermittent(
                  f.get("trigger").oneOf(Trigger.class),
                  ChangeFile.withUnits().change(f.get("change"))));
      case REPAIR -> new Deed.PutRight(f.get("repair").oneOf(Repair.class));
      case MISHANDLE -> new Deed.Mishandle(f.get("handling").oneOf(Handling.class));
      default -> word.plain().orElseThrow();
    };
  }
}
