package boilwright.sequence;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a step does or looks at. Names in files are the constants' names in lower case with hyphens. */
public enum Action {
    /** Measure the charge in. */
    FILL,
    /** See to fresh air before a flame burns. */
    AIR_ROOM,
    BACKING_ON,
    /** See that what cools can leave freely. */
    OPEN_OUTLET,
    COOLING_ON,
    /** Wait until the foreline is down. */
    LOOK_FORELINE,
    /** Heat to a level above nothing. */
    HEAT,
    /** Wait until the oil has given off its gas. */
    LOOK_DEGASSED,
    /** Wait for the first jet. */
    LOOK_FIRST_JET,
    /** Wait for the top jet. */
    LOOK_TOP_JET,
    /** Wait until every jet is full. */
    LOOK_FULL,
    /** Draw the chamber down past the pump. */
    ROUGH_CHAMBER,
    OPEN_VALVE,
    /** The pump is at work. */
    RUN,
    /** Leave heat, cooling and backing pump as they are. */
    KEEP,
    CLOSE_VALVE,
    /** Let air into the chamber while the pump stays shut off. */
    VENT_CHAMBER,
    HEAT_OFF,
    /** Wait until no jet works any more. */
    LOOK_JETS_GONE,
    /** Wait until the oil is cold enough to leave. */
    LOOK_COLD,
    COOLING_OFF,
    BACKING_OFF,
    /** Leave the pump shut under vacuum. */
    LEAVE_SHUT,
    /** Let air onto the oil. */
    LET_AIR_IN,
    /** Open the pump. */
    OPEN_PUMP;

    /** Name in files. */
    public String id() {
        return boilwright.errors.Sentences.bundleKey(this);
    }

    /** The action of this name. */
    public static Optional<Action> of(String id) {
        return Arrays.stream(values()).filter(a -> a.id().equals(id)).findFirst();
    }

    /** All names. */
    public static List<String> ids() {
        return Arrays.stream(values()).map(Action::id).toList();
    }
}
