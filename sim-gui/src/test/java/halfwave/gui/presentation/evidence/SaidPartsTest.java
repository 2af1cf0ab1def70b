package halfwave.gui.presentation.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.bench.Parameter;
import halfwave.board.Stage;
import halfwave.circuit.Failure;
import halfwave.circuit.Part;
import halfwave.explain.Rung;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import halfwave.picture.scene.DrawnPart;
import halfwave.quantity.Dimension;
import halfwave.work.Aspect;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A sentence lights what it speaks of. */
class SaidPartsTest {

  /** Keys whose parts depend on what they name. */
  private static final Map<MessageKey, Message> NAMING =
      Map.of(
          MessageKey.ACCOUNT_DEPENDS, named(MessageKey.ACCOUNT_DEPENDS, Parameter.ROD_RADIUS),
          MessageKey.ACCOUNT_SWAYS, named(MessageKey.ACCOUNT_SWAYS, Parameter.SOURCE_VOLTS),
          MessageKey.ACCOUNT_WRONG, named(MessageKey.ACCOUNT_WRONG, Aspect.IGNITER),
          MessageKey.ACCOUNT_UNSOLVED,
              Message.of(
                  MessageKey.ACCOUNT_UNSOLVED,
                  Argument.name(Failure.NOT_CONVERGED),
                  Argument.name(Part.ROD_FILM)));

  private static Message named(MessageKey key, Enum<?> constant) {
    return Message.of(key, Argument.name(constant));
  }

  static Stream<MessageKey> accountKeys() {
    return Stream.of(MessageKey.values()).filter(k -> k.name().startsWith("ACCOUNT_"));
  }

  @ParameterizedTest
  @MethodSource("accountKeys")
  void everySentenceOfAnAccountLightsSomething(MessageKey key) {
    assertThat(SaidParts.of(NAMING.getOrDefault(key, Message.of(key)))).isNotEmpty();
  }

  @ParameterizedTest
  @EnumSource(Parameter.class)
  void everyParameterIsSomewhere(Parameter parameter) {
    assertThat(SaidParts.of(named(MessageKey.ACCOUNT_SWAYS, parameter))).isNotEmpty();
  }

  @ParameterizedTest
  @EnumSource(Aspect.class)
  void everyAspectIsSomewhere(Aspect aspect) {
    assertThat(SaidParts.of(named(MessageKey.ACCOUNT_WRONG, aspect))).isNotEmpty();
  }

  @ParameterizedTest
  @EnumSource(Rung.class)
  void whatLimitsAHalfCycleIsLitBesideTheElectrode(Rung rung) {
    Set<DrawnPart> parts =
        SaidParts.of(
            Message.of(
                MessageKey.ACCOUNT_ROD_NEGATIVE,
                Argument.quantity(1e-6, Dimension.CURRENT),
                Argument.name(rung)));

    assertThat(parts)
        .contains(DrawnPart.FLAME, DrawnPart.ROD)
        .containsAll(SaidParts.of(named(MessageKey.ACCOUNT_DEPENDS, rung)));
  }

  @Test
  void namesWhatAPersonWouldPointAt() {
    assertThat(SaidParts.of(Message.of(MessageKey.ACCOUNT_GROUND_LOST)))
        .contains(DrawnPart.GROUND_STRAP);
    assertThat(SaidParts.of(Message.of(MessageKey.ACCOUNT_LEAD_OFF))).contains(DrawnPart.CONNECTOR);
    assertThat(SaidParts.of(Message.of(MessageKey.ACCOUNT_FILM))).containsExactly(DrawnPart.ROD);
    assertThat(SaidParts.of(named(MessageKey.ACCOUNT_DEPENDS, Parameter.GROUND)))
        .containsExactly(DrawnPart.GROUND_STRAP);
    assertThat(SaidParts.of(named(MessageKey.ACCOUNT_BOARD, Stage.TRIAL)))
        .contains(DrawnPart.BOARD, DrawnPart.GAS_VALVE);
  }

  @Test
  void whatIsNestedCounts() {
    Message inner = Message.of(MessageKey.ACCOUNT_FILM);

    assertThat(SaidParts.of(Message.of(MessageKey.BOARD_CALL, Argument.nested(inner))))
        .containsExactlyInAnyOrder(DrawnPart.BOARD, DrawnPart.ROD);
  }

  @Test
  void whatSpeaksOfNothingDrawnLightsNothing() {
    assertThat(SaidParts.of(Message.of(MessageKey.REPORT_WHY))).isEmpty();
  }
}
