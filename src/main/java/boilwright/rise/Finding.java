package boilwright.rise;

/** What was found in a record: a verdict with its curve, or why there is none. */
enum Finding {
    STEADY_LEAK(Verdict.LEAK),
    /** Both show, but the surfaces hardly matter. */
    MOSTLY_LEAK(Verdict.LEAK),
    GAS_TO_BALANCE(Verdict.SURFACE_GAS),
    GAS_BY_POWER_LAW(Verdict.SURFACE_GAS),
    /** Both show, but the leak hardly matters. */
    MOSTLY_GAS(Verdict.SURFACE_GAS),
    BOTH(Verdict.MIXED),
    NO_RISE(Verdict.UNDECIDED),
    FALLS(Verdict.UNDECIDED),
    STEEPENS(Verdict.UNDECIDED),
    /** Bends more than any surface does. */
    PUMPED(Verdict.UNDECIDED),
    SLOW_BEND(Verdict.UNDECIDED),
    TOO_FEW(Verdict.UNDECIDED),
    /** Off every curve in long stretches. */
    STRAYS(Verdict.UNDECIDED),
    UNCLEAR(Verdict.UNDECIDED);

    private final Verdict verdict;

    Finding(Verdict verdict) {
        this.verdict = verdict;
    }

    Verdict verdict() {
        return verdict;
    }
}
