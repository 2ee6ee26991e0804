package org.bondspan.review;

import java.util.Optional;
import org.bondspan.layout.Proposal.Enclosure;
import org.bondspan.layout.Proposal.ProposedConductor;

/** 250.64(B): smaller than 6 AWG always in raceway; 6 AWG and larger where exposed to damage. */
final class ProtectionCheck implements ConductorCheck {
    @Override
    public Optional<Offence> find(ProposedConductor conductor) {
        boolean inRaceway =
                conductor.enclosure() == Enclosure.RACEWAY || conductor.enclosure() == Enclosure.FERROUS_RACEWAY;
        if (inRaceway) {
            return Optional.empty();
        }
        String id = conductor.id();
        if (conductor.size().needsRaceway()) {
            return Optional.of(offence(id, id + " is " + conductor.size().label() + " and not in raceway."));
        }
        return conductor.exposedToDamage()
                ? Optional.of(offence(id, id + " is exposed to damage and not in raceway."))
                : Optional.empty();
    }

    private static Offence offence(String id, String found) {
        return new Offence(CheckedRule.UNPROTECTED, id, found, "Run it in raceway or cable armor.");
    }
}
