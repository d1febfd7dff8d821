package boilwright.dashboard.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.answers.WaterAnswer;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javafx.geometry.Rectangle2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Boxes and pipes in pixels: connected from supply to supply, nothing on top of anything. */
class CircuitGeometryTest {
    private static final double EM = 13;
    private static final double BOX = 90;
    private static final String[] BRANCHES = {"", "a", "b", "a", "", ""};

    private static WaterAnswer.Element element(double inK, double outK, double flow) {
        return new WaterAnswer.Element(
                "x", inK, outK, flow, 4186 * flow * (outK - inK), OptionalDouble.empty(), OptionalDouble.empty(), 1e3);
    }

    private static List<WaterAnswer.Element> figures() {
        return List.of(
                element(290, 291, 0.03),
                element(291, 293, 0.01),
                element(291, 299, 0.02),
                element(293, 295, 0.01),
                element(297.66, 298, 0.03),
                element(298, 297.9, 0.03));
    }

    private static CircuitGeometry geometry(double width) {
        CircuitPlan plan = CircuitPlan.of(CircuitPlanTest.inBranches(BRANCHES), CircuitGeometry.mostColumns(width, EM));
        return new CircuitGeometry(plan, figures(), 290, width, BOX, EM);
    }

    @ParameterizedTest
    @ValueSource(doubles = {420, 600, 800, 1300})
    void boxesKeepApartAndInside(double width) {
        CircuitGeometry places = geometry(width);
        List<Rectangle2D> boxes = new ArrayList<>();
        boxes.add(places.supply());
        for (int i = 0; i < BRANCHES.length; i++) {
            Rectangle2D box = places.box(i);
            assertThat(box.getMaxX()).isLessThan(width);
            assertThat(box.getMinY()).isNotNegative();
            assertThat(box.getMaxY()).isLessThan(places.height());
            assertThat(boxes).noneMatch(box::intersects);
            boxes.add(box);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {420, 600, 800, 1300})
    void everyPipeBeginsAtABoxOrAtAnotherPipe(double width) {
        CircuitGeometry places = geometry(width);
        List<double[]> ends = new ArrayList<>();
        ends.add(new double[] {places.supply().getMaxX(), middle(places.supply())});
        for (int i = 0; i < BRANCHES.length; i++) {
            Rectangle2D box = places.box(i);
            ends.add(new double[] {box.getMinX(), middle(box)});
            ends.add(new double[] {box.getMaxX(), middle(box)});
        }
        for (CircuitGeometry.Pipe pipe : places.pipes()) {
            double x = pipe.xs()[0];
            double y = pipe.ys()[0];
            assertThat(ends).anyMatch(end -> Math.hypot(end[0] - x, end[1] - y) < 1e-9);
            int last = pipe.xs().length - 1;
            ends.add(new double[] {pipe.xs()[last], pipe.ys()[last]});
        }
    }

    private static double middle(Rectangle2D box) {
        return (box.getMinY() + box.getMaxY()) / 2;
    }

    @ParameterizedTest
    @ValueSource(doubles = {420, 600, 800, 1300})
    void theLastPipeLeadsBackToTheSupplyOrStopsAtTheDrain(double width) {
        CircuitGeometry places = geometry(width);
        CircuitGeometry.Pipe home = places.pipes().get(places.pipes().size() - 1);
        int last = home.xs().length - 1;
        assertThat(home.xs()[last]).isBetween(0.0, places.supply().getMaxX());
        assertThat(home.ys()[last]).isEqualTo(places.supply().getMaxY());
        assertThat(home.temperatureK()).isEqualTo(297.9);
        CircuitGeometry.Pipe drain = places.toDrain();
        int stop = drain.xs().length - 1;
        assertThat(drain.xs()[stop]).isGreaterThan(places.end().getMaxX());
        assertThat(drain.ys()[stop]).isCloseTo(middle(places.end()), within(1e-9));
        assertThat(places.end().getMaxY()).isLessThan(places.height() + EM);
    }

    @Test
    void pipesHaveTheTemperatureOfTheirWater() {
        CircuitGeometry places = geometry(1300);
        assertThat(places.pipes().get(0).temperatureK()).isEqualTo(290);
        assertThat(places.pipes())
                .extracting(CircuitGeometry.Pipe::temperatureK)
                .contains(291.0, 293.0, 295.0, 299.0, 297.66, 298.0);
        assertThat(places.pipes()).noneMatch(CircuitGeometry.Pipe::idle);
    }

    @Test
    void aBranchWithoutFlowIsIdle() {
        List<WaterAnswer.Element> still = new ArrayList<>(figures());
        still.set(2, element(291, 291, 0));
        CircuitPlan plan = CircuitPlan.of(CircuitPlanTest.inBranches(BRANCHES), 9);
        CircuitGeometry places = new CircuitGeometry(plan, still, 290, 1300, BOX, EM);
        assertThat(places.pipes().stream().filter(CircuitGeometry.Pipe::idle)).hasSize(2);
    }
}
