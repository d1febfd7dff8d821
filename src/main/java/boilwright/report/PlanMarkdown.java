package boilwright.report;

import boilwright.sequence.Clock;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanLimit;
import boilwright.sequence.PlanStep;
import boilwright.sequence.RuleFinding;
import java.util.List;

/** A plan as Markdown, with boxes to tick. */
public final class PlanMarkdown {
    private final PlanAnswer answer;
    private final StringBuilder text = new StringBuilder();

    private PlanMarkdown(PlanAnswer answer) {
        this.answer = answer;
    }

    /** The whole text; the answer must have a plan. */
    public static String write(PlanAnswer answer) {
        return new PlanMarkdown(answer).text();
    }

    private String text() {
        line("# " + safe(PlanTexts.title(answer.variant()) + ": " + PlanTexts.subject(answer)));
        line("");
        line(safe(answer.verdict()));
        line("");
        line("**" + PlanTexts.CODES + "**");
        List<PlanStep> steps = answer.plan().orElseThrow().steps();
        Clock before = null;
        for (int i = 0; i < steps.size(); i++) {
            PlanStep step = steps.get(i);
            if (step.moment().clock() != before) {
                before = step.moment().clock();
                heading(PlanTexts.clock(before, answer.variant()));
            }
            line("- [ ] **" + (i + 1) + ". " + EventWords.clock(step.moment().atS()) + "** "
                    + safe(PlanTexts.what(step)));
            part("See: ", step.words().hold());
            part(PlanTexts.overdue(step), step.words().otherwise());
            part("Why: ", step.words().why());
            part("**Caution:** ", step.words().caution());
        }
        heading("Write down");
        line("| reading | |");
        line("| --- | --- |");
        PlanTexts.blanks(answer.variant()).forEach(blank -> line("| " + blank + " | |"));
        heading("Limits");
        line("| limit | |");
        line("| --- | --- |");
        for (PlanLimit limit : answer.limits()) {
            line("| " + limit.title() + " | " + limit.inWords() + " |");
        }
        list("If something fails", answer.emergency());
        list("What this plan can't promise", answer.unproven());
        heading("Rules, held against the simulated run");
        for (RuleFinding finding : answer.findings()) {
            line("- " + PlanTexts.status(finding) + ": " + safe(finding.rule().sentence() + " " + finding.sentence()));
        }
        list("Cautions", answer.cautions());
        list("Assumptions", answer.notes());
        return text.toString();
    }

    private void heading(String heading) {
        line("");
        line("## " + heading);
        line("");
    }

    private void list(String heading, List<String> sentences) {
        if (!sentences.isEmpty()) {
            heading(heading);
            sentences.forEach(sentence -> line("- " + safe(sentence)));
        }
    }

    private void part(String first, String words) {
        if (!words.isEmpty()) {
            line("  - " + first + safe(words));
        }
    }

    private void line(String line) {
        text.append(line).append('\n');
    }

    /** Names come from files: nothing in them may be taken for a mark of the text. */
    private static String safe(String words) {
        return words.replaceAll("\\p{Cntrl}", " ").replaceAll("([\\\\`*_<>|#\\[\\]])", "\\\\$1");
    }
}
