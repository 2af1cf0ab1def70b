package halfwave.sequence;

import halfwave.bench.ApplianceCondition;
import halfwave.bench.Bench;
import halfwave.bench.Condition;
import halfwave.bench.Disorder;
import halfwave.bench.Intermittent;
import halfwave.bench.Trigger;
import halfwave.board.BoardInputs;
import halfwave.board.BoardOutputs;
import halfwave.board.BoardSettings;
import halfwave.board.BoardState;
import halfwave.board.SenseFilter;
import halfwave.quantity.Noise;
import halfwave.quantity.RejectedValueException;
import halfwave.quantity.RejectedValueException.Allowed;
import java.util.EnumSet;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Everything that lasts. What happens at its very instant has not happened yet.
 *
 * @param timeMillis the clock (ms)
 * @param bench design and condition, with what comes and goes
 * @param settings the control board's
 * @param board what the board remembers
 * @param outputs what it was doing at its last look
 * @param triggers what was bringing out faults then
 * @param filter what its sense amplifier remembers
 * @param furnace what is physical
 * @param hooked the meter that is on it, or null
 * @param supply whether the furnace switch is on
 * @param call whether the thermostat calls for heat
 * @param damp whether the air is damp
 * @param seed seed of all chance
 */
public record Moment(
    long timeMillis,
    Bench bench,
    BoardSettings settings,
    BoardState board,
    BoardOutputs outputs,
    Set<Trigger> triggers,
    SenseFilter filter,
    Furnace furnace,
    @Nullable Hooked hooked,
    boolean supply,
    boolean call,
    boolean damp,
    long seed) {

  /** How long the shaking of inducer or lead holds a bad contact open or shut (ms) [practice]. */
  private static final long BOUT_MILLIS = 2000;

  /** Share of such bouts in which it is bad while the inducer runs (1) [practice]. */
  private static final double BAD_BOUTS_RATIO = 0.15;

  /** Checks that board and bench belong together. */
  public Moment {
    if (!settings.ignition().fits(bench.design().ignition())) {
      throw new RejectedValueException(
          "board", settings.name(), Allowed.CONSISTENT, Double.NaN, Double.NaN);
    }
    triggers = Set.copyOf(triggers);
  }

  /** A cold appliance without power and without a call, that has stood still for hours. */
  public static Moment cold(Bench bench, BoardSettings settings, long seed) {
    return new Moment(
        0,
        bench,
        settings,
        BoardState.unpowered(settings),
        BoardOutputs.NONE,
        Set.of(),
        SenseFilter.QUIET,
        Furnace.COLD,
        null,
        false,
        false,
        false,
        seed);
  }

  /** The bench as it is with what comes and goes. */
  public Bench benchNow() {
    return bench.under(triggers);
  }

  /**
   * The same moment as it would look in another condition; no time has passed, and nothing has
   * taken notice of it yet.
   */
  public Moment seenWith(Condition condition) {
    return with(d -> d.bench = bench.with(condition));
  }

  /** The same moment with a meter on it, likewise only seen. */
  public Moment seenWith(Hooked meter) {
    return with(d -> d.hooked = meter);
  }

  /** What brings out faults at this instant. */
  Set<Trigger> triggersNow() {
    if (bench.condition().appliance().intermittents().isEmpty()) {
      return Set.of();
    }
    Set<Trigger> there = EnumSet.noneOf(Trigger.class);
    boolean warm = Plant.warm(furnace);
    if (warm) {
      there.add(Trigger.HEAT);
    }
    if (furnace.shakenMillis() > 0 || (outputs.inducer() && badBout())) {
      there.add(Trigger.VIBRATION);
    }
    if (Plant.blows(bench.condition().appliance(), outputs)) {
      there.add(Trigger.BLOWER);
    }
    if (damp && !warm) {
      there.add(Trigger.DAMP);
    }
    return there;
  }

  private boolean badBout() {
    long bout = timeMillis / BOUT_MILLIS;
    return Noise.uniform(seed, Noise.Purpose.VIBRATION, bout) < BAD_BOUTS_RATIO;
  }

  /** Whether anything waits for the inducer's shaking. */
  boolean trembles() {
    return outputs.inducer()
        && bench.condition().appliance().intermittents().stream()
            .map(Intermittent::trigger)
            .anyMatch(t -> t == Trigger.VIBRATION);
  }

  /** What the board sees, given the bench as it is under the present triggers. */
  BoardInputs inputs(Bench now) {
    ApplianceCondition appliance = now.condition().appliance();
    boolean draft = furnace.draftProved() || appliance.has(Disorder.PRESSURE_SWITCH_CLOSED);
    return new BoardInputs(
        supply && !appliance.has(Disorder.DOOR_OPEN),
        call,
        draft && !appliance.has(Disorder.PRESSURE_SWITCH_OPEN),
        !furnace.overheated() && !appliance.has(Disorder.LIMIT_OPEN),
        !appliance.has(Disorder.LINE_REVERSED),
        !appliance.has(Disorder.BOARD_FAULT),
        filter.signal());
  }

  Moment at(long millis, BoardState boardThen) {
    return with(
        d -> {
          d.timeMillis = millis;
          d.board = boardThen;
        });
  }

  Moment with(BoardState boardThen, BoardOutputs outputsThen) {
    return with(
        d -> {
          d.board = boardThen;
          d.outputs = outputsThen;
        });
  }

  Moment with(SenseFilter filterThen, Furnace furnaceThen) {
    return with(
        d -> {
          d.filter = filterThen;
          d.furnace = furnaceThen;
        });
  }

  Moment with(Furnace furnaceThen) {
    return with(d -> d.furnace = furnaceThen);
  }

  Moment with(Set<Trigger> triggersThen) {
    return with(d -> d.triggers = triggersThen);
  }

  Moment with(Bench other) {
    return awake(d -> d.bench = other);
  }

  Moment with(boolean supplyThen, boolean callThen, boolean dampThen) {
    return awake(
        d -> {
          d.supply = supplyThen;
          d.call = callThen;
          d.damp = dampThen;
        });
  }

  Moment with(@Nullable Hooked other) {
    return awake(d -> d.hooked = other);
  }

  /** What people do may set moving what had come to rest. */
  private Moment awake(Consumer<Draft> change) {
    return with(furnace.awake()).with(change);
  }

  private Moment with(Consumer<Draft> change) {
    Draft draft = new Draft(this);
    change.accept(draft);
    return draft.made();
  }

  /** The components, to change some of them. */
  private static final class Draft {
    private long timeMillis;
    private Bench bench;
    private BoardSettings settings;
    private BoardState board;
    private BoardOutputs outputs;
    private Set<Trigger> triggers;
    private SenseFilter filter;
    private Furnace furnace;
    private @Nullable Hooked hooked;
    private boolean supply;
    private boolean call;
    private boolean damp;
    private long seed;

    private Draft(Moment from) {
      timeMillis = from.timeMillis;
      bench = from.bench;
      settings = from.settings;
      board = from.board;
      outputs = from.outputs;
      triggers = from.triggers;
      filter = from.filter;
      furnace = from.furnace;
      hooked = from.hooked;
      supply = from.supply;
      call = from.call;
      damp = from.damp;
      seed = from.seed;
    }

    private Moment made() {
      return new Moment(
          timeMillis,
          bench,
          settings,
          board,
          outputs,
          triggers,
          filter,
          furnace,
          hooked,
          supply,
          call,
          damp,
          seed);
    }
  }
}
