package boilwright.answers;

import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.NeededState;
import boilwright.thermal.RunResult;
import boilwright.thermal.SteadyState;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Everything that one check of a rig finds: one immutable value.
 *
 * @param asked the rig as described, its fluid and the parameter values used
 * @param verdict one or two sentences for a practitioner
 * @param steady the rig at rest
 * @param needed the state in which the weakest jet just has its full flow
 * @param warmup the run from cold
 * @param findings every margin at every moment at which it is judged
 * @param margins one row for each margin, that of the moment at which it stands worst; worst first
 * @param cautions what can hurt someone, whole sentences
 * @param notes assumptions and clamped ranges, whole sentences
 * @param programVersion version of the program
 */
public record CheckAnswer(
        Asked asked,
        String verdict,
        SteadyState steady,
        NeededState needed,
        RunResult warmup,
        List<Margin> findings,
        List<Margin> margins,
        List<String> cautions,
        List<String> notes,
        String programVersion) {
    public CheckAnswer {
        findings = List.copyOf(findings);
        margins = List.copyOf(margins);
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }

    /** The rig as described. */
    public Rig rig() {
        return asked.rig();
    }

    /** Its fluid's name. */
    public String fluidTitle() {
        return asked.fluid().title();
    }

    /** The parameter values used. */
    public ParameterValues parameters() {
        return asked.values();
    }

    /** Version of the fluid data. */
    public String dataVersion() {
        return asked.dataVersion();
    }

    /** The same with another schedule's warm-up in its place, along which its margins are judged; words and rest stay. */
    public CheckAnswer withWarmup(Asked other, RunResult otherRun) {
        List<Margin> judged = new ArrayList<>(findings);
        judged.removeIf(m -> m.moment() == Moment.WARMUP);
        judged.addAll(RunMargins.ofWarmup(other, otherRun));
        return new CheckAnswer(
                other,
                verdict,
                steady,
                needed,
                otherRun,
                judged,
                Margins.ledger(judged),
                cautions,
                notes,
                programVersion);
    }

    /** What fails in the rig and is not among the margins that an answer shows, worst first. */
    public List<Margin> elsewhere(List<Margin> shown) {
        Set<MarginId> known =
                shown.stream().filter(Margin::fails).map(Margin::id).collect(Collectors.toSet());
        return margins.stream()
                .filter(m -> m.fails() && !known.contains(m.id()))
                .toList();
    }

    /** A verdict on one side of the rig with what fails elsewhere named after it. */
    public String withElsewhere(String verdict, List<Margin> shown) {
        List<Margin> others = elsewhere(shown);
        return others.isEmpty()
                ? verdict
                : verdict + " "
                        + AnswerText.VERDICT_ELSEWHERE.say(
                                others.stream().map(Margin::when).collect(Collectors.joining(", ")));
    }

    /** The cautions of some moments, whole sentences. */
    public List<String> cautionsAt(Cautions.Place... places) {
        List<Cautions.Place> wanted = List.of(places);
        return Cautions.placed(rig(), asked.fluid(), steady.hottestOutsideK()).stream()
                .filter(caution -> wanted.contains(caution.place()))
                .map(Cautions.Caution::sentence)
                .toList();
    }

    /** True when some margin fails. */
    public boolean anyFails() {
        return margins.stream().anyMatch(Margin::fails);
    }
}
