package boilwright.dashboard.session;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.fluid.FluidLibrary;
import boilwright.rig.Rig;
import boilwright.rig.file.RigReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept against a crash and from one start to the next. */
class RecoveryTest {
    private static final List<String> FLUIDS = FluidLibrary.builtIn().workingFluids();
    private static final Rig RIG = RigReader.readDemo("teaching-lab", FLUIDS, Set.of());

    @TempDir
    Path state;

    @Test
    void whatACrashLeftIsFoundByTheNextWindow() {
        Path file = state.resolve("mine.json");
        Recovery crashed = Recovery.in(Optional.of(state));
        assertThat(crashed.keep(RIG, Optional.of(file))).isTrue();
        crashed.close(); // the system does as much when a program dies

        Recovery next = Recovery.in(Optional.of(state));
        List<Recovery.Left> left = next.left();
        assertThat(left).hasSize(1);
        assertThat(RigReader.read(left.get(0).rig(), FLUIDS, Set.of())).isEqualTo(RIG);
        assertThat(left.get(0).from()).contains(file.toAbsolutePath());
        left.get(0).discard();
        assertThat(next.left()).isEmpty();
        next.close();
        assertThat(state.resolve("recovery")).isEmptyDirectory();
    }

    @Test
    void aLivingWindowsCopyIsNotOffered() {
        Recovery living = Recovery.in(Optional.of(state));
        living.keep(RIG, Optional.empty());
        Recovery other = Recovery.in(Optional.of(state));
        assertThat(other.left()).isEmpty();
        living.drop();
        living.close();
        other.close();
        assertThat(state.resolve("recovery")).isEmptyDirectory();
    }

    @Test
    void keepsNothingWhereThereIsNoFolder() throws IOException {
        Path file = Files.createFile(state.resolve("a file"));
        for (Optional<Path> nowhere : List.of(Optional.<Path>empty(), Optional.of(file))) {
            Recovery recovery = Recovery.in(nowhere);
            assertThat(recovery.keep(RIG, Optional.empty())).isFalse();
            assertThat(recovery.left()).isEmpty();
            recovery.drop();
            recovery.close();
        }
    }

    @Test
    void remembersFilesAndTheme() {
        Remembered first = Remembered.in(Optional.of(state));
        for (int i = 0; i < 10; i++) {
            first.used(state.resolve("rig" + i + ".json"));
        }
        first.used(state.resolve("rig5.json"));
        first.theme("dark");
        Remembered later = Remembered.in(Optional.of(state));
        assertThat(later.theme()).isEqualTo("dark");
        assertThat(later.recentFiles())
                .hasSize(8)
                .startsWith(state.resolve("rig5.json"), state.resolve("rig9.json"))
                .doesNotHaveDuplicates();
    }

    @Test
    void aDamagedMemoryCountsAsNone() throws IOException {
        Files.writeString(state.resolve("window.properties"), "theme=\\u12");
        assertThat(Remembered.in(Optional.of(state)).theme()).isEmpty();
    }

    @Test
    void theFolderFollowsTheHabitsOfTheSystem() {
        assertThat(StateFolder.name("/told", Map.of("XDG_STATE_HOME", "/x"), "/anyone"))
                .isEqualTo(Path.of("/told"));
        assertThat(StateFolder.name(null, Map.of("LOCALAPPDATA", "/win"), "/anyone"))
                .isEqualTo(Path.of("/win/boilwright"));
        assertThat(StateFolder.name(null, Map.of("XDG_STATE_HOME", "/x"), "/anyone"))
                .isEqualTo(Path.of("/x/boilwright"));
        assertThat(StateFolder.name(null, Map.of("XDG_STATE_HOME", "relative"), "/anyone"))
                .isEqualTo(Path.of("/anyone/.local/state/boilwright"));
    }

    @Test
    void noticesWhenSomebodyElseChangedTheFile() throws IOException {
        Path file = state.resolve("rig.json");
        RigFiles.Stored stored = RigFiles.write(RIG, file);
        assertThat(RigFiles.changedMeanwhile(stored)).isFalse();
        Files.writeString(file, Files.readString(file).replace("Teaching lab", "Their lab"));
        assertThat(RigFiles.changedMeanwhile(stored)).isTrue();
        RigFiles.Stored theirs = RigFiles.read(file, FLUIDS, false);
        assertThat(theirs.rig().name()).isEqualTo("Their lab");
        assertThat(RigFiles.changedMeanwhile(theirs)).isFalse();
        Files.delete(file);
        assertThat(RigFiles.changedMeanwhile(theirs)).isFalse();
    }
}
