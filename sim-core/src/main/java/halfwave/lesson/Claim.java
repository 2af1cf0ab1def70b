package halfwave.lesson;

import halfwave.board.Board;
import halfwave.board.Stage;
import halfwave.board.StatusCode;
import halfwave.message.Quantity;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What a demonstration says of the model, in a form that can be checked.
 *
 * <pre>
 * Claim = Between | Compared | At | Shows | Enters
 * </pre>
 */
public sealed interface Claim {

  /** Whether it is true of what was played. */
  boolean holds(Performance performance);

  /**
   * At the end a reading lies between two numbers, both included.
   *
   * @param reading what is read
   * @param least lowest, of the reading's dimension, or null: no bound
   * @param most highest, of the reading's dimension, or null: no bound
   */
  record Between(Reading reading, @Nullable Quantity least, @Nullable Quantity most)
      implements Claim {

    /** Checks that it says something. */
    public Between {
      if (least == null && most == null) {
        throw new IllegalArgumentException("least, most: at least one of them");
      }
      checkDimension(reading, least);
      checkDimension(reading, most);
      if (least != null && most != null && !(least.si() <= most.si())) {
        throw new IllegalArgumentException("most = " + most + ": at least " + least);
      }
    }

    private static void checkDimension(Reading reading, @Nullable Quantity bound) {
      if (bound != null && bound.dimension() != reading.dimension()) {
        throw new IllegalArgumentException("bound = " + bound + ": " + reading.dimension());
      }
    }

    @Override
    public boolean holds(Performance performance) {
      OptionalDouble found = reading.at(performance.after());
      return found.isPresent()
          && (least == null || found.getAsDouble() >= least.si())
          && (most == null || found.getAsDouble() <= most.si());
    }
  }

  /**
   * A reading at the end over the same reading at the beginning lies between two numbers, both
   * included: below one it has fallen, above one it has risen. Of what was zero there is no share.
   *
   * @param reading what is read
   * @param leastRatio lowest share (1)
   * @param mostRatio highest share (1); infinity: no bound
   */
  record Compared(Reading reading, double leastRatio, double mostRatio) implements Claim {

    /** Checks the order. */
    public Compared {
      if (!(leastRatio >= 0 && leastRatio <= mostRatio)) {
        throw new IllegalArgumentException("leastRatio = " + leastRatio + ": zero to " + mostRatio);
      }
    }

    @Override
    public boolean holds(Performance performance) {
      OptionalDouble before = reading.at(performance.before());
      OptionalDouble after = reading.at(performance.after());
      if (before.isEmpty() || after.isEmpty() || before.getAsDouble() == 0) {
        return false;
      }
      double ratio = after.getAsDouble() / before.getAsDouble();
      return ratio >= leastRatio && ratio <= mostRatio;
    }
  }

  /**
   * At the end the board is in that stage.
   *
   * @param stage which
   */
  record At(Stage stage) implements Claim {
    @Override
    public boolean holds(Performance performance) {
      return performance.after().board().stage() == stage;
    }
  }

  /**
   * At the end the board's light says that.
   *
   * @param code what
   */
  record Shows(StatusCode code) implements Claim {
    @Override
    public boolean holds(Performance performance) {
      return Board.code(performance.after().board(), performance.after().filter().signal()) == code;
    }
  }

  /**
   * Meanwhile the board goes into a stage so many times, from another one.
   *
   * @param stage which
   * @param leastCount at least so often
   * @param mostCount at most so often
   */
  record Enters(Stage stage, int leastCount, int mostCount) implements Claim {

    /** Checks the order. */
    public Enters {
      if (!(leastCount >= 0 && leastCount <= mostCount)) {
        throw new IllegalArgumentException("leastCount = " + leastCount + ": zero to " + mostCount);
      }
    }

    @Override
    public boolean holds(Performance performance) {
      long count = performance.events().stream().filter(e -> e.enters(stage)).count();
      return count >= leastCount && count <= mostCount;
    }
  }
}
