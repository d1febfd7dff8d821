package boilwright.commandline;

import boilwright.numerics.CancelToken;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Ctrl-C: asks the computation to stop and waits until it has put things in order. Java itself then ends with 130, as shells
 * expect of a program that was interrupted.
 */
final class Interrupt {
    private static final int PATIENCE_S = 5;

    private final CountDownLatch done = new CountDownLatch(1);
    private final CancelToken cancel;

    private Interrupt(CancelToken cancel) {
        this.cancel = cancel;
    }

    /** Has this token raised when the program is told to stop. */
    static Interrupt raising(CancelToken cancel) {
        Interrupt interrupt = new Interrupt(cancel);
        Runtime.getRuntime().addShutdownHook(new Thread(interrupt::stop, "boilwright-interrupt"));
        return interrupt;
    }

    /** The program has nothing more to do: a stop need not wait. */
    void nothingLeft() {
        done.countDown();
    }

    private void stop() {
        cancel.cancel();
        try {
            if (!done.await(PATIENCE_S, TimeUnit.SECONDS)) {
                // Files are written in one move: leaving now leaves nothing half done.
                Runtime.getRuntime().halt(ExitCode.CANCELLED);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
