package halfwave.diagnosis;

import halfwave.board.Ignition;
import halfwave.board.StatusCode;
import halfwave.evidence.Course;
import halfwave.work.Hazard;
import halfwave.work.Look;
import halfwave.work.MeterTest;
import halfwave.work.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Something to find out, at a moment.
 *
 * <pre>
 * Check = Call | Light | Looked | Read
 * </pre>
 */
public sealed interface Check {

  /** Minutes to watch a heating call [common practice, no source]. */
  int CALL_MINUTES = 6;

  /** How a heating call goes, watched from the thermostat to its end. */
  record Call() implements Check {
    @Override
    public List<Enum<?>> outcomes() {
      return List.of(Course.values());
    }

    @Override
    public Optional<Work> work() {
      return Optional.empty();
    }

    @Override
    public int minutes() {
      return CALL_MINUTES;
    }

    @Override
    public Set<Hazard> hazards(Ignition ignition) {
      return Set.of();
    }

    @Override
    public String id() {
      return "call";
    }
  }

  /** The trouble that the board's light told during a call. */
  record Light() implements Check {
    @Override
    public List<Enum<?>> outcomes() {
      return List.of(StatusCode.values());
    }

    @Override
    public Optional<Work> work() {
      return Optional.of(Look.STATUS_LIGHT);
    }

    @Override
    public int minutes() {
      return Look.STATUS_LIGHT.minutes();
    }

    @Override
    public Set<Hazard> hazards(Ignition ignition) {
      return Look.STATUS_LIGHT.hazards(ignition);
    }

    @Override
    public String id() {
      return "light";
    }
  }

  /**
   * A look.
   *
   * @param look which
   * @param occasion when
   */
  record Looked(Look look, Occasion occasion) implements Check {
    @Override
    public List<Enum<?>> outcomes() {
      return look.outcomes();
    }

    @Override
    public Optional<Work> work() {
      return Optional.of(look);
    }

    @Override
    public int minutes() {
      return look.minutes() + occasion.waitMinutes();
    }

    @Override
    public Set<Hazard> hazards(Ignition ignition) {
      return look.hazards(ignition);
    }

    @Override
    public boolean remembered() {
      return look == Look.ASK_SINCE_WHEN;
    }

    @Override
    public String id() {
      return Check.id(look, occasion, Occasion.of(look));
    }
  }

  /**
   * A reading of the sense circuit.
   *
   * @param test which
   * @param occasion when
   */
  record Read(MeterTest test, Occasion occasion) implements Check {

    /** Whether it is a current, and no voltage. */
    public boolean current() {
      return test == MeterTest.SERIES_CURRENT;
    }

    @Override
    public List<Enum<?>> outcomes() {
      return List.of();
    }

    @Override
    public Optional<Work> work() {
      return Optional.of(test);
    }

    @Override
    public int minutes() {
      return test.minutes() + occasion.waitMinutes();
    }

    @Override
    public Set<Hazard> hazards(Ignition ignition) {
      return test.hazards(ignition);
    }

    @Override
    public String id() {
      return Check.id(test, occasion, Occasion.of(test));
    }
  }

  /** What may be found; empty for a reading. */
  List<Enum<?>> outcomes();

  /** The work that it is; nothing for a call that is watched from the thermostat. */
  Optional<Work> work();

  /** Minutes, waiting included. */
  int minutes();

  /** What can hurt meanwhile. */
  Set<Hazard> hazards(Ignition ignition);

  /**
   * Whether somebody tells it from memory: it is about what was wrong at first, whatever was
   * repaired since, and less sure than what is seen.
   */
  default boolean remembered() {
    return false;
  }

  /** Name in commands and files. */
  String id();

  /** The occasion is only named where there is a choice. */
  private static String id(Work work, Occasion occasion, List<Occasion> choice) {
    return choice.size() == 1 ? work.id() : work.id() + "@" + occasion.id();
  }

  /** Everything there is to find out on an appliance that lights its gas so. */
  static List<Check> all(Ignition ignition) {
    List<Check> all = new ArrayList<>();
    all.add(new Call());
    all.add(new Light());
    for (Look look : Look.values()) {
      // the light and what the customer tells of a call stand above
      boolean told = look == Look.STATUS_LIGHT || look == Look.ASK_WHAT_HAPPENS;
      if (!told && look.possibleAt(ignition)) {
        Occasion.of(look).forEach(o -> all.add(new Looked(look, o)));
      }
    }
    for (MeterTest test : MeterTest.values()) {
      if (test.possibleAt(ignition)) {
        Occasion.of(test).forEach(o -> all.add(new Read(test, o)));
      }
    }
    return List.copyOf(all);
  }

  /** The check of that name. */
  static Optional<Check> named(String id, Ignition ignition) {
    String wanted = id.toLowerCase(Locale.ROOT);
    return all(ignition).stream().filter(c -> c.id().equals(wanted)).findFirst();
  }
}
