package boilwright.estimate;

import static boilwright.estimate.Measured.demo;
import static boilwright.estimate.Measured.estimate;
import static boilwright.estimate.Measured.outside;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boilwright.errors.CancelledException;
import boilwright.estimate.OutsideMeasurements.Known;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.Rig;
import boilwright.rig.file.RigEdit;
import boilwright.thermal.RigChange;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class GuessRankingTest {
    private static List<RankedGuess> rank(Rig rig) {
        return GuessRanking.of(rig, Measured.FLUIDS.find(rig.fluidId()), new CancelToken(), ProgressSink.NONE);
    }

    @Test
    void aMeasuredRigHasNothingToRank() {
        Rig rig = demo("neon-workshop");
        assertThat(rank(rig)).isEmpty();
        assertThat(GuessRanking.reminder(rig)).isEmpty();
        assertThat(GuessRanking.sentence(rig, List.of())).isEqualTo("No field of this rig is marked as a guess.");
    }

    @Test
    void theDomedContactOfTheNeonWorkshopMattersMoreThanItsWater() {
        Rig rig = RigChange.measured(demo("neon-workshop"))
                .withGuesses(Set.of("cooling.supply.flow", "heatSource.contactConductance", "heatSource.contactArea"));
        // The demo leaves the conductance to the kind of contact: it has no value of its own to move.
        List<RankedGuess> ranked = rank(rig);
        assertThat(ranked)
                .extracting(RankedGuess::path)
                .containsExactly("heatSource.contactArea", "cooling.supply.flow");
        assertThat(ranked.get(0).ratioAtLow().orElseThrow())
                .isLessThan(ranked.get(0).ratioNow());
        assertThat(GuessRanking.sentence(rig, ranked)).contains("3 fields", "heatSource.contactArea");
    }

    @Test
    void theOrderIsByTheLargestChangeAndTheSameEveryTime() {
        Rig rig = estimate(outside(demo("teaching-lab"), Known.NOTHING)).rig();
        List<RankedGuess> ranked = rank(rig);
        assertThat(ranked).isEqualTo(rank(rig));
        for (int i = 1; i < ranked.size(); i++) {
            assertThat(ranked.get(i).change())
                    .isLessThanOrEqualTo(ranked.get(i - 1).change());
        }
        assertThat(ranked).extracting(RankedGuess::path).doesNotHaveDuplicates().contains("stages[].throatGap");
        assertThat(ranked)
                .filteredOn(guess -> guess.path().equals("stages[].throatGap"))
                .singleElement()
                .satisfies(guess ->
                        assertThat(guess.moved()).containsExactly("stages[0].throatGap", "stages[1].throatGap"));
    }

    @Test
    void widerThroatsAndBetterContactsActTheRightWay() {
        List<RankedGuess> ranked =
                rank(estimate(outside(demo("teaching-lab"), Known.NOTHING)).rig());
        RankedGuess gaps = find(ranked, "stages[].throatGap");
        assertThat(gaps.ratioAtLow().orElseThrow())
                .isGreaterThan(gaps.ratioAtHigh().orElseThrow());
        RankedGuess contact = find(ranked, "heatSource.contactConductance");
        assertThat(contact.low()).isEqualTo(25);
        assertThat(contact.high()).isEqualTo(60);
        assertThat(contact.ratioAtHigh().orElseThrow())
                .isGreaterThan(contact.ratioAtLow().orElseThrow());
    }

    @Test
    void aGuessThatAloneDecidesIsNamedAsSuch() {
        Rig rig = demo("teaching-lab")
                .withGuesses(Set.of("stages[0].throatGap", "stages[1].throatGap", "foreline.pressure"));
        List<RankedGuess> ranked = rank(rig);
        Rig weak = RigChange.measured(demo("neon-workshop")).withGuesses(Set.of("cooling.supply.flow"));
        assertThat(rank(weak).get(0).decides()).isFalse();
        assertThat(GuessRanking.sentence(weak, rank(weak))).doesNotContain("alone decides");
        assertThat(ranked.stream().filter(RankedGuess::decides).findFirst())
                .hasValueSatisfying(guess ->
                        assertThat(GuessRanking.sentence(rig, List.of(guess))).contains("alone decides"));
    }

    @Test
    void aHeightDownwardHasARangeToo() {
        Rig rig = RigEdit.of("cooling.elements[3].height", -0.4).applied(demo("neon-workshop"));
        GuessRange range = GuessRange.of(rig, "cooling.elements[3].height").orElseThrow();
        assertThat(range.low()).isCloseTo(-0.54, within(1e-9));
        assertThat(range.high()).isCloseTo(-0.3, within(1e-9));
    }

    @Test
    void endsThatDoNotFitTheRestAreMovedTowardsTheGuess() {
        Rig rig = demo("neon-workshop").withGuesses(Set.of("body.uncooledLowerHeight", "boiler.heatedArea"));
        RankedGuess heated = find(rank(rig), "boiler.heatedArea");
        // 80 % of it would be less than the area of contact
        assertThat(heated.low()).isGreaterThan(0.8 * 0.0215).isLessThanOrEqualTo(0.0215);
    }

    @Test
    void itCanBeStopped() {
        Rig rig = demo("teaching-lab").withGuesses(Set.of("charge"));
        CancelToken cancel = new CancelToken();
        cancel.cancel();
        assertThatThrownBy(() -> GuessRanking.of(rig, Measured.FLUIDS.find("704-type"), cancel, ProgressSink.NONE))
                .isInstanceOf(CancelledException.class);
    }

    private static RankedGuess find(List<RankedGuess> ranked, String path) {
        return ranked.stream().filter(g -> g.path().equals(path)).findFirst().orElseThrow();
    }
}
