package boilwright.dashboard.session;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.fluid.FluidLibrary;
import boilwright.rig.Foreline;
import boilwright.rig.PieceKind;
import boilwright.rig.Protection;
import boilwright.rig.Rig;
import boilwright.rig.file.RigFields;
import boilwright.rig.file.RigReader;
import boilwright.thermal.TestRigs;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Parts of the gas side that a person adds in the form come with values that a file would accept. */
class GasFieldsTest {
    private static final List<String> FLUIDS = FluidLibrary.builtIn().workingFluids();

    @Test
    void aGivenPressureBecomesABackingPumpAndBack() {
        Rig given = TestRigs.metal150(2000);
        RigFields fields = FieldDefaults.ofKind(RigFields.of(given), "foreline", "backing-pump");
        Rig pumped = fields.rig(FLUIDS);
        assertThat(((Foreline.Backing) pumped.foreline()).pump().curve()).hasSize(1);
        assertThat(FieldDefaults.ofKind(RigFields.of(pumped), "foreline", "given-pressure")
                        .rig(FLUIDS)
                        .foreline())
                .isInstanceOf(Foreline.GivenPressure.class);
    }

    @Test
    void aChamberAndEveryKindOfPieceCanBeAdded() {
        RigFields fields = FieldDefaults.added(RigFields.of(TestRigs.metal150(2000)), "vacuum");
        assertThat(fields.rig(FLUIDS).vacuum()).isPresent();
        for (PieceKind kind : PieceKind.values()) {
            fields = FieldDefaults.newEntry(fields, "vacuum.line", kind.id());
        }
        fields = FieldDefaults.added(fields, "vacuum.gauge");
        fields = FieldDefaults.added(fields, "vacuum.roughing");
        Rig rig = fields.rig(FLUIDS);
        assertThat(rig.vacuum().orElseThrow().line()).hasSize(PieceKind.values().length);
        assertThat(rig.vacuum().orElseThrow().gauge()).isPresent();
    }

    @Test
    void oneMorePieceHasANameOfItsOwn() {
        Rig club = RigReader.readDemo("mirror-club", FLUIDS, Set.of());
        Rig more = FieldDefaults.oneMore(RigFields.of(club), "vacuum.line[0]").rig(FLUIDS);
        assertThat(more.vacuum().orElseThrow().line()).hasSize(3);
    }

    @Test
    void tripsAndABatteryCanBeAdded() {
        RigFields fields = FieldDefaults.added(RigFields.of(TestRigs.metal150(2000)), "protection");
        for (Protection.TripKind kind : Protection.TripKind.values()) {
            fields = FieldDefaults.newEntry(fields, "protection.trips", boilwright.rig.FieldCatalogue.id(kind));
        }
        fields = FieldDefaults.added(fields, "protection.battery");
        assertThat(fields.rig(FLUIDS).protection().trips()).hasSize(Protection.TripKind.values().length);
    }
}
