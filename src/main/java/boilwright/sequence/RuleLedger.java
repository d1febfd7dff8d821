package boilwright.sequence;

import boilwright.sequence.RuleFinding.Status;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What was found for each rule on the way through a plan: every breach, or how near a kept rule came to its limit. */
final class RuleLedger {
    /**
     * One look at a rule.
     *
     * @param moment when
     * @param step number of the step from 1, and what it is
     * @param closeness how near to the limit: the larger the nearer
     * @param value the simulated value
     * @param limit what is accepted
     */
    record Look(Moment moment, String step, double closeness, String value, String limit) {}

    private final List<RuleFinding> broken = new ArrayList<>();
    private final Map<Rule, Look> kept = new EnumMap<>(Rule.class);
    private final Map<Rule, String> notProven = new EnumMap<>(Rule.class);

    /** Notes what a look at a rule showed. */
    void judge(Rule rule, boolean keeps, Look look) {
        if (!keeps) {
            broken.add(new RuleFinding(
                    rule,
                    Status.BROKEN,
                    Optional.of(look.moment()),
                    look.value(),
                    look.limit(),
                    SequenceText.FINDING_BROKEN.say(
                            rule.sentence(), look.step(), look.moment().inWords(), look.value(), look.limit())));
        } else if (!kept.containsKey(rule) || look.closeness() > kept.get(rule).closeness()) {
            kept.put(rule, look);
        }
    }

    /** Notes that a rule can't be judged, and why. */
    void notProven(Rule rule, String why) {
        notProven.putIfAbsent(rule, why);
    }

    /** Breaches in the order met, then every other rule in its own order. */
    List<RuleFinding> findings() {
        List<RuleFinding> all = new ArrayList<>(broken);
        for (Rule rule : Rule.values()) {
            if (broken.stream().noneMatch(f -> f.rule() == rule)) {
                all.add(unbroken(rule));
            }
        }
        return all;
    }

    private RuleFinding unbroken(Rule rule) {
        if (notProven.containsKey(rule)) {
            return new RuleFinding(rule, Status.NOT_PROVEN, Optional.empty(), "", "", notProven.get(rule));
        }
        Look look = kept.get(rule);
        if (look == null) {
            return new RuleFinding(
                    rule, Status.NOT_ASKED, Optional.empty(), "", "", SequenceText.FINDING_NOT_ASKED.say());
        }
        return new RuleFinding(
                rule,
                Status.KEPT,
                Optional.of(look.moment()),
                look.value(),
                look.limit(),
                SequenceText.FINDING_KEPT.say(look.moment().inWords(), look.value(), look.limit()));
    }
}
