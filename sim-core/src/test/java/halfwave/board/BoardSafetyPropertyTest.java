package halfwave.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What no board may do, on everything that five small boards can do: no sample, all of it. Boards
 * broken on purpose show that each rule bites.
 */
class BoardSafetyPropertyTest {

  private static final long UNIT = SmallBoard.UNIT_MILLIS;

  static Stream<Supplier<SmallBoard>> boards() {
    return Stream.of(
        SmallBoard::hotSurface,
        SmallBoard::learning,
        SmallBoard::spark,
        SmallBoard::pilot,
        SmallBoard::bare);
  }

  @ParameterizedTest
  @MethodSource("boards")
  void nothingUnsafeCanHappen(Supplier<SmallBoard> small) {
    BoardSettings settings = small.get().build();
    BoardExploration all = BoardExploration.of(BoardUnderTest.REAL, settings, UNIT);
    System.out.printf(
        "%s: %d states, %d with what led to them, %d transitions%n",
        settings.name(), all.boardStates(), all.pairs(), all.steps());
    assertThat(all.broken()).isEmpty();
    assertThat(all.stages()).isEqualTo(reachable(settings));
  }

  /** An exploration that missed a stage would prove nothing about it. */
  private static Set<Stage> reachable(BoardSettings settings) {
    Times times = settings.times();
    Set<Stage> stages = EnumSet.allOf(Stage.class);
    Consumer<Stage> left = stages::remove;
    drop(times.restartMillis() == 0, left, Stage.RESTART);
    drop(!times.hasPressureSwitch(), left, Stage.PRESSURE_PROOF, Stage.PRESSURE_FAULT);
    drop(times.prePurgeMillis() == 0, left, Stage.PRE_PURGE);
    drop(!settings.ignition().hotSurface(), left, Stage.WARM_UP);
    drop(times.provingMillis() == 0, left, Stage.PROVING);
    drop(times.interPurgeMillis() == 0, left, Stage.INTER_PURGE);
    drop(times.postPurgeMillis() == 0, left, Stage.POST_PURGE);
    return stages;
  }

  /** Each broken board is caught by the rule that it breaks. */
  @ParameterizedTest
  @EnumSource(BrokenBoard.class)
  void aBrokenBoardIsCaught(BrokenBoard board) {
    assertThat(
            BoardExploration.until(board.breaks, board.broken, board.made.build(), UNIT).broken())
        .containsKey(board.breaks);
  }

  @Test
  void everyRuleHasABoardThatBreaksIt() {
    assertThat(Stream.of(BrokenBoard.values()).map(b -> b.breaks)).contains(SafetyRule.values());
  }

  private static void drop(boolean out, Consumer<Stage> left, Stage... stages) {
    Stream.of(stages).filter(s -> out).forEach(left);
  }
}
