package halfwave.validation;

/** Chapters of the report, in its order. */
public enum Area {
  CIRCUIT("Circuit"),
  FLAME("Gas, flame and electrodes"),
  FILMS("Films, heat and forecasts"),
  METERS("Meters"),
  BENCH("The whole bench"),
  SEQUENCE("Board and sequence"),
  EVIDENCE("Evidence, diagnosis and matching"),
  RELIABILITY("Reliability of marks"),
  EXCHANGE("Exchange formats"),
  DISPLAY("Contrast on the screen");

  private final String title;

  Area(String title) {
    this.title = title;
  }

  String title() {
    return title;
  }
}
