package halfwave.io.bench;

import halfwave.bench.ApplianceCondition;
import halfwave.bench.Bench;
import halfwave.bench.Coat;
import halfwave.bench.Condition;
import halfwave.bench.Design;
import halfwave.bench.Disorder;
import halfwave.bench.Intermittent;
import halfwave.bench.RodPosition;
import halfwave.bench.SparkElectrode;
import halfwave.bench.Trigger;
import halfwave.board.Ignition;
import halfwave.flame.BurnerDesign;
import halfwave.flame.FlameCalibration;
import halfwave.flame.Fuel;
import halfwave.flame.HolderKind;
import halfwave.flame.Place;
import halfwave.flame.Rod;
import halfwave.io.BadInputException;
import halfwave.io.JsonFields;
import halfwave.io.JsonFile;
import halfwave.io.JsonValue;
import java.nio.file.Path;
import java.util.Set;

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
    JsonFields f = value.file(FORMAT, VERSION, "format", "version", "name", "design", "condition");
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
            "burnerCount",
            "manifoldPascals",
            "flame",
            "rod",
            "sparkElectrode",
            "source",
            "lead",
            "groundOhms",
            "siliconKilogramsPerCubicMeter");
    return f.make(
        () ->
            new Design(
                f.get("ignition").oneOf(Ignition.class),
                f.get("fuel").oneOf(Fuel.class),
                burner(f.get("burner")),
                burnerCount(f.get("burnerCount").wholeNumber()),
                f.get("manifoldPascals").number(),
                flame(f.get("flame")),
                rod(f.get("rod")),
                f.orNull("sparkElectrode", BenchFile::spark),
                LumpedCircuitFile.source(f.get("source")),
                LumpedCircuitFile.lead(f.get("lead")),
                f.get("groundOhms").number(),
                f.get("siliconKilogramsPerCubicMeter").number()));
  }

  /** What does not fit an int is no number of burners either. */
  private static int burnerCount(long count) {
    return (int) Math.max(-1, Math.min(count, Integer.MAX_VALUE));
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
            "leadExtraOhms",
            "leakageOhms",
            "jumperOhms",
            "depositOhms",
            "groundExtraOhms",
            "appliance");
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
                f.get("leadExtraOhms").ohms(),
                f.get("leakageOhms").ohms(),
                f.get("jumperOhms").ohms(),
                f.get("depositOhms").ohms(),
                f.get("groundExtraOhms").ohms(),
                appliance(f.get("appliance"))));
  }

  private static ApplianceCondition appliance(JsonValue value) {
    JsonFields f =
        value.fields(
            "carryOverSeconds",
            "senseSupplyRatio",
            "inputOffsetAmps",
            "disorders",
            "intermittents");
    return f.make(
        () ->
            new ApplianceCondition(
                f.get("carryOverSeconds").orNever(),
                f.get("senseSupplyRatio").number(),
                f.get("inputOffsetAmps").number(),
                Set.copyOf(f.get("disorders").list(e -> e.oneOf(Disorder.class))),
                f.get("intermittents").list(BenchFile::intermittent)));
  }

  private static Intermittent intermittent(JsonValue value) {
    JsonFields f = value.fields("trigger", "change");
    return f.make(
        () ->
            new Intermittent(
                f.get("trigger").oneOf(Trigger.class), ChangeFile.exact().change(f.get("change"))));
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
    JsonFields f = value.fields("thicknessMeters", "porosityRatio", "crackOhms");
    return f.make(
        () ->
            new Coat(
                f.get("thicknessMeters").number(),
                f.get("porosityRatio").number(),
                f.get("crackOhms").ohms()));
  }
}
