package boilwright.invariants;

import boilwright.fluid.FluidLibrary;
import boilwright.rig.Body;
import boilwright.rig.Boiler;
import boilwright.rig.Column;
import boilwright.rig.Foreline;
import boilwright.rig.HeatSource;
import boilwright.rig.Limits;
import boilwright.rig.Material;
import boilwright.rig.Parameter;
import boilwright.rig.Rig;
import boilwright.rig.Room;
import boilwright.rig.Schedule;
import boilwright.rig.SourceKind;
import boilwright.rig.Stage;
import boilwright.rig.SupplyKind;
import boilwright.rig.TopCap;
import boilwright.rig.file.RigEdit;
import boilwright.rig.file.RigFields;
import boilwright.rig.file.RigReader;
import boilwright.thermal.RigChange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.domains.DomainContextBase;

/**
 * The one generator of random rigs. A third of a series is plausible: 30 to 200 mm bore, glass and metal, one to four stages, every
 * kind of heat source and supply and every fluid, with parts that fit one another; sizes are engineering judgement. A third
 * has one to three figures anywhere in the range that a file may have, as long as the whole is still accepted. A third is
 * brought near a limit: one figure is turned until a margin comes out near 1.
 *
 * <p>{@link #of} gives the rigs of a seeded series one by one. For properties, {@code @Domain(RandomRigs.class)} and a
 * {@code @ForAll Rig} give plausible rigs in surroundings that stand still: a measured flow and a given foreline pressure.
 */
public final class RandomRigs extends DomainContextBase {
    /** The fluids for pumps that come with the program. */
    public static final List<String> FLUIDS = FluidLibrary.builtIn().workingFluids();

    private static final int NUMBERS = 160;
    private static final List<Material> METALS =
            List.of(Material.STAINLESS, Material.MILD_STEEL, Material.COPPER, Material.ALUMINIUM);

    /** How a rig of a series is made. */
    public enum Mode {
        PLAUSIBLE,
        ANYWHERE,
        NEAR_A_LIMIT
    }

    /**
     * A rig of a series.
     *
     * @param rig the rig; the reader accepts it
     * @param mode how it was made
     * @param told what was done to a plausible rig to make it; empty for nothing
     * @param margin the margin that was brought near its limit; empty for none
     * @param refused how many rigs and figures were refused by the reader on the way
     */
    public record Drawn(Rig rig, Mode mode, String told, String margin, int refused) {}

    /** Demo rigs that hold every margin. */
    private static final List<String> WORKING = List.of("mirror-club", "teaching-lab");

    /** Figures of which each is moved by up to a twentieth, near enough that most of these rigs work too. */
    private static final List<String> MOVED = List.of(
            "charge",
            "boiler.wallThickness",
            "stages[0].throatGap",
            "stages[1].throatGap",
            "body.wallThickness",
            "heatSource.lossArea");

    /** A rig near one that works: the same for the same two numbers. */
    public static Rig nearAWorkingOne(long seed, int index) {
        Draw draw = Draw.from(seed, index);
        Rig rig = RigReader.readDemo(WORKING.get(index % WORKING.size()), FLUIDS, java.util.Set.of());
        RigFields fields = RigFields.of(rig);
        List<RigEdit> edits = new ArrayList<>();
        for (String path : MOVED) {
            double factor = draw.between(0.95, 1.05);
            fields.quantity(path).ifPresent(value -> edits.add(RigEdit.of(path, factor * value)));
        }
        return fields.with(edits).rig(FLUIDS);
    }

    /**
     * A rig of a series: the same for the same two numbers, whatever was drawn before.
     *
     * @param seed which series
     * @param index which of its rigs, from 0; fluids, sources, supplies and modes take turns by it
     */
    public static Drawn of(long seed, int index) {
        Mode mode = Mode.values()[index % Mode.values().length];
        int turn = index / Mode.values().length;
        Draw draw = Draw.from(seed, index);
        Altered altered = new Altered(draw);
        Rig rig = whole(draw, turn);
        while (!altered.isAccepted(rig)) {
            rig = whole(draw, turn);
        }
        return switch (mode) {
            case PLAUSIBLE -> new Drawn(rig, mode, "", "", altered.refused());
            case ANYWHERE -> altered.anywhere(rig);
            case NEAR_A_LIMIT -> altered.nearALimit(rig);
        };
    }

    /** Any rig of any series. */
    public static Arbitrary<Drawn> drawn() {
        return Combinators.combine(Arbitraries.longs(), Arbitraries.integers().greaterOrEqual(0))
                .as(RandomRigs::of);
    }

    /** Any plausible rig in surroundings that stand still. */
    @Provide
    Arbitrary<Rig> rig() {
        return rigs(FLUIDS, Arrays.asList(SourceKind.values()));
    }

    /** Plausible rigs in surroundings that stand still, with one of these fluids and one of these kinds of heat source. */
    public static Arbitrary<Rig> rigs(List<String> fluids, List<SourceKind> sources) {
        return row().map(numbers -> {
            Draw draw = Draw.from(numbers);
            return rig(draw, draw.of(fluids), draw.of(sources), SupplyKind.GIVEN_FLOW);
        });
    }

    /** Plausible rigs over a backing pump whose pressure follows the gas, with one of these fluids. */
    public static Arbitrary<Rig> overABackingPump(List<String> fluids) {
        return row().map(numbers -> {
            Draw draw = Draw.from(numbers);
            return rig(draw, draw.of(fluids), draw.of(Arrays.asList(SourceKind.values())), SupplyKind.GIVEN_FLOW)
                    .withForeline(RandomGasSides.backing(draw));
        });
    }

    /** Plausible rigs with a supply of one of these kinds. */
    public static Arbitrary<Rig> suppliedBy(SupplyKind... kinds) {
        return row().map(numbers -> {
            Draw draw = Draw.from(numbers);
            return rig(
                    draw, draw.of(FLUIDS), draw.of(Arrays.asList(SourceKind.values())), draw.of(Arrays.asList(kinds)));
        });
    }

    private static Arbitrary<double[]> row() {
        return Arbitraries.doubles()
                .between(0, 1)
                .ofScale(6)
                .withDistribution(RandomDistribution.uniform())
                .array(double[].class)
                .ofSize(NUMBERS);
    }

    /** A plausible rig with all that a rig can have. */
    private static Rig whole(Draw draw, int turn) {
        String fluid = FLUIDS.get(turn % FLUIDS.size());
        SourceKind source = SourceKind.values()[turn % SourceKind.values().length];
        SupplyKind supply = SupplyKind.values()[turn % SupplyKind.values().length];
        Rig rig = rig(draw, fluid, source, supply);
        if (draw.chance(0.5)) {
            rig = rig.withForeline(RandomGasSides.backing(draw));
        }
        if (draw.chance(0.4)) {
            rig = rig.withVacuum(RandomGasSides.chamber(draw, rig.body().innerDiameterM()));
        }
        return draw.chance(0.3) ? rig.withProtection(RandomGasSides.protection(draw)) : rig;
    }

    private static Rig rig(Draw draw, String fluid, SourceKind kind, SupplyKind supply) {
        double bore = draw.ratio(0.03, 0.2);
        boolean glass = kind != SourceKind.CLAMPED_HEATER && bore < 0.1 && draw.chance(0.6);
        Material wall = glass ? Material.BOROSILICATE : draw.of(METALS);
        Boiler boiler = boiler(draw, bore, wall);
        Column column = column(draw, bore, glass ? Material.BOROSILICATE : draw.of(METALS));
        List<Stage> stages = stages(draw, bore, column);
        Body body = new Body(
                wall,
                bore,
                glass ? draw.between(0.0015, 0.003) : draw.between(0.001, 0.003),
                stages.get(0).heightM() * draw.between(0.2, 0.7),
                wall.usualEmissivity(),
                wall.usualEmissivity());
        boolean capped = !glass && draw.chance(0.5);
        TopCap cap = new TopCap(
                Math.PI / 4 * bore * bore * draw.between(0.5, 0.8), draw.between(0.001, 0.004), Material.COPPER);
        double throats = stages.stream().mapToDouble(Stage::throatAreaM2).sum();
        double power = draw.ratio(0.5, 3) * (1e6 * throats + 7e3 * boiler.surfaceAreaM2());
        String note = draw.chance(0.5) ? "Line one\nline \"two\", with \u00b5 and \u00e9." : "";
        double charge = Math.max(1.2e-5, boiler.surfaceAreaM2() * draw.between(0.006, 0.03));
        HeatSource source = RandomSources.source(draw, kind, power, boiler);
        Schedule schedule = schedule(draw);
        Foreline foreline = new Foreline.GivenPressure(draw.ratio(0.5, 15));
        Room room = new Room(draw.between(285, 305), draw.between(85e3, 103e3));
        return new Rig(
                "Random rig",
                note,
                fluid,
                charge,
                boiler,
                column,
                stages,
                body,
                capped ? Optional.of(cap) : Optional.empty(),
                source,
                schedule,
                foreline,
                RandomCooling.of(draw, supply, stages, body, capped, power, room),
                room,
                draw.chance(0.3) ? limits(draw) : Limits.USUAL,
                draw.chance(0.3) ? parameters(draw) : Map.of());
    }

    private static Boiler boiler(Draw draw, double bore, Material wall) {
        double diameter = bore * (wall.isGlass() ? draw.between(1.2, 2) : draw.between(1, 1.1));
        double section = Math.PI / 4 * diameter * diameter;
        double heated = section * draw.between(1, 1.6);
        return new Boiler(
                wall,
                diameter,
                wall.isGlass() ? draw.between(0.0018, 0.0035) : draw.between(0.002, 0.008),
                heated,
                heated * (wall.isGlass() ? 1 : draw.between(1, 2)),
                section * draw.between(1.5, 3),
                draw.chance(0.4) ? draw.between(0.005, 0.04) : 0,
                draw.between(0.03, 0.1),
                wall.usualEmissivity(),
                draw.chance(0.3) ? OptionalDouble.of(section * draw.between(20, 80)) : OptionalDouble.empty());
    }

    private static Column column(Draw draw, double bore, Material material) {
        double height = Math.max(0.14, bore * draw.between(1.6, 3.5));
        double inner = bore * draw.between(0.42, 0.55);
        double wall = material.isGlass() ? draw.between(0.001, 0.002) : draw.between(8e-4, 0.002);
        Column.Segment whole = new Column.Segment(height, inner, wall, material, material.usualEmissivity());
        if (draw.chance(0.6)) {
            return new Column(List.of(whole));
        }
        double lower = height * draw.between(0.3, 0.6);
        return new Column(List.of(
                new Column.Segment(lower, inner, wall, material, material.usualEmissivity()),
                new Column.Segment(height - lower, inner * 0.9, wall, material, material.usualEmissivity())));
    }

    private static List<Stage> stages(Draw draw, double bore, Column column) {
        int count = draw.of(List.of(2, 3, 1, 4));
        double height = column.heightM();
        double lowest = height * draw.between(0.35, 0.5);
        double area = Math.PI / 4 * bore * bore * draw.between(0.05, 0.12);
        double diameter = bore * draw.between(0.6, 0.68);
        List<Stage> stages = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double share = (1 + 0.3 * i) / (count * (1 + 0.15 * (count - 1)));
            // The one stage of a pump stands on top; more of them spread evenly from the lowest up to the top.
            double at = count == 1 || i == count - 1 ? height : lowest + (height - lowest) * i / (count - 1.0);
            double gap = Math.max(2.5e-4, area * share / (Math.PI * diameter));
            stages.add(new Stage("stage " + (i + 1), at, diameter, gap));
        }
        return stages;
    }

    private static Schedule schedule(Draw draw) {
        if (draw.chance(0.4)) {
            return new Schedule(List.of(new Schedule.Power(0, 1)));
        }
        double start = draw.between(60, 900);
        Schedule.Step last = draw.chance(0.25)
                ? new Schedule.HoldOil(start + draw.between(60, 1800), draw.between(440, 520))
                : new Schedule.Power(start + draw.between(60, 1800), draw.between(0.5, 1));
        return new Schedule(List.of(new Schedule.Power(0, 0), new Schedule.Power(start, 1), last));
    }

    private static Limits limits(Draw draw) {
        return new Limits(
                OptionalDouble.of(draw.between(40, 270)),
                OptionalDouble.of(draw.between(1.05, 1.5)),
                OptionalDouble.of(draw.between(500, 560)),
                OptionalDouble.of(draw.between(530, 600)),
                OptionalDouble.of(draw.between(5e6, 1e7)),
                OptionalDouble.of(draw.between(650, 900)),
                OptionalDouble.of(draw.between(310, 330)),
                OptionalDouble.of(draw.between(283, 288)),
                OptionalDouble.of(draw.between(298, 305)),
                OptionalDouble.of(draw.between(330, 370)),
                OptionalDouble.of(draw.between(0.2, 0.5)),
                OptionalDouble.of(draw.between(20, 50)),
                OptionalDouble.of(draw.ratio(1e-11, 1e-8)),
                OptionalDouble.of(draw.between(0.2, 0.7)));
    }

    private static Map<String, Double> parameters(Draw draw) {
        Map<String, Double> values = new HashMap<>();
        for (Parameter parameter : Parameter.values()) {
            if (draw.chance(0.3)) {
                values.put(parameter.id(), draw.between(parameter.low(), parameter.high()));
            }
        }
        return values;
    }

    /** The same rig with the last level of its schedule from the beginning. */
    public static Rig constant(Rig rig) {
        List<Schedule.Step> steps = rig.schedule().steps();
        Schedule.Step last = steps.get(steps.size() - 1);
        Schedule.Step only = last.at(0);
        return RigChange.schedule(rig, new Schedule(List.of(only)));
    }

    /** True when nothing in the rig switches, swings or runs out, so that a run must end in the steady state. */
    public static boolean isConstant(Rig rig) {
        List<Schedule.Step> steps = rig.schedule().steps();
        if (steps.get(steps.size() - 1).holdK().isPresent()) {
            return false;
        }
        HeatSource source = rig.heatSource();
        boolean onOff = source.body()
                .filter(body -> body.thermostat() == HeatSource.Thermostat.ON_OFF)
                .isPresent();
        return source.cartridge().isEmpty() && !onOff;
    }
}
