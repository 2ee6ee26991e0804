package org.bondspan.code;

import java.util.Optional;
import org.bondspan.site.CodeEdition;

/**
 * The rule table: every section that Bondspan applies, what it says in our own words, and where editions differ. The
 * section is written alike in every edition; {@link #findEditionNote} gives what an adopted edition has instead.
 *
 * <p>Sources: public teaching pages and excerpts for the sections of Part III of Article 250; entries whose comment
 * says "from memory" were not read there. Check against a licensed copy of the adopted edition.
 */
public enum Rule {
    SERVICE_CONNECTION(
            "250.24(A)",
            "the conductor lands on the grounded service conductor, up to the service disconnect's neutral"),
    ELECTRODE_SYSTEM("250.50", "every electrode that is present is bonded into one grounding electrode system"),
    WATER_PIPE_ELECTRODE(
            "250.52(A)(1)", "metal underground water pipe with at least 10 ft in direct contact with earth"),
    IN_GROUND_METAL(
            "250.52(A)(2)", "metal support structure with at least 10 ft of vertical earth contact; one is enough"),
    CONCRETE_ENCASED(
            "250.52(A)(3)",
            "20 ft of bare or galvanized bar of at least 1/2 in, or of bare copper of at least 4 AWG, under 2 in of concrete in direct contact with earth; one is enough"),
    GROUND_RING("250.52(A)(4)", "at least 20 ft of bare copper, 2 AWG or larger, round the building"),
    ROD_OR_PIPE("250.52(A)(5)", "at least 8 ft long; rod 5/8 in or listed 1/2 in, pipe trade size 3/4"),
    OTHER_LISTED("250.52(A)(6)", "other listed electrode"),
    PLATE("250.52(A)(7)", "at least 2 sq ft; steel 1/4 in, nonferrous 0.06 in thick"),
    OTHER_UNDERGROUND_METAL("250.52(A)(8)", "other local metal underground structure; need not be used"),
    NOT_AN_ELECTRODE("250.52(B)", "gas pipe, aluminum and pool steel are no electrodes"),
    LONE_DRIVEN_ELECTRODE("250.53(A)(2)", "a single rod, pipe or plate needs a second electrode or at most 25 ohms"),
    DRIVEN_SPACING("250.53(A)(3)", "rods, pipes and plates stand at least 6 ft apart"),
    ELECTRODE_BONDING_JUMPER(
            "250.53(C)", "jumpers between electrodes; rebar is not used as a conductor between electrodes"),
    PIPE_CONTINUITY("250.53(D)(1)", "the path along a water pipe does not rely on meters and the like"),
    WATER_PIPE_SUPPLEMENT("250.53(D)(2)", "a water pipe is supplemented by another electrode"),
    RING_DEPTH("250.53(F)", "a ground ring lies at least 30 in deep"), // from memory
    COMMON_SYSTEM("250.58", "all services of a building use one grounding electrode system"),
    ALUMINUM_PLACES("250.64(A)", "where aluminum conductors may not run or end"),
    PROTECTION("250.64(B)", "smaller than 6 AWG always in raceway or cable armor"),
    UNBROKEN(
            "250.64(C)",
            "the grounding electrode conductor is unbroken, or joined by irreversible or exothermic means"),
    RACEWAY_BOND("250.64(E)", "a ferrous raceway around the conductor is bonded to it at both ends"),
    SEVERAL_DISCONNECTS(
            "250.64(D)(1)",
            "several disconnects of one supply: the common conductor by their sum, each tap by its own"),
    ROUTING_TO_ELECTRODES("250.64(F)", "sized for the largest conductor that any electrode connected to it requires"),
    BUSBAR("250.64(F)(3)", "conductors may be joined on a busbar of at least 1/4 in by 2 in"),
    CONDUCTOR_SIZE(
            "250.66", "Table 250.66 by the largest ungrounded service conductor, or the sum of its parallel sets"),
    DRIVEN_SIZE("250.66(A)", "to rods, pipes and plates alone: not larger than 6 AWG copper"),
    CONCRETE_ENCASED_SIZE("250.66(B)", "to concrete-encased electrodes alone: not larger than 4 AWG copper"),
    RING_SIZE("250.66(C)", "to a ground ring alone: not larger than the ring's own conductor"),
    ACCESS("250.68(A)", "connections are accessible"),
    EFFECTIVE_PATH("250.68(B)", "jumpers around insulated joints and removable equipment"),
    FRAME_AND_PIPE("250.68(C)", "which metal may serve as the conductor between electrodes"),
    WATER_PIPE_FIVE_FEET(
            "250.68(C)(1)",
            "interior metal water pipe carries within 5 ft of its entrance; further only exposed and under qualified supervision"),
    STRUCTURAL_FRAME("250.68(C)(2)", "the metal structural frame may carry; hold-down bolts may join it to the bars"),
    REBAR_STUB("250.68(C)(3)", "a bar may be extended to reach the electrode, never to join electrodes"), // from memory
    CLEAN_SURFACES("250.12", "paint and the like are removed where conductors land"),
    PIPING_BOND("250.104(A)", "metal water piping is bonded"),
    FRAME_BOND("250.104(C)", "exposed structural metal joined to a frame is bonded"),
    SUPPLY_SIDE_TABLE("250.102(C)(1)", "beyond the table, 12.5 percent of the area of the phase conductors"),
    LENGTH("length", "no section: a stated length cannot be shorter than the run"),
    SITE("site", "no section: a result is of the site that it names"),
    GEOMETRY("geometry", "no section: how the plan is drawn bears on the answer"),
    PROOF("proof", "no section: why an answer is not proven least"),
    NO_PARALLEL("310.10(G)", "grounding electrode conductors are not run as smaller conductors in parallel");

    private final String section;
    private final String says;

    Rule(String section, String says) {
        this.section = section;
        this.says = says;
    }

    /** The section as results write it, in every edition. */
    public String section() {
        return section;
    }

    /** What it says, in our own words. */
    public String says() {
        return says;
    }

    /** What the adopted edition has instead, where it differs from the text behind {@link #section}. */
    public Optional<String> findEditionNote(CodeEdition edition) {
        boolean before2020 = edition.isBefore(CodeEdition.NEC_2020);
        return Optional.ofNullable(
                switch (this) {
                    case ELECTRODE_BONDING_JUMPER, REBAR_STUB ->
                        before2020
                                ? "The " + edition.year()
                                        + " text does not yet name rebar; Bondspan keeps it out in every edition."
                                : null;
                    case NO_PARALLEL -> before2020 ? "It is 310.10(H) in the " + edition.year() + " edition." : null;
                    case WATER_PIPE_FIVE_FEET ->
                        edition.isBefore(CodeEdition.NEC_2023)
                                ? "Measuring the 5 ft along the pipe came with the 2023 text; Bondspan does so in every edition."
                                : null;
                    default -> null;
                });
    }
}
