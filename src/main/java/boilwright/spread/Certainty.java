package boilwright.spread;

/**
 * How sure it is that every jet of a rig fills, from what of it is assumed.
 *
 * @param assumed how many values of the rig are assumed, not measured
 * @param full in how many samples every jet is full at rest
 */
public record Certainty(int assumed, Chance full) {
    private static final double WILL_NOT = 0.2;
    private static final double WILL = 0.8;

    /** What it comes to, a whole sentence; empty where nothing is assumed or no sample has an answer. */
    public String sentence() {
        if (assumed == 0 || !full.isKnown()) {
            return "";
        }
        SpreadSentence says = full.share() < WILL_NOT
                ? SpreadSentence.CERTAINTY_WILL_NOT
                : full.share() <= WILL ? SpreadSentence.CERTAINTY_CANNOT_TELL : SpreadSentence.CERTAINTY_WILL;
        return SpreadSentence.CERTAINTY.say(
                Integer.toString(assumed), Long.toString(full.cases()), Long.toString(full.samples()), says.say());
    }
}
