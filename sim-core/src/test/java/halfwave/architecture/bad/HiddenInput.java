package halfwave.architecture.bad;

import java.time.Instant;
import java.util.Random;
import java.util.function.LongSupplier;

/** Reads the clock in three ways and draws unseeded numbers. */
final class HiddenInput {
  private HiddenInput() {}

  static final LongSupplier TICKS = System::nanoTime;

  static long seed() {
    return System.currentTimeMillis() + Instant.now().getNano() + new Random().nextLong();
  }
}
