package boilwright.answers;

import java.util.OptionalDouble;

/**
 * How a session, from heat-on to heat-off, is borne by what warms or runs out with time: a tank, its ice, a cartridge.
 *
 * @param lengthS the session asked for, s
 * @param longestS the longest session that holds, s, 0 when none does; empty when nothing in the rig runs out
 */
public record SessionOutlook(double lengthS, OptionalDouble longestS) {
    /** The longest session that is looked at, s (24 h). */
    public static final double LONGEST_S = 24 * 3600;

    /** The shortest, s. */
    public static final double SHORTEST_S = 60;

    /** What it comes to, a whole sentence. */
    public String sentence() {
        if (longestS.isEmpty()) {
            return AnswerText.SESSION_NO_END.say(Say.time(lengthS));
        }
        double longest = longestS.getAsDouble();
        if (longest == 0) {
            return AnswerText.SESSION_NONE.say(Say.time(lengthS));
        }
        AnswerText text = longest >= lengthS ? AnswerText.SESSION_HOLDS : AnswerText.SESSION_TOO_LONG;
        return text.say(Say.time(lengthS), longest >= LONGEST_S ? AnswerText.SESSION_A_DAY.say() : Say.time(longest));
    }
}
