package boilwright.dashboard.band;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.dashboard.model.RunPhase.Kind;
import boilwright.dashboard.model.RunTimeline;
import boilwright.dashboard.model.Timelines;
import boilwright.rig.file.RigReader;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Where times lie on the band. */
class AxisScaleTest {
    @Test
    void stretchesFollowEachOtherOverTheWholeAxis() {
        for (String demo : RigReader.demoNames()) {
            RunTimeline line = Timelines.demo(demo);
            double reached = 0;
            for (Stretch stretch : Stretch.of(line)) {
                assertThat(stretch.startS()).isEqualTo(reached);
                assertThat(stretch.lengthS()).isPositive();
                assertThat(stretch.name()).isNotBlank();
                assertThat(stretch.sentence()).endsWith(".");
                reached = stretch.endS();
            }
            assertThat(reached).isEqualTo(line.endS());
        }
    }

    @Test
    void thePlateauIsCutOutAndTakesATenthWhateverTheRun() {
        for (String demo : RigReader.demoNames()) {
            RunTimeline line = Timelines.demo(demo);
            assertThat(Stretch.of(line).stream().filter(Stretch::plateau))
                    .singleElement()
                    .satisfies(plateau -> {
                        assertThat(plateau.startS()).isEqualTo(line.restStartS());
                        assertThat(plateau.endS()).isEqualTo(line.cooldownStartS());
                        assertThat(plateau.length()).as("it takes any time").isEmpty();
                    });
            AxisScale scale = new AxisScale(Stretch.of(line));
            assertThat(scale.share(line.cooldownStartS()) - scale.share(line.restStartS()))
                    .isCloseTo(0.1, within(1e-9));
        }
    }

    @Test
    void aShortStretchHasRoomBesideALongOne() {
        AxisScale scale = new AxisScale(
                List.of(new Stretch(Kind.FRONT_CLIMBS, false, 0, 1), new Stretch(Kind.COOLING, false, 1, 1e6)));
        assertThat(scale.share(1)).isGreaterThan(0.15);
        assertThat(scale.share(-5)).isZero();
        assertThat(scale.share(2e6)).isEqualTo(1);
        assertThat(scale.axisS(-1)).isZero();
        assertThat(scale.axisS(2)).isEqualTo(1e6);
    }

    @Property(tries = 100, seed = "4102")
    void timesRiseAlongTheBandAndComeBack(
            @ForAll @DoubleRange(min = 0.5, max = 1e5) double one,
            @ForAll @DoubleRange(min = 0.5, max = 1e5) double other,
            @ForAll @DoubleRange(min = 0, max = 0.99) double share) {
        List<Stretch> stretches = new ArrayList<>();
        double at = 0;
        for (Kind kind : List.of(Kind.DEGAS, Kind.HEAT, Kind.FRONT_CLIMBS, Kind.NO_JET, Kind.COOLING)) {
            double end = at + (stretches.size() % 2 == 0 ? one : other);
            stretches.add(new Stretch(kind, kind == Kind.NO_JET, at, end));
            at = end;
        }
        AxisScale scale = new AxisScale(stretches);
        assertThat(scale.share(scale.axisS(share))).isCloseTo(share, within(1e-9));
        assertThat(scale.axisS(share + 0.01)).isGreaterThan(scale.axisS(share));
    }
}
