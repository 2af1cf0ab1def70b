package halfwave.gui.presentation.bench;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Condition;
import halfwave.fault.FaultKind;
import halfwave.sequence.Deed;
import halfwave.work.Aspect;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Who teaches puts faults on the bench and takes them off again, one by one. */
class PresentFaultTest {

  private static FaultCard card(FaultKind kind) {
    return FaultCard.of(kind, DirectBench.ENGLISH);
  }

  private static State with(FaultKind kind) {
    FaultCard card = card(kind);
    return Benches.after(
        DirectBench.untouched(), new Intent.Act(card.deeds(kind.typical(), card.trigger()), 0));
  }

  @ParameterizedTest
  @EnumSource(FaultKind.class)
  void whatIsPutOnIsListedAndCanBeTakenOff(FaultKind kind) {
    State state = with(kind);
    assertThat(PresentFault.of(state.moment().bench(), DirectBench.ENGLISH)).isNotEmpty();
    for (PresentFault fault : PresentFault.of(state.moment().bench(), DirectBench.ENGLISH)) {
      state = Benches.after(state, new Intent.Act(fault.removal(), 0));
    }

    assertThat(PresentFault.of(state.moment().bench(), DirectBench.ENGLISH)).isEmpty();
    assertThat(state.moment().bench().condition().appliance())
        .isEqualTo(Condition.HEALTHY.appliance());
  }

  @Test
  void removalIsOneActThatTheHistoryCanName() {
    State state = with(FaultKind.GROUND_LOST);
    PresentFault ground = PresentFault.of(state.moment().bench(), DirectBench.ENGLISH).get(0);

    assertThat(ground.aspect()).isEqualTo(Aspect.GROUND);
    assertThat(ground.removal()).hasOnlyElementsOfType(Deed.Alter.class);
    State after = Benches.after(state, new Intent.Act(ground.removal(), 0));
    assertThat(after.history().done()).hasSize(state.history().done().size() + 1);
  }

  @Test
  void theSameAgainSaysSo() {
    FaultCard card = card(FaultKind.ROD_FOULED);

    assertThat(card.again(DirectBench.untouched().moment().bench(), DirectBench.ENGLISH)).isEmpty();
    assertThat(card.again(with(FaultKind.ROD_FOULED).moment().bench(), DirectBench.ENGLISH))
        .isEqualTo(DirectBench.ENGLISH.text("fault.again"));
    FaultCard igniter = card(FaultKind.IGNITER_BROKEN);
    assertThat(igniter.again(with(igniter.kind()).moment().bench(), DirectBench.ENGLISH))
        .isEqualTo(DirectBench.ENGLISH.text("fault.there"));
  }

  @Test
  void aBareNumberIsInTheUnitOfTheField() {
    FaultCard card = card(FaultKind.CONNECTOR_CORRODED);

    assertThat(card.typed("6", 2e6, DirectBench.ENGLISH)).hasValue(6e6);
    assertThat(card.typed("6 MΩ", 2e3, DirectBench.ENGLISH)).hasValue(6e6);
    assertThat(card.typed("2,5", 2e6, DirectBench.SPANISH)).hasValue(2.5e6);
    assertThat(card.typed("much", 2e6, DirectBench.ENGLISH)).isEmpty();
  }
}
