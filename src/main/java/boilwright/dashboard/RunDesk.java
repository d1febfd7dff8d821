package boilwright.dashboard;

import boilwright.dashboard.companion.CompanionStage;
import boilwright.dashboard.session.StateFolder;
import boilwright.dashboard.text.WindowText;
import boilwright.dashboard.work.Answering;
import boilwright.dashboard.work.BackgroundWork;
import boilwright.dashboard.work.BackgroundWork.Urgency;
import boilwright.files.AtomicFile;
import boilwright.report.PlanPdf;
import boilwright.sequence.PlanAnswer;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.stage.Window;

/** What the page of the run asks for beyond itself: the sheet for the bench, and the companion. */
final class RunDesk {
    /** Where people print on Letter; everybody else does on A4. */
    private static final Set<String> LETTER = Set.of("US", "CA", "MX", "PH");

    private final BackgroundWork work;
    private final FileAsker asker;
    private final Consumer<Notice> tell;
    private final Supplier<Window> window;

    RunDesk(BackgroundWork work, FileAsker asker, Consumer<Notice> tell, Supplier<Window> window) {
        this.work = work;
        this.asker = asker;
        this.tell = tell;
        this.window = window;
    }

    /** Asks where the sheet goes and writes it there. */
    void writeSheet(PlanAnswer plan) {
        asker.sheetToSave(name(plan) + ".pdf").ifPresent(file -> write(plan, file));
    }

    private void write(PlanAnswer plan, Path file) {
        PlanPdf.Paper paper =
                LETTER.contains(Locale.getDefault().getCountry()) ? PlanPdf.Paper.LETTER : PlanPdf.Paper.A4;
        work.request(
                Urgency.FILES,
                (cancel, progress) -> {
                    AtomicFile.write(file, PlanPdf.write(plan, paper));
                    return file;
                },
                written -> tell.accept(new Notice(
                        Notice.Kind.TELL,
                        WindowText.say("run.sheet.written", written.toString()),
                        List.of(),
                        List.of())),
                why -> tell.accept(new Notice(
                        Notice.Kind.REFUSED,
                        WindowText.say("run.sheet.refused", file.toString()),
                        List.of(Answering.words(why)),
                        List.of(new Notice.Choice(WindowText.say("run.sheet"), () -> writeSheet(plan))))));
    }

    private static String name(PlanAnswer plan) {
        String rig = plan.check().rig().name().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        return rig + "-" + plan.variant().id();
    }

    /** Opens the companion of a plan; its logs lie where the window remembers things, or where it is worked in. */
    void openCompanion(PlanAnswer plan) {
        Path folder = StateFolder.find().map(state -> state.resolve("runs")).orElseGet(() -> Path.of("runs"));
        CompanionStage.open(window.get(), plan, folder);
    }
}
