package halfwave.io.bench;

import java.util.List;
import java.util.Map;

/** One good circuit file and what can be wrong with it. */
final class CircuitFiles {

  private CircuitFiles() {}

  static final String GOOD =
      """
      {"source": {"openCircuitVoltsRms": 120, "frequencyHz": 60, "resistanceOhms": 1e5,
        "couplingFarads": null, "returnOhms": null},
       "lead": {"resistanceOhms": 0.5, "insulationOhms": null, "capacitanceFarads": null},
       "rodFilm": null,
       "flame": {"rodIonAmpsPerRootVolt": 2e-7, "burnerIonAmpsPerRootVolt": 2e-6,
        "columnOhms": 5e5},
       "burnerFilm": {"resistanceOhms": 1e6, "capacitanceFarads": 0},
       "ground": {"resistanceOhms": 0}}
      """;

  /** Edits of {@link #GOOD} that stay good. */
  static final Map<String, String> FINE =
      Map.of(
          "\"returnOhms\": null", "\"returnOhms\": 2e6",
          "\"couplingFarads\": null", "\"couplingFarads\": 4.7e-9",
          "\"resistanceOhms\": 0.5", "\"resistanceOhms\": \"open\"",
          "\"rodFilm\": null", "\"rodFilm\": {\"resistanceOhms\": 0, \"capacitanceFarads\": 1e-9}");

  /**
   * One thing wrong.
   *
   * @param from what stands in {@link #GOOD}
   * @param to what stands there instead
   * @param field the field the refusal names
   * @param value the value it shows
   * @param allowed the beginning of what it says is allowed
   */
  record Wrong(String from, String to, String field, String value, String allowed) {
    String text() {
      if (!GOOD.contains(from)) {
        throw new IllegalStateException(from);
      }
      return GOOD.replace(from, to);
    }

    @Override
    public String toString() {
      return from + " -> " + to;
    }
  }

  /** What a schema can see as well as the reader. */
  static final List<Wrong> WRONG =
      List.of(
          new Wrong(
              "\"resistanceOhms\": 1e5",
              "\"resistanceOhms\": -5",
              "source.resistanceOhms",
              "-5",
              "a number of ohms, zero or above"),
          new Wrong(
              "\"resistanceOhms\": 1e5",
              "\"resistanceOhms\": \"big\"",
              "source.resistanceOhms",
              "\"big\"",
              "a number of ohms, zero or above"),
          new Wrong(
              "\"resistanceOhms\": 1e5",
              "\"resistanceOhms\": null",
              "source.resistanceOhms",
              "null",
              "a number of ohms, zero or above"),
          new Wrong(
              ", \"returnOhms\": null",
              "",
              "source.returnOhms",
              "(missing)",
              "a number of ohms, zero or above, or \"open\", or null"),
          new Wrong(
              "\"frequencyHz\": 60",
              "\"frequencyHz\": 0.5",
              "source.frequencyHz",
              "0.5",
              "a number from 1 to 1000"),
          new Wrong(
              "\"frequencyHz\": 60",
              "\"frequencyHz\": true",
              "source.frequencyHz",
              "true",
              "a number"),
          new Wrong(
              "\"openCircuitVoltsRms\": 120",
              "\"openCircuitVoltsRms\": -120.50",
              "source.openCircuitVoltsRms",
              "-120.50",
              "a number, zero or above"),
          new Wrong(
              "\"couplingFarads\": null",
              "\"couplingFarads\": 0",
              "source.couplingFarads",
              "0",
              "a number above zero"),
          new Wrong(
              "\"rodIonAmpsPerRootVolt\": 2e-7",
              "\"rodIonAmpsPerRootVolt\": 0",
              "flame.rodIonAmpsPerRootVolt",
              "0",
              "a number above zero"),
          new Wrong(
              "\"columnOhms\": 5e5",
              "\"columnOhms\": \"open\"",
              "flame.columnOhms",
              "\"open\"",
              "a number"),
          new Wrong(
              "\"capacitanceFarads\": 0",
              "\"capacitanceFarads\": -1e-9",
              "burnerFilm.capacitanceFarads",
              "-1E-9",
              "a number, zero or above"),
          new Wrong(
              "\"ground\": {\"resistanceOhms\": 0}",
              "\"ground\": null",
              "ground",
              "null",
              "a group of fields"),
          new Wrong("\"rodFilm\": null", "\"rodFilm\": []", "rodFilm", "[]", "a group of fields"),
          new Wrong("\"rodFilm\": null,", "", "rodFilm", "(missing)", "a group of fields"),
          new Wrong(
              "\"rodFilm\": null",
              "\"rodFilm\": null, \"cable\": 7",
              "cable",
              "7",
              "the fields source, lead, rodFilm, flame, burnerFilm, ground"),
          new Wrong(
              "\"insulationOhms\": null",
              "\"insulationOhms\": null, \"length\": 1",
              "lead.length",
              "1",
              "the fields resistanceOhms, insulationOhms, capacitanceFarads"));

  /** What only a reader of the text sees. */
  static final List<Wrong> UNREADABLE =
      List.of(
          new Wrong(
              "\"resistanceOhms\": 1e5",
              "\"resistanceOhms\": NaN",
              "source.resistanceOhms",
              "NaN",
              "a number of ohms, zero or above"),
          new Wrong(
              "\"resistanceOhms\": 1e5",
              "\"resistanceOhms\": Infinity",
              "source.resistanceOhms",
              "Infinity",
              "a number of ohms, zero or above"),
          new Wrong(
              "\"frequencyHz\": 60",
              "\"frequencyHz\": 1e999",
              "source.frequencyHz",
              "1E+999",
              "a number"),
          new Wrong(
              "\"frequencyHz\": 60",
              "\"frequencyHz\": 60, \"frequencyHz\": 50",
              "source.frequencyHz",
              "50",
              "each field once"),
          new Wrong(", \"frequencyHz\": 60", "", "source.frequencyHz", "(missing)", "a number"));
}
