package boilwright.sequence;

import boilwright.errors.Sentences;
import boilwright.thermal.DrillLimit;

/** A rule for every plan: an order or a limit, where it comes from, and what it is measured in. */
public enum Rule {
    WATER_WITH_HEAT(SequenceText.RULE_WATER_WITH_HEAT, SequenceText.BASIS_WATER_WITH_HEAT),
    FORELINE_WITH_HEAT(SequenceText.RULE_FORELINE_WITH_HEAT, SequenceText.BASIS_FORELINE_WITH_HEAT),
    BACKING_BEFORE_HEAT(SequenceText.RULE_BACKING_BEFORE_HEAT, SequenceText.BASIS_BACKING_BEFORE_HEAT),
    HEAT_WITHIN_LIMITS(SequenceText.RULE_HEAT_WITHIN_LIMITS, SequenceText.BASIS_HEAT_WITHIN_LIMITS),
    OUTLET_OPEN(SequenceText.RULE_OUTLET_OPEN, SequenceText.BASIS_OUTLET_OPEN),
    AIR_FOR_FLAME(SequenceText.RULE_AIR_FOR_FLAME, SequenceText.BASIS_AIR_FOR_FLAME),
    VALVE_BELOW_CROSSOVER(SequenceText.RULE_VALVE_BELOW_CROSSOVER, SequenceText.BASIS_VALVE_BELOW_CROSSOVER),
    VALVE_WITH_JETS(SequenceText.RULE_VALVE_WITH_JETS, SequenceText.BASIS_VALVE_WITH_JETS),
    AIR_ON_COLD_OIL(SequenceText.RULE_AIR_ON_COLD_OIL, SequenceText.BASIS_AIR_ON_COLD_OIL),
    WATER_UNTIL_COLD(SequenceText.RULE_WATER_UNTIL_COLD, SequenceText.BASIS_WATER_UNTIL_COLD),
    BACKING_UNTIL_COLD(SequenceText.RULE_BACKING_UNTIL_COLD, SequenceText.BASIS_BACKING_UNTIL_COLD),
    NO_COLD_SHOCK(SequenceText.RULE_NO_COLD_SHOCK, SequenceText.BASIS_NO_COLD_SHOCK);

    /** Highest foreline pressure with heat, Pa (0.5 Torr): common practice, no source. */
    public static final double FORELINE_PA = DrillLimit.FORELINE_WITH_HOT_OIL_PA;

    /** Least time of the backing pump before heat, s: common practice, five to ten minutes. */
    public static final double BACKING_LEAST_S = 300;

    /** The longer time, for a fresh charge and where the foreline can't be read, s. */
    public static final double BACKING_LONG_S = 600;

    private final SequenceText sentence;
    private final SequenceText basis;

    Rule(SequenceText sentence, SequenceText basis) {
        this.sentence = sentence;
        this.basis = basis;
    }

    /** Name in files. */
    public String id() {
        return Sentences.bundleKey(this);
    }

    /** The rule as a sentence. */
    public String sentence() {
        return sentence.say();
    }

    /** Where it comes from. */
    public String basis() {
        return basis.say();
    }
}
