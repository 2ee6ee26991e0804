package org.bondspan.viewer.work;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.bondspan.io.ProposalReader;
import org.bondspan.layout.Proposal;
import org.bondspan.layout.ReviewOutcome;
import org.bondspan.sheet.plan.LevelPicture;
import org.bondspan.sheet.plan.Picture;
import org.bondspan.site.Level;
import org.bondspan.site.Site;
import org.bondspan.usecase.ReviewProposal;
import org.bondspan.usecase.RouteLimits;
import org.bondspan.viewer.state.Reviewed;

/** Reviews proposals and draws them with their findings. */
final class Reviewing {
    private Reviewing() {}

    /**
     * Throws what the reader of proposals throws.
     *
     * @param stop ends the search for the least copper, which is for the comparison alone
     */
    static Reviewed of(Site site, Path path, BooleanSupplier stop) {
        Proposal proposal = ProposalReader.read(path, site);
        ReviewOutcome outcome = ReviewProposal.of(
                site,
                proposal,
                new RouteLimits(Optional.empty(), stop, RouteLimits.none().progress()));
        Map<String, Picture> pictures = new LinkedHashMap<>();
        for (Level level : site.levels()) {
            pictures.put(level.id(), LevelPicture.of(site, proposal, outcome, level));
        }
        return new Reviewed(path, proposal, outcome, pictures);
    }
}
