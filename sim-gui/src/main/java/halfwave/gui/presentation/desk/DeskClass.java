package halfwave.gui.presentation.desk;

import halfwave.grading.CallMarks;
import halfwave.grading.ClassReport;
import halfwave.grading.Grader;
import halfwave.grading.SheetMarks;
import halfwave.io.BadInputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The answer sheets of a class, marked.
 *
 * @param grader who marked them
 * @param report what the marks say
 * @param refused files that could not be read, and why
 * @param changes what is other than in marks that were kept; null: not compared
 */
public record DeskClass(
    Grader grader,
    ClassReport report,
    List<BadInputException> refused,
    @Nullable List<Change> changes) {

  /** What is shown is whole per cents. */
  private static final double SEEN_RATIO = 0.005;

  /**
   * Another mark than before.
   *
   * @param learner name or code
   * @param call name of the call
   * @param beforeRatio mark that was kept (1)
   * @param nowRatio mark now (1)
   */
  public record Change(String learner, String call, double beforeRatio, double nowRatio) {}

  /** Takes copies. */
  public DeskClass {
    refused = List.copyOf(refused);
    changes = changes == null ? null : List.copyOf(changes);
  }

  /** Compared with marks that were kept: learner, then call, then its mark (1). */
  DeskClass compared(Map<String, Map<String, Double>> before) {
    List<Change> found = new ArrayList<>();
    for (SheetMarks sheet : report.sheets()) {
      Map<String, Double> then = before.getOrDefault(sheet.sheet().learner(), Map.of());
      for (CallMarks call : sheet.calls()) {
        Double old = then.get(call.call().name());
        if (old != null && Math.abs(old - call.totalRatio()) >= SEEN_RATIO) {
          found.add(
              new Change(sheet.sheet().learner(), call.call().name(), old, call.totalRatio()));
        }
      }
    }
    return new DeskClass(grader, report, refused, found);
  }
}
