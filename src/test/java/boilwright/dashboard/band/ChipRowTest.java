package boilwright.dashboard.band;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.dashboard.model.Timelines;
import boilwright.rig.file.RigReader;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Labels of marks: all there, none over another. */
class ChipRowTest {
    private static final double GAP = 4;

    @Property(tries = 60, seed = "4103")
    void noLabelOverlapsAnotherAndNoMarkIsMissing(@ForAll @IntRange(min = 120, max = 3800) int width) {
        for (String demo : RigReader.demoNames()) {
            BandAxis axis = BandAxis.of(Timelines.demo(demo));
            List<ChipRow.Chip> row =
                    ChipRow.place(axis.marks(), axis.scale(), 10, 10 + width, GAP, ChipRowTest::labelWidth);
            assertThat(row.stream().flatMap(chip -> chip.marks().stream())).containsExactlyElementsOf(axis.marks());
            double reached = 10 - GAP;
            for (ChipRow.Chip chip : row) {
                assertThat(chip.left()).isGreaterThanOrEqualTo(reached + GAP - 1e-9);
                reached = chip.left() + chip.width();
            }
            assertThat(reached).isLessThanOrEqualTo(10 + width + 1e-9);
        }
    }

    @Test
    void nearestNeighboursShareALabelWhereThereIsNoRoomForEach() {
        List<BandMark> marks = List.of(mark(0), mark(50), mark(51), mark(100));
        AxisScale scale =
                new AxisScale(List.of(new Stretch(boilwright.dashboard.model.RunPhase.Kind.HEAT, false, 0, 100)));
        List<ChipRow.Chip> row = ChipRow.place(marks, scale, 0, 100, GAP, group -> 30);
        assertThat(row).extracting(chip -> chip.marks().size()).containsExactly(1, 2, 1);
        assertThat(row.get(1).axisS()).isEqualTo(50.5);
    }

    @Test
    void aLabelWithRoomStandsOverItsMark() {
        AxisScale scale =
                new AxisScale(List.of(new Stretch(boilwright.dashboard.model.RunPhase.Kind.HEAT, false, 0, 100)));
        List<ChipRow.Chip> row = ChipRow.place(List.of(mark(40)), scale, 0, 100, GAP, group -> 30);
        assertThat(row).singleElement().satisfies(chip -> {
            assertThat(chip.x()).isEqualTo(40);
            assertThat(chip.left()).isEqualTo(25);
        });
    }

    @Test
    void whatHasRoomStandsWhereItWants() {
        double[] lefts = ChipRow.lefts(new double[] {50, 200}, new double[] {40, 60}, 5, 0, 400);
        assertThat(lefts).containsExactly(30, 170);
    }

    @Test
    void twoThatWantOnePlaceShareItEvenly() {
        double[] lefts = ChipRow.lefts(new double[] {100, 100}, new double[] {40, 40}, 10, 0, 400);
        assertThat(lefts[0]).isCloseTo(55, within(1e-9));
        assertThat(lefts[1]).isCloseTo(105, within(1e-9));
    }

    @Property(tries = 100, seed = "4101")
    void noneOverlapsAndNoneLeavesTheRoom(
            @ForAll @Size(min = 1, max = 12) double @DoubleRange(min = 0, max = 1000) [] wanted) {
        double[] centres = wanted.clone();
        Arrays.sort(centres);
        double[] widths = new double[centres.length];
        Arrays.fill(widths, 60);
        double[] lefts = ChipRow.lefts(centres, widths, 4, 0, 1000);
        for (int i = 0; i < lefts.length; i++) {
            assertThat(lefts[i]).isBetween(-1e-9, 940 + 1e-9);
            if (i > 0) {
                assertThat(lefts[i]).isGreaterThanOrEqualTo(lefts[i - 1] + 64 - 1e-9);
            }
        }
    }

    private static double labelWidth(List<BandMark> marks) {
        return marks.size() == 1 ? 12 + 6 * marks.get(0).label().length() : 50;
    }

    private static BandMark mark(double s) {
        return new BandMark(s, BandMark.Sign.NONE, "label", "then", "title", "Reason.");
    }
}
