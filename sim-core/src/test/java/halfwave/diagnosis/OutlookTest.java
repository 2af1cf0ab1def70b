package halfwave.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What an outlook keeps of its table. */
class OutlookTest {

  @Test
  void casesInWhichACheckFindsTheSameShareTheirRow() {
    CaseTable table = SmallWorld.table(1);
    Outlook outlook = new Outlook(table, SmallWorld.priors(0.02));
    List<Case> cases = table.cases();
    for (int check = 0; check < table.checks().size(); check++) {
      double[][] rows = outlook.chances(check);
      Outcome first = cases.get(0).outcomes().get(check);
      for (int k = 0; k < rows.length; k++) {
        boolean same = cases.get(k).outcomes().get(check).equals(first);
        assertThat(rows[k] == rows[0]).as("check %s, case %s", check, k).isEqualTo(same);
      }
    }
  }
}
