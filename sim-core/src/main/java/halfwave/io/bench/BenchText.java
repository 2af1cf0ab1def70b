package halfwave.io.bench;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import halfwave.bench.ApplianceCondition;
import halfwave.bench.Bench;
import halfwave.bench.Change;
import halfwave.bench.Condition;
import halfwave.bench.Design;
import halfwave.bench.Intermittent;
import halfwave.bench.RodPosition;
import halfwave.bench.SparkElectrode;
import halfwave.circuit.LumpedCircuit.Lead;
import halfwave.circuit.LumpedCircuit.Source;
import halfwave.flame.BurnerDesign;
import halfwave.flame.FlameCalibration;
import halfwave.flame.Place;
import halfwave.flame.Rod;
import halfwave.io.JsonValue;
import org.jspecify.annotations.Nullable;

/** Writes what {@link BenchFile} reads. */
public final class BenchText {

  private BenchText() {}

  /** The bench as the text of a file. */
  public static String of(Bench bench) {
    return node(bench).toPrettyString() + "\n";
  }

  /** The same where it stands inside another file. */
  public static ObjectNode node(Bench bench) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("format", BenchFile.FORMAT)
        .put("version", BenchFile.VERSION)
        .put("name", bench.name());
    write(root.putObject("design"), bench.design());
    write(root.putObject("condition"), bench.condition());
    return root;
  }

  private static void write(ObjectNode node, Design design) {
    node.put("ignition", JsonValue.spelling(design.ignition()));
    node.put("fuel", JsonValue.spelling(design.fuel()));
    BurnerDesign b = design.burner();
    node.putObject("burner")
        .put("orificeDiameterMeters", b.orificeDiameterMeters())
        .put("throatDiameterMeters", b.throatDiameterMeters())
        .put("portRadiusMeters", b.portRadiusMeters())
        .put("holder", JsonValue.spelling(b.holder()))
        .put("attachmentLengthMeters", b.attachmentLengthMeters())
        .put("spacingMeters", b.spacingMeters())
        .put("dischargeRatio", b.dischargeRatio());
    node.put("burnerCount", design.burnerCount());
    node.put("manifoldPascals", design.manifoldPascals());
    FlameCalibration c = design.flame();
    node.putObject("flame")
        .put("ionMultiplierRatio", c.ionMultiplierRatio())
        .put("rootMultiplierRatio", c.rootMultiplierRatio())
        .put("restGapMeters", c.restGapMeters())
        .put("columnOhms", c.columnOhms())
        .put(
            "electronMobilitySquareMetersPerVoltSecond",
            c.electronMobilitySquareMetersPerVoltSecond())
        .put("burnerFaceKelvin", c.burnerFaceKelvin());
    write(node.putObject("rod"), design.rod());
    SparkElectrode spark = design.spark();
    if (spark == null) {
      node.putNull("sparkElectrode");
    } else {
      ObjectNode electrode = node.putObject("sparkElectrode");
      write(electrode.putObject("rod"), spark.electrode());
      putOhms(electrode, "windingOhms", spark.windingOhms());
    }
    Source s = design.source();
    ObjectNode source = node.putObject("source");
    source
        .put("openCircuitVoltsRms", s.openCircuitRmsVolts())
        .put("frequencyHz", s.frequencyHertz());
    putOhms(source, "resistanceOhms", s.resistanceOhms());
    source.put("couplingFarads", s.couplingFarads());
    putOhms(source, "returnOhms", s.returnOhms());
    Lead l = design.lead();
    ObjectNode lead = node.putObject("lead");
    putOhms(lead, "resistanceOhms", l.resistanceOhms());
    putOhms(lead, "insulationOhms", l.insulationOhms());
    lead.put("capacitanceFarads", l.capacitanceFarads());
    node.put("groundOhms", design.groundOhms())
        .put("siliconKilogramsPerCubicMeter", design.siliconKilogramsPerCubicMeter());
  }

  private static void write(ObjectNode node, Rod rod) {
    node.put("radiusMeters", rod.radiusMeters());
    ArrayNode path = node.putArray("path");
    for (Place p : rod.path()) {
      path.addArray().add(p.xMeters()).add(p.yMeters()).add(p.zMeters());
    }
  }

  private static void write(ObjectNode node, Condition c) {
    node.put("manifoldRatio", c.manifoldRatio())
        .put("airRatio", c.airRatio())
        .put("attachmentRatio", c.attachmentRatio());
    RodPosition p = c.rodPosition();
    node.putObject("rodPosition")
        .put("acrossMeters", p.acrossMeters())
        .put("upMeters", p.upMeters())
        .put("alongMeters", p.alongMeters())
        .put("turnRadians", p.turnRadians())
        .put("tiltRadians", p.tiltRadians())
        .put("bendRadians", p.bendRadians());
    node.put("rodKelvin", c.rodKelvin());
    ObjectNode coat = node.putObject("rodCoat");
    coat.put("thicknessMeters", c.rodCoat().thicknessMeters())
        .put("porosityRatio", c.rodCoat().porosityRatio());
    putOhms(coat, "crackOhms", c.rodCoat().crackOhms());
    putOhms(node, "burnerScaleOhms", c.burnerScaleOhms());
    node.put("burnerScaleFarads", c.burnerScaleFarads());
    putOhms(node, "connectorOhms", c.connectorOhms());
    putOhms(node, "leadExtraOhms", c.leadExtraOhms());
    putOhms(node, "leakageOhms", c.leakageOhms());
    putOhms(node, "jumperOhms", c.jumperOhms());
    putOhms(node, "depositOhms", c.depositOhms());
    putOhms(node, "groundExtraOhms", c.groundExtraOhms());
    write(node.putObject("appliance"), c.appliance());
  }

  private static void write(ObjectNode node, ApplianceCondition appliance) {
    putSeconds(node, appliance.carryOverSeconds());
    node.put("senseSupplyRatio", appliance.senseSupplyRatio())
        .put("inputOffsetAmps", appliance.inputOffsetAmps());
    ArrayNode disorders = node.putArray("disorders");
    appliance.disorders().forEach(d -> disorders.add(JsonValue.spelling(d)));
    ArrayNode intermittents = node.putArray("intermittents");
    for (Intermittent intermittent : appliance.intermittents()) {
      ObjectNode one = intermittents.addObject();
      one.put("trigger", JsonValue.spelling(intermittent.trigger()));
      ObjectNode change = one.putObject("change");
      putChange(change, intermittent.change());
    }
  }

  /** Writes the fields of one change into an object, as {@link ChangeFile} reads them. */
  public static void putChange(ObjectNode node, Change change) {
    if (change instanceof Change.Turned turned) {
      node.put("parameter", JsonValue.spelling(turned.parameter()));
      putOhms(node, "value", turned.value().si());
    } else if (change instanceof Change.Joined joined) {
      node.put("parameter", JsonValue.spelling(joined.parameter()));
      putOhms(node, "value", joined.value().si());
      node.put("joins", true);
    } else if (change instanceof Change.Upset upset) {
      node.put("disorder", JsonValue.spelling(upset.disorder())).put("present", upset.present());
    } else if (change instanceof Change.CarriedOver carried) {
      putSeconds(node, carried.seconds());
    } else if (change instanceof Change.HeldUp held) {
      putSeconds(node, held.seconds());
      node.put("joins", true);
    }
  }

  private static void putSeconds(ObjectNode node, double seconds) {
    if (seconds == Double.POSITIVE_INFINITY) {
      node.put("carryOverSeconds", JsonValue.NEVER);
    } else {
      node.put("carryOverSeconds", seconds);
    }
  }

  /** Writes a resistance (Ω), {@value JsonValue#OPEN} for an infinite one; null stays null. */
  public static void putOhms(ObjectNode node, String name, @Nullable Double ohms) {
    if (ohms != null && ohms == Double.POSITIVE_INFINITY) {
      node.put(name, JsonValue.OPEN);
    } else {
      node.put(name, ohms);
    }
  }
}
