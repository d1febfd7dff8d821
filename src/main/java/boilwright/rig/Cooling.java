package boilwright.rig;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The cooling: its supply and what the water passes, in the order it meets them. Neighbours that name a branch stand side by
 * side with their neighbours of other branches; those of one branch are passed one after the other.
 *
 * @param supply where the cooling comes from
 * @param elements what the water passes; none: the body is cooled by air alone
 */
public record Cooling(Supply supply, List<Element> elements) {
    public Cooling {
        elements = List.copyOf(elements);
    }

    /** Water whose flow was measured. */
    public Cooling(
            double inletTemperatureK, double flowM3PerS, List<Element> elements, OptionalDouble chillerCapacityW) {
        this(new Supply.GivenFlow(inletTemperatureK, flowM3PerS, chillerCapacityW), elements);
    }

    /** Temperature at which the cooling enters as long as the supply keeps up, K. */
    public double inletTemperatureK() {
        return supply.temperatureK();
    }

    /**
     * Where an element stands.
     *
     * @param name what it is called; empty for its kind
     * @param branch name of the parallel branch it belongs to; empty when all water passes it
     */
    public record Place(String name, String branch) {
        /** In the one line of water, without a name. */
        public static final Place PLAIN = new Place("", "");
    }

    private static List<String> reversed(List<String> names) {
        List<String> list = new ArrayList<>(names);
        Collections.reverse(list);
        return list;
    }

    /** One thing that the water passes. */
    public sealed interface Element permits Jacket, Tube, Valve, Rise {
        /** Where it stands. */
        Place place();

        /** Its kind. */
        ElementKind kind();

        /** Names of the stages whose zones it covers, in the order the water meets them; none for what is not on the body. */
        default List<String> covers() {
            return List.of();
        }

        /** The same element with the water passing it the other way. */
        default Element turned() {
            return this;
        }

        /** The jacket; empty for every other kind. */
        default Optional<Jacket> jacket() {
            return Optional.empty();
        }

        /** The coil on the body; empty for every other kind. */
        default Optional<SolderedCoil> solderedCoil() {
            return Optional.empty();
        }

        /** The coil on the top cap; empty for every other kind. */
        default Optional<CapCoil> capCoil() {
            return Optional.empty();
        }

        /** The cooled part; empty for every other kind. */
        default Optional<CooledPart> cooledPart() {
            return Optional.empty();
        }

        /** The hose; empty for every other kind. */
        default Optional<Hose> hose() {
            return Optional.empty();
        }

        /** The valve; empty for every other kind. */
        default Optional<Valve> valve() {
            return Optional.empty();
        }

        /** The difference of height; empty for every other kind. */
        default Optional<Rise> rise() {
            return Optional.empty();
        }

        /** The element as a tube; empty for every other kind. */
        default Optional<Tube> tube() {
            return Optional.empty();
        }
    }

    /** An element that is a tube. */
    public sealed interface Tube extends Element permits SolderedCoil, CapCoil, CooledPart, Hose {
        @Override
        default Optional<Tube> tube() {
            return Optional.of(this);
        }

        /** Bore, m. */
        double tubeInnerDiameterM();

        /** Length, m. */
        double tubeLengthM();
    }

    /**
     * A water jacket around the body.
     *
     * @param covers names of the stages whose zones it covers, in the order the water meets them
     * @param gapM width of the water gap, m
     * @param shellThicknessM thickness of the outer shell, m
     * @param place where it stands
     */
    public record Jacket(List<String> covers, double gapM, double shellThicknessM, Place place) implements Element {
        @Override
        public ElementKind kind() {
            return ElementKind.JACKET;
        }

        @Override
        public Jacket turned() {
            return new Jacket(reversed(covers), gapM, shellThicknessM, place);
        }

        @Override
        public Optional<Jacket> jacket() {
            return Optional.of(this);
        }

        public Jacket {
            covers = List.copyOf(covers);
        }

        public Jacket(List<String> covers, double gapM, double shellThicknessM) {
            this(covers, gapM, shellThicknessM, Place.PLAIN);
        }
    }

    /**
     * A tube soldered round the body.
     *
     * @param covers names of the stages whose zones it covers, in the order the water meets them
     * @param tubeInnerDiameterM bore of the tube, m
     * @param tubeLengthM length of tube in contact over all zones covered, m; shared by zone height
     * @param bondConductance conductance of the soldered joint per metre of tube, W/(m K)
     * @param place where it stands
     */
    public record SolderedCoil(
            List<String> covers, double tubeInnerDiameterM, double tubeLengthM, double bondConductance, Place place)
            implements Tube {
        @Override
        public ElementKind kind() {
            return ElementKind.SOLDERED_COIL;
        }

        @Override
        public SolderedCoil turned() {
            return new SolderedCoil(reversed(covers), tubeInnerDiameterM, tubeLengthM, bondConductance, place);
        }

        @Override
        public Optional<SolderedCoil> solderedCoil() {
            return Optional.of(this);
        }

        public SolderedCoil {
            covers = List.copyOf(covers);
        }

        public SolderedCoil(
                List<String> covers, double tubeInnerDiameterM, double tubeLengthM, double bondConductance) {
            this(covers, tubeInnerDiameterM, tubeLengthM, bondConductance, Place.PLAIN);
        }
    }

    /**
     * A tube soldered to the top cap.
     *
     * @param tubeInnerDiameterM bore of the tube, m
     * @param tubeLengthM length of tube in contact, m
     * @param bondConductance conductance of the soldered joint per metre of tube, W/(m K)
     * @param place where it stands
     */
    public record CapCoil(double tubeInnerDiameterM, double tubeLengthM, double bondConductance, Place place)
            implements Tube {
        @Override
        public ElementKind kind() {
            return ElementKind.CAP_COIL;
        }

        @Override
        public Optional<CapCoil> capCoil() {
            return Optional.of(this);
        }
    }

    /** What a {@link CooledPart} cools. */
    public enum Part {
        /** A baffle between pump and chamber. */
        BAFFLE,
        /** A trap in the foreline. */
        FORELINE_TRAP
    }

    /**
     * The coil of a part that is cooled but not computed: a baffle or a trap.
     *
     * @param what which part
     * @param tubeInnerDiameterM bore, m
     * @param tubeLengthM length of tube, m
     * @param heatLoadW heat it takes from the vacuum side, W
     * @param airConductance heat exchanged with the room per kelvin, W/K
     * @param place where it stands
     */
    public record CooledPart(
            Part what,
            double tubeInnerDiameterM,
            double tubeLengthM,
            double heatLoadW,
            double airConductance,
            Place place)
            implements Tube {
        @Override
        public ElementKind kind() {
            return what == Part.BAFFLE ? ElementKind.BAFFLE_COIL : ElementKind.FORELINE_TRAP;
        }

        @Override
        public Optional<CooledPart> cooledPart() {
            return Optional.of(this);
        }
    }

    /**
     * A hose or pipe.
     *
     * @param tubeInnerDiameterM bore, m
     * @param tubeLengthM length, m
     * @param airConductance heat exchanged with the room per metre and kelvin, W/(m K)
     * @param place where it stands
     */
    public record Hose(double tubeInnerDiameterM, double tubeLengthM, double airConductance, Place place)
            implements Tube {
        @Override
        public ElementKind kind() {
            return ElementKind.HOSE;
        }

        @Override
        public Optional<Hose> hose() {
            return Optional.of(this);
        }
    }

    /**
     * A valve, meter, filter or fitting.
     *
     * @param flowAtOneBarM3PerS flow that it passes at 1 bar of pressure drop, m3/s
     * @param place where it stands
     */
    public record Valve(double flowAtOneBarM3PerS, Place place) implements Element {
        @Override
        public ElementKind kind() {
            return ElementKind.VALVE;
        }

        @Override
        public Optional<Valve> valve() {
            return Optional.of(this);
        }
    }

    /**
     * A difference of height between what stands before and after it.
     *
     * @param heightM how much higher the water leaves than it entered, m; negative downward
     * @param place where it stands
     */
    public record Rise(double heightM, Place place) implements Element {
        @Override
        public ElementKind kind() {
            return ElementKind.RISE;
        }

        @Override
        public Rise turned() {
            return new Rise(-heightM, place);
        }

        @Override
        public Optional<Rise> rise() {
            return Optional.of(this);
        }
    }
}
