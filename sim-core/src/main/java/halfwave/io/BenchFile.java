package halfwave.io;

import halfwave.bench.Bench;
import halfwave.bench.Coat;
import halfwave.bench.Condition;
import halfwave.bench.Design;
import halfwave.bench.RodPosition;
import halfwave.bench.SparkElectrode;
import halfwave.board.Ignition;
import halfwave.flame.BurnerDesign;
import halfwave.flame.FlameCalibration;
import halfwave.flame.Fuel;
import halfwave.flame.HolderKind;
import halfwave.flame.Place;
import halfwave.flame.Rod;
import halfwave.message.Argument;
import halfwave.message.Message;
import halfwave.message.MessageKey;
import java.nio.file.Path;

/**
 * The file of a bench, {@code "format": "halfwave-bench", "version": 1}. Its schema is {@code
 * docs/schemas/bench.schema.json}; {@link BenchText} writes it. Numbers are SI; {@code "open"}
 * stands for infinite ohms.
 */
public final class BenchFile {

  static final String FORMAT = "halfwave-bench";
  static final int VERSION = 1;

  private BenchFile() {}

  /** Whether a file that was read says that it is a bench. */
  public static boolean isBench(JsonValue value) {
    return value.isObject() && value.anyFields().has("format");
  }

  /**
   * Reads a file.
   *
   * @param file the file
   * @return the bench
   * @throws BadInputException if anything in it is not as the schema says
   */
  public static Bench read(Path file) {
    return of(JsonFile.read(file));
  }

  /** The same for a file that was already read. */
  public static Bench of(JsonValue value) {
    JsonFields f = value.fields("format", "version", "name", "design", "condition");
    if (!f.get("format").text().equals(FORMAT)) {
      throw f.get("format").refused(Message.of(MessageKey.ALLOWED_ONE_OF, Argument.text(FORMAT)));
    }
    if (f.get("version").wholeNumber() != VERSION) {
      throw f.get("version").refused(Message.of(MessageKey.ALLOWED_ONE_OF, Argument.text("1")));
    }
    return f.make(
        () ->
            new Bench(
                f.get("name").text(), design(f.get("design")), condition(f.get("condition"))));
  }

  private static Design design(JsonValue value) {
    JsonFields f =
        value.fields(
            "ignition",
            "fuel",
            "burner",
            "manifoldPascals",
            "flame",
            "rod",
            "sparkElectrode",
            "source",
            "lead",
            "groundOhms");
    return f.make(
        () ->
            new Design(
                f.get("ignition").oneOf(Ignition.class),
                f.get("fuel").oneOf(Fuel.class),
                burner(f.get("burner")),
                f.get("manifoldPascals").number(),
                flame(f.get("flame")),
                rod(f.get("rod")),
                f.orNull("sparkElectrode", BenchFile::spark),
                LumpedCircuitFile.source(f.get("source")),
                LumpedCircuitFile.lead(f.get("lead")),
                f.get("groundOhms").number()));
  }

  private static BurnerDesign burner(JsonValue value) {
    JsonFields f =
        value.fields(
            "orificeDiameterMeters",
            "throatDiameterMeters",
            "portRadiusMeters",
            "holder",
            "attachmentLengthMeters",
            "spacingMeters",
            "dischargeRatio");
    return f.make(
        () ->
            new BurnerDesign(
                f.get("orificeDiameterMeters").number(),
                f.get("throatDiameterMeters").number(),
                f.get("portRadiusMeters").number(),
                f.get("holder").oneOf(HolderKind.class),
                f.get("attachmentLengthMeters").number(),
                f.get("spacingMeters").number(),
                f.get("dischargeRatio").number()));
  }

  private static FlameCalibration flame(JsonValue value) {
    JsonFields f =
        value.fields(
            "ionMultiplierRatio",
            "rootMultiplierRatio",
            "restGapMeters",
            "columnOhms",
            "electronMobilitySquareMetersPerVoltSecond",
            "burnerFaceKelvin");
    return f.make(
        () ->
            new FlameCalibration(
                f.get("ionMultiplierRatio").number(),
                f.get("rootMultiplierRatio").number(),
                f.get("restGapMeters").number(),
                f.get("columnOhms").number(),
                f.get("electronMobilitySquareMetersPerVoltSecond").number(),
                f.get("burnerFaceKelvin").number()));
  }

  private static Rod rod(JsonValue value) {
    JsonFields f = value.fields("radiusMeters", "path");
    return f.make(
        () -> new Rod(f.get("path").list(BenchFile::place), f.get("radiusMeters").number()));
  }

  private static Place place(JsonValue value) {
    double[] p = value.numbers(3);
    return new Place(p[0], p[1], p[2]);
  }

  private static SparkElectrode spark(JsonValue value) {
    JsonFields f = value.fields("rod", "windingOhms");
    return f.make(() -> new SparkElectrode(rod(f.get("rod")), f.get("windingOhms").ohms()));
  }

  private static Condition condition(JsonValue value) {
    JsonFields f =
        value.fields(
            "manifoldRatio",
            "airRatio",
            "attachmentRatio",
            "rodPosition",
            "rodKelvin",
            "rodCoat",
            "burnerScaleOhms",
            "burnerScaleFarads",
            "connectorOhms",
            "leakageOhms",
            "jumperOhms",
            "groundExtraOhms");
    return f.make(
        () ->
            new Condition(
                f.get("manifoldRatio").number(),
                f.get("airRatio").number(),
                f.get("attachmentRatio").number(),
                position(f.get("rodPosition")),
                f.get("rodKelvin").number(),
                coat(f.get("rodCoat")),
                f.get("burnerScaleOhms").ohms(),
                f.get("burnerScaleFarads").number(),
                f.get("connectorOhms").ohms(),
                f.get("leakageOhms").ohms(),
                f.get("jumperOhms").ohms(),
                f.get("groundExtraOhms").ohms()));
  }

  private static RodPosition position(JsonValue value) {
    JsonFields f =
        value.fields(
            "acrossMeters", "upMeters", "alongMeters", "turnRadians", "tiltRadians", "bendRadians");
    return f.make(
        () ->
            new RodPosition(
                f.get("acrossMeters").number(),
                f.get("upMeters").number(),
                f.get("alongMeters").number(),
                f.get("turnRadians").number(),
                f.get("tiltRadians").number(),
                f.get("bendRadians").number()));
  }

  private static Coat coat(JsonValue value) {
    JsonFields f = value.fields("thicknessMeters", "porosityRatio");
    return f.make(
        () -> new Coat(f.get("thicknessMeters").number(), f.get("porosityRatio").number()));
  }
}
