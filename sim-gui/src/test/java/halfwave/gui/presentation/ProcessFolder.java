package halfwave.gui.presentation;

import java.nio.file.Path;
import java.util.function.Predicate;

/** Where a process keeps what it would lose, for tests that are several processes in turn. */
public final class ProcessFolder {

  private ProcessFolder() {}

  public static <T> RecoveryFolder<T> of(
      Path folder,
      RecoveryFolder.Kind<T> kind,
      RecoveryFolder.Owner own,
      Predicate<RecoveryFolder.Owner> running) {
    return new RecoveryFolder<>(folder, kind, own, running);
  }
}
