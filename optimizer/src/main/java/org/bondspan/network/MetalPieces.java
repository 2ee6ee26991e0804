package org.bondspan.network;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import org.bondspan.code.LineLengths;
import org.bondspan.site.LineVertex;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.SitePath.Beam;
import org.bondspan.site.SitePath.StructuralFrame;
import org.bondspan.site.SitePath.WaterPiping;
import org.bondspan.units.Length;

/** Takes frames and pipes apart into straight pieces on which copper may land. */
final class MetalPieces {
    private final List<LevelPlan> plans;
    private final ToIntFunction<String> levelIndex;

    MetalPieces(List<LevelPlan> plans, ToIntFunction<String> levelIndex) {
        this.plans = plans;
        this.levelIndex = levelIndex;
    }

    /** Columns and beams on every level of the frame. */
    List<MetalPiece> of(StructuralFrame frame) {
        List<MetalPiece> pieces = new ArrayList<>();
        for (String id : frame.levels()) {
            int level = levelIndex.applyAsInt(id);
            long floor = plans.get(level).floorElevation();
            long bottom = floor + frame.bottom().nanometres();
            long top = floor + frame.top().nanometres();
            for (PlanPoint column : frame.columns()) {
                PlanSegment place = new PlanSegment(column, column);
                pieces.add(new MetalPiece(frame.id(), level, place, bottom, top, 0, 0));
            }
            long height = floor + frame.beamHeight().nanometres();
            for (Beam beam : frame.beams()) {
                PlanSegment plan = new PlanSegment(beam.from(), beam.to());
                pieces.add(new MetalPiece(frame.id(), level, plan, height, height, 0, 0));
            }
        }
        return pieces;
    }

    /** The pipe from its first vertex to {@code usable} along it. */
    List<MetalPiece> of(WaterPiping pipe, Length usable) {
        List<MetalPiece> pieces = new ArrayList<>();
        List<LineVertex> vertices = pipe.line().vertices();
        int level = levelIndex.applyAsInt(pipe.line().level());
        long floor = plans.get(level).floorElevation();
        long distance = 0;
        for (int i = 1; i < vertices.size() && distance < usable.nanometres(); i++) {
            LineVertex a = vertices.get(i - 1);
            LineVertex b = vertices.get(i);
            long run = LineLengths.between(a, b).nanometres();
            long kept = Math.min(run, usable.nanometres() - distance);
            LineVertex end = LineLengths.along(a, b, Length.ofNanometres(kept));
            pieces.add(new MetalPiece(
                    pipe.id(),
                    level,
                    new PlanSegment(a.at(), end.at()),
                    floor + a.height().nanometres(),
                    floor + end.height().nanometres(),
                    distance,
                    distance + kept));
            distance += kept;
        }
        return pieces;
    }
}
