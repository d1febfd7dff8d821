package boilwright.drill;

import boilwright.answers.CheckAnswer;
import boilwright.answers.Say;
import boilwright.rig.Protection.Trip;
import boilwright.thermal.DrillLimit;
import boilwright.thermal.DrillRun;
import boilwright.thermal.DrillRun.LimitTime;
import boilwright.thermal.Fault;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a fault does, with the heat left on, cut some time later, and cut at once.
 *
 * @param check the rig as described and as it works without the fault
 * @param fault what fails
 * @param atS when it fails, s from cold along the schedule; empty: at rest
 * @param verdict what it comes to, in sentences
 * @param heatOn nobody and nothing cuts the heat
 * @param cutLate the heat cut some time after the failure
 * @param cutAtOnce the heat cut with the failure
 * @param byItself the heat cut by the rig's own trips; empty when none acts
 * @param trips the rig's own trips, with when each cuts the heat if no other does
 * @param waterStopsS when the water stops, s after the failure; empty when it goes on
 * @param heatEnds whether the heat ends with the fault, so that a cut changes nothing
 * @param longestTripDelayS longest time that a trip may take so that every limit which a cut can keep is kept, s; empty when no
 *     limit is passed even with the heat left on, or when a cut changes nothing
 * @param governing the limit that a longer delay passes first; empty when none is
 * @param notKept limits that are passed even when the heat is cut at once
 * @param thereIsS time until the first limit is passed or the first jet goes out with what acts by itself, s; empty when neither
 *     happens
 * @param battery how long a battery must keep water and backing pump so that nothing is harmed, s; 0 when none is needed; empty
 *     for other faults than the mains', or when no battery helps
 * @param acts what acts by itself, whole sentences
 * @param first what to do, in order, whole sentences
 * @param cautions what can hurt someone, whole sentences
 * @param notes assumptions, whole sentences
 */
public record DrillAnswer(
        CheckAnswer check,
        Fault fault,
        OptionalDouble atS,
        String verdict,
        DrillRun heatOn,
        DrillRun cutLate,
        DrillRun cutAtOnce,
        Optional<DrillRun> byItself,
        List<TripTime> trips,
        OptionalDouble waterStopsS,
        boolean heatEnds,
        OptionalDouble longestTripDelayS,
        Optional<DrillLimit> governing,
        List<DrillLimit> notKept,
        OptionalDouble thereIsS,
        OptionalDouble battery,
        List<String> acts,
        List<String> first,
        List<String> cautions,
        List<String> notes) {
    public DrillAnswer {
        trips = List.copyOf(trips);
        notKept = List.copyOf(notKept);
        acts = List.copyOf(acts);
        first = List.copyOf(first);
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }

    /**
     * A trip of the rig in a drill.
     *
     * @param trip which
     * @param actsS when it cuts the heat, s after the failure; empty when it does not
     */
    public record TripTime(Trip trip, OptionalDouble actsS) {}

    /** What happens at the rig as it is: what acts by itself has acted. */
    public DrillRun asItIs() {
        return byItself.orElse(heatOn);
    }

    /** Whether something is harmed even though everything that acts by itself has acted. */
    public boolean harms() {
        return firstHarm(asItIs()).isPresent();
    }

    /** The first limit whose passing harms something in a run. */
    public static Optional<LimitTime> firstHarm(DrillRun run) {
        return DrillWords.passed(run).stream().findFirst();
    }

    /** How long there is, as a sentence; empty when nothing happens. */
    public Optional<String> thereIsSentence() {
        if (thereIsS.isEmpty()) {
            return Optional.empty();
        }
        double seconds = thereIsS.getAsDouble();
        return Optional.of(
                seconds < DrillWords.AT_ONCE_S
                        ? DrillSentence.THERE_IS_NONE.say()
                        : DrillSentence.THERE_IS.say(Say.time(seconds)));
    }

    /** What a battery would do for the rig when the mains fail; empty for other faults. */
    public Optional<String> batterySentence() {
        if (fault != Fault.MAINS || !heatEnds) {
            return Optional.empty();
        }
        if (battery.isEmpty()) {
            return Optional.of(DrillSentence.BATTERY_NO_HELP.say());
        }
        double seconds = battery.getAsDouble();
        return Optional.of(
                seconds == 0
                        ? DrillSentence.BATTERY_NONE_NEEDED.say()
                        : DrillSentence.BATTERY_NEEDED.say(Say.time(seconds)));
    }

    /** What a limit is called in a table. */
    public static String title(DrillLimit limit) {
        return DrillWords.title(limit);
    }

    /** What a fault is called in a table. */
    public static String title(Fault fault) {
        return DrillWords.title(fault);
    }
}
