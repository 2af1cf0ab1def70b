package halfwave.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command {@code measure}. */
class MeasureCommandTest {

  private static final String BENCH = "hot-surface-natural-gas";

  private static CommandRun measure(String function, String leads, String... more) {
    String[] args = new String[4 + more.length];
    args[0] = "measure";
    args[1] = BENCH;
    args[2] = "--function=" + function;
    args[3] = "--leads=" + leads;
    System.arraycopy(more, 0, args, 4, more.length);
    return CommandRun.of(args);
  }

  @ParameterizedTest
  @CsvSource({
    // model and practice: 2 to 3.5 uA DC beside 4 to 8 AC in series; 80 to 100 V and 50 to 85 V
    "ac-and-dc-microamps, series-board, '7\\.\\d\\d µA AC, 2\\.4\\d µA DC'",
    "ac-volts, terminal:common, '(7\\d|8[0-4])\\.\\d V AC'",
    "ac-volts, wire:rod, '4\\.\\d+ V AC'",
    "ac-volts, line:ground, '1[12]\\d\\.\\d+ V AC'",
    "ac-volts, neutral:ground, '0\\.\\d+ V AC'"
  })
  void readsWhatATechnicianReads(String function, String leads, String shown) {
    CommandRun run = measure(function, leads);

    assertThat(run.status()).isZero();
    assertThat(run.out().lines().toList().get(0)).isEqualTo("After 3.00 min, run:");
    assertThat(run.out().lines().toList().get(1)).matches(shown);
  }

  @Test
  void timeAndFaultsCount() {
    assertThat(measure("ac-volts", "terminal:common", "--at=3s").out()).contains("standby");
    assertThat(measure("dc-microamps", "series-board", "--fault=connector=open", "--at=43s").out())
        .containsPattern("0\\.00 µA DC");
    assertThat(measure("ohms", "lead:rod", "--act=1s power-off", "--at=10s").out())
        .containsPattern("\\d\\.\\d Ω");
  }

  @Test
  void kindsOfFaultsAreKnown() {
    assertThat(measure("dc-microamps", "series-board", "--fault=rod-fouled").out())
        .containsPattern("1\\.[34]\\d µA DC");
    assertThat(measure("dc-microamps", "series-board", "--fault=rod-fouled=1M").out())
        .containsPattern("2\\.\\d\\d µA DC");
    assertThat(CommandRun.of("sequence", BENCH, "--fault=blower:connector-off").out())
        .contains("sense lead off");
  }

  /** A dead supply is copper: the winding of the control transformer, and bonds to ground. */
  @ParameterizedTest
  @CsvSource({
    "line:neutral, '2[45]\\.\\d Ω'",
    "control-hot:control-common, '[01]\\.\\d Ω'",
    "line:control-hot, '2[67]\\.\\d Ω'",
    "terminal:common, '2\\.[12]\\d+ MΩ'"
  })
  void deadPartsHaveTheirOhms(String leads, String shown) {
    assertThat(
            measure("ohms", leads, "--act=1s power-off", "--at=10s").out().lines().toList().get(1))
        .matches(shown);
  }

  /** A probe is a point only where a second electrode stands in the flame. */
  @Test
  void pointsAreThoseOfTheBench() {
    CommandRun none = measure("ac-volts", "terminal:probe");
    assertThat(none.status()).isEqualTo(2);
    assertThat(none.complaints()).singleElement().asString().doesNotContain(", probe");
    CommandRun there =
        CommandRun.of(
            "measure", "direct-spark-separate-rod", "--function=ac-volts", "--leads=probe:chassis");
    assertThat(there.status()).isZero();
  }

  /** In the flame the wire is near the plasma's potential; beside and beyond it, it floats. */
  @Test
  void theWireIsHeldSomewhere() {
    String root = measure("ac-volts", "wire:rod").out();

    assertThat(measure("ac-volts", "wire:rod", "--wire-along=0mm").out()).isEqualTo(root);
    assertThat(measure("ac-volts", "wire:rod", "--wire-along=30mm").out())
        .containsPattern("\\d V AC")
        .isNotEqualTo(root);
    assertThat(measure("ac-volts", "wire:rod", "--wire-across=60mm").out())
        .containsPattern("\\n0\\.0\\d+ V AC");
  }

  /** A microamp range across the supply blows the fuse, and a caution says so. */
  @Test
  void wrongUseHasItsCaution() {
    CommandRun run = measure("dc-microamps", "line:neutral", "--json");
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("\"fuseIntact\" : false", "fuse");
  }

  @ParameterizedTest
  @CsvSource({
    "nix, series-board, --at=3s, --function = nix: allowed is one of ac-volts",
    "ohms, here, --at=3s, --leads = here: allowed is series-board",
    "ohms, terminal:emf, --at=3s, --leads = terminal:emf: allowed is",
    "ohms, terminal:common, --at=nix, --at = nix: allowed is",
    "ac-volts, wire:rod, --wire-along=1m, --wire-along = 1m: allowed is a number from",
    "ac-volts, wire:rod, --wire-across=-7cm, --wire-across = -7cm: allowed is a number from",
    "ac-volts, terminal:common, --wire-along=5mm, --wire-along = 5mm: allowed is a place only",
    "ohms, terminal:common, --meter=nix, --meter = nix: allowed is one of",
    "ohms, terminal:common, --fault=nix, --fault = nix",
    "ohms, terminal:common, --fault=rod-fouled=1G, --fault rod-fouled = 1G: allowed is",
    "ohms, terminal:common, --fault=gas-shut=3, --fault gas-shut = 3: allowed is nothing",
    "ohms, terminal:common, --fault=rain:gas-shut, --fault = rain: allowed is one of heat"
  })
  void badUsageIsOneLine(String function, String leads, String more, String complaint) {
    CommandRun run = measure(function, leads, more);

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.complaints()).singleElement().asString().contains(complaint);
    assertThat(run.out()).isEmpty();
  }
}
