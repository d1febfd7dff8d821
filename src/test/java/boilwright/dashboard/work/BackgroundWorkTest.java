package boilwright.dashboard.work;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.dashboard.work.BackgroundWork.Urgency;
import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.numerics.CancelToken;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The background thread, with the test as the window's thread. */
class BackgroundWorkTest {
    private final BlockingQueue<Runnable> window = new LinkedBlockingQueue<>();
    private final BlockingQueue<Throwable> faults = new LinkedBlockingQueue<>();
    private final BackgroundWork work = new BackgroundWork(window::add, faults::add);
    private final List<String> heard = new ArrayList<>();

    @TempDir
    Path folder;

    @AfterEach
    void close() {
        work.close();
    }

    @Test
    void aNewerQuestionStopsTheOneThatRuns() throws InterruptedException {
        CountDownLatch started = new CountDownLatch(1);
        work.request(
                Urgency.QUESTION,
                (cancel, progress) -> {
                    started.countDown();
                    untilStopped(cancel);
                    return "old";
                },
                heard::add,
                why -> heard.add("refused"));
        assertThat(started.await(5, TimeUnit.SECONDS)).isTrue();
        work.request(Urgency.QUESTION, (cancel, progress) -> "new", heard::add, why -> heard.add("refused"));
        windowUntilIdle();
        assertThat(heard).containsExactly("new");
        assertThat(faults).isEmpty();
    }

    @Test
    void ofManyQuestionsOnlyTheLastIsHeard() throws InterruptedException {
        for (int i = 0; i < 50; i++) {
            String name = "q" + i;
            work.request(Urgency.QUESTION, (cancel, progress) -> name, heard::add, why -> {});
        }
        windowUntilIdle();
        assertThat(heard).containsExactly("q49");
    }

    @Test
    void anAnswerThatIsReadyButOvertakenIsNotHeard() throws InterruptedException {
        work.request(Urgency.QUESTION, (cancel, progress) -> "old", heard::add, why -> {});
        Runnable late = window.poll(5, TimeUnit.SECONDS);
        work.request(Urgency.QUESTION, (cancel, progress) -> "new", heard::add, why -> {});
        late.run();
        windowUntilIdle();
        assertThat(heard).containsExactly("new");
    }

    @Test
    void filesAreWrittenWhateverIsAsked() throws InterruptedException {
        CountDownLatch go = new CountDownLatch(1);
        work.request(Urgency.FILES, (cancel, progress) -> await(go), done -> heard.add("first"), why -> {});
        work.request(Urgency.AFTERWARDS, (cancel, progress) -> "later", heard::add, why -> {});
        work.request(Urgency.KEEPING, (cancel, progress) -> "copy", heard::add, why -> {});
        work.request(Urgency.QUESTION, (cancel, progress) -> "answer", heard::add, why -> {});
        work.request(Urgency.FILES, (cancel, progress) -> "file", heard::add, why -> {});
        go.countDown();
        windowUntilIdle();
        assertThat(heard).containsExactly("first", "file", "answer", "copy");
    }

    @Test
    void aRefusalIsHeardAsSuch() throws InterruptedException {
        work.<String>request(
                Urgency.QUESTION,
                (cancel, progress) -> {
                    throw new InputRefusedException(Message.of(MessageKey.THEME_UNKNOWN, "blue"));
                },
                heard::add,
                why -> heard.add(Answering.words(why)));
        windowUntilIdle();
        assertThat(heard.get(0)).contains("blue");
        assertThat(faults).isEmpty();
    }

    @Test
    void afterAFaultTheThreadLivesOn() throws InterruptedException {
        work.<String>request(
                Urgency.QUESTION,
                (cancel, progress) -> {
                    throw new AssertionError("planned");
                },
                heard::add,
                why -> heard.add(Answering.words(why)));
        assertThat(faults.poll(5, TimeUnit.SECONDS)).hasMessage("planned");
        work.request(Urgency.FILES, (cancel, progress) -> "still there", heard::add, why -> {});
        windowUntilIdle();
        assertThat(heard).containsExactly("The answer could not be worked out.", "still there");
        assertThat(work.busyProperty().get()).isFalse();
    }

    @Test
    void progressNeverFloodsTheWindow() throws InterruptedException {
        CountDownLatch done = new CountDownLatch(1);
        work.request(
                Urgency.QUESTION,
                (cancel, progress) -> {
                    for (int i = 0; i <= 10_000; i++) {
                        progress.progress(i / 10_000.0, "all");
                    }
                    done.countDown();
                    return "answer";
                },
                heard::add,
                why -> {});
        assertThat(done.await(5, TimeUnit.SECONDS)).isTrue();
        assertThat(window.size()).isLessThanOrEqualTo(2);
        window.take().run();
        assertThat(work.progressProperty().get()).isEqualTo(1.0);
        windowUntilIdle();
        assertThat(heard).containsExactly("answer");
        assertThat(work.progressProperty().get()).isZero();
    }

    @Test
    void aFaultIsReportedOnceAndTheRigKeptEveryTime() {
        List<String> told = new ArrayList<>();
        int[] rescued = new int[1];
        FaultHandler handler =
                new FaultHandler(() -> rescued[0]++, () -> List.of(folder), message -> told.add(message.text()));
        RuntimeException fault = new IllegalStateException("planned");
        handler.handle(fault);
        handler.uncaughtException(Thread.currentThread(), fault);
        assertThat(rescued[0]).isEqualTo(2);
        assertThat(told).hasSize(1);
        assertThat(told.get(0)).contains("planned", "boilwright-fault-1.txt");
        assertThat(folder.resolve("boilwright-fault-1.txt")).content().contains("IllegalStateException: planned");
    }

    @Test
    void aRescueThatFailsHidesNothing() {
        FaultHandler handler = new FaultHandler(
                () -> {
                    throw new IllegalStateException("no rescue");
                },
                () -> List.of(folder),
                message -> {});
        handler.handle(new IllegalStateException("planned"));
        assertThat(folder.resolve("boilwright-fault-1.txt")).content().contains("planned", "no rescue");
    }

    private static String await(CountDownLatch go) {
        try {
            go.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return "";
    }

    private static void untilStopped(CancelToken cancel) {
        while (true) {
            cancel.check();
            Thread.onSpinWait();
        }
    }

    private void windowUntilIdle() throws InterruptedException {
        while (work.busyProperty().get()) {
            Runnable next = window.poll(10, TimeUnit.SECONDS);
            assertThat(next).as("something for the window").isNotNull();
            next.run();
        }
    }
}
