package halfwave.work;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Bench;
import halfwave.bench.RodPosition;
import halfwave.bench.ShippedBenches;
import halfwave.bench.Stages;
import halfwave.bench.Trigger;
import halfwave.board.BoardOutputs;
import halfwave.board.ShippedBoards;
import halfwave.board.StatusCode;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import halfwave.flame.FlameState;
import halfwave.sequence.Act;
import halfwave.sequence.Deed;
import halfwave.sequence.Moment;
import halfwave.sequence.Scenes;
import halfwave.sequence.Sequence;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What every look keeps. */
class LookContractTest {

  /**
   * What no look finds by itself, whatever the furnace does, and what a reading or the light does.
   */
  private static final Set<FaultKind> NEEDS_A_READING =
      EnumSet.of(FaultKind.SENSE_SUPPLY_DEAD, FaultKind.SENSE_SUPPLY_WEAK);

  /** What shows only in what the board makes of it. */
  private static final Set<FaultKind> NEEDS_THE_LIGHT =
      EnumSet.of(
          FaultKind.BOARD_SEES_FLAME,
          FaultKind.BOARD_DEAF,
          FaultKind.BOARD_FAULT,
          FaultKind.DOOR_OPEN);

  private static Bench faulty(FaultKind kind) {
    return Fault.typical(kind).on(ShippedBenches.standard());
  }

  private static Set<Aspect> wrong(Bench bench) {
    return Stream.of(Aspect.values())
        .filter(aspect -> aspect.wrongOrLurks(bench.condition()))
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Aspect.class)));
  }

  /** Looks, questions left out, that find something else than on a sound bench. */
  private static Set<Look> telling(Bench bench) {
    Bench sound = ShippedBenches.standard();
    return Stream.of(Look.values())
        .filter(look -> look != Look.ASK_WHAT_HAPPENS && look != Look.ASK_SINCE_WHEN)
        .filter(look -> tells(look, bench, sound))
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Look.class)));
  }

  private static boolean tells(Look look, Bench bench, Bench sound) {
    return look.at(Settings.heating(bench, Settings.ALL))
            != look.at(Settings.heating(sound, Settings.ALL))
        || look.at(Settings.still(bench)) != look.at(Settings.still(sound));
  }

  /** A scene costs time, and serves all looks. */
  @ParameterizedTest
  @EnumSource(FaultKind.class)
  void findsWhatItSaysItCan(FaultKind kind) {
    for (Bench bench : ShippedBenches.all()) {
      for (double severity : new double[] {kind.least(), kind.typical(), kind.most()}) {
        Bench faulty = Fault.of(kind, severity).on(bench);
        for (Set<Trigger> triggers : List.of(Set.<Trigger>of(), Settings.ALL)) {
          Scene scene = Settings.heating(faulty, triggers);
          for (Look look : Look.values()) {
            assertThat(look.outcomes()).as("%s of %s", look, bench.name()).contains(look.at(scene));
          }
        }
      }
    }
  }

  @Test
  void soundBenchesLookSound() {
    Set<Enum<?>> sound =
        Set.of(
            Finding.SAYS_HEATS,
            Finding.NOTHING_NOTICED,
            StatusCode.FLAME,
            Finding.FLAME_HEALTHY,
            Finding.TRAVEL_QUICK,
            Finding.ROD_CLEAN,
            Finding.GAP_RIGHT,
            Finding.CERAMIC_SOUND,
            Finding.CONNECTOR_FIRM,
            Finding.LEAD_THROUGH,
            Finding.BOND_GOOD,
            Finding.INSULATION_GOOD,
            Finding.BURNER_CLEAN,
            Finding.POLARITY_RIGHT,
            Finding.PRESSURE_RIGHT,
            Finding.VALVE_POWERED,
            Finding.IGNITER_WORKS,
            Finding.PRESSURE_SWITCH_CLOSED,
            Finding.LIMIT_CLOSED,
            Finding.INDUCER_TURNS,
            Finding.BLOWER_TURNS,
            Finding.COMBUSTION_FINE);
    for (Bench bench : ShippedBenches.all()) {
      for (Look look : Look.values()) {
        assertThat(look.at(Settings.heating(bench, Settings.ALL)))
            .as(bench.name() + " " + look)
            .isIn(sound);
      }
    }
  }

  /** A look that says it cannot show something does not, with everything else standing still. */
  @ParameterizedTest
  @EnumSource(FaultKind.class)
  void showsWhatItSaysItShows(FaultKind kind) {
    Bench bench = faulty(kind);
    for (Look look : telling(bench)) {
      Set<Aspect> shown = EnumSet.noneOf(Aspect.class);
      shown.addAll(look.shows());
      shown.retainAll(wrong(bench));
      assertThat(shown).as(look + " at " + kind).isNotEmpty();
    }
  }

  /**
   * What a look says it shows, it shows of some fault or mishap; the light is left to the board.
   */
  @ParameterizedTest
  @EnumSource(value = Look.class, mode = EnumSource.Mode.EXCLUDE, names = "STATUS_LIGHT")
  void keepsItsWord(Look look) {
    Bench sound = ShippedBenches.standard();
    List<Bench> benches = new ArrayList<>();
    benches.add(Handling.ROD_SNAPS.on(sound));
    for (FaultKind kind : FaultKind.values()) {
      for (double severity : new double[] {kind.least(), kind.typical(), kind.most()}) {
        benches.add(Fault.of(kind, severity).on(sound));
      }
    }
    Set<Aspect> shown = EnumSet.noneOf(Aspect.class);
    for (Bench bench : benches) {
      boolean told = tells(look, bench, sound);
      shown.addAll(told ? wrong(bench) : Set.of());
    }
    assertThat(shown).containsAll(look.shows());
  }

  /** What shows a fault without a proviso shows it on a furnace that stands still with power on. */
  @ParameterizedTest
  @EnumSource(FaultKind.class)
  void withoutAProvisoItShowsAtAnyTime(FaultKind kind) {
    Bench sound = ShippedBenches.standard();
    for (Look look : Look.values()) {
      Set<Aspect> shown = EnumSet.noneOf(Aspect.class);
      shown.addAll(look.shows());
      shown.retainAll(wrong(faulty(kind)));
      boolean always = !shown.isEmpty() && shown.stream().allMatch(a -> look.proviso(a).isEmpty());
      boolean still =
          Stream.of(kind.least(), kind.typical(), kind.most())
              .map(severity -> Fault.of(kind, severity).on(sound))
              .map(bench -> Settings.with(Settings.still(bench), Settings.ALL))
              .anyMatch(
                  scene ->
                      look.at(scene)
                          != look.at(Settings.with(Settings.still(sound), Settings.ALL)));
      assertThat(still || !always).as(look + " at " + kind).isTrue();
    }
  }

  @ParameterizedTest
  @EnumSource(FaultKind.class)
  void everyFaultIsSeenByALook(FaultKind kind) {
    boolean seen = !telling(faulty(kind)).isEmpty();

    assertThat(seen).isEqualTo(!NEEDS_A_READING.contains(kind) && !NEEDS_THE_LIGHT.contains(kind));
  }

  @Test
  void theRestIsReadAtTheSenseTerminal() {
    Stages stages = new Stages();
    for (FaultKind kind : NEEDS_A_READING) {
      double sound = volts(stages, ShippedBenches.standard());
      // a weak source is two thirds down, far beyond what a meter's accuracy hides
      assertThat(volts(stages, faulty(kind))).as(kind.id()).isLessThan(0.5 * sound);
    }
  }

  private static double volts(Stages stages, Bench bench) {
    return MeterShows.si(MeterTest.TERMINAL_VOLTS_LEAD_OFF, stages, bench);
  }

  @Test
  void theRestOfTheRestIsSaidByTheLight() {
    List<Enum<?>> sound = light(ShippedBenches.standard());
    for (FaultKind kind : NEEDS_THE_LIGHT) {
      assertThat(light(faulty(kind))).as(kind.id()).isNotEqualTo(sound);
    }
  }

  /** What the light says at times of the first two minutes of a call. */
  private static List<Enum<?>> light(Bench bench) {
    Stages stages = new Stages();
    Sequence sequence = new Sequence();
    Moment moment = Moment.cold(bench, ShippedBoards.standard(bench.design().ignition()), 1);
    List<Act> acts = List.of(new Act(0, new Deed.Supply(true)), new Act(5000, new Deed.Call(true)));
    List<Enum<?>> light = new ArrayList<>();
    for (long millis = 10_000; millis <= 120_000; millis += 10_000) {
      moment = sequence.advance(moment, millis, acts).end();
      acts = List.of();
      light.add(Look.STATUS_LIGHT.at(Scenes.of(stages, moment)));
    }
    return light;
  }

  /** No finding is there for nothing. */
  @Test
  void everythingIsFoundSomewhere() {
    Set<Enum<?>> found = new HashSet<>();
    for (Scene scene : scenes()) {
      for (Look look : Look.values()) {
        found.add(look.at(scene));
      }
    }
    assertThat(found).containsAll(Arrays.asList(Finding.values()));
  }

  private static List<Scene> scenes() {
    List<Bench> benches = new ArrayList<>();
    benches.add(ShippedBenches.standard());
    for (FaultKind kind : FaultKind.values()) {
      benches.add(faulty(kind));
    }
    benches.add(Handling.ROD_SNAPS.on(ShippedBenches.standard()));
    benches.add(
        Fault.of(FaultKind.CERAMIC_CRACKED, 2e7)
            .on(Fault.of(FaultKind.INSULATION_DAMP, 2e7).on(ShippedBenches.standard())));
    benches.add(
        ShippedBenches.standard().with(ShippedBenches.standard().condition().withLeakage(60e6)));
    benches.add(
        ShippedBenches.standard()
            .with(
                ShippedBenches.standard()
                    .condition()
                    .withRodPosition(RodPosition.shifted(0, 0, -6e-3))));
    List<Scene> scenes = new ArrayList<>();
    for (Bench bench : benches) {
      Scene heating = Settings.heating(bench, Settings.ALL);
      scenes.add(heating);
      scenes.add(Settings.heating(bench, Set.of()));
      for (FlameState state : FlameState.values()) {
        scenes.add(with(heating, true, heating.litCount(), StatusCode.FLAME, state));
      }
      for (StatusCode code : StatusCode.values()) {
        scenes.add(with(heating, false, 0, code, heating.flame()));
      }
    }
    return scenes;
  }

  private static Scene with(
      Scene scene, boolean on, int litCount, StatusCode code, FlameState flame) {
    return new Scene(
        scene.bench(),
        scene.triggers(),
        on,
        litCount,
        code,
        on ? scene.outputs() : BoardOutputs.NONE,
        flame,
        on,
        !on);
  }

  @Test
  void aTugBringsOutWhatIsLoose() {
    Bench loose = faulty(FaultKind.CONNECTOR_LOOSE);

    assertThat(Look.CONNECTOR_TUG.at(Settings.heating(loose, Set.of())))
        .isEqualTo(Finding.CONNECTOR_LOOSE);
    assertThat(Look.CONNECTOR_TUG.at(Settings.heating(loose, Settings.ALL)))
        .isEqualTo(Finding.CONNECTOR_OFF);
  }

  /** The ohms of a rod say nothing about its film: the usual mistake. */
  @Test
  void aFouledRodPassesEveryTestWithoutAFlame() {
    Scene fouled = Settings.heating(faulty(FaultKind.ROD_FOULED), Set.of());

    assertThat(Look.LEAD_CONTINUITY.at(fouled)).isEqualTo(Finding.LEAD_THROUGH);
    assertThat(Look.INSULATION_TEST.at(fouled)).isEqualTo(Finding.INSULATION_GOOD);
    assertThat(Look.ROD.at(fouled)).isEqualTo(Finding.ROD_FOULED);
  }

  @Test
  void dampAndHeatHideWhenTheyAreNotThere() {
    Bench damp = faulty(FaultKind.INSULATION_DAMP);
    assertThat(Look.INSULATION_TEST.at(Settings.heating(damp, Set.of())))
        .isEqualTo(Finding.INSULATION_GOOD);
    assertThat(Look.INSULATION_TEST.at(Settings.heating(damp, Set.of(Trigger.DAMP))))
        .isEqualTo(Finding.INSULATION_FAILED);
    // but a crack is seen cold
    assertThat(Look.INSULATOR.at(Settings.heating(faulty(FaultKind.CERAMIC_LEAKS_HOT), Set.of())))
        .isEqualTo(Finding.CERAMIC_CRACKED);
  }
}
