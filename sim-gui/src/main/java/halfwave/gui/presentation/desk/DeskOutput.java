package halfwave.gui.presentation.desk;

import java.util.List;
import java.util.Locale;

/** What leaves the instructor's desk as a file. */
public enum DeskOutput {
  /** A sheet for each call, to fill in. */
  BLANK("pdf"),
  /** The same with what there is to read. */
  WORKSHEET("pdf"),
  /** What is wrong, and how an expert finds it. */
  KEY("pdf"),
  /** Learners with their marks. */
  GRADEBOOK("csv"),
  /** How the class fared at each call. */
  ITEMS("csv"),
  /** What was learnt. */
  OBJECTIVES("csv"),
  /** The quiz for other systems. */
  QTI("zip"),
  /** The marks for a record store. */
  XAPI("jsonl"),
  /** The report of the class. */
  REPORT("pdf"),
  /** The marks, to compare with later. */
  MARKS("json"),
  /** All marks of one learner. */
  RECORD("pdf");

  /** What can be written of a quiz alone. */
  public static final List<DeskOutput> OF_QUIZ = List.of(BLANK, WORKSHEET, KEY);

  /** What can be written of a class. */
  public static final List<DeskOutput> OF_CLASS =
      List.of(GRADEBOOK, ITEMS, OBJECTIVES, REPORT, MARKS, QTI, XAPI);

  private final String ending;

  DeskOutput(String ending) {
    this.ending = ending;
  }

  /** How its file ends, without a dot. */
  public String ending() {
    return ending;
  }

  /** Its key among the words of the window. */
  public String key() {
    return "desk.output-" + name().toLowerCase(Locale.ROOT);
  }
}
