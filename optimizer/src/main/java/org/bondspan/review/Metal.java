package org.bondspan.review;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.bondspan.code.Carrier;
import org.bondspan.code.LineLengths;
import org.bondspan.code.MediaThatMayCarry;
import org.bondspan.code.Qualification;
import org.bondspan.layout.Excluded;
import org.bondspan.site.Electrode;
import org.bondspan.site.Electrode.ConcreteEncased;
import org.bondspan.site.Electrode.Driven;
import org.bondspan.site.Electrode.GroundRing;
import org.bondspan.site.Electrode.InGroundMetal;
import org.bondspan.site.Electrode.WaterPipeElectrode;
import org.bondspan.site.Line;
import org.bondspan.site.LineVertex;
import org.bondspan.site.PlanPoint;
import org.bondspan.site.Position;
import org.bondspan.site.Site;
import org.bondspan.site.SitePath;
import org.bondspan.site.SitePath.InstalledConductor;
import org.bondspan.site.SitePath.NeverCarries;
import org.bondspan.site.SitePath.RingPath;
import org.bondspan.site.SitePath.StructuralFrame;
import org.bondspan.site.SitePath.WaterPiping;
import org.bondspan.units.Length;
import org.bondspan.units.Numbers;
import org.bondspan.units.WireSize;

/** Judges the metal of a site as part of a way: what may be passed, what may not, and by which section. */
final class Metal {
    /** Keys of vertices of paths begin so. */
    static final String PATH = "path ";
    /** Keys of the vertices for pipe beyond its usable part end so. */
    static final String BEYOND = " beyond usable";

    private final Site site;
    private final MediaThatMayCarry media;
    private final Map<String, SitePath> paths = new HashMap<>();
    private final Map<String, Electrode> electrodes = new HashMap<>();

    Metal(Site site) {
        this.site = site;
        this.media = MediaThatMayCarry.of(site);
        site.paths().forEach(path -> paths.put(path.id(), path));
        site.electrodes().forEach(electrode -> electrodes.put(electrode.id(), electrode));
    }

    MediaThatMayCarry media() {
        return media;
    }

    /** The vertex of an electrode: the path that it is part of, or one of its own. */
    Node electrode(String id) {
        Electrode electrode = electrodes.get(id);
        if (electrode == null) {
            throw new IllegalArgumentException("no electrode " + id);
        }
        Optional<String> path = findPathOf(electrode);
        if (path.isPresent()) {
            return path(path.get(), Optional.of(Length.ZERO));
        }
        String key = "electrode " + id;
        if (electrode instanceof Driven || electrode instanceof WaterPipeElectrode) {
            return Node.open(key, id);
        }
        return new Node(key, id, true, Optional.empty(), List.of(passing(electrode)));
    }

    /**
     * The pipe that a water-pipe electrode continues in, a ring's path with leave, the frame of an in-ground member.
     */
    private Optional<String> findPathOf(Electrode electrode) {
        if (electrode instanceof WaterPipeElectrode) {
            return site.listPaths(WaterPiping.class).stream()
                    .filter(pipe -> pipe.metal() && pipe.electrode().equals(Optional.of(electrode.id())))
                    .map(WaterPiping::id)
                    .findFirst();
        }
        if (electrode instanceof GroundRing) {
            return media.carriers().stream()
                    .filter(carrier -> carrier instanceof Carrier.Ring ring
                            && ring.electrode().id().equals(electrode.id()))
                    .map(carrier -> carrier.path().id())
                    .findFirst();
        }
        if (electrode instanceof InGroundMetal metal && Qualification.of(metal).qualifies()) {
            return metal.frame().filter(frame -> media.find(frame).isPresent());
        }
        return Optional.empty();
    }

    private static Offence passing(Electrode electrode) {
        String id = electrode.id();
        if (electrode instanceof ConcreteEncased) {
            return new Offence(
                    CheckedRule.THROUGH_CONCRETE_ENCASED,
                    id,
                    "The way passes through concrete-encased electrode " + id + ": it may only end there.",
                    "Run the conductor past it unbroken and land a conductor of its own on it.");
        }
        if (electrode instanceof GroundRing) {
            return ringWithoutLeave(id);
        }
        boolean gas = electrode.type().equals("gas-pipe");
        return new Offence(
                gas ? CheckedRule.GAS_PIPE_AS_LINK : CheckedRule.OTHER_METAL_AS_LINK,
                id,
                "The way passes through " + electrode.type() + " " + id + ", which may not carry.",
                "Join the conductors in copper beside it.");
    }

    private static Offence ringWithoutLeave(String id) {
        return new Offence(
                CheckedRule.RING_WITHOUT_LEAVE,
                id,
                "Ring " + id + " joins other things without the site's leave; the code neither allows nor bars it.",
                "Ask the authority having jurisdiction, or join in copper beside the ring.");
    }

    /** The vertex of a path, at a distance along it where that matters. */
    Node path(String id, Optional<Length> distance) {
        SitePath path = paths.get(id);
        if (path == null) {
            throw new IllegalArgumentException("no path " + id);
        }
        Optional<Carrier> carrier = media.find(id);
        if (carrier.isPresent()) {
            return carrier(carrier.get(), distance);
        }
        if (path instanceof InstalledConductor conductor) {
            return new Node(key(id), id, true, Optional.of(conductor.size()), List.of());
        }
        if (path instanceof RingPath ring) {
            return electrode(ring.electrode());
        }
        return new Node(key(id), id, true, Optional.empty(), List.of(carrying(path)));
    }

    private static Node carrier(Carrier carrier, Optional<Length> distance) {
        String id = carrier.path().id();
        if (carrier instanceof Carrier.Ring ring) {
            return new Node(key(id), id, true, Optional.of(ring.electrode().conductorSize()), List.of());
        }
        if (carrier instanceof Carrier.Pipe pipe
                && distance.map(pipe.usable()::isLessThan).orElse(false)) {
            return Node.open(key(id) + BEYOND, id);
        }
        return Node.open(key(id), id);
    }

    static String key(String path) {
        return PATH + path;
    }

    private Offence carrying(SitePath path) {
        String reason = media.excluded().stream()
                .filter(excluded -> excluded.path().equals(path.id()))
                .map(Excluded::reason)
                .collect(Collectors.joining(" "));
        CheckedRule check = CheckedRule.OTHER_METAL_AS_LINK;
        if (path instanceof NeverCarries never) {
            check = switch (never.kind()) {
                case FOOTING_REBAR -> CheckedRule.REBAR_AS_LINK;
                case GAS_PIPE -> CheckedRule.GAS_PIPE_AS_LINK;
                case ROOF_DECK, OTHER -> CheckedRule.OTHER_METAL_AS_LINK;
            };
        } else if (path instanceof StructuralFrame) {
            check = CheckedRule.FRAME_AS_LINK;
        } else if (path instanceof WaterPiping) {
            check = CheckedRule.PIPE_TOO_FAR_IN;
        }
        String what = path.medium().replace('-', ' ') + " " + path.id() + " is used as a link. " + reason;
        return new Offence(check, path.id(), what.strip(), "Run copper of full size instead.");
    }

    /** What is unlawful about the stretch of a pipe beyond its usable part. */
    Offence beyondUsable(String pipe, Length usable) {
        String limit = Numbers.print(usable, site.lengthUnit());
        return new Offence(
                CheckedRule.PIPE_TOO_FAR_IN,
                pipe,
                "A conductor lands on " + pipe + " further than " + limit + " from the point of entrance.",
                "Land it within " + limit + ", measured along the pipe.");
    }

    /** The frame to which a concrete-encased electrode is tied, if that ties and carries. */
    Optional<String> findTiedFrame(ConcreteEncased bars) {
        return bars.tiedToFrame()
                .filter(tie -> tie.means() != Electrode.TieMeans.WET_SET)
                .map(Electrode.FrameTie::frame)
                .filter(frame -> media.find(frame).isPresent());
    }

    Electrode findElectrode(String id) {
        Electrode electrode = electrodes.get(id);
        if (electrode == null) {
            throw new IllegalArgumentException("no electrode " + id);
        }
        return electrode;
    }

    /** Whether a path passes that position, as far as its drawn line or members tell. */
    boolean isAt(String path, Position position) {
        SitePath drawn = paths.get(path);
        if (drawn instanceof StructuralFrame frame) {
            return isOnFrame(frame, position);
        }
        return drawn != null
                && findLine(drawn).map(line -> isOnLine(line, position)).orElse(false);
    }

    private static Optional<Line> findLine(SitePath path) {
        if (path instanceof InstalledConductor conductor) {
            return Optional.of(conductor.line());
        }
        return path instanceof WaterPiping pipe ? Optional.of(pipe.line()) : Optional.empty();
    }

    private static boolean isOnLine(Line line, Position position) {
        return line.level().equals(position.level())
                && LineLengths.findDistance(line, position.at(), position.height())
                        .isPresent();
    }

    private static boolean isOnFrame(StructuralFrame frame, Position position) {
        if (!frame.levels().contains(position.level())) {
            return false;
        }
        boolean inHeight =
                !position.height().isLessThan(frame.bottom()) && !frame.top().isLessThan(position.height());
        return (inHeight && frame.columns().stream().anyMatch(column -> isSame(column, position.at())))
                || (frame.beamHeight().equals(position.height())
                        && frame.beams().stream().anyMatch(beam -> isOnBeam(beam, position.at())));
    }

    private static boolean isOnBeam(SitePath.Beam beam, PlanPoint at) {
        Length none = Length.ZERO;
        return LineLengths.findDistance(
                        new Line("", List.of(new LineVertex(beam.from(), none), new LineVertex(beam.to(), none))),
                        at,
                        none)
                .isPresent();
    }

    private static boolean isSame(PlanPoint a, PlanPoint b) {
        long most = LineLengths.SAME_PLACE.nanometres();
        return Math.abs(a.x() - b.x()) <= most && Math.abs(a.y() - b.y()) <= most;
    }

    /** Vertices of a line or pipe, and columns and beam ends of a frame: where it can touch an installed conductor. */
    List<Position> places(String path) {
        SitePath drawn = paths.get(path);
        if (drawn instanceof InstalledConductor conductor) {
            return places(conductor.line());
        }
        return drawn instanceof WaterPiping pipe ? places(pipe.line()) : List.of();
    }

    private static List<Position> places(Line line) {
        return line.vertices().stream()
                .map(vertex -> new Position(line.level(), vertex.at(), vertex.height()))
                .toList();
    }

    /** The size of an installed conductor. */
    Optional<WireSize> findInstalled(String path) {
        return paths.get(path) instanceof InstalledConductor conductor
                ? Optional.of(conductor.size())
                : Optional.empty();
    }
}
