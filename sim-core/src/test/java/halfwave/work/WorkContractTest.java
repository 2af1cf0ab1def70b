package halfwave.work;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.board.Ignition;
import halfwave.quantity.RejectedValueException;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What everything keeps that a person can do. */
class WorkContractTest {

  static Stream<Work> all() {
    return Work.all().stream();
  }

  @Test
  void familyIsWhole() {
    assertThat(Work.all())
        .hasSize(
            Look.values().length
                + MeterTest.values().length
                + Repair.values().length
                + Handling.values().length);
    assertThat(Work.named("replace-rod")).contains(Repair.REPLACE_ROD);
    assertThat(Work.named("pray")).isEmpty();
  }

  /** Looks are named after parts, so a name tells work apart only within its kind. */
  @Test
  void namesAreUnique() {
    assertThat(Work.all().stream().map(Work::id)).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @EnumSource(FurnacePart.class)
  void accessAddsUp(FurnacePart part) {
    Access access = part.access();
    int minutes = access.ownMinutes();
    int fasteners = access.ownFasteners();
    for (Cover cover : access.covers()) {
      minutes += cover.minutes();
      fasteners += cover.fasteners();
      assertThat(access.tools()).contains(cover.tool());
    }
    assertThat(access.minutes()).isEqualTo(minutes);
    assertThat(access.fasteners()).isEqualTo(fasteners);
    assertThat(access.covers()).doesNotHaveDuplicates();
  }

  @Test
  void negativeMinutesAreRefused() {
    Assertions.assertThatExceptionOfType(RejectedValueException.class)
        .isThrownBy(() -> new Access(List.of(), -1, 0, Tool.HANDS, true, true))
        .satisfies(e -> assertThat(e.field()).isEqualTo("ownMinutes"));
  }

  @ParameterizedTest
  @MethodSource("all")
  void minutesAreOwnAndAccess(Work work) {
    assertThat(work.ownMinutes()).isPositive();
    assertThat(work.minutes()).isEqualTo(work.ownMinutes() + work.part().access().minutes());
    assertThat(work.millis()).isEqualTo(60_000L * work.minutes());
    assertThat(work.tools()).isNotEmpty();
  }

  /** Nothing hurts unsaid: every hazard brings its caution, and what is opened says so. */
  @ParameterizedTest
  @MethodSource("all")
  void everythingDangerousCarriesItsCaution(Work work) {
    for (Ignition ignition : Ignition.values()) {
      Set<Caution> cautions = work.cautions(ignition);
      Set<Caution> wanted =
          work.hazards(ignition).stream()
              .map(hazard -> hazard.caution(work.needsCall()))
              .collect(Collectors.toSet());
      wanted.addAll(work.ownCautions().stream().map(c -> c.at(ignition)).toList());
      assertThat(cautions).containsAll(wanted);
      assertThat(cautions.contains(Caution.OFF_BEFORE_OPENING))
          .isEqualTo(
              work.powerOff()
                  || work.gasOff()
                  || work.part().access().powerOff()
                  || work.ownCautions().contains(Caution.OFF_BEFORE_OPENING));
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void powerThatIsOffHurtsNobody(Work work) {
    Set<Hazard> electric =
        EnumSet.of(Hazard.LINE_VOLTAGE, Hazard.SPARK_VOLTAGE, Hazard.MOVING_PARTS);
    for (Ignition ignition : Ignition.values()) {
      Set<Hazard> left = EnumSet.copyOf(electric);
      left.retainAll(work.hazards(ignition));
      left.removeIf(hazard -> !work.powerOff());
      assertThat(left).isEmpty();
    }
  }

  /** What must burn or glow cannot cool first, and nobody is told to switch off what must be on. */
  @ParameterizedTest
  @MethodSource("all")
  void cautionsFitTheState(Work work) {
    Set<Caution> cautions = work.cautions(Ignition.HOT_SURFACE);
    assertThat(work.needsCall() && cautions.contains(Caution.LET_COOL)).isFalse();
    assertThat(!work.needsCall() && cautions.contains(Caution.STAYS_HOT)).isFalse();
    assertThat(work.needsPower() && work.powerOff()).isFalse();
    assertThat(work.needsFlame() && work.gasOff()).isFalse();
    assertThat(work.needsFlame() && !work.needsCall()).isFalse();
    assertThat(work.needsCall() && !work.needsPower()).isFalse();
  }

  /** Behind the door that cuts the power nothing is live unless its switch is held in. */
  @ParameterizedTest
  @MethodSource("all")
  void whoMeasuresBehindTheDoorIsToldOfItsSwitch(Work work) {
    boolean behind = work.part().access().covers().contains(Cover.BLOWER_DOOR);
    assertThat(work.cautions(Ignition.HOT_SURFACE).contains(Caution.DOOR_SWITCH))
        .isEqualTo(behind && work.needsPower());
    assertThat(Set.of(Preparation.POWER_DOOR, Preparation.FLAME_DOOR).contains(work.preparation()))
        .isEqualTo(behind && work.needsPower());
  }

  @Test
  void everyPreparationAndProvisoIsMet() {
    assertThat(Work.all().stream().map(Work::preparation)).contains(Preparation.values());
    Set<Proviso> provisos = EnumSet.noneOf(Proviso.class);
    for (Look look : Look.values()) {
      look.shows().forEach(aspect -> look.proviso(aspect).ifPresent(provisos::add));
    }
    assertThat(provisos).containsExactlyInAnyOrder(Proviso.values());
  }

  /** Where a spark lights there is no brittle element, and where a pilot does no inducer. */
  @Test
  void workFitsTheAppliance() {
    for (Ignition ignition : Ignition.values()) {
      boolean element = ignition.hotSurface();
      for (Work work : Work.all()) {
        Set<Caution> cautions = work.cautions(ignition);
        assertThat(!element && cautions.contains(Caution.IGNITER_ELEMENT)).isFalse();
        assertThat(element && cautions.contains(Caution.SPARK_ELECTRODE)).isFalse();
      }
      assertThat(Handling.BUMPING_IGNITER.possibleAt(ignition)).isEqualTo(element);
      assertThat(Repair.REPLACE_INDUCER.possibleAt(ignition))
          .isEqualTo(ignition != Ignition.INTERMITTENT_PILOT);
      assertThat(Repair.REPLACE_IGNITER.possibleAt(ignition)).isTrue();
    }
  }

  @Test
  void livePartsAreNamedWhereTheyAreMet() {
    assertThat(Look.POLARITY.hazards(Ignition.HOT_SURFACE)).contains(Hazard.LINE_VOLTAGE);
    assertThat(Handling.POWER_LEFT_ON.hazards(Ignition.HOT_SURFACE)).contains(Hazard.LINE_VOLTAGE);
    assertThat(Handling.GAS_LEFT_ON.hazards(Ignition.HOT_SURFACE)).contains(Hazard.FLAME);
    assertThat(Look.IGNITER.cautions(Ignition.DIRECT_SPARK)).contains(Caution.SPARK_VOLTAGE);
    assertThat(Look.IGNITER.cautions(Ignition.HOT_SURFACE)).doesNotContain(Caution.SPARK_VOLTAGE);
    assertThat(MeterTest.SERIES_CURRENT.cautions(Ignition.SPARK_AND_SENSE))
        .contains(Caution.SPARK_VOLTAGE);
    assertThat(Repair.REPLACE_GAS_VALVE.cautions(Ignition.HOT_SURFACE)).contains(Caution.LEAK_TEST);
  }

  /** No hazard, caution, tool, cover or part is there for nothing. */
  @Test
  void nothingIsOver() {
    Set<Caution> cautions = EnumSet.noneOf(Caution.class);
    Set<Hazard> hazards = EnumSet.noneOf(Hazard.class);
    Set<Tool> tools = EnumSet.noneOf(Tool.class);
    Set<FurnacePart> parts = EnumSet.noneOf(FurnacePart.class);
    Set<Cover> covers = EnumSet.noneOf(Cover.class);
    for (Work work : Work.all()) {
      for (Ignition ignition : Ignition.values()) {
        cautions.addAll(work.cautions(ignition));
        hazards.addAll(work.hazards(ignition));
      }
      tools.addAll(work.tools());
      parts.add(work.part());
      covers.addAll(work.part().access().covers());
    }
    assertThat(cautions).containsExactlyInAnyOrder(Caution.values());
    assertThat(hazards).containsExactlyInAnyOrder(Hazard.values());
    assertThat(tools).containsExactlyInAnyOrder(Tool.values());
    // a call for heat is made there, which is no work
    parts.add(FurnacePart.THERMOSTAT);
    assertThat(parts).containsExactlyInAnyOrder(FurnacePart.values());
    assertThat(covers).containsExactlyInAnyOrder(Cover.values());
  }
}
