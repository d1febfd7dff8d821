package boilwright.report;

import boilwright.sequence.Clock;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanLimit;
import boilwright.sequence.PlanStep;
import boilwright.sequence.RuleFinding;
import java.util.ArrayList;
import java.util.List;

/** A plan as a page of text for the person at the pump. */
public final class PlanText {
    private static final int INDENT = 15;

    private final PlanAnswer answer;
    private final boolean brief;
    private final Page page = new Page();

    private PlanText(PlanAnswer answer, boolean brief) {
        this.answer = answer;
        this.brief = brief;
    }

    /** What counts at the bench: verdict, steps without their reasons, what comes first when something fails. */
    public static String brief(PlanAnswer answer) {
        return new PlanText(answer, true).briefText();
    }

    /** The whole page: verdict, steps, rules with their proof, limits, emergency, cautions. */
    public static String write(PlanAnswer answer) {
        return new PlanText(answer, false).text();
    }

    private String briefText() {
        opening();
        list("What this plan can't promise", answer.unproven());
        list("If something fails", answer.emergency());
        page.gap();
        page.line("Reasons, the rules with their proof, limits and assumptions: --all");
        return page.toString();
    }

    private void opening() {
        page.line(PlanTexts.subject(answer));
        page.line(PlanTexts.title(answer.variant()));
        page.gap();
        page.paragraph("", 0, answer.verdict());
        answer.plan().ifPresent(plan -> steps(plan.steps()));
        if (!answer.upToBreak().isEmpty()) {
            page.gap();
            page.paragraph("", 0, PlanTexts.UP_TO_BREAK);
            steps(answer.upToBreak());
        }
    }

    private String text() {
        opening();
        rules();
        list("What this plan can't promise", answer.unproven());
        page.heading("Limits");
        List<List<String>> rows = new ArrayList<>();
        for (PlanLimit limit : answer.limits()) {
            rows.add(List.of(limit.title(), limit.inWords()));
        }
        page.table(rows);
        list("If something fails", answer.emergency());
        Sections.assumptions(page, answer.notes());
        Sections.cautions(page, answer.cautions());
        Sections.versions(page, answer.check().programVersion(), answer.check().dataVersion());
        return page.toString();
    }

    private void steps(List<PlanStep> steps) {
        Clock before = null;
        for (int i = 0; i < steps.size(); i++) {
            PlanStep step = steps.get(i);
            if (step.moment().clock() != before) {
                before = step.moment().clock();
                page.heading(PlanTexts.clock(before, answer.variant()));
            }
            step(i + 1, step);
        }
    }

    private void step(int number, PlanStep step) {
        String head = Page.right(Integer.toString(number), 4) + "  "
                + Page.right(EventWords.clock(step.moment().atS()), 7) + "  ";
        page.paragraph(head, INDENT, PlanTexts.what(step));
        String under = " ".repeat(INDENT);
        part(under + "See: ", step.words().hold());
        part(under + PlanTexts.overdue(step), step.words().otherwise());
        if (!brief) {
            part(under + "Why: ", step.words().why());
        }
        part(under + "CAUTION: ", step.words().caution());
    }

    private void part(String first, String words) {
        if (!words.isEmpty()) {
            page.paragraph(first, INDENT, words);
        }
    }

    private void rules() {
        if (answer.findings().isEmpty()) {
            return;
        }
        page.heading("Rules, held against the simulated run");
        for (RuleFinding finding : answer.findings()) {
            String head = "  " + Page.left(PlanTexts.status(finding), INDENT - 4) + "  ";
            page.paragraph(
                    head,
                    INDENT,
                    finding.status() == RuleFinding.Status.BROKEN
                            ? finding.sentence()
                            : finding.rule().sentence() + " " + finding.sentence());
            page.paragraph(
                    " ".repeat(INDENT) + "Basis: ", INDENT, finding.rule().basis());
        }
    }

    private void list(String heading, List<String> sentences) {
        if (!sentences.isEmpty()) {
            page.heading(heading);
            sentences.forEach(sentence -> page.paragraph("  - ", 4, sentence));
        }
    }
}
