package org.bondspan.io;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.bondspan.site.Electrode;
import org.bondspan.site.Electrode.ConcreteEncased;
import org.bondspan.site.Electrode.DrivenPipe;
import org.bondspan.site.Electrode.EncasedMetal;
import org.bondspan.site.Electrode.FrameTie;
import org.bondspan.site.Electrode.GroundRing;
import org.bondspan.site.Electrode.InGroundMetal;
import org.bondspan.site.Electrode.NotPermitted;
import org.bondspan.site.Electrode.OtherListed;
import org.bondspan.site.Electrode.OtherUndergroundMetal;
import org.bondspan.site.Electrode.Plate;
import org.bondspan.site.Electrode.PlateMetal;
import org.bondspan.site.Electrode.Rod;
import org.bondspan.site.Electrode.Terminals;
import org.bondspan.site.Electrode.TieMeans;
import org.bondspan.site.Electrode.WaterPipeElectrode;
import org.bondspan.site.Electrode.WaterUse;
import org.bondspan.units.Length;
import org.bondspan.units.LengthUnit;
import org.bondspan.units.WireSize;

/** Reads electrodes: by type the facts that 250.52 asks for, each of them required, because none is guessed. */
final class ElectrodeReader {
    static final List<String> TYPES = List.of(
            "water-pipe",
            "in-ground-metal",
            "concrete-encased",
            "ring",
            "rod",
            "pipe",
            "plate",
            "other-listed",
            "other-underground-metal",
            "gas-pipe",
            "aluminum",
            "pool-steel");

    private static final String TYPE = "Write one of " + String.join(", ", TYPES);

    private ElectrodeReader() {}

    static Electrode electrode(Fields fields) {
        Optional<String> type = fields.require("type", TYPE)
                .flatMap(node -> fields.scope().values().text(node, fields.path("type")));
        return switch (type.orElse("")) {
            case "water-pipe" -> waterPipe(fields);
            case "in-ground-metal" -> inGroundMetal(fields);
            case "concrete-encased" -> concreteEncased(fields);
            case "ring" -> ring(fields);
            case "rod" -> rod(fields);
            case "pipe" -> pipe(fields);
            case "plate" -> plate(fields);
            case "other-listed" -> new OtherListed(terminals(fields));
            case "other-underground-metal" -> new OtherUndergroundMetal(terminals(fields), fields.flag("use", false));
            case "gas-pipe", "aluminum", "pool-steel" -> new NotPermitted(terminals(fields), type.orElse(""));
            default -> unclear(fields, type);
        };
    }

    private static Electrode unclear(Fields fields, Optional<String> type) {
        type.ifPresent(
                word -> fields.report("type", "\"" + word + "\" is no type of electrode", Nearest.advice(word, TYPES)));
        NotPermitted standIn =
                new NotPermitted(new Terminals(fields.id(Kind.UNCLEAR), ConnectionReader.readAlongPipe(fields)), "");
        fields.acceptAll();
        return standIn;
    }

    private static Terminals terminals(Fields fields) {
        return terminals(fields, Kind.OTHER_ELECTRODE);
    }

    private static Terminals terminals(Fields fields, Kind kind) {
        return new Terminals(fields.id(kind), ConnectionReader.read(fields));
    }

    private static Electrode waterPipe(Fields fields) {
        return new WaterPipeElectrode(
                new Terminals(fields.id(Kind.WATER_PIPE_ELECTRODE), ConnectionReader.readAlongPipe(fields)),
                earthContact(fields, "250.52(A)(1) asks for at least 10 ft"),
                fields.findWord("use", WaterUse.class).orElse(WaterUse.DOMESTIC));
    }

    private static Electrode inGroundMetal(Fields fields) {
        return new InGroundMetal(
                terminals(fields),
                earthContact(fields, "250.52(A)(2) asks for at least 10 ft, vertically"),
                fields.findReference("frame", Kind.FRAME));
    }

    private static Length earthContact(Fields fields, String rule) {
        return fields.distance("earthContact", "Give the length in direct contact with earth in {unit}; " + rule);
    }

    private static Electrode concreteEncased(Fields fields) {
        Optional<EncasedMetal> metal =
                fields.requireWord("conductor", EncasedMetal.class, "Write \"rebar\" or \"copper\"");
        Optional<BigDecimal> diameter = metal.equals(Optional.of(EncasedMetal.REBAR))
                ? Optional.of(fields.measure(
                        "diameter", "Give the diameter of the bar in inches; 250.52(A)(3) asks for at least 0.5"))
                : fields.findMeasure("diameter");
        Optional<WireSize> size = metal.equals(Optional.of(EncasedMetal.COPPER))
                ? Optional.of(conductorSize(fields, "250.52(A)(3) asks for 4 AWG or larger"))
                : fields.findSize("conductorSize");
        return new ConcreteEncased(
                terminals(fields),
                fields.distance(
                        "conductorLength",
                        "Give the length in the concrete in {unit}; 250.52(A)(3) asks for at least 20 ft"),
                metal.orElse(EncasedMetal.REBAR),
                diameter,
                size,
                fields.measure("cover", "Give the concrete around it in inches; 250.52(A)(3) asks for at least 2"),
                fields.flag("coated", false),
                fields.flag("isolated", false),
                fields.flag("use", false),
                fields.flag("reachable", true),
                fields.findObject("tiedToFrame", "tie to the frame", ElectrodeReader::frameTie));
    }

    private static FrameTie frameTie(Fields fields) {
        return new FrameTie(
                fields.reference("frame", Kind.FRAME, "Give the id of the structural frame"),
                fields.requireWord(
                                "means",
                                TieMeans.class,
                                "Write \"weld\", \"exothermic\", \"tie-wire\" or \"wet-set\"; wet-set bolts do not count")
                        .orElse(TieMeans.WET_SET));
    }

    private static Electrode ring(Fields fields) {
        return new GroundRing(
                terminals(fields, Kind.RING_ELECTRODE),
                conductorSize(fields, "250.52(A)(4) asks for 2 AWG or larger"),
                fields.distance(
                        "conductorLength",
                        "Give the length of bare copper in {unit}; 250.52(A)(4) asks for at least 20 ft"),
                fields.findDistance("depth"));
    }

    private static WireSize conductorSize(Fields fields, String rule) {
        return fields.size("conductorSize", "Give the size of the bare copper; " + rule);
    }

    private static Electrode rod(Fields fields) {
        return new Rod(
                terminals(fields),
                fields.distance(
                        "rodLength", "Give the length of the rod in {unit}; 250.52(A)(5) asks for at least 8 ft"),
                fields.measure(
                        "diameter",
                        "Give the diameter of the rod in inches; 250.52(A)(5) asks for at least 0.625, listed rods 0.5"),
                fields.flag("listed", false),
                fields.findMeasure("resistance"));
    }

    private static Electrode pipe(Fields fields) {
        return new DrivenPipe(
                terminals(fields),
                fields.distance(
                        "pipeLength", "Give the length of the pipe in {unit}; 250.52(A)(5) asks for at least 8 ft"),
                fields.measure("tradeSize", "Give the trade size in inches; 250.52(A)(5) asks for at least 0.75"),
                fields.findMeasure("resistance"));
    }

    private static Electrode plate(Fields fields) {
        return new Plate(
                terminals(fields),
                squareFeet(fields),
                fields.requireWord("material", PlateMetal.class, "Write \"steel\" or \"nonferrous\"")
                        .orElse(PlateMetal.STEEL),
                fields.measure(
                        "thickness",
                        "Give the thickness in inches; 250.52(A)(7) asks for at least 0.25 of steel, 0.06 of nonferrous metal"),
                fields.findMeasure("resistance"));
    }

    private static BigDecimal squareFeet(Fields fields) {
        LengthUnit unit = fields.scope().values().unit();
        BigDecimal area = fields.measure(
                "area", "Give the surface exposed to soil in square {unit}; 250.52(A)(7) asks for at least 2 sq ft");
        return unit == LengthUnit.FOOT ? area : PlateArea.squareFeetOfSquareMetres(area);
    }
}
