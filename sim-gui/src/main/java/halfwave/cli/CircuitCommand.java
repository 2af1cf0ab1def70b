package halfwave.cli;

import halfwave.circuit.LumpedCircuit.Readings;
import halfwave.display.DisplayUnit;
import halfwave.display.QuantityText;
import halfwave.io.bench.LumpedCircuitFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.ResourceBundle;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Solves the lumped circuits of a file and prints five readings of each. */
@Command(name = "circuit")
final class CircuitCommand implements Callable<Integer> {

  /** Microamps to a tenth of a nanoamp, volts to a millivolt: finer than a meter, to compare. */
  private static final int AMPS_DECIMALS = 4;

  private static final int VOLTS_DECIMALS = 3;

  @Mixin private Standard standard = new Standard();

  @Parameters(paramLabel = "FILE", descriptionKey = "file")
  private @Nullable Path file;

  @Override
  public Integer call() {
    List<Readings> readings =
        LumpedCircuitFile.read(Objects.requireNonNull(file)).stream()
            .map(entry -> Readings.of(CircuitSolver.solved(entry)))
            .toList();
    standard.out().print(standard.json() ? LumpedCircuitFile.answer(readings) : table(readings));
    return 0;
  }

  private String table(List<Readings> readings) {
    ResourceBundle words = standard.spec().resourceBundle();
    QuantityText text = standard.sentences().quantities();
    TextTable table =
        new TextTable(
            List.of(
                words.getString("table.circuit"),
                words.getString("table.board-end-dc"),
                words.getString("table.rod-end-dc"),
                words.getString("table.rod-end-ac"),
                words.getString("table.terminal-dc"),
                words.getString("table.terminal-ac")));
    int number = 1;
    for (Readings r : readings) {
      List<String> cells = new ArrayList<>();
      cells.add(Integer.toString(number++));
      cells.add(text.fixed(r.boardEndMeanAmps(), DisplayUnit.MICROAMP, AMPS_DECIMALS));
      cells.add(text.fixed(r.rodEndMeanAmps(), DisplayUnit.MICROAMP, AMPS_DECIMALS));
      cells.add(text.fixed(r.rodEndAlternatingRmsAmps(), DisplayUnit.MICROAMP, AMPS_DECIMALS));
      cells.add(text.fixed(r.terminalMeanVolts(), DisplayUnit.VOLT, VOLTS_DECIMALS));
      cells.add(text.fixed(r.terminalAlternatingRmsVolts(), DisplayUnit.VOLT, VOLTS_DECIMALS));
      table.add(cells);
    }
    return table.toString();
  }
}
