package boilwright.rig;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One piece of a vacuum line, between chamber and pump or between pump and backing pump.
 *
 * @param kind what it is
 * @param name what people call it; unique among all pieces of the rig
 * @param shape its inside
 * @param material id of the material inside, in the outgassing data, when its gas is to be counted
 * @param leakPaM3PerS a known leak into it, Pa m3/s of air; 0 for none
 */
public record LinePiece(PieceKind kind, String name, Shape shape, Optional<String> material, double leakPaM3PerS) {
    /** The inside of a piece. */
    public sealed interface Shape {
        /** Bore at the chamber's side, m. */
        double inletDiameterM();

        /** Bore at the pump's side, m. */
        default double outletDiameterM() {
            return inletDiameterM();
        }

        /** Inside wall that gives off gas, m2. */
        double wallAreaM2();

        /** Length of its open passage along the flow, m; 0 for a hole and where vanes fill it. */
        double lengthM();

        /** What it takes of the line's axis, m. */
        default double axisM() {
            return lengthM();
        }

        /** The same shape with another bore at the chamber's side, m, and no data sheet of its own. */
        Shape withBore(double metres);

        /** The same shape with another length, m; empty where the length is not a matter of choice. */
        default Optional<Shape> withLength(double metres) {
            return Optional.empty();
        }

        /** Molecular conductance for air at 20 C from a data sheet, m3/s, when there is one. */
        default OptionalDouble conductanceM3PerS() {
            return OptionalDouble.empty();
        }

        /** The bend; empty for every other shape. */
        default Optional<Elbow> elbow() {
            return Optional.empty();
        }

        /** The baffle; empty for every other shape. */
        default Optional<Baffle> baffle() {
            return Optional.empty();
        }
    }

    /**
     * A straight tube or hose.
     *
     * @param innerDiameterM bore, m
     * @param lengthM length, m
     */
    public record Tube(double innerDiameterM, double lengthM) implements Shape {
        @Override
        public Tube withBore(double metres) {
            return new Tube(metres, lengthM);
        }

        @Override
        public Optional<Shape> withLength(double metres) {
            return Optional.of(new Tube(innerDiameterM, metres));
        }

        @Override
        public double inletDiameterM() {
            return innerDiameterM;
        }

        @Override
        public double wallAreaM2() {
            return Math.PI * innerDiameterM * lengthM;
        }
    }

    /**
     * A mitred bend.
     *
     * @param innerDiameterM bore, m
     * @param lengthM length along the axis, m
     * @param angleRad how far the axis turns, rad; 0 is straight
     */
    public record Elbow(double innerDiameterM, double lengthM, double angleRad) implements Shape {
        @Override
        public Elbow withBore(double metres) {
            return new Elbow(metres, lengthM, angleRad);
        }

        @Override
        public Optional<Elbow> elbow() {
            return Optional.of(this);
        }

        @Override
        public double inletDiameterM() {
            return innerDiameterM;
        }

        @Override
        public double wallAreaM2() {
            return Math.PI * innerDiameterM * lengthM;
        }
    }

    /**
     * A hole in a thin plate.
     *
     * @param innerDiameterM diameter, m
     */
    public record Aperture(double innerDiameterM) implements Shape {
        @Override
        public double lengthM() {
            return 0;
        }

        @Override
        public Aperture withBore(double metres) {
            return new Aperture(metres);
        }

        @Override
        public double inletDiameterM() {
            return innerDiameterM;
        }

        @Override
        public double wallAreaM2() {
            return 0;
        }
    }

    /**
     * A cone from one bore to another.
     *
     * @param inletDiameterM bore at the chamber's side, m
     * @param outletDiameterM bore at the pump's side, m
     * @param lengthM length, m
     */
    public record Reducer(double inletDiameterM, double outletDiameterM, double lengthM) implements Shape {
        @Override
        public Reducer withBore(double metres) {
            double ratio = metres / inletDiameterM;
            return new Reducer(metres, outletDiameterM * ratio, lengthM);
        }

        @Override
        public double wallAreaM2() {
            double slant = Math.hypot(lengthM, (inletDiameterM - outletDiameterM) / 2);
            return Math.PI * (inletDiameterM + outletDiameterM) / 2 * slant;
        }
    }

    /**
     * An open valve.
     *
     * @param innerDiameterM bore, m
     * @param lengthM length of its body along the flow, m
     * @param conductanceM3PerS molecular conductance for air at 20 C from its data sheet, m3/s, when known; otherwise it is
     *     taken as a tube of its bore and length
     */
    public record Valve(double innerDiameterM, double lengthM, OptionalDouble conductanceM3PerS) implements Shape {
        @Override
        public Valve withBore(double metres) {
            return new Valve(metres, lengthM, OptionalDouble.empty());
        }

        @Override
        public double inletDiameterM() {
            return innerDiameterM;
        }

        @Override
        public double wallAreaM2() {
            return Math.PI * innerDiameterM * lengthM;
        }
    }

    /**
     * A baffle through which nothing goes straight.
     *
     * @param innerDiameterM width of its housing, m
     * @param depthM depth of one row of its vanes along the flow, m
     * @param pitchM distance from vane to vane across the flow, m
     * @param angleRad angle of the vanes to the axis, rad
     */
    public record Baffle(double innerDiameterM, double depthM, double pitchM, double angleRad) implements Shape {
        @Override
        public double lengthM() {
            return 0;
        }

        @Override
        public double axisM() {
            return 2 * depthM;
        }

        @Override
        public Baffle withBore(double metres) {
            return new Baffle(metres, depthM, pitchM, angleRad);
        }

        @Override
        public Optional<Baffle> baffle() {
            return Optional.of(this);
        }

        @Override
        public double inletDiameterM() {
            return innerDiameterM;
        }

        @Override
        public double wallAreaM2() {
            // both faces of vanes that fill the housing, and the housing itself around two rows
            double vanes = 2 * Math.PI / 4 * innerDiameterM * innerDiameterM * depthM / (pitchM * Math.cos(angleRad));
            return vanes + Math.PI * innerDiameterM * depthM;
        }
    }
}
