package halfwave.paper;

import static org.assertj.core.api.Assertions.assertThat;

import halfwave.display.Sentences;
import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The bench report of a furnace that runs. */
class BenchPagesContractTest extends PagesContract {

  private static final BenchSubject HEALTHY = Reported.healthy();
  private static final LocalDate DATE = LocalDate.of(2026, 3, 9);

  @Override
  Document document(PaperSize size, Sentences sentences, Locale reader) {
    return BenchPages.of(HEALTHY, size, sentences, reader, DATE);
  }

  @Override
  String expected(Locale reader) {
    return reader.getLanguage().equals("es") ? "9 de marzo de 2026" : "March 9, 2026";
  }

  private static PdfPages english(BenchSubject subject) {
    return new PdfPages(
        BenchPages.of(subject, PaperSize.A4, Sentences.in(Locale.ENGLISH), Locale.ENGLISH, DATE)
            .pdf());
  }

  @Test
  void everythingAskedOfAReportIsOnIt() {
    PdfPages pdf = english(HEALTHY);

    assertThat(pdf.count()).isEqualTo(2);
    assertThat(pdf.text())
        // words of the drawing are letters too
        .contains("burner face: the other electrode")
        .contains("Microammeter in series", "10 MΩ voltmeter, sense terminal to common")
        .contains("Where the volts go", "Layer between plasma and burner", "Together: the source")
        .contains("Flame, good signal", "0 of 4; flames lost: 0")
        .contains("Nothing: every part is as it should be.")
        .contains("While the rod is positive, the burner has to collect the ions")
        .contains("Turn off gas and power before you open a real appliance.");
  }

  @Test
  void whatDiffersFromAHealthyBenchIsTold() {
    PdfPages pdf = english(Reported.fouled());

    assertThat(pdf.text())
        .contains("Soft lockout")
        .contains("Film thickness on the rod 400 µm 0 mm")
        .contains("No flame burns at the rod now.")
        .contains("Where the volts would go")
        .contains("Film on the rod");
  }

  @Test
  void withoutPowerNothingIsMeasured() {
    PdfPages pdf = english(Reported.cold());

    assertThat(pdf.text())
        .contains("No meter is on the bench.", "There is no power on the sense circuit")
        .doesNotContain("Microammeter in series", "Together: the source");
  }
}
