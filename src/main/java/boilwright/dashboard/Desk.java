package boilwright.dashboard;

import boilwright.answers.EstimateQuestion;
import boilwright.answers.Model;
import boilwright.dashboard.session.FluidShelf;
import boilwright.dashboard.session.Recovery;
import boilwright.dashboard.session.Remembered;
import boilwright.dashboard.session.RigFiles;
import boilwright.dashboard.session.RigFiles.Stored;
import boilwright.dashboard.session.RigSession;
import boilwright.dashboard.text.FormWords;
import boilwright.dashboard.text.WindowText;
import boilwright.dashboard.work.Answering;
import boilwright.dashboard.work.BackgroundWork;
import boilwright.dashboard.work.BackgroundWork.Urgency;
import boilwright.errors.InputRefusedException;
import boilwright.estimate.OutsideMeasurements;
import boilwright.rig.Rig;
import boilwright.rig.file.RigReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * What happens to rigs and their files: opening, saving, keeping a copy against a crash, and never losing an edit unasked.
 * Lives on the window's thread; everything that touches a disk goes to the background.
 */
final class Desk {
    private final RigSession session;
    private final BackgroundWork work;
    private final Answering answering;
    private final Model model;
    private final FluidShelf shelf;
    private final Recovery recovery;
    private final Remembered remembered;
    private final FileAsker asker;
    private final Consumer<Notice> notices;
    /** What the copy against a crash shall hold; nothing while everything is saved. */
    private volatile Optional<Copy> wanted = Optional.empty();

    private record Copy(Rig rig, Optional<Path> from) {}

    Desk(
            RigSession session,
            BackgroundWork work,
            Answering answering,
            Model model,
            FluidShelf shelf,
            Recovery recovery,
            Remembered remembered,
            FileAsker asker,
            Consumer<Notice> notices) {
        this.session = session;
        this.work = work;
        this.answering = answering;
        this.model = model;
        this.shelf = shelf;
        this.recovery = recovery;
        this.remembered = remembered;
        this.asker = asker;
        this.notices = notices;
    }

    /** Begins: has the rig answered, watches it from now on, and offers what a crash left. */
    void begin() {
        session.rigProperty().addListener((property, before, now) -> changed(now));
        shelf.libraryProperty().addListener((property, before, now) -> {
            String id = session.rig().fluidId();
            if (before.find(id) != now.find(id)) {
                answering.request(session.rig());
            }
        });
        changed(session.rig());
        recovery.left().forEach(this::offer);
    }

    private void changed(Rig rig) {
        answering.request(rig);
        keepCopy();
    }

    /** Has the copy against a crash brought up to date; when several edits wait, only the last is written. */
    private void keepCopy() {
        wanted = session.isDirty() ? Optional.of(new Copy(session.rig(), session.file())) : Optional.empty();
        work.request(Urgency.KEEPING, (cancel, progress) -> bringCopyUpToDate(), kept -> {}, why -> {});
    }

    private boolean bringCopyUpToDate() {
        Optional<Copy> copy = wanted;
        if (copy.isPresent()) {
            return recovery.keep(copy.get().rig(), copy.get().from());
        }
        recovery.drop();
        return true;
    }

    /** Keeps the rig safe at once: something failed that should not have. From any thread. */
    void rescue() {
        bringCopyUpToDate();
    }

    private void offer(Recovery.Left left) {
        String name = left.from().map(Path::toString).orElseGet(() -> WindowText.say("frame.crash.no-file"));
        tell(
                Notice.Kind.ASK,
                WindowText.say("frame.crash.offer", name),
                List.of(),
                new Notice.Choice(WindowText.say("frame.crash.take"), () -> whenFree(() -> resume(left))),
                new Notice.Choice(WindowText.say("frame.crash.discard"), left::discard));
    }

    private void resume(Recovery.Left left) {
        work.request(
                Urgency.FILES,
                (cancel, progress) -> {
                    Rig unsaved = RigFiles.read(left.rig(), shelf.library().workingFluids(), true)
                            .rig();
                    return new Resumed(unsaved, base(left, unsaved));
                },
                resumed -> {
                    session.resume(resumed.base(), WindowText.say("frame.crash.edit"), resumed.unsaved());
                    left.discard();
                },
                why -> {
                    refused(why);
                    offer(left);
                });
    }

    private record Resumed(Rig unsaved, Stored base) {}

    /** What the file holds that the unsaved rig belongs to; without a readable file the rig stands alone. */
    private Stored base(Recovery.Left left, Rig unsaved) {
        if (left.from().isEmpty()) {
            return Stored.nowhere(unsaved);
        }
        try {
            return RigFiles.read(left.from().get(), shelf.library().workingFluids(), true);
        } catch (InputRefusedException gone) {
            return Stored.nowhere(unsaved);
        }
    }

    /** Asks for a file and opens it. */
    void open() {
        asker.fileToOpen().ifPresent(this::open);
    }

    /** Opens a file, with everything that is wrong with it said when it is refused. */
    void open(Path file) {
        whenFree(() -> read(file, false));
    }

    private void read(Path file, boolean slipsMeant) {
        work.request(
                Urgency.FILES,
                (cancel, progress) -> RigFiles.read(file, shelf.library().workingFluids(), slipsMeant),
                stored -> {
                    session.begin(stored);
                    remember(file);
                },
                why -> {
                    if (why instanceof InputRefusedException refusal && RigFiles.onlySlips(refusal)) {
                        tell(
                                Notice.Kind.REFUSED,
                                WindowText.say("frame.open.slips", file.toString()),
                                lines(refusal),
                                new Notice.Choice(WindowText.say("frame.open.as-written"), () -> read(file, true)));
                    } else if (why instanceof InputRefusedException refusal) {
                        tell(
                                Notice.Kind.REFUSED,
                                WindowText.say("frame.open.refused", file.toString()),
                                lines(refusal));
                    } else {
                        refused(why);
                    }
                });
    }

    /** Opens a demo rig. */
    void openDemo(String name) {
        whenFree(() -> work.request(
                Urgency.FILES,
                (cancel, progress) ->
                        Stored.nowhere(RigReader.readDemo(name, shelf.library().workingFluids(), Set.of())),
                session::begin,
                this::refused));
    }

    /**
     * Goes on with a rig made from outside measurements, once it is made.
     *
     * @param accepted fields whose unusual values are meant
     * @param begun hears when the rig is there
     * @param refused hears why there is none
     */
    void estimate(OutsideMeasurements measured, Set<String> accepted, Runnable begun, Consumer<String> refused) {
        work.request(
                Urgency.FILES,
                (cancel, progress) -> model.answer(
                        new EstimateQuestion(measured, shelf.library().find(measured.fluidId()), accepted),
                        cancel,
                        progress),
                estimate -> whenFree(() -> {
                    session.begin(Stored.nowhere(estimate.rig()));
                    begun.run();
                    String count = Integer.toString(estimate.guesses().size());
                    tell(Notice.Kind.TELL, WindowText.say("frame.new.made", count), estimate.notes());
                }),
                why -> refused.accept(Answering.words(why)));
    }

    /** Saves to the rig's own file, or asks for one when it has none. */
    void save() {
        save(() -> {});
    }

    /** Asks for a file and saves to it. */
    void saveAs() {
        saveAs(() -> {});
    }

    private void save(Runnable then) {
        if (session.file().isEmpty()) {
            saveAs(then);
            return;
        }
        Stored stored = session.stored();
        work.request(
                Urgency.FILES,
                (cancel, progress) -> RigFiles.changedMeanwhile(stored),
                changed -> {
                    if (changed) {
                        askAboutChange(stored.file().get(), then);
                    } else {
                        write(stored.file().get(), then);
                    }
                },
                this::refused);
    }

    private void askAboutChange(Path file, Runnable then) {
        tell(
                Notice.Kind.ASK,
                WindowText.say("frame.save.changed-meanwhile", file.toString()),
                List.of(),
                new Notice.Choice(WindowText.say("frame.save.overwrite"), () -> write(file, then)),
                new Notice.Choice(WindowText.say("frame.save.as"), () -> saveAs(then)),
                new Notice.Choice(WindowText.say("frame.save.read-theirs"), () -> read(file, true)));
    }

    private void saveAs(Runnable then) {
        String name = session.file()
                .map(file -> file.getFileName().toString())
                .orElseGet(() -> fileName(session.rig().name()));
        asker.fileToSave(name).ifPresent(file -> write(withEnding(file), then));
    }

    private void write(Path file, Runnable then) {
        Rig rig = session.rig();
        work.request(
                Urgency.FILES,
                (cancel, progress) -> RigFiles.write(rig, file),
                written -> {
                    session.saved(written);
                    keepCopy();
                    remember(file);
                    then.run();
                },
                why -> {
                    String where = file.toString();
                    tell(
                            Notice.Kind.REFUSED,
                            WindowText.say("frame.save.refused", where),
                            List.of(Answering.words(why)),
                            new Notice.Choice(WindowText.say("frame.save.as"), () -> saveAs(then)));
                });
    }

    /** Does something that gives the rig up, once its edits are saved or given up too. */
    void whenFree(Runnable what) {
        if (!session.isDirty()) {
            what.run();
            return;
        }
        tell(
                Notice.Kind.ASK,
                WindowText.say("frame.unsaved.question", session.rig().name()),
                List.of(),
                new Notice.Choice(WindowText.say("frame.unsaved.save"), () -> save(what)),
                new Notice.Choice(WindowText.say("frame.unsaved.drop"), what));
    }

    /** Ends: nothing is kept, for nothing unsaved is left that was not given up. */
    void end() {
        work.close();
        recovery.drop();
        recovery.close();
    }

    private void remember(Path file) {
        work.request(
                Urgency.KEEPING,
                (cancel, progress) -> {
                    remembered.used(file);
                    return file;
                },
                done -> {},
                why -> {});
    }

    private void refused(RuntimeException why) {
        tell(Notice.Kind.REFUSED, Answering.words(why), List.of());
    }

    private void tell(Notice.Kind kind, String title, List<String> lines, Notice.Choice... choices) {
        notices.accept(new Notice(kind, title, lines, List.of(choices)));
    }

    private static List<String> lines(InputRefusedException refusal) {
        return refusal.faults().stream().map(FormWords::inFile).toList();
    }

    private static Path withEnding(Path file) {
        String name = file.getFileName().toString();
        return name.contains(".") ? file : file.resolveSibling(name + ".json");
    }

    private static String fileName(String rigName) {
        String plain = rigName.strip().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        String trimmed = plain.replaceAll("^-+|-+$", "");
        return (trimmed.isEmpty() ? "rig" : trimmed) + ".json";
    }
}
