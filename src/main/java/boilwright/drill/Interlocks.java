package boilwright.drill;

import boilwright.answers.CheckAnswer;
import boilwright.answers.Say;
import boilwright.drill.Interlock.Standing;
import boilwright.drill.SetPoints.Draft;
import boilwright.rig.Protection.Trip;
import boilwright.rig.Protection.TripKind;
import boilwright.thermal.DrillRun.LimitTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * Which trips a rig should have, from the drills: a trip that catches a fault leaves time until the longest delay of that
 * drill; where no cut of the heat helps, a trip warns, and what is left until the first harm is for the people.
 */
final class Interlocks {
    /** A delay below this is none that a switch could keep, s. */
    private static final double LEAST_DELAY_S = 1;
    /** Least time before a harm in which a person can act, s; engineering judgement. */
    private static final double LEAST_WARNING_S = 30;
    /** Share of that time which a delay may take. */
    private static final double WARNING_SHARE = 0.5;

    private final CheckAnswer check;
    private final List<DrillAnswer> drills;
    private final List<Draft> drafts;

    Interlocks(CheckAnswer check, List<DrillAnswer> drills) {
        this.check = check;
        this.drills = drills;
        drafts = new SetPoints(check, drills).list();
    }

    List<Interlock> list() {
        return drafts.stream().map(this::interlock).toList();
    }

    /** Whether a cut of the heat in time keeps everything whole that a cut can keep. */
    private static boolean cutHelps(DrillAnswer drill) {
        return drill.longestTripDelayS().isPresent();
    }

    /** What is left after a trip's value has passed the set point, s: to cut the heat or, where that does not help, to act. */
    private double room(TripKind kind, OptionalDouble setPoint, DrillAnswer drill) {
        if (setPoint.isEmpty() || drill.heatEnds()) {
            return Double.NEGATIVE_INFINITY;
        }
        OptionalDouble until = cutHelps(drill)
                ? drill.longestTripDelayS()
                : DrillAnswer.firstHarm(drill.heatOn()).map(LimitTime::passedS).orElse(OptionalDouble.empty());
        TripClock clock =
                new TripClock(drill.atS().orElse(0), check.steady().flow().volumeFlowM3PerS(), drill.waterStopsS());
        OptionalDouble shows = clock.actsS(kind, setPoint.getAsDouble(), 0, drill.heatOn());
        return until.isPresent() && shows.isPresent()
                ? until.getAsDouble() - shows.getAsDouble()
                : Double.NEGATIVE_INFINITY;
    }

    private boolean shows(Draft draft, DrillAnswer drill) {
        return room(draft.kind(), draft.setPoint(), drill) >= (cutHelps(drill) ? LEAST_DELAY_S : LEAST_WARNING_S);
    }

    private boolean isBest(Draft draft, DrillAnswer drill) {
        double room = room(draft.kind(), draft.setPoint(), drill);
        return shows(draft, drill) && drafts.stream().allMatch(d -> room(d.kind(), d.setPoint(), drill) <= room);
    }

    private boolean inTime(Trip trip, DrillAnswer drill) {
        double least = cutHelps(drill) ? 0 : LEAST_WARNING_S;
        return room(trip.kind(), OptionalDouble.of(trip.setPoint()), drill) >= trip.delayS() + least;
    }

    private boolean isCovered(DrillAnswer drill) {
        return check.rig().protection().trips().stream().anyMatch(t -> inTime(t, drill));
    }

    private Interlock interlock(Draft draft) {
        List<DrillAnswer> shown = drills.stream().filter(d -> shows(draft, d)).toList();
        List<DrillAnswer> best = shown.stream().filter(d -> isBest(draft, d)).toList();
        OptionalDouble delay = (best.isEmpty() ? shown : best)
                .stream()
                        .mapToDouble(d -> room(draft.kind(), draft.setPoint(), d) * (cutHelps(d) ? 1 : WARNING_SHARE))
                        .map(Math::floor)
                        .min();
        List<DrillAnswer> catches = shown.stream().filter(Interlocks::cutHelps).toList();
        List<DrillAnswer> warns = shown.stream().filter(d -> !cutHelps(d)).toList();
        Optional<Trip> own = check.rig().protection().trips().stream()
                .filter(t -> t.kind() == draft.kind())
                .findFirst();
        Standing standing = standing(draft, own, shown, best);
        return new Interlock(
                draft.kind(),
                draft.usual(),
                draft.limit(),
                draft.setPoint(),
                draft.hysteresis(),
                delay,
                catches.stream().map(DrillAnswer::fault).toList(),
                warns.stream().map(DrillAnswer::fault).toList(),
                own,
                standing,
                sentence(draft, own, standing, delay, catches) + warning(draft, warns));
    }

    private Standing standing(Draft draft, Optional<Trip> own, List<DrillAnswer> shown, List<DrillAnswer> best) {
        if (own.isPresent()) {
            double set = own.get().setPoint();
            boolean early = draft.kind() == TripKind.WATER_FLOW ? set > draft.usual() : set < draft.usual();
            if (early) {
                return Standing.TOO_EARLY;
            }
        }
        if (draft.setPoint().isEmpty()) {
            return Standing.NO_ROOM;
        }
        if (shown.isEmpty()) {
            return Standing.OF_NO_USE;
        }
        boolean wanting = best.stream().anyMatch(d -> !isCovered(d));
        if (own.isPresent()) {
            return wanting ? Standing.TOO_LATE : Standing.THERE;
        }
        return wanting ? Standing.LACKING : Standing.SECOND;
    }

    private static String sentence(
            Draft draft, Optional<Trip> own, Standing standing, OptionalDouble delay, List<DrillAnswer> catches) {
        TripKind kind = draft.kind();
        String usual = DrillWords.value(kind, draft.usual());
        String set = draft.setPoint().isPresent()
                ? DrillWords.value(kind, draft.setPoint().getAsDouble())
                : "-";
        String longest = Say.time(delay.orElse(0));
        String its = own.map(t -> DrillWords.value(kind, t.setPoint())).orElse("");
        return switch (standing) {
            case TOO_EARLY -> DrillSentence.INTERLOCK_TOO_EARLY.say(its, usual, set);
            case NO_ROOM -> DrillSentence.INTERLOCK_NO_ROOM.say(usual, DrillWords.value(kind, draft.limit()));
            case TOO_LATE ->
                DrillSentence.INTERLOCK_TOO_LATE.say(
                        its, Say.time(own.orElseThrow().delayS()), set, longest);
            case LACKING ->
                catches.isEmpty()
                        ? DrillSentence.INTERLOCK_LACKING_WARNING.say(set)
                        : DrillSentence.INTERLOCK_LACKING.say(set, longest, faults(catches));
            case THERE -> DrillSentence.INTERLOCK_THERE.say(its, longest);
            case SECOND -> DrillSentence.INTERLOCK_SECOND.say(set, longest);
            case OF_NO_USE -> DrillSentence.INTERLOCK_SHOWS_NOTHING.say();
        };
    }

    private String warning(Draft draft, List<DrillAnswer> warns) {
        if (warns.isEmpty()) {
            return "";
        }
        double left = warns.stream()
                .mapToDouble(d -> room(draft.kind(), draft.setPoint(), d))
                .min()
                .orElseThrow();
        return " " + DrillSentence.INTERLOCK_WARNS.say(faults(warns), Say.time(Math.floor(left)));
    }

    private static String faults(List<DrillAnswer> drills) {
        return drills.stream().map(d -> DrillWords.title(d.fault())).collect(Collectors.joining(", "));
    }
}
