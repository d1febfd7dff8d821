package boilwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.answers.Stored;
import boilwright.rig.Rig;
import boilwright.rig.file.RigReader;
import boilwright.spread.Bands;
import boilwright.spread.SpreadPlan;
import boilwright.spread.SpreadQuestion;
import boilwright.spread.SpreadScope;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Bands of the heat margin beside sized and compared sources. */
class HeatSpreadTest {
    @Test
    void withoutSamplesNothingIsSaid() {
        assertThat(HeatSpread.of(Bands.NONE)).isEqualTo(HeatSpread.NONE);
        assertThat(HeatSpread.NONE.inTable("present")).isEmpty();
        assertThat(HeatSpread.NONE.sentence("")).isEmpty();
    }

    @Test
    void aBandStandsWithItsSource() {
        Rig rig = RigReader.readDemo("neon-workshop", Stored.FLUIDS.workingFluids(), Set.of());
        Bands bands = Stored.answer(new SpreadQuestion(
                        Stored.asked(rig), new SpreadPlan(40, 1, 1, SpreadScope.REST, java.util.List.of())))
                .bands();
        HeatSpread spread = new HeatSpread(Map.of("present", bands));
        assertThat(spread.inTable("present")).matches(" \\(0\\.\\d\\d-0\\.\\d\\d\\)");
        assertThat(spread.inTable("another")).isEmpty();
        // the domed contact passes too little whatever it really is
        assertThat(HeatSpread.of(bands).sentence("")).contains("40 samples").contains("too little in 100 %");
    }
}
