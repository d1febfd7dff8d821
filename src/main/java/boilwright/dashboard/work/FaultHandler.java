package boilwright.dashboard.work;

import boilwright.errors.Message;
import boilwright.files.FaultReport;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Where every unexpected fault of the window ends up, from whichever thread: the rig is kept safe first, then a report is
 * written, then the person is told.
 */
public final class FaultHandler implements Thread.UncaughtExceptionHandler {
    private final Set<String> reported = new HashSet<>();
    private final Runnable rescue;
    private final Supplier<List<Path>> folders;
    private final Consumer<Message> tell;

    /**
     * @param rescue keeps the rig safe
     * @param folders where a report may go, the best first
     * @param tell hears what to tell the person, on the thread of the fault
     */
    public FaultHandler(Runnable rescue, Supplier<List<Path>> folders, Consumer<Message> tell) {
        this.rescue = rescue;
        this.folders = folders;
        this.tell = tell;
    }

    /** Deals with a fault. One that comes again and again, as faults of drawing do, is reported once. */
    public synchronized void handle(Throwable fault) {
        try {
            rescue.run();
        } catch (RuntimeException second) {
            fault.addSuppressed(second);
        }
        if (reported.add(signature(fault))) {
            tell.accept(FaultReport.write(fault, List.of("dashboard"), folders.get()));
        }
    }

    @Override
    public void uncaughtException(Thread thread, Throwable fault) {
        handle(fault);
    }

    private static String signature(Throwable fault) {
        StackTraceElement[] trace = fault.getStackTrace();
        return fault.getClass().getName() + (trace.length == 0 ? "" : " at " + trace[0]);
    }
}
