package halfwave.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import halfwave.bench.Bench;
import halfwave.bench.Condition;
import halfwave.bench.ShippedBenches;
import halfwave.bench.Stages;
import halfwave.bench.Trigger;
import halfwave.board.Ignition;
import halfwave.fault.Fault;
import halfwave.fault.FaultKind;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What every repair and every mishap keeps. */
class RepairContractTest {

  @ParameterizedTest
  @EnumSource(FaultKind.class)
  void everyFaultIsUndone(FaultKind kind) {
    assertThat(Repair.curing(kind)).isNotEmpty();
    for (Bench bench : ShippedBenches.all()) {
      for (double severity : new double[] {kind.least(), kind.typical(), kind.most()}) {
        Bench faulty = Fault.of(kind, severity).on(bench);
        for (Repair repair : Repair.curing(kind)) {
          assertThat(repair.on(faulty))
              .as(repair + " on " + bench.name())
              .isEqualTo(repair.on(bench));
        }
      }
    }
  }

  /** And without any residue by some repair, whatever brings it out. */
  @ParameterizedTest
  @EnumSource(FaultKind.class)
  void someRepairLeavesTheBenchAsBuilt(FaultKind kind) {
    Bench sound = ShippedBenches.standard();
    for (Trigger trigger : Trigger.values()) {
      Bench lurking = Fault.typical(kind).during(trigger).on(sound);
      assertThat(Stream.of(Repair.values()).map(r -> r.on(lurking))).contains(sound);
    }
    assertThat(Stream.of(Repair.values()).map(r -> r.on(Fault.typical(kind).on(sound))))
        .contains(sound);
  }

  @ParameterizedTest
  @EnumSource(Repair.class)
  void harmsNothingButByItsResidue(Repair repair) {
    Stages stages = new Stages();
    for (Bench bench : ShippedBenches.all()) {
      Bench after = repair.on(bench);
      Condition c = after.condition();
      assertThat(c.rodCoat().thicknessMeters()).isEqualTo(repair.residueMeters());
      assertThat(c.withRodCoat(bench.condition().rodCoat())).isEqualTo(bench.condition());
      // a twentieth of what the service meter resolves would be too strict at a tenth of a microamp
      assertThat(amps(stages, after)).isCloseTo(amps(stages, bench), within(0.05e-6));
    }
  }

  private static double amps(Stages stages, Bench bench) {
    return MeterShows.si(MeterTest.SERIES_CURRENT, stages, bench);
  }

  @ParameterizedTest
  @EnumSource(Repair.class)
  void twiceIsAsOnce(Repair repair) {
    for (FaultKind kind : FaultKind.values()) {
      Bench once = repair.on(Fault.typical(kind).on(ShippedBenches.standard()));
      assertThat(repair.on(once)).isEqualTo(once);
    }
  }

  /** What a repair puts right no longer counts as wrong, and nothing else changes. */
  @ParameterizedTest
  @EnumSource(Repair.class)
  void putsRightWhatItSaysAndNothingElse(Repair repair) {
    for (FaultKind kind : FaultKind.values()) {
      Bench faulty = Fault.typical(kind).on(ShippedBenches.standard());
      Condition before = faulty.condition();
      Condition after = repair.on(before);
      for (Aspect aspect : EnumSet.complementOf(EnumSet.of(Aspect.ROD_COAT))) {
        boolean expected = !repair.aspects().contains(aspect) && aspect.wrongOrLurks(before);
        assertThat(aspect.wrongOrLurks(after)).as(aspect + " of " + kind).isEqualTo(expected);
      }
    }
  }

  @Test
  void aspectsCoverEveryFaultOnce() {
    for (FaultKind kind : FaultKind.values()) {
      Condition c = Fault.typical(kind).on(ShippedBenches.standard()).condition();
      assertThat(Stream.of(Aspect.values()).filter(a -> a.wrongOrLurks(c)))
          .as(kind.id())
          .hasSize(1);
    }
    for (Aspect aspect : Aspect.values()) {
      assertThat(aspect.wrongOrLurks(Condition.HEALTHY)).isFalse();
      assertThat(Stream.of(Repair.values()).filter(r -> r.aspects().contains(aspect)))
          .as(aspect.name())
          .isNotEmpty();
    }
  }

  /** All faults at once, every repair on every bench: no order of work is impossible. */
  @Test
  void nothingThrowsOnAnyBench() {
    for (Bench bench : ShippedBenches.all()) {
      Bench wreck = bench;
      for (FaultKind kind : FaultKind.values()) {
        wreck = Fault.typical(kind).on(wreck);
      }
      for (Handling handling : Handling.values()) {
        for (Repair repair : Repair.values()) {
          assertThat(repair.on(handling.on(wreck)).name()).isEqualTo(bench.name());
        }
        wreck = handling.on(wreck);
      }
      for (Repair repair : Repair.values()) {
        wreck = repair.on(wreck);
      }
      for (Aspect aspect : Aspect.values()) {
        // the new rod came after the cleaning
        assertThat(aspect.wrongOrLurks(wreck.condition())).as(aspect.name()).isFalse();
      }
    }
  }

  @Test
  void cleaningTakesTheEvidenceAway() {
    assertThat(Repair.CLEAN_ROD_WITH_PAD.spoiltLooks()).containsExactly(Look.ROD);
    assertThat(Repair.CLEAN_ROD_WITH_PAD.spoiltReadings()).contains(MeterTest.SERIES_CURRENT);
    assertThat(Repair.CORRECT_POLARITY.spoiltLooks()).contains(Look.POLARITY);
    for (Repair repair : Repair.values()) {
      boolean spoils = !repair.spoiltLooks().isEmpty() || !repair.spoiltReadings().isEmpty();
      assertThat(spoils).as(repair.id()).isTrue();
    }
  }

  @Test
  void onlyBendingMayBreakTheRod() {
    assertThat(Stream.of(Repair.values()).filter(r -> r.mishap().isPresent()))
        .containsExactly(Repair.BEND_ROD);
    Bench snapped = Handling.ROD_SNAPS.on(ShippedBenches.standard());
    assertThat(Repair.BEND_ROD.on(snapped)).isEqualTo(snapped);
    assertThat(Repair.REPOSITION_ROD.on(snapped)).isEqualTo(snapped);
    assertThat(Repair.REPLACE_ROD.on(snapped)).isEqualTo(ShippedBenches.standard());
  }

  @ParameterizedTest
  @EnumSource(Handling.class)
  void everyMishapChangesTheBenchAndCanBeUndone(Handling handling) {
    assertThat(handling.rightMinutes()).isGreaterThan(handling.ownMinutes());
    for (Bench bench : ShippedBenches.all()) {
      Bench after = handling.on(bench);
      assertThat(after.design()).isEqualTo(bench.design());
      assertThat(after.condition()).isNotEqualTo(bench.condition());
      assertThat(Stream.of(Repair.values()).map(r -> r.on(after))).contains(bench);
    }
    for (Ignition ignition : Ignition.values()) {
      assertThat(handling.probabilityRatio(ignition)).isBetween(0.0, 1.0);
    }
  }

  @Test
  void carbideIsMoreBrittleThanNitrideAndSteelIsNot() {
    for (Handling handling : Set.of(Handling.BUMPING_IGNITER, Handling.CLEANING_IGNITER)) {
      double carbide = handling.probabilityRatio(Ignition.HOT_SURFACE);
      double nitride = handling.probabilityRatio(Ignition.HOT_SURFACE_NITRIDE);
      assertThat(carbide).isGreaterThan(nitride);
      assertThat(nitride).isPositive();
      assertThat(handling.probabilityRatio(Ignition.DIRECT_SPARK)).isZero();
    }
  }
}
