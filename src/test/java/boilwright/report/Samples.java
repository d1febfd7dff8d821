package boilwright.report;

import boilwright.answers.Asked;
import boilwright.answers.CheckAnswer;
import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.answers.Moment;
import boilwright.answers.RunAnswer;
import boilwright.answers.SessionOutlook;
import boilwright.fluid.FluidLibrary;
import boilwright.rig.Body;
import boilwright.rig.Boiler;
import boilwright.rig.Column;
import boilwright.rig.Cooling;
import boilwright.rig.Foreline;
import boilwright.rig.HeatSource;
import boilwright.rig.Limits;
import boilwright.rig.Material;
import boilwright.rig.Rig;
import boilwright.rig.Room;
import boilwright.rig.Schedule;
import boilwright.rig.Stage;
import boilwright.spread.Certainty;
import boilwright.spread.Chance;
import boilwright.thermal.ColumnHistory;
import boilwright.thermal.ElementState;
import boilwright.thermal.EnergyBalance;
import boilwright.thermal.EventKind;
import boilwright.thermal.NeededState;
import boilwright.thermal.RunResult;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadyState;
import boilwright.thermal.TimeEvent;
import boilwright.thermal.TimeSeries;
import boilwright.water.OperatingPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Answers with made-up figures of a believable size, for the tests of reports and commands. */
public final class Samples {
    private static final FluidLibrary FLUIDS = FluidLibrary.builtIn();
    private static final OptionalDouble NONE = OptionalDouble.empty();

    /** Nothing is assumed. */
    public static final Certainty CERTAINTY = new Certainty(0, new Chance(0, 0));

    /** Nothing runs out. */
    public static final SessionOutlook SESSION = new SessionOutlook(14_400, OptionalDouble.empty());

    private Samples() {}

    /** A three-jet glass pump that exists only in the tests. */
    public static Rig rig() {
        Material glass = Material.BOROSILICATE;
        return new Rig(
                "Bench three-jet glass pump",
                "",
                "704-type",
                60e-6,
                new Boiler(glass, 0.08, 0.003, 0.005, 0.005, 0.006, 0.02, 0.05, 0.9, NONE),
                new Column(List.of(new Column.Segment(0.25, 0.025, 0.0015, glass, 0.9))),
                List.of(
                        new Stage("lower", 0.10, 0.03, 0.003),
                        new Stage("middle", 0.17, 0.025, 0.002),
                        new Stage("upper", 0.25, 0.02, 0.001)),
                new Body(glass, 0.06, 0.0025, 0.03, 0.9, 0.9),
                Optional.empty(),
                new HeatSource.ImmersedElement(400, 0.004),
                new Schedule(List.of(new Schedule.Power(0, 1))),
                new Foreline.GivenPressure(7),
                new Cooling(291.15, 3e-5, List.of(new Cooling.Jacket(List.of("upper"), 0.006, 0.002)), NONE),
                new Room(294.15, 101325),
                Limits.USUAL,
                Map.of());
    }

    /** The rig with its fluid. */
    public static Asked asked() {
        return Asked.of(rig(), FLUIDS.find(rig().fluidId()), "1");
    }

    /** A check in which the heat margin has a given status. */
    public static CheckAnswer check(Margin.Status heat) {
        return new CheckAnswer(
                asked(),
                "Two of three jets light. The plate passes 412 W into the boiler and 660 W are needed, because the domed glass"
                        + " touches the flat plate only in its middle.",
                steady(),
                new NeededState(steady(), "upper", 660, 412),
                run("warmup"),
                margins(heat),
                margins(heat),
                List.of(
                        "The plate stays above 300 degC for a long time after it is switched off; keep hands and hoses away."),
                List.of("The cartridge is taken at room temperature."),
                "0.1.0");
    }

    /** A warm-up or cool-down. */
    public static RunAnswer runAnswer(String kind, Margin.Status heat) {
        return new RunAnswer(
                asked(),
                "All jets are at full flow after 17 min.",
                run(kind),
                margins(heat),
                List.of(),
                List.of(),
                List.of(),
                "0.1.0");
    }

    private static List<Margin> margins(Margin.Status heat) {
        return List.of(
                new Margin(
                        MarginId.HEAT,
                        Margin.Side.AT_LEAST,
                        OptionalDouble.of(412),
                        OptionalDouble.of(660),
                        OptionalDouble.of(0.62),
                        heat,
                        1.25,
                        Moment.REST,
                        NONE,
                        "Heat needed for full flow of jet upper, with the usual reserve of a quarter (common practice).",
                        heat == Margin.Status.FAILS
                                ? "Bed the boiler in a metal cup that fills the gap to the plate."
                                : ""),
                new Margin(
                        MarginId.OIL_FILM,
                        Margin.Side.AT_MOST,
                        OptionalDouble.of(530.15),
                        NONE,
                        NONE,
                        Margin.Status.UNKNOWN,
                        1.05,
                        Moment.REST,
                        NONE,
                        "The fluid data give no limit for the film.",
                        ""),
                new Margin(
                        MarginId.COLUMN_MACH,
                        Margin.Side.AT_MOST,
                        OptionalDouble.of(0.11),
                        OptionalDouble.of(0.3),
                        OptionalDouble.of(2.7),
                        Margin.Status.HOLDS,
                        2,
                        Moment.REST,
                        NONE,
                        "Above it the column's own pressure loss starves the upper jets.",
                        ""));
    }

    private static SteadyState steady() {
        return new SteadyState(
                475.15,
                42.5,
                1.9e-5,
                412,
                330,
                81.5,
                0.5,
                1500,
                1088,
                OptionalDouble.of(723.15),
                520.15,
                500.15,
                0.11,
                6.5,
                0.93,
                2e-9,
                420.15,
                OptionalDouble.of(293.65),
                NONE,
                430.15,
                OptionalDouble.of(5.1e6),
                OptionalDouble.of(1.2e6),
                0.035,
                0.02,
                21,
                7,
                List.of(0.05, 0.15),
                List.of(474.0, 470.0),
                List.of(41.0, 36.0),
                List.of(
                        new StageState("lower", 1.1e-5, 41, 7, true, true, 1.05, 0.98, 60, 340, 294.15, 180, ""),
                        new StageState("middle", 6e-6, 38, 4, true, false, 0.72, 0.99, 60, 310, 292.65, 100, ""),
                        new StageState(
                                "upper",
                                2e-6,
                                36,
                                0.4,
                                false,
                                false,
                                0.31,
                                1,
                                60,
                                295,
                                291.65,
                                40,
                                "The pressure before it is too low to choke its throat.")),
                List.of(new ElementState(0, 291.15, 293.65, 0.03, 314, OptionalDouble.of(900), OptionalDouble.of(300))),
                new OperatingPoint(
                        0.03,
                        3e-5,
                        List.of(new OperatingPoint.ElementFlow(0.03, OptionalDouble.of(900), 120)),
                        NONE,
                        120),
                3.2e-9,
                List.of("The thermostat is taken as proportional."));
    }

    private static RunResult run(String kind) {
        return new RunResult(
                kind,
                List.of(
                        event(EventKind.HEAT_ON, "", 0, "The plate is switched on."),
                        event(EventKind.FIRST_VAPOUR, "", 430.2, "The vapour pressure passes that of the foreline."),
                        event(EventKind.FRONT_AT_STAGE, "lower", 520, ""),
                        event(EventKind.JET_LIT, "lower", 611, "The lower jet lights."),
                        event(EventKind.JET_LIT, "middle", 640, ""),
                        event(EventKind.JET_FULL, "lower", 1010, ""),
                        new TimeEvent(
                                EventKind.JET_LIT, "upper", NONE, "Too little pressure reaches it: 36 Pa of 60 Pa.")),
                series(),
                new ColumnHistory(new double[] {0.1}, new double[][] {{300}}),
                new EnergyBalance(720e3, 410e3, 120e3, 2e3, 188e3, 2.1e-7),
                NONE,
                List.of("The backing pump holds the foreline at 7 Pa."),
                Map.of("steps", 900L));
    }

    private static TimeEvent event(EventKind kind, String stage, double timeS, String reason) {
        return new TimeEvent(kind, stage, OptionalDouble.of(timeS), reason);
    }

    private static TimeSeries series() {
        int count = 361;
        List<TimeSeries.Column> columns = new ArrayList<>();
        columns.add(column(SeriesQuantity.TIME, 0, "time", count, t -> t));
        columns.add(column(SeriesQuantity.LIQUID_TEMPERATURE, 0, "oil", count, t -> 475 - 180 * Math.exp(-t / 400)));
        columns.add(column(SeriesQuantity.SOURCE_TEMPERATURE, 0, "plate", count, t -> 723 - 430 * Math.exp(-t / 200)));
        columns.add(column(SeriesQuantity.WATER_OUT, 0, "water outlet", count, t -> 291 + t / 900));
        String[] names = {"lower", "middle", "upper"};
        for (int stage = 1; stage <= names.length; stage++) {
            double delay = 450.0 + 60 * stage;
            double flow = 1.2e-5 / stage;
            columns.add(column(
                    SeriesQuantity.STAGE_WALL,
                    stage,
                    "wall at jet " + names[stage - 1],
                    count,
                    t -> 294 + (t > delay ? 40 * (1 - Math.exp(-(t - delay) / 200)) : 0)));
            columns.add(column(
                    SeriesQuantity.STAGE_FLOW,
                    stage,
                    "flow of jet " + names[stage - 1],
                    count,
                    t -> t > delay ? flow * (1 - Math.exp(-(t - delay) / 300)) : 0));
        }
        return new TimeSeries(columns);
    }

    private static TimeSeries.Column column(
            SeriesQuantity quantity, int stage, String title, int count, java.util.function.DoubleUnaryOperator of) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = of.applyAsDouble(5.0 * i);
        }
        return new TimeSeries.Column(quantity, stage, title, values);
    }
}
