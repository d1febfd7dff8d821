package boilwright.thermal;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * One run of a rig through time.
 *
 * @param kind "warmup" or "cooldown"
 * @param events what happens, in order of time; events that do not happen come last
 * @param series the time line
 * @param column column temperatures at the times of the series
 * @param balance its energy balance
 * @param supplyClosureRelative what is left over in the balance of the water supply, relative to what went through it; empty when
 *     the supply stores nothing
 * @param assumptions what was assumed, whole sentences
 * @param statistics integrator's counts, for diagnosis
 */
public record RunResult(
        String kind,
        List<TimeEvent> events,
        TimeSeries series,
        ColumnHistory column,
        EnergyBalance balance,
        OptionalDouble supplyClosureRelative,
        List<String> assumptions,
        Map<String, Long> statistics) {
    public RunResult {
        events = List.copyOf(events);
        assumptions = List.copyOf(assumptions);
        statistics = Map.copyOf(statistics);
    }
}
