package boilwright.vacuum;

import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.gasflow.BaffleTransmission;
import boilwright.gasflow.ElbowTransmission;
import boilwright.gasflow.Gas;
import boilwright.gasflow.TubeTransmission;
import boilwright.gasflow.ViscousConductance;
import boilwright.rig.LinePiece;
import boilwright.rig.TypicalValues;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Pieces in series for one gas at one temperature. In molecular flow short pieces of different bore join by the rule of R. A.
 * Haefer (Vacuum 30 (1980) 217, from memory): the resistance of the inside of a piece, (1/A)(1/W - 1), adds up, and every
 * narrowing adds the difference of the reciprocal areas; in units of 4/cbar. Each narrowing is counted with the piece before
 * it, so that what the pieces cost adds up to the difference between chamber and pump. In transition and viscous flow each
 * piece conducts as {@link ViscousConductance} says; baffles and apertures keep their molecular conductance, which is the
 * least they have.
 *
 * <p>Pressures stand at the junctions, as a large vessel there would show them: number 0 is the chamber, the last the pump.
 */
public final class LineFlow {
    private static final double TOLERANCE = 1e-12;
    private static final int MOST_ROUNDS = 100;

    private final int count;
    private final double[] molecular;
    private final double[] viscousPerPa;
    private final double[] bore;
    private final double viscosity;
    private final double temperatureK;
    private final double molarMass;

    private LineFlow(int count, Gas gas, double temperatureK) {
        this.count = count;
        this.temperatureK = temperatureK;
        molarMass = gas.molarMass();
        viscosity = gas.viscosity(temperatureK);
        molecular = new double[count];
        viscousPerPa = new double[count];
        bore = new double[count];
    }

    /**
     * A line.
     *
     * @param pieces from the chamber to the pump
     * @param pumpDiameterM bore of the pump at the end of the line, m
     * @param gas what flows
     * @param temperatureK its temperature, K
     */
    public static LineFlow of(List<LinePiece> pieces, double pumpDiameterM, Gas gas, double temperatureK) {
        LineFlow flow = new LineFlow(pieces.size(), gas, temperatureK);
        double aperture = gas.aperture(temperatureK);
        for (int i = 0; i < pieces.size(); i++) {
            LinePiece.Shape shape = pieces.get(i).shape();
            double next = i + 1 < pieces.size() ? pieces.get(i + 1).shape().inletDiameterM() : pumpDiameterM;
            double out = perArea(shape.outletDiameterM());
            double resistance = inside(pieces.get(i)) + Math.max(0, out - perArea(next));
            flow.molecular[i] = resistance > 0 ? aperture / resistance : Double.POSITIVE_INFINITY;
            flow.bore[i] = viscousDiameter(shape);
            double length = shape.lengthM();
            flow.viscousPerPa[i] =
                    length > 0 ? ViscousConductance.poiseuille(flow.bore[i], length, 1, flow.viscosity) : 0;
        }
        return flow;
    }

    private static double perArea(double diameterM) {
        return 4 / (Math.PI * diameterM * diameterM);
    }

    /** Resistance of the inside of a piece, in units of 4/cbar, 1/m2. */
    private static double inside(LinePiece piece) {
        LinePiece.Shape shape = piece.shape();
        return switch (piece.kind()) {
            case TUBE, HOSE -> tube(shape.inletDiameterM(), shape.lengthM());
            case ELBOW -> elbow(shape.elbow().orElseThrow());
            case APERTURE -> 0;
            case REDUCER -> reducer(shape);
            case VALVE -> {
                OptionalDouble known = shape.conductanceM3PerS();
                yield known.isPresent()
                        ? Math.max(
                                0,
                                Gas.AIR.aperture(TypicalValues.DATA_SHEET_K) / known.getAsDouble()
                                        - perArea(shape.inletDiameterM()))
                        : tube(shape.inletDiameterM(), shape.lengthM());
            }
            case CHEVRON -> {
                LinePiece.Baffle vanes = shape.baffle().orElseThrow();
                yield baffle(vanes, BaffleTransmission.chevron(vanes.pitchM() / vanes.depthM(), vanes.angleRad()));
            }
            case OPAQUE_COIL, LOUVRE -> {
                LinePiece.Baffle vanes = shape.baffle().orElseThrow();
                yield baffle(vanes, BaffleTransmission.louvre(vanes.pitchM() / vanes.depthM(), vanes.angleRad()));
            }
        };
    }

    private static double elbow(LinePiece.Elbow elbow) {
        double w = ElbowTransmission.of(2 * elbow.lengthM() / elbow.innerDiameterM(), elbow.angleRad());
        return perArea(elbow.innerDiameterM()) * (1 / w - 1);
    }

    private static double reducer(LinePiece.Shape cone) {
        double in = cone.inletDiameterM();
        double out = cone.outletDiameterM();
        // the long cone's tube of equal conductance: d3 = 2 d1^2 d2^2/(d1 + d2) (A. Roth, Vacuum Technology, from
        // memory)
        double equal = Math.cbrt(2 * in * in * out * out / (in + out));
        return tube(equal, cone.lengthM()) + Math.max(0, perArea(out) - perArea(in));
    }

    private static double baffle(LinePiece.Baffle vanes, double transmission) {
        return perArea(vanes.innerDiameterM()) * (1 / transmission - 1);
    }

    private static double tube(double diameterM, double lengthM) {
        return perArea(diameterM) * (1 / TubeTransmission.of(2 * lengthM / diameterM) - 1);
    }

    private static double viscousDiameter(LinePiece.Shape shape) {
        double in = shape.inletDiameterM();
        double out = shape.outletDiameterM();
        // Poiseuille's law integrated along a cone
        return in == out ? in : Math.pow(3 * Math.pow(in * out, 3) / (in * in + in * out + out * out), 0.25);
    }

    /** Number of pieces. */
    public int count() {
        return count;
    }

    /**
     * Conductance of a piece.
     *
     * @param i its number, from the chamber
     * @param meanPa mean pressure in it, Pa
     * @return m3/s; infinite for a piece that costs nothing
     */
    public double conductance(int i, double meanPa) {
        if (Double.isInfinite(molecular[i]) || viscousPerPa[i] == 0) {
            return molecular[i];
        }
        double share =
                ViscousConductance.molecularShare(bore[i], Math.max(0, meanPa), viscosity, temperatureK, molarMass);
        return viscousPerPa[i] * Math.max(0, meanPa) + share * molecular[i];
    }

    /**
     * Pressure before a piece.
     *
     * @param i its number
     * @param afterPa pressure behind it, Pa, at least 0
     * @param flow gas through it, Pa m3/s; negative when it flows back
     * @return Pa, at least 0
     */
    public double before(int i, double afterPa, double flow) {
        if (flow == 0 || Double.isInfinite(molecular[i])) {
            return afterPa;
        }
        double drop = 0;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double mean = Math.max(0, afterPa + drop / 2);
            // with the molecular part as it is at this mean pressure, Poiseuille's law makes the drop a quadratic
            double level = conductance(i, mean) - viscousPerPa[i] * mean + viscousPerPa[i] * afterPa;
            double half = viscousPerPa[i] / 2;
            double inside = level * level + 4 * half * flow;
            if (inside < 0) {
                return 0;
            }
            double next = half == 0 ? flow / level : 2 * flow / (level + Math.sqrt(inside));
            boolean done = Math.abs(next - drop) <= TOLERANCE * Math.abs(next);
            drop = next;
            if (done) {
                return Math.max(0, afterPa + drop);
            }
        }
        throw new ComputationException(Message.of(
                MessageKey.ROOT_NOT_REACHED,
                "pressure before a piece of the line",
                Double.toString(afterPa),
                Double.toString(afterPa + drop)));
    }
}
