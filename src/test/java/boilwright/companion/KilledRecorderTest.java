package boilwright.companion;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A process that records is killed (kill -9) at random moments, over and over on one log: no line that it said was on the disk
 * is lost, none is doubled, and the log goes on.
 */
class KilledRecorderTest {
    private static final int LONGEST_MS = 250;

    @TempDir
    Path folder;

    @Test
    void twice() throws Exception {
        killed(2, 1);
    }

    @Test
    @Tag("deep")
    void fiftyTimes() throws Exception {
        killed(50, 2);
    }

    private void killed(int times, long seed) throws Exception {
        SplittableRandom random = new SplittableRandom(seed);
        Path file = folder.resolve("run.csv");
        int before = 0;
        for (int i = 0; i < times; i++) {
            int safe = runUntilKilled(file, random.nextInt(LONGEST_MS));
            RunRecord record = RunLogReader.read(file);
            assertThat(record.lines()).as("kill " + i).hasSizeGreaterThanOrEqualTo(safe);
            List<Integer> numbers = RunHeads.notes(record).stream()
                    .map(words -> Integer.valueOf(words.substring(0, words.indexOf(' '))))
                    .toList();
            assertThat(numbers)
                    .as("kill " + i)
                    .containsExactlyElementsOf(
                            IntStream.rangeClosed(1, numbers.size()).boxed().toList())
                    .hasSizeGreaterThan(before);
            before = numbers.size();
        }
        LogWatch watch = new LogWatch();
        RunLog.Resumed resumed = RunLog.resume(file, RunHeads.head("killed"), InstantSource.system(), watch);
        resumed.log().record(RunHeads.note("after"));
        resumed.log().close();
        RunRecord last = RunLogReader.read(file);
        assertThat(watch.troubles).isEmpty();
        assertThat(RunHeads.notes(last)).hasSize(before + 1).endsWith("after");
        assertThat(last.entries().stream().filter(e -> e.kind() == LogKind.RESUME))
                .hasSize(times);
    }

    /** Lines that the process said were on the disk before it died. */
    private static int runUntilKilled(Path file, int afterMs) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-Xmx64m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        RecorderProcess.class.getName(),
                        file.toString())
                .redirectErrorStream(true)
                .start();
        int safe = 0;
        try (BufferedReader said = process.inputReader(StandardCharsets.UTF_8)) {
            safe = Integer.parseInt(said.readLine());
            // not a wait for something: the kill is to come at a moment that nobody chose
            long until = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(afterMs);
            while (System.nanoTime() < until) {
                safe = Integer.parseInt(said.readLine());
            }
            // by its handle: killed as a process it would take what it said last with it
            process.toHandle().destroyForcibly();
            assertThat(process.waitFor(10, TimeUnit.SECONDS)).isTrue();
            String rest = drained(said);
            String whole = rest.substring(0, rest.lastIndexOf('\n') + 1);
            return whole.isEmpty() ? safe : Integer.parseInt(whole.lines().reduce("", (a, b) -> b));
        } finally {
            process.destroyForcibly();
        }
    }

    private static String drained(BufferedReader said) throws IOException {
        StringBuilder all = new StringBuilder();
        char[] some = new char[4096];
        for (int n = said.read(some); n >= 0; n = said.read(some)) {
            all.append(some, 0, n);
        }
        return all.toString();
    }
}
