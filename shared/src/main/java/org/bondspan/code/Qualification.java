package org.bondspan.code;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.bondspan.site.Electrode;
import org.bondspan.site.Electrode.ConcreteEncased;
import org.bondspan.site.Electrode.DrivenPipe;
import org.bondspan.site.Electrode.EncasedMetal;
import org.bondspan.site.Electrode.GroundRing;
import org.bondspan.site.Electrode.InGroundMetal;
import org.bondspan.site.Electrode.NotPermitted;
import org.bondspan.site.Electrode.OtherListed;
import org.bondspan.site.Electrode.Plate;
import org.bondspan.site.Electrode.PlateMetal;
import org.bondspan.site.Electrode.Rod;
import org.bondspan.site.Electrode.WaterPipeElectrode;
import org.bondspan.units.Length;
import org.bondspan.units.WireSize;

/**
 * Whether what was drawn is a grounding electrode, 250.52.
 *
 * @param shortfalls what it lacks, in words; empty when it qualifies
 */
public record Qualification(Rule rule, List<String> shortfalls) {
    private static final Length TEN_FEET = Length.ofFeet(10);
    private static final Length TWENTY_FEET = Length.ofFeet(20);
    private static final Length EIGHT_FEET = Length.ofFeet(8);

    public Qualification {
        shortfalls = List.copyOf(shortfalls);
    }

    public boolean qualifies() {
        return shortfalls.isEmpty();
    }

    /** Judges one electrode by its own facts. */
    public static Qualification of(Electrode electrode) {
        List<String> lacks = new ArrayList<>();
        Rule rule = judge(electrode, lacks);
        return new Qualification(rule, lacks);
    }

    private static Rule judge(Electrode electrode, List<String> lacks) {
        if (electrode instanceof WaterPipeElectrode pipe) {
            atLeast(pipe.earthContact(), TEN_FEET, "less than 10 ft of pipe in direct contact with earth", lacks);
            return Rule.WATER_PIPE_ELECTRODE;
        }
        if (electrode instanceof InGroundMetal metal) {
            atLeast(metal.earthContact(), TEN_FEET, "less than 10 ft of vertical contact with earth", lacks);
            return Rule.IN_GROUND_METAL;
        }
        if (electrode instanceof ConcreteEncased encased) {
            judgeEncased(encased, lacks);
            return Rule.CONCRETE_ENCASED;
        }
        if (electrode instanceof GroundRing ring) {
            atLeast(ring.conductorSize(), WireSize.AWG_2, "ring conductor smaller than 2 AWG", lacks);
            atLeast(ring.conductorLength(), TWENTY_FEET, "less than 20 ft of ring conductor", lacks);
            return Rule.GROUND_RING;
        }
        if (electrode instanceof NotPermitted barred) {
            lacks.add(barred.type() + " is not permitted as an electrode");
            return Rule.NOT_AN_ELECTRODE;
        }
        return judgeMade(electrode, lacks);
    }

    private static void judgeEncased(ConcreteEncased encased, List<String> lacks) {
        atLeast(encased.conductorLength(), TWENTY_FEET, "less than 20 ft of bar or conductor in the concrete", lacks);
        if (encased.metal() == EncasedMetal.REBAR) {
            atLeast(encased.diameter().orElseThrow(), "0.5", "bar thinner than 1/2 in", lacks);
        } else {
            atLeast(encased.conductorSize().orElseThrow(), WireSize.AWG_4, "copper smaller than 4 AWG", lacks);
        }
        atLeast(encased.cover(), "2", "less than 2 in of concrete cover", lacks);
        if (encased.coated()) {
            lacks.add("bars have a nonconductive coating");
        }
        if (encased.isolated()) {
            lacks.add("a vapor barrier, film or insulation lies between concrete and earth");
        }
    }

    private static Rule judgeMade(Electrode electrode, List<String> lacks) {
        if (electrode instanceof Rod rod) {
            atLeast(rod.rodLength(), EIGHT_FEET, "rod shorter than 8 ft", lacks);
            if (rod.listed()) {
                atLeast(rod.diameter(), "0.5", "listed rod thinner than 1/2 in", lacks);
            } else {
                atLeast(rod.diameter(), "0.625", "rod thinner than 5/8 in and not listed", lacks);
            }
            return Rule.ROD_OR_PIPE;
        }
        if (electrode instanceof DrivenPipe pipe) {
            atLeast(pipe.pipeLength(), EIGHT_FEET, "pipe shorter than 8 ft", lacks);
            atLeast(pipe.tradeSize(), "0.75", "pipe smaller than trade size 3/4", lacks);
            return Rule.ROD_OR_PIPE;
        }
        if (electrode instanceof Plate plate) {
            atLeast(plate.squareFeet(), "2", "plate exposes less than 2 sq ft", lacks);
            if (plate.metal() == PlateMetal.STEEL) {
                atLeast(plate.thickness(), "0.25", "steel plate thinner than 1/4 in", lacks);
            } else {
                atLeast(plate.thickness(), "0.06", "nonferrous plate thinner than 0.06 in", lacks);
            }
            return Rule.PLATE;
        }
        return electrode instanceof OtherListed ? Rule.OTHER_LISTED : Rule.OTHER_UNDERGROUND_METAL;
    }

    private static void atLeast(Length value, Length least, String otherwise, List<String> lacks) {
        if (value.isLessThan(least)) {
            lacks.add(otherwise);
        }
    }

    private static void atLeast(BigDecimal value, String least, String otherwise, List<String> lacks) {
        if (value.compareTo(new BigDecimal(least)) < 0) {
            lacks.add(otherwise);
        }
    }

    private static void atLeast(WireSize value, WireSize least, String otherwise, List<String> lacks) {
        if (!value.isAtLeast(least)) {
            lacks.add(otherwise);
        }
    }
}
