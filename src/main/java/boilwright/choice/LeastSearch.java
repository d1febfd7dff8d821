package boilwright.choice;

import boilwright.choice.SizeAnswer.Figure;
import boilwright.choice.SizeAnswer.Least;
import boilwright.choice.SizeAnswer.Pair;
import boilwright.choice.SizeAnswer.PairRow;
import boilwright.numerics.Roots;
import boilwright.rig.Boiler;
import boilwright.rig.ContactBody;
import boilwright.rig.HeatSource;
import boilwright.rig.Rig;
import boilwright.rig.SourceKind;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Finds the least of one figure of source or boiler that gives a ratio of heat available to heat needed. */
final class LeastSearch {
    private static final double TOLERANCE = 1e-9;
    /** What is looked through: powers and areas relative to the present ones, contacts and temperatures as they are. */
    private static final double LEAST_SHARE = 1e-3;

    /** A flame's whole heat through less base than this leaves every range that is known of the oil. */
    private static final double LEAST_BASE = 0.25;

    private static final double MOST_POWER = 1000;
    private static final double MOST_AREA = 10;
    private static final double LEAST_CONTACT = 1;
    private static final double MOST_CONTACT = 5000;
    private static final double MOST_KELVIN = 1500;

    private static final double[] BETTER_CONTACT = {1, 1.5, 2, 3, 5};
    private static final double[] HOTTER_K = {0, 50, 100, 150};
    private static final double[] WIDER = {1, 1.25, 1.5, 2, 3};

    private final HeatTrial trial;

    LeastSearch(HeatTrial trial) {
        this.trial = trial;
    }

    /** The figures that this rig's source has, the rated power first. */
    private static List<Figure> figures(Rig rig) {
        HeatSource source = rig.heatSource();
        List<Figure> list = new ArrayList<>(List.of(Figure.RATED_POWER));
        list.addAll(
                switch (source.path()) {
                    case FLAME -> List.of(Figure.HEATED_AREA);
                    case CONTACT ->
                        List.of(
                                Figure.CONTACT,
                                Figure.TEMPERATURE,
                                source.kind().has(SourceKind.Figures.WRAPPED_AREA)
                                        ? Figure.WRAPPED_AREA
                                        : Figure.CONTACT_AREA);
                    case BASE -> List.of(Figure.TEMPERATURE);
                    case OIL, NOWHERE -> List.<Figure>of();
                });
        return list;
    }

    List<Least> singles(Rig rig, double ratio) {
        return figures(rig).stream()
                .map(f -> new Least(f, present(rig, f), least(rig, f, ratio)))
                .toList();
    }

    List<Pair> pairs(Rig rig, double ratio) {
        if (rig.heatSource().isFlame()) {
            return List.of(pair(rig, Figure.HEATED_AREA, Figure.RATED_POWER, WIDER, ratio));
        }
        if (!rig.heatSource().touches()) {
            return List.of();
        }
        return List.of(
                pair(rig, Figure.CONTACT, Figure.RATED_POWER, BETTER_CONTACT, ratio),
                pair(rig, Figure.TEMPERATURE, Figure.CONTACT, HOTTER_K, ratio));
    }

    private Pair pair(Rig rig, Figure given, Figure found, double[] steps, double ratio) {
        List<PairRow> rows = new ArrayList<>();
        double present = present(rig, given);
        for (double step : steps) {
            double value = given == Figure.TEMPERATURE ? present + step : present * step;
            if (value <= most(rig, given)) {
                rows.add(new PairRow(value, least(with(rig, given, value), found, ratio)));
            }
        }
        return new Pair(given, found, rows);
    }

    /** The least of a figure, SI; empty when no value of it is enough. */
    OptionalDouble least(Rig rig, Figure figure, double ratio) {
        double low = leastLookedAt(rig, figure);
        double high = most(rig, figure);
        if (excess(rig, figure, high, ratio) < 0) {
            return OptionalDouble.empty();
        }
        if (excess(rig, figure, low, ratio) >= 0) {
            return OptionalDouble.of(low);
        }
        double root = Roots.bracketed(
                x -> excess(rig, figure, Math.exp(x), ratio),
                Math.log(low),
                Math.log(high),
                0,
                TOLERANCE,
                "the least " + name(figure));
        return OptionalDouble.of(Math.exp(root));
    }

    /** The rig with more power than anybody has. */
    Rig atMostPower(Rig rig) {
        return with(rig, Figure.RATED_POWER, most(rig, Figure.RATED_POWER));
    }

    private double excess(Rig rig, Figure figure, double value, double ratio) {
        return trial.ratio(with(rig, figure, value)) - ratio;
    }

    private double leastLookedAt(Rig rig, Figure figure) {
        return switch (figure) {
            case CONTACT -> LEAST_CONTACT;
            case TEMPERATURE -> rig.room().temperatureK();
            case HEATED_AREA -> LEAST_BASE * present(rig, figure);
            default -> LEAST_SHARE * present(rig, figure);
        };
    }

    private double most(Rig rig, Figure figure) {
        return switch (figure) {
            case RATED_POWER -> MOST_POWER * present(rig, figure);
            case CONTACT -> MOST_CONTACT;
            case TEMPERATURE -> MOST_KELVIN;
            default -> MOST_AREA * present(rig, figure);
        };
    }

    private double present(Rig rig, Figure figure) {
        HeatSource source = rig.heatSource();
        return switch (figure) {
            case RATED_POWER -> source.ratedPowerW();
            case CONTACT -> body(source).conductance(trial.values());
            case TEMPERATURE -> source.limitK().orElseThrow();
            case CONTACT_AREA, WRAPPED_AREA -> body(source).areaM2();
            case HEATED_AREA -> rig.boiler().heatedAreaM2();
        };
    }

    private static ContactBody body(HeatSource source) {
        return source.body().orElseThrow();
    }

    /** The rig with one figure changed. A contact wider than the boiler's heated area takes that with it. */
    static Rig with(Rig rig, Figure figure, double value) {
        HeatSource source = rig.heatSource();
        return switch (figure) {
            case RATED_POWER -> rig.withHeatSource(source.withRatedPower(value));
            case CONTACT -> rig.withHeatSource(source.withBody(body -> body.withConductance(value)));
            case TEMPERATURE -> rig.withHeatSource(source.withBody(body -> body.withLimit(value)));
            case CONTACT_AREA, WRAPPED_AREA ->
                withHeatedArea(
                        rig.withHeatSource(source.withBody(body -> body.withArea(value))),
                        Math.max(value, rig.boiler().heatedAreaM2()));
            case HEATED_AREA -> withHeatedArea(rig, value);
        };
    }

    private static Rig withHeatedArea(Rig rig, double m2) {
        Boiler b = rig.boiler();
        return rig.withBoiler(new Boiler(
                b.material(),
                b.innerDiameterM(),
                b.wallThicknessM(),
                m2,
                b.wettedAreaM2(),
                b.outsideAreaM2(),
                b.insulationThicknessM(),
                b.insulationConductivity(),
                b.emissivity(),
                b.wallMassKg()));
    }

    /** What people call it. */
    static String name(Figure figure) {
        return switch (figure) {
            case RATED_POWER -> ChoiceText.FIGURE_RATED_POWER.say();
            case CONTACT -> ChoiceText.FIGURE_CONTACT.say();
            case TEMPERATURE -> ChoiceText.FIGURE_TEMPERATURE.say();
            case CONTACT_AREA, WRAPPED_AREA -> ChoiceText.FIGURE_CONTACT_AREA.say();
            case HEATED_AREA -> ChoiceText.FIGURE_HEATED_AREA.say();
        };
    }
}
