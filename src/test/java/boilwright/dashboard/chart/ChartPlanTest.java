package boilwright.dashboard.chart;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.units.Dimension;
import boilwright.units.UnitTable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;

class ChartPlanTest {
    private static final Offset<Double> SMALL = Offset.offset(1e-6);

    @BeforeAll
    static void toolkit() throws Exception {
        FxToolkit.registerPrimaryStage();
    }

    @Test
    void nothingWrittenLiesOverAnythingElseWritten() {
        for (double[] size : new double[][] {{1200, 700}, {780, 300}, {460, 260}}) {
            ChartData data = busy();
            Drawn drawn = Drawn.of(Drawn.plan(data, Choice.suiting(data), View.WHOLE, size[0], size[1]));
            for (int i = 0; i < drawn.words.size(); i++) {
                Drawn.Words one = drawn.words.get(i);
                assertThat(one.box().left()).as(one.text()).isGreaterThanOrEqualTo(-0.5);
                assertThat(one.box().right()).as(one.text()).isLessThanOrEqualTo(size[0] + 0.5);
                for (Drawn.Words other : drawn.words.subList(i + 1, drawn.words.size())) {
                    assertThat(one.box().meets(other.box()))
                            .as("%s over %s at %s", one.text(), other.text(), Arrays.toString(size))
                            .isFalse();
                }
            }
        }
    }

    @Test
    void everyCurveIsNamedAtItsEndAndEveryLimitAtItsLine() {
        ChartData data = busy();
        Drawn drawn = Drawn.of(Drawn.plan(data, Choice.suiting(data), View.WHOLE, 900, 420));
        List<String> texts = drawn.words.stream().map(Drawn.Words::text).toList();
        assertThat(texts)
                .contains("curve A", "curve B", "curve C", "temperature, degC", "oil: at most 207 degC")
                .contains("heat on", "jet lights", "meets");
    }

    @Test
    void curvesStayWithinThePlotHoweverFarOneZoomsIn() {
        ChartData data = ChartScene.temperatures(1, 5000);
        for (View view : List.of(
                View.WHOLE,
                View.WHOLE.withX(1000.3, 1000.4),
                View.WHOLE.withX(100, 900).withY(330, 331),
                View.WHOLE.withY(200, 201))) {
            ChartPlan plan = Drawn.plan(data, Choice.suiting(data), view, 800, 300);
            for (Drawn.Line line : Drawn.of(plan).curve("curve A")) {
                for (int i = 0; i < line.xs().length; i++) {
                    assertThat(line.xs()[i])
                            .isBetween(plan.plot().left() - 1e-6, plan.plot().right() + 1e-6);
                    assertThat(line.ys()[i])
                            .isBetween(plan.plot().top() - 1e-6, plan.plot().bottom() + 1e-6);
                }
            }
        }
    }

    @Test
    void aCurveThatCrossesTheViewIsCutWhereItLeavesIt() {
        Series steep = new Series("steep", new double[] {0, 10}, new double[] {0, 1000});
        ChartData data = ChartData.of("t", Axis.of("x", Dimension.LENGTH), pascal(), List.of(steep));
        ChartPlan plan = Drawn.plan(data, pascalChoice(false), View.WHOLE.withY(400, 600), 600, 300);
        List<Drawn.Line> lines = Drawn.of(plan).curve("steep");
        assertThat(lines).hasSize(1);
        assertThat(lines.get(0).xs())
                .containsExactly(new double[] {plan.x().px(4), plan.x().px(6)}, SMALL);
        assertThat(lines.get(0).ys())
                .containsExactly(new double[] {plan.plot().bottom(), plan.plot().top()}, SMALL);
    }

    @Test
    void aLogarithmicAxisLeavesGapsForWhatIsNotPositiveAndSaysSo() {
        Series one = new Series(
                "one", new double[] {0, 1, 2, 3, 4, 5, 6}, new double[] {1, 10, 0, -5, 100, 1000, Double.NaN});
        ChartData data = ChartData.of("t", Axis.of("x", Dimension.LENGTH), pascal().log(), List.of(one));
        ChartPlan plan = Drawn.plan(data, pascalChoice(true), View.WHOLE, 600, 300);
        List<Drawn.Line> lines = Drawn.of(plan).curve("one");
        assertThat(lines).hasSize(2);
        assertThat(lines.get(0).xs())
                .containsExactly(new double[] {plan.x().px(0), plan.x().px(1)}, SMALL);
        assertThat(lines.get(1).xs())
                .containsExactly(new double[] {plan.x().px(4), plan.x().px(5)}, SMALL);
        double decade = plan.y().px(1) - plan.y().px(10);
        assertThat(plan.y().px(10) - plan.y().px(100)).isCloseTo(decade, SMALL);
        assertThat(ChartWords.leftOut(data, pascalChoice(true)))
                .singleElement()
                .asString()
                .contains("one: 2 values", "gap");
        assertThat(ChartWords.leftOut(data, pascalChoice(false))).isEmpty();
        assertThat(plan.reading(one, 0.5)).isCloseTo(Math.sqrt(10), SMALL);
        assertThat(plan.reading(one, 1.5)).isNaN();
    }

    @Test
    void anotherUnitChangesTheNumbersAndNotThePicture() {
        ChartData data = ChartScene.temperatures(2, 200);
        Choice celsius = Choice.suiting(data);
        Choice fahrenheit = new Choice(
                celsius.xUnit(), UnitTable.find("degF", Dimension.TEMPERATURE).orElseThrow(), false, false);
        ChartPlan one = Drawn.plan(data, celsius, View.WHOLE, 700, 300);
        ChartPlan other = Drawn.plan(data, fahrenheit, View.WHOLE, 700, 300);
        for (double kelvin : new double[] {300, 373.15, 450}) {
            assertThat(other.y().px(kelvin)).isCloseTo(one.y().px(kelvin), Offset.offset(0.01));
            assertThat(other.y().shownOfT(other.y().t(kelvin))).isCloseTo(1.8 * (kelvin - 273.15) + 32, SMALL);
            assertThat(one.y().si(one.y().px(kelvin))).isCloseTo(kelvin, SMALL);
        }
        assertThat(ChartWords.describe(data, fahrenheit)).contains("degF").doesNotContain("degC");
    }

    @Test
    void everyUnitOfTheTableIsAFactorAndAnOffset() {
        for (Dimension dimension : Dimension.values()) {
            UnitTable.accepted(dimension).forEach(unit -> {
                Scale scale = Scale.of(unit, false);
                for (double si : new double[] {-3.7, 1e-5, 1, 293.15, 8.1e6}) {
                    double exact = unit.fromSi(si);
                    assertThat(scale.t(si))
                            .as(unit.text())
                            .isCloseTo(exact, Offset.offset(1e-9 * Math.abs(exact) + 1e-10));
                    assertThat(scale.ofT(scale.t(si))).isCloseTo(si, Offset.offset(1e-9 * Math.abs(si) + 1e-10));
                }
            });
        }
    }

    @Test
    void aFarLimitIsNamedAtTheEdgeAndANearOneDrawn() {
        Series one = new Series("one", new double[] {0, 1}, new double[] {300, 310});
        ChartData data = ChartData.of(
                        "t", Axis.of("x", Dimension.LENGTH), Axis.of("y", Dimension.TEMPERATURE), List.of(one))
                .withLimits(
                        List.of(new Limit("near", 320, Limit.Side.AT_MOST), new Limit("far", 900, Limit.Side.AT_MOST)));
        ChartPlan plan = Drawn.plan(data, Choice.suiting(data), View.WHOLE, 600, 300);
        assertThat(plan.y().px(320)).isGreaterThan(plan.plot().top());
        assertThat(plan.y().px(900)).isLessThan(plan.plot().top());
        assertThat(plan.limits().get(1).text()).contains("far: at most 627 degC", "above");
    }

    @Test
    void partsOfATimeAxisHaveClocksOfTheirOwn() {
        ChartData data = ChartScene.inParts();
        Choice choice = Choice.suiting(data);
        assertThat(ChartWords.place(90, data, choice.xUnit())).isEqualTo("up 0:01:30");
        assertThat(ChartWords.place(2000, data, choice.xUnit())).isEqualTo("rest");
        assertThat(ChartWords.place(2700, data, choice.xUnit())).isEqualTo("down 0:05:00");
        ChartPlan plan = Drawn.plan(data, choice, View.WHOLE, 900, 300);
        List<ChartPlan.Caption> zeros = plan.xTicks().stream()
                .filter(tick -> tick.text().equals("0:00:00"))
                .toList();
        assertThat(zeros).hasSize(2);
        assertThat(zeros.get(1).x()).isCloseTo(plan.x().px(2400), SMALL);
    }

    @Test
    void aChartWithNothingInItCanBePainted() {
        ChartData empty = ChartData.of("t", Axis.time("time"), pascal(), List.of());
        Series unknown = new Series("unknown", new double[] {1, 2}, new double[] {Double.NaN, Double.NaN});
        Series point = new Series("point", new double[] {1}, new double[] {5});
        for (List<Series> some :
                List.of(List.<Series>of(), List.of(unknown), List.of(point), List.of(unknown, point))) {
            ChartData data = new ChartData("t", empty.x(), empty.y(), some, List.of(), List.of(), List.of(), List.of());
            for (boolean log : new boolean[] {false, true}) {
                ChartPlan plan = Drawn.plan(
                        data, new Choice(seconds(), pascalChoice(log).yUnit(), false, log), View.WHOLE, 300, 200);
                assertThat(Drawn.of(plan).words).isNotEmpty();
                assertThat(ChartWords.describe(data, plan.choice())).contains("t: ");
            }
        }
    }

    private static boilwright.units.UnitSpelling seconds() {
        return UnitTable.find("s", Dimension.TIME).orElseThrow();
    }

    private static Axis pascal() {
        return Axis.of("pressure", Dimension.PRESSURE);
    }

    private static Choice pascalChoice(boolean log) {
        return new Choice(
                UnitTable.find("m", Dimension.LENGTH).orElseThrow(),
                UnitTable.find("Pa", Dimension.PRESSURE).orElseThrow(),
                false,
                log);
    }

    private static ChartData busy() {
        List<Mark> marks = new ArrayList<>(ChartScene.temperatures(1, 10).marks());
        for (int k = 0; k < 14; k++) {
            marks.add(new Mark("event " + k, 600 + 5 * k * k));
        }
        ChartData data = ChartScene.temperatures(3, 300);
        double x = data.series().get(1).x()[150];
        double y = data.series().get(1).y()[150];
        return data.withMarks(marks).withSpots(List.of(new Spot("meets", x, y)));
    }
}
