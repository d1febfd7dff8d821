package boilwright.vacuum;

import boilwright.rig.Foreline;
import boilwright.rig.GasSide;
import boilwright.rig.LinePiece;
import boilwright.rig.PieceKind;
import boilwright.rig.Rig;
import boilwright.rig.TypicalValues;
import boilwright.vacuum.SurfaceRates.Rate;
import java.util.ArrayList;
import java.util.List;

/** How much gas the parts of a rig give off, source by source. */
public final class GasLoads {
    /** Share of its cord's surface that a ring shows to the vacuum: a quarter; engineering judgement. */
    private static final double RING_SHOWN = 0.25;
    /** Length over width of the way through a ring's cord: as long as wide; engineering judgement. */
    private static final double RING_SQUARE = 1;
    /** Thickness of a hose's wall over its bore when it is not known; common practice, no source. */
    private static final double HOSE_WALL = 0.25;

    private final SurfaceRates rates;
    private final double roomPa;

    GasLoads(SurfaceRates rates, double roomPa) {
        this.rates = rates;
        this.roomPa = roomPa;
    }

    /** The sources of chamber and line at a time after they stood in air, s, largest first. */
    public static List<GasSource> of(Rig rig, SurfaceRates rates, double sinceAirS) {
        List<GasSource> sources = new ArrayList<>();
        if (rig.vacuum().isPresent()) {
            GasSide side = rig.vacuum().get();
            GasLoads loads = new GasLoads(rates, rig.room().pressurePa());
            loads.chamber(side.chamber(), sinceAirS, sources);
            loads.pieces(
                    "vacuum.line",
                    side.line(),
                    side.chamber().exposure() == GasSide.Exposure.HUMID_AIR,
                    sinceAirS,
                    sources);
        }
        sources.sort((a, b) -> Double.compare(b.flow(), a.flow()));
        return sources;
    }

    /** Gas of chamber and line that arrives at the foreline when the run begins, Pa m3/s. */
    static double arriving(Rig rig, SurfaceRates rates) {
        return rig.vacuum().isEmpty()
                ? 0
                : sum(of(rig, rates, rig.vacuum().get().chamber().sinceAirS()));
    }

    /** Gas of the foreline's own pieces, Pa m3/s; they have been pumped at least as long as the chamber. */
    static double ofForeline(Rig rig, SurfaceRates rates) {
        if (!(rig.foreline() instanceof Foreline.Backing backing)) {
            return 0;
        }
        List<GasSource> sources = new ArrayList<>();
        double since = rig.vacuum().map(side -> side.chamber().sinceAirS()).orElse(TypicalValues.SINCE_AIR_S);
        new GasLoads(rates, rig.room().pressurePa()).pieces("foreline.line", backing.line(), true, since, sources);
        return sum(sources);
    }

    static double sum(List<GasSource> sources) {
        return sources.stream().mapToDouble(GasSource::flow).sum();
    }

    private void chamber(GasSide.Chamber chamber, double sinceAirS, List<GasSource> sources) {
        boolean humid = chamber.exposure() == GasSide.Exposure.HUMID_AIR;
        for (int i = 0; i < chamber.surfaces().size(); i++) {
            GasSide.Surface surface = chamber.surfaces().get(i);
            Rate rate = rates.of(surface.material(), surface.baked(), humid, sinceAirS);
            sources.add(source(
                    "vacuum.chamber.surfaces[" + i + "]",
                    GasSource.Kind.SURFACE,
                    surface.material(),
                    -1,
                    rate,
                    surface.areaM2()));
        }
        for (int i = 0; i < chamber.seals().size(); i++) {
            sources.add(seal(chamber.seals().get(i), i, humid, sinceAirS));
        }
        if (chamber.leakPaM3PerS() > 0) {
            sources.add(leak("vacuum.chamber.leak", "chamber", -1, chamber.leakPaM3PerS()));
        }
    }

    private GasSource seal(GasSide.Seal seal, int i, boolean humid, double sinceAirS) {
        double ring = Math.PI * seal.ringDiameterM();
        double shown = RING_SHOWN * Math.PI * seal.cordDiameterM() * ring;
        Rate given = rates.of(seal.material(), false, humid, sinceAirS);
        Rate through = rates.permeability(seal.material());
        // area over length of the way through the cord is the ring's length
        double way = ring / RING_SQUARE * roomPa;
        return new GasSource(
                "vacuum.chamber.seals[" + i + "]",
                GasSource.Kind.SEAL,
                seal.material(),
                -1,
                given.value() * shown + through.value() * way,
                given.low() * shown + through.low() * way,
                given.high() * shown + through.high() * way);
    }

    private void pieces(String list, List<LinePiece> pieces, boolean humid, double sinceAirS, List<GasSource> sources) {
        for (int i = 0; i < pieces.size(); i++) {
            LinePiece piece = pieces.get(i);
            String path = list + "[" + i + "]";
            if (piece.material().isPresent()) {
                String material = piece.material().get();
                double area = piece.shape().wallAreaM2();
                Rate given = rates.of(material, false, humid, sinceAirS);
                Rate through = piece.kind() == PieceKind.HOSE ? throughWall(piece, material) : new Rate(0, 0, 0);
                Rate both = new Rate(
                        given.value() + through.value(), given.low() + through.low(), given.high() + through.high());
                sources.add(source(path, GasSource.Kind.PIECE, piece.name(), i, both, area));
            }
            if (piece.leakPaM3PerS() > 0) {
                sources.add(leak(path + ".leak", piece.name(), i, piece.leakPaM3PerS()));
            }
        }
    }

    /** Air through the wall of a hose over its inside, Pa m3/s per m2. */
    private Rate throughWall(LinePiece piece, String material) {
        Rate through = rates.permeability(material);
        double per = roomPa / (HOSE_WALL * piece.shape().inletDiameterM());
        return new Rate(through.value() * per, through.low() * per, through.high() * per);
    }

    private static GasSource source(
            String path, GasSource.Kind kind, String name, int piece, Rate rate, double areaM2) {
        return new GasSource(path, kind, name, piece, rate.value() * areaM2, rate.low() * areaM2, rate.high() * areaM2);
    }

    private static GasSource leak(String path, String name, int piece, double flow) {
        return new GasSource(path, GasSource.Kind.LEAK, name, piece, flow, flow, flow);
    }
}
