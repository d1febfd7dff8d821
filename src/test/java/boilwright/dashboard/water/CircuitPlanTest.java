package boilwright.dashboard.water;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.dashboard.water.CircuitPlan.Block;
import boilwright.rig.Cooling.Element;
import boilwright.rig.Cooling.Place;
import boilwright.rig.Cooling.Valve;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where elements stand: in the order of the water, line by line, branches side by side. */
class CircuitPlanTest {
    static List<Element> inBranches(String... branches) {
        List<Element> elements = new ArrayList<>();
        for (String branch : branches) {
            elements.add(new Valve(1e-4, new Place("v" + elements.size(), branch)));
        }
        return elements;
    }

    @Test
    void oneLineRunsFromTheSupplyToTheRight() {
        CircuitPlan plan = CircuitPlan.of(inBranches("", "", ""), 5);
        assertThat(plan.columns()).isEqualTo(3);
        assertThat(plan.lines()).isEqualTo(1);
        assertThat(plan.blocks())
                .containsExactly(
                        new Block(0, 0, 1, List.of(List.of(0))),
                        new Block(0, 1, 1, List.of(List.of(1))),
                        new Block(0, 2, 1, List.of(List.of(2))));
        assertThat(plan.endsAtSupply()).isFalse();
    }

    @Test
    void theSecondLineRunsBack() {
        CircuitPlan plan = CircuitPlan.of(inBranches("", "", "", "", ""), 3);
        assertThat(plan.lines()).isEqualTo(2);
        assertThat(plan.blocks().get(3)).isEqualTo(new Block(1, 0, 1, List.of(List.of(3))));
        assertThat(plan.column(1, 0)).isEqualTo(2);
        assertThat(plan.column(1, 1)).isEqualTo(1);
        assertThat(plan.endsAtSupply()).isTrue();
    }

    @Test
    void branchesStandSideBySideAndAreNotTornApart() {
        CircuitPlan plan = CircuitPlan.of(inBranches("", "", "a", "b", "a", ""), 3);
        assertThat(plan.blocks().get(2)).isEqualTo(new Block(1, 0, 2, List.of(List.of(2, 4), List.of(3))));
        assertThat(plan.blocks().get(3)).isEqualTo(new Block(1, 2, 1, List.of(List.of(5))));
        assertThat(plan.rows(0)).isEqualTo(1);
        assertThat(plan.rows(1)).isEqualTo(2);
    }

    @Test
    void aLongBranchMakesTheLinesLonger() {
        CircuitPlan plan = CircuitPlan.of(inBranches("a", "a", "a", "b"), 2);
        assertThat(plan.columns()).isEqualTo(3);
        assertThat(plan.lines()).isEqualTo(1);
    }

    @Test
    void withoutElementsThereIsNoLine() {
        CircuitPlan plan = CircuitPlan.of(List.of(), 4);
        assertThat(plan.lines()).isZero();
        assertThat(plan.endsAtSupply()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 7})
    void everyElementStandsOnceInsideItsLine(int most) {
        CircuitPlan plan = CircuitPlan.of(inBranches("", "a", "b", "b", "", "", "c", "d", "c", ""), most);
        List<Integer> seen = new ArrayList<>();
        for (Block block : plan.blocks()) {
            block.branches().forEach(seen::addAll);
            assertThat(block.first() + block.width()).isLessThanOrEqualTo(plan.columns());
        }
        assertThat(seen).containsExactlyInAnyOrder(0, 1, 2, 3, 4, 5, 6, 7, 8, 9);
    }
}
