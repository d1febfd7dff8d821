package boilwright.dashboard.session;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.dashboard.session.RigFiles.Stored;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.fluid.FluidLibrary;
import boilwright.rig.Rig;
import boilwright.rig.file.RigFields;
import boilwright.rig.file.RigReader;
import boilwright.rig.file.RigWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Edits, steps back and forward, and what counts as unsaved. */
class RigSessionTest {
    private static final List<String> FLUIDS = FluidLibrary.builtIn().workingFluids();
    private static final Rig START = RigReader.readDemo("neon-workshop", FLUIDS, Set.of());

    private final RigSession session = new RigSession(Stored.nowhere(START));

    @Test
    void goesBackToTheIdenticalFile() {
        String file = RigWriter.write(START);
        for (int i = 1; i <= 20; i++) {
            assertThat(power(1500 + 10 * i)).isTrue();
        }
        assertThat(session.isDirty()).isTrue();
        for (int i = 0; i < 20; i++) {
            session.undo();
        }
        assertThat(RigWriter.write(session.rig())).isEqualTo(file);
        assertThat(session.isDirty()).isFalse();
        assertThat(session.undoNameProperty().get()).isEmpty();
        session.undo();
        assertThat(session.rig()).isEqualTo(START);
    }

    @Test
    void goesForwardAgainUntilSomethingElseIsEdited() {
        power(1600);
        power(1700);
        session.undo();
        session.undo();
        session.redo();
        assertThat(session.rig().heatSource().ratedPowerW()).isEqualTo(1600);
        assertThat(session.redoNameProperty().get()).isEqualTo("power");
        power(1800);
        session.redo();
        assertThat(session.rig().heatSource().ratedPowerW()).isEqualTo(1800);
    }

    @Test
    void anEditThatChangesNothingLeavesNoStep() {
        power(1500);
        assertThat(session.undoNameProperty().get()).isEmpty();
    }

    @Test
    void aRefusedEditLeavesTheRigAndSaysWhyUntilOneIsAccepted() {
        power(1600);
        Rig before = session.rig();
        assertThat(session.edit(
                        "area",
                        rig -> RigFields.of(rig)
                                .with("heatSource.contactArea", 0.5)
                                .rig(FLUIDS)))
                .isFalse();
        assertThat(session.rig()).isSameAs(before);
        assertThat(session.refusalProperty().get())
                .extracting(Message::key)
                .containsExactly(MessageKey.RIG_CONTACT_LARGER_THAN_HEATED);
        power(1700);
        assertThat(session.refusalProperty().get()).isEmpty();
    }

    @Test
    void savingMakesItCleanAndUndoingAfterwardsDirty() {
        power(1600);
        session.saved(new Stored(session.rig(), Optional.of(Path.of("a.json")), "x"));
        assertThat(session.isDirty()).isFalse();
        assertThat(session.file()).contains(Path.of("a.json"));
        session.undo();
        assertThat(session.isDirty()).isTrue();
    }

    @Test
    void anEditMadeWhileSavingStaysUnsaved() {
        power(1600);
        Rig written = session.rig();
        power(1700);
        session.saved(new Stored(written, Optional.of(Path.of("a.json")), "x"));
        assertThat(session.isDirty()).isTrue();
    }

    private boolean power(double watts) {
        return session.edit(
                "power",
                rig -> RigFields.of(rig).with("heatSource.ratedPower", watts).rig(FLUIDS));
    }
}
