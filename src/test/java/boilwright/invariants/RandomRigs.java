package boilwright.invariants;

import boilwright.rig.Body;
import boilwright.rig.Boiler;
import boilwright.rig.Column;
import boilwright.rig.Cooling;
import boilwright.rig.Foreline;
import boilwright.rig.Limits;
import boilwright.rig.Material;
import boilwright.rig.Parameter;
import boilwright.rig.Rig;
import boilwright.rig.Room;
import boilwright.rig.Schedule;
import boilwright.rig.SourceKind;
import boilwright.rig.Stage;
import boilwright.rig.TopCap;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.domains.DomainContextBase;

/**
 * Random rigs that somebody could have built: 30 to 200 mm bore, glass and metal, one to four stages, every kind of heat
 * source and every fluid, with parts that fit one another and sizes that the file reader accepts. Sizes are engineering
 * judgement. Use {@code @Domain(RandomRigs.class)} and a {@code @ForAll Rig}, or {@link #rigs()}.
 */
public final class RandomRigs extends DomainContextBase {
    /** The fluids that come with the program. */
    public static final List<String> FLUIDS = List.of(
            "704-type",
            "705-type",
            "five-ring-polyphenyl-ether",
            "medium-hydrocarbon",
            "di-2-ethylhexyl-phthalate",
            "di-n-butyl-phthalate",
            "mercury");

    private static final int NUMBERS = 160;
    private static final List<Material> METALS =
            List.of(Material.STAINLESS, Material.MILD_STEEL, Material.COPPER, Material.ALUMINIUM);

    /** Any rig. */
    @Provide
    Arbitrary<Rig> rig() {
        return rigs();
    }

    /** Any rig. */
    public static Arbitrary<Rig> rigs() {
        return rigs(FLUIDS, Arrays.asList(SourceKind.values()));
    }

    /** Rigs with one of these fluids and one of these kinds of heat source. */
    public static Arbitrary<Rig> rigs(List<String> fluids, List<SourceKind> sources) {
        return Arbitraries.doubles()
                .between(0, 1)
                .ofScale(6)
                .withDistribution(RandomDistribution.uniform())
                .array(double[].class)
                .ofSize(NUMBERS)
                .map(numbers -> rig(new Draw(numbers), fluids, sources));
    }

    private static Rig rig(Draw draw, List<String> fluids, List<SourceKind> sources) {
        String fluid = draw.of(fluids);
        SourceKind kind = draw.of(sources);
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
        return new Rig(
                "Random rig",
                draw.chance(0.5) ? "Line one\nline \"two\", with \u00b5 and \u00e9." : "",
                fluid,
                Math.max(1.2e-5, boiler.surfaceAreaM2() * draw.between(0.006, 0.03)),
                boiler,
                column,
                stages,
                body,
                capped ? Optional.of(cap) : Optional.empty(),
                RandomSources.source(draw, kind, power, boiler),
                schedule(draw),
                new Foreline.GivenPressure(draw.ratio(0.5, 15)),
                cooling(draw, stages, body, capped),
                new Room(draw.between(285, 305), draw.between(85e3, 103e3)),
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

    private static Cooling cooling(Draw draw, List<Stage> stages, Body body, boolean capped) {
        double inlet = draw.between(280, 300);
        if (draw.chance(0.1)) {
            return new Cooling(inlet, 0, List.of(), OptionalDouble.empty());
        }
        List<String> downward = new ArrayList<>();
        stages.forEach(stage -> downward.add(0, stage.name()));
        List<Cooling.Element> elements = new ArrayList<>();
        if (capped) {
            elements.add(new Cooling.CapCoil(draw.between(0.004, 0.008), draw.between(0.2, 1), draw.between(5, 40)));
        }
        int cut = downward.size() > 1 && draw.chance(0.3) ? 1 : downward.size();
        elements.add(element(draw, body, downward.subList(0, cut)));
        if (cut < downward.size()) {
            elements.add(element(draw, body, downward.subList(cut, downward.size())));
        }
        return new Cooling(
                inlet,
                draw.ratio(0.2, 4) * 1e-3 / 60,
                elements,
                draw.chance(0.3) ? OptionalDouble.of(draw.ratio(200, 4000)) : OptionalDouble.empty());
    }

    private static Cooling.Element element(Draw draw, Body body, List<String> covers) {
        if (body.material().isGlass() || draw.chance(0.4)) {
            return new Cooling.Jacket(covers, draw.between(0.003, 0.01), draw.between(0.001, 0.003));
        }
        double turn = Math.PI * (body.innerDiameterM() + 2 * body.wallThicknessM());
        double turns = covers.size() * draw.between(2, 4);
        return new Cooling.SolderedCoil(covers, draw.between(0.005, 0.01), turns * turn, draw.between(5, 40));
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
}
