package halfwave.gui.presentation.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DeskNumberTest {

  /** 7 / 100 · 100 is 7.000000000000001. */
  @Test
  void aPercentageStandsAsItWasTyped() {
    DeskNumber number = new DeskNumber(0, 100, false);
    for (int hundredths = 0; hundredths <= 10_000; hundredths++) {
      double typed = hundredths / 100.0;
      String shown = number.text(DeskNumber.percent(typed / 100));
      assertThat(shown).isEqualTo(number.text(typed));
      assertThat(number.read(shown)).hasValue(typed);
    }
  }
}
