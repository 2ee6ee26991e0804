package org.bondspan.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bondspan.code.GroundingElectrodeSystem;
import org.bondspan.code.Landing;
import org.bondspan.code.LineLengths;
import org.bondspan.code.MediaThatMayCarry;
import org.bondspan.code.Need;
import org.bondspan.code.Rule;
import org.bondspan.code.StretchNeed;
import org.bondspan.layout.Conductor;
import org.bondspan.layout.End;
import org.bondspan.layout.Piece;
import org.bondspan.layout.Protection;
import org.bondspan.layout.Role;
import org.bondspan.layout.RunLength;
import org.bondspan.site.LineVertex;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath.Break;
import org.bondspan.site.SitePath.WaterPiping;
import org.bondspan.units.Length;
import org.bondspan.units.WireSize;

/**
 * Jumpers around meters and the like in every pipe that must be connected, 250.53(D)(1), 250.68(B), at the size of the
 * pipe's bond; whether the tie passes them or not.
 */
final class PipeJumpers {
    private final Site site;
    private final WireSize need;
    private final Optional<InstalledPrices> prices;

    /** @param prices where a larger size is bought that is cheaper installed */
    PipeJumpers(Site site, StretchNeed need, Optional<InstalledPrices> prices) {
        this.site = site;
        this.need = need.ofWhole(Need.TABLE);
        this.prices = prices;
    }

    List<Conductor> list(GroundingElectrodeSystem system, MediaThatMayCarry media) {
        List<Conductor> jumpers = new ArrayList<>();
        for (WaterPiping pipe : site.listPaths(WaterPiping.class)) {
            boolean bonded = system.obligations().stream()
                    .flatMap(obligation -> obligation.landings().stream())
                    .anyMatch(landing ->
                            landing instanceof Landing.AlongPath && landing.of().equals(pipe.id()));
            if (bonded || media.find(pipe.id()).isPresent()) {
                pipe.breaks().stream()
                        .filter(gap -> !gap.installed())
                        .forEach(gap -> jumpers.add(jumper(pipe, gap, "B" + (jumpers.size() + 1))));
            }
        }
        return jumpers;
    }

    private Conductor jumper(WaterPiping pipe, Break gap, String id) {
        End place = new End.OnPath(pipe.id(), Optional.of(gap.distance()));
        Length height = position(pipe, gap.distance()).height();
        Piece piece = new Piece(gap.jumper(), height, height);
        WireSize size = prices.map(each -> each.cheapest(need, piece)).orElse(need);
        return new Conductor(
                id,
                size,
                Role.BONDING_JUMPER,
                Protection.of(size),
                place,
                place,
                List.of(position(pipe, gap.distance())),
                new RunLength(Length.ZERO, Length.ZERO, Length.ZERO, gap.jumper()),
                List.of(pipe.id()),
                List.of(Rule.PIPE_CONTINUITY.section(), Rule.EFFECTIVE_PATH.section(), Rule.CONDUCTOR_SIZE.section()),
                "jumper around the " + gap.kind() + " in " + pipe.id() + ", at the size of the pipe's bond",
                List.of(piece),
                List.of());
    }

    private static Position position(WaterPiping pipe, Length distance) {
        LineVertex place = LineLengths.placeAt(pipe.line(), distance);
        return new Position(pipe.line().level(), place.at(), place.height());
    }
}
