package boilwright.companion;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;

/** Records as fast as the disk allows and says how many lines are on it, until somebody kills it. Run with a file. */
public final class RecorderProcess {
    private RecorderProcess() {}

    public static void main(String[] arguments) throws InterruptedException {
        Path file = Path.of(arguments[0]);
        RunLog.Listener listener = new RunLog.Listener() {
            @Override
            public void written(Path where, int lines) {
                System.out.println(lines);
                System.out.flush();
            }

            @Override
            public void trouble(RunLog.Trouble trouble) {
                System.out.println(trouble.message().text());
                System.out.flush();
            }
        };
        LogHead head = RunHeads.head("killed");
        InstantSource now = InstantSource.system();
        int number = 0;
        RunLog log;
        if (Files.exists(file)) {
            RunLog.Resumed resumed = RunLog.resume(file, head, now, listener);
            number = RunHeads.notes(resumed.record()).size();
            log = resumed.log();
        } else {
            log = RunLog.begin(file, head, now, listener);
        }
        while (true) {
            number++;
            log.record(LogEntry.of(now.instant(), LogKind.NOTE, "", number + " " + "x".repeat(number * 37 % 200)));
            Thread.sleep(number % 4);
        }
    }
}
