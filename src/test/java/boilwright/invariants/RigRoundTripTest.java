package boilwright.invariants;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.rig.Rig;
import boilwright.rig.file.RigReader;
import boilwright.rig.file.RigWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.domains.Domain;

/** What the writer writes, the reader reads: every rig that fits together, to the last bit. */
class RigRoundTripTest {
    @Property(seed = "2041", shrinking = ShrinkingMode.BOUNDED)
    @Domain(RandomRigs.class)
    void aSavedRigReadsBackEqual(@ForAll Rig rig) throws IOException {
        Path file = Files.createTempFile("rig", ".json");
        try {
            RigWriter.save(rig, file);
            assertThat(RigReader.read(file, RandomRigs.FLUIDS, Set.of())).isEqualTo(rig);
        } finally {
            Files.delete(file);
        }
    }

    @Property(seed = "2042")
    @Domain(RandomRigs.class)
    void writingIsTheSameEveryTime(@ForAll Rig rig) {
        assertThat(RigWriter.write(rig)).isEqualTo(RigWriter.write(rig)).doesNotContain("\r");
    }
}
