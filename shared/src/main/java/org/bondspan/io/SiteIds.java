package org.bondspan.io;

import org.bondspan.io.json.Spot;
import org.bondspan.site.Site;

/** The ids of a site, for files that name its things. */
final class SiteIds {
    private SiteIds() {}

    static Ids of(Site site) {
        Ids ids = new Ids();
        site.levels().forEach(level -> {
            declare(ids, Kind.LEVEL, level.id());
            level.closedAreas().forEach(area -> declare(ids, Kind.CLOSED_AREA, area.id()));
            level.walls().forEach(wall -> declare(ids, Kind.WALL, wall.id()));
        });
        site.risers().forEach(riser -> declare(ids, Kind.RISER, riser.id()));
        site.services().forEach(service -> declare(ids, Kind.SERVICE, service.id()));
        site.electrodes().forEach(electrode -> declare(ids, Kind.ELECTRODE, electrode.id()));
        site.paths().forEach(path -> declare(ids, Kind.PATH, path.id()));
        site.busbars().forEach(busbar -> declare(ids, Kind.BUSBAR, busbar.id()));
        return ids;
    }

    private static void declare(Ids ids, Kind kind, String id) {
        ids.declare(kind, id, Spot.START, "");
    }
}
