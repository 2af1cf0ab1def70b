package halfwave.picture.bench;

import static halfwave.picture.LabelPlacer.NOTE;
import static halfwave.picture.LabelPlacer.STRONG;

import halfwave.message.MessageKey;
import halfwave.picture.LabelPlacer;
import halfwave.picture.LabelPlacer.Spot;
import java.awt.Color;

/** What every group of words is written with. */
final class LabelPen {

  final BenchSheet sheet;
  final SheetWords words;
  final LabelPlacer placer;

  LabelPen(BenchSheet sheet) {
    this.sheet = sheet;
    words = new SheetWords(sheet.style.sentences());
    placer = new LabelPlacer(sheet.plan.sheet);
  }

  /** Words that are good to have. */
  void note(MessageKey key, Spot... spots) {
    placer.place(words.text(key), NOTE, sheet.style.palette().softInk(), true, spots);
  }

  /** What is wrong: never left out as long as there is any room. */
  void fault(String text, Spot... spots) {
    Color danger = sheet.style.palette().danger();
    if (!placer.place(text, STRONG.deriveFont(12f), danger, true, spots)) {
      placer.insist(text, NOTE, danger, true, spots);
    }
  }
}
