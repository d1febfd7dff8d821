package boilwright.invariants;

import boilwright.rig.HeatSource;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import boilwright.rig.SourceKind;
import boilwright.thermal.RigChange;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;

/** Random rigs filled with a pump fluid (the alkanes are there for validation only: they freeze at room temperature). */
public final class PumpRigs extends DomainContextBase {
    /** Fluids for pumps. */
    public static final List<String> FLUIDS =
            RandomRigs.FLUIDS.stream().filter(id -> !id.startsWith("n-")).toList();

    /** Any of them. */
    @Provide
    Arbitrary<Rig> rig() {
        return RandomRigs.rigs(FLUIDS, Arrays.asList(SourceKind.values()));
    }

    /** The same rig with the last level of its schedule from the beginning. */
    public static Rig constant(Rig rig) {
        List<Schedule.Step> steps = rig.schedule().steps();
        Schedule.Step last = steps.get(steps.size() - 1);
        Schedule.Step only = last instanceof Schedule.HoldOil hold
                ? new Schedule.HoldOil(0, hold.oilK())
                : new Schedule.Power(0, ((Schedule.Power) last).fraction());
        return RigChange.schedule(rig, new Schedule(List.of(only)));
    }

    /** True when nothing in the rig switches, swings or runs out, so that a run must end in the steady state. */
    public static boolean isConstant(Rig rig) {
        List<Schedule.Step> steps = rig.schedule().steps();
        if (steps.get(steps.size() - 1) instanceof Schedule.HoldOil) {
            return false;
        }
        HeatSource source = rig.heatSource();
        boolean onOff = source.body()
                .filter(body -> body.thermostat() == HeatSource.Thermostat.ON_OFF)
                .isPresent();
        return source.cartridge().isEmpty() && !onOff;
    }
}
