package boilwright.companion;

import static boilwright.companion.RunHeads.note;
import static boilwright.companion.RunHeads.notes;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import boilwright.errors.InputRefusedException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The recorder and its reader; a killed process has a test of its own. */
class RunLogTest {
    private static final InstantSource NOW = InstantSource.fixed(RunHeads.BEGUN.plusSeconds(60));
    private static final LogHead HEAD = RunHeads.head("Rig, with \"quotes\"");

    @TempDir
    Path folder;

    private final LogWatch watch = new LogWatch();

    private Path file() {
        return folder.resolve("run.csv");
    }

    private Path written(String... notes) {
        try (RunLog log = RunLog.begin(file(), HEAD, NOW, watch)) {
            for (String words : notes) {
                log.record(note(words));
            }
        }
        return file();
    }

    private RunLog resumed() {
        return RunLog.resume(file(), HEAD, NOW, watch).log();
    }

    @Test
    void everyLineComesBackAsItWasHandedOver() throws IOException {
        LogEntry reading = LogEntry.of(RunHeads.BEGUN, LogKind.READING, "foreline", "50 mTorr, \"read\"\nby hand")
                .with(6.66612, "Pa")
                .on(boilwright.sequence.Clock.FROM_COLD, 12.3456);
        try (RunLog log = RunLog.begin(file(), HEAD, NOW, watch)) {
            log.record(reading);
            log.record(note(""));
        }
        RunRecord record = RunLogReader.read(file());
        assertThat(record.head()).isEqualTo(HEAD);
        assertThat(record.torn()).isEmpty();
        assertThat(record.isEnded()).isFalse();
        LogEntry read = record.entries().get(0);
        assertThat(read.text()).isEqualTo("50 mTorr, \"read\" by hand");
        assertThat(read.value()).isEqualTo(OptionalDouble.of(6.66612));
        assertThat(read.clockS()).isEqualTo(OptionalDouble.of(12.346));
        assertThat(record.entries()).hasSize(2);
        assertThat(watch.lines).isEqualTo(record.lines().size());
        assertThat(watch.troubles).isEmpty();
        // RFC 4180: every line ends with CR LF and has as many fields as the first
        String text = Files.readString(file());
        assertThat(text.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
        try (CSVParser parser = CSVParser.parse(text, CSVFormat.RFC4180)) {
            assertThat(parser.getRecords()).allSatisfy(r -> assertThat(r.size()).isEqualTo(9));
        }
    }

    @Test
    void aLineThatWasTornAnywhereIsCutOffAndToldAndTheRunGoesOn() throws IOException {
        byte[] whole = Files.readAllBytes(written("first", "second, \u00b0C"));
        int last = new String(whole, StandardCharsets.ISO_8859_1).lastIndexOf("2026-");
        for (int end = last + 1; end < whole.length; end++) {
            Files.write(file(), Arrays.copyOf(whole, end));
            RunLog.Resumed resumed = RunLog.resume(file(), HEAD, NOW, watch);
            assertThat(notes(resumed.record())).containsExactly("first");
            resumed.log().record(note("third"));
            resumed.log().close();
            RunRecord after = RunLogReader.read(file());
            assertThat(after.torn()).isEmpty();
            assertThat(notes(after)).containsExactly("first", "third");
            assertThat(after.entries().get(1).quantity()).isEqualTo("torn-line");
            assertThat(after.entries().get(1).text())
                    .contains((end - last) + " bytes")
                    .contains("2026-03-01".substring(0, Math.min(10, end - last)));
            assertThat(after.entries().get(2).kind()).isEqualTo(LogKind.RESUME);
        }
        assertThat(watch.troubles).isEmpty();
    }

    @Test
    void aWholeLogGoesOnWithoutANote() {
        written("first");
        try (RunLog log = resumed()) {
            log.record(LogEntry.of(RunHeads.BEGUN, LogKind.END, "by-hand", ""));
        }
        RunRecord record = RunLogReader.read(file());
        assertThat(record.entries())
                .extracting(LogEntry::kind)
                .containsExactly(LogKind.NOTE, LogKind.RESUME, LogKind.END);
        assertThat(record.isEnded()).isTrue();
        resumed().close();
        assertThat(RunLogReader.read(file()).isEnded()).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "time_utc,clock|time,clock|line 1|time_utc,clock,clock_s",
                "begin,,format,1.0|begin,,format,7.0|line 2|format 1",
                "begin,,rig,|note,,rig,|line 5|begin, rig",
                ",normal|,abnormal|line 9|normal, standby",
                "plan,2,heat|plan,3,heat|line 10|plan, step 2",
                "note,,,,,first|nota,,,,,first|line 11|begin, plan, clock",
                "Z,,,note,,,,,first|,,,note,,,,,first|line 11|a time such as",
                "note,,,,,first|note,,,,first|line 11|9 comma-separated values",
                "note,,,,,first|note,,,1;5,,first|line 11|a number with a point",
                "note,,,,,first|tick,7,,,,first|line 11|a step from 1 to 2",
                "note,,,,,first|tick,-7,,,,first|line 11|a whole number",
                "note,,,,,first|reading,,mood,1.0,,first|line 11|foreline, chamber",
                "note,,,,,first|reading,,boiler,,,first|line 11|a number",
                "note,,,,,first|note,,,1e999,,first|line 11|a number with a point",
                ",,,note,,,,,first|,cold,,note,,,,,first|line 11|from-cold, from-hot",
                "note,,,,,first|note,,,,,\"first|line 11|9 comma-separated values",
            })
    void whatIsNoRunLogIsRefusedWithItsLineAndNeverTouched(String from, String to, String line, String accepted)
            throws IOException {
        String text = Files.readString(written("first"));
        assertThat(text).contains(from);
        Files.writeString(file(), text.replace(from, to));
        byte[] before = Files.readAllBytes(file());
        assertThatThrownBy(this::resumed)
                .isInstanceOf(InputRefusedException.class)
                .hasMessageContaining("run.csv")
                .hasMessageContaining(line)
                .hasMessageContaining(accepted)
                .hasMessageContaining("found ");
        assertThat(Files.readAllBytes(file())).isEqualTo(before);
        // it is let go of as well
        Files.writeString(file(), text);
        resumed().close();
    }

    @Test
    void filesThatAreNoTextOrNothingOrAFolderOrMissingAreRefused() throws IOException {
        for (byte[] content : List.of(new byte[0], new byte[] {0, 1, 2, '\n', 3}, "one line".getBytes("UTF-8"))) {
            Files.write(file(), content);
            assertThatThrownBy(this::resumed).hasMessageContaining("line 1").hasMessageContaining("time_utc,clock");
            assertThat(Files.readAllBytes(file())).isEqualTo(content);
        }
        byte[] broken = Files.readAllBytes(writtenAnew());
        broken[broken.length - 4] = (byte) 0xff;
        Files.write(file(), broken);
        assertThatThrownBy(this::resumed).hasMessageContaining("line 11").hasMessageContaining("UTF-8");
        Files.delete(file());
        assertThatThrownBy(this::resumed).hasMessageContaining("it does not exist");
        assertThatThrownBy(() -> RunLogReader.read(folder)).hasMessageContaining("it is a folder");
        assertThatThrownBy(() -> RunLog.resume(folder, HEAD, NOW, watch)).isInstanceOf(InputRefusedException.class);
    }

    private Path writtenAnew() throws IOException {
        Files.deleteIfExists(file());
        return written("first");
    }

    @Test
    void theLogOfAnotherPlanIsRefused() {
        written("first");
        assertThatThrownBy(() -> RunLog.resume(file(), RunHeads.head("Another"), NOW, watch))
                .hasMessageContaining("Another")
                .hasMessageContaining("with \"quotes\"");
        resumed().close();
    }

    @Test
    void twoWritersAreOneTooMany() {
        try (RunLog first = RunLog.begin(file(), HEAD, NOW, watch)) {
            first.record(note("first"));
            waitFor(() -> watch.lines == 11);
            assertThatThrownBy(this::resumed).hasMessageContaining("being written by another");
            LogWatch second = new LogWatch();
            RunLog.begin(file(), HEAD, NOW, second).close();
            assertThat(second.troubles.get(0).message().text()).contains("there is a file of that name already");
            first.record(note("second"));
        }
        assertThat(notes(RunLogReader.read(file()))).containsExactly("first", "second");
    }

    private static void waitFor(java.util.function.BooleanSupplier reached) {
        for (int i = 0; !reached.getAsBoolean(); i++) {
            assertThat(i).isLessThan(1000);
            try {
                Thread.sleep(5);
            } catch (InterruptedException e) {
                throw new AssertionError(e);
            }
        }
    }

    @Test
    void aFullDiskIsToldAndTheWholeRunGoesElsewhere() {
        Path full = Path.of("/dev/full");
        assumeThat(Files.isWritable(full)).isTrue();
        RunLog log = RunLog.begin(file(), HEAD, NOW, watch, new LogDisk() {
            @Override
            public LogPlace create(Path file) throws IOException {
                return file.equals(file()) ? SYSTEM.open(full) : SYSTEM.create(file);
            }

            @Override
            public LogPlace open(Path file) throws IOException {
                return SYSTEM.open(file.equals(file()) ? full : file);
            }
        });
        log.record(note("first"));
        log.record(note("second"));
        log.continueIn(folder.resolve("gone").resolve("there.csv"));
        Path other = folder.resolve("other.csv");
        log.continueIn(other);
        log.record(note("third"));
        log.close();
        assertThat(watch.troubles).hasSize(4);
        assertThat(watch.troubles.get(0).message().text()).contains("run.csv", "No space left", "10 lines");
        assertThat(watch.troubles.get(2).kept()).isEqualTo(12);
        assertThat(watch.troubles.get(3).message().text()).contains("there.csv", "its folder is not there");
        assertThat(watch.file).isEqualTo(other);
        assertThat(notes(RunLogReader.read(other))).containsExactly("first", "second", "third");
    }

    /** A disk with room for so many bytes; the last write is cut where the room ends, as real ones do. */
    private static final class SmallDisk implements LogDisk {
        private long room;

        SmallDisk(long room) {
            this.room = room;
        }

        @Override
        public LogPlace create(Path file) throws IOException {
            return small(SYSTEM.create(file));
        }

        @Override
        public LogPlace open(Path file) throws IOException {
            return small(SYSTEM.open(file));
        }

        private LogPlace small(LogPlace real) {
            return new LogPlace() {
                @Override
                public void append(byte[] bytes) throws IOException {
                    int fits = (int) Math.max(0, Math.min(bytes.length, room - real.length()));
                    real.append(Arrays.copyOf(bytes, fits));
                    if (fits < bytes.length) {
                        throw new IOException("No space left on device");
                    }
                }

                @Override
                public void force() throws IOException {
                    real.force();
                }

                @Override
                public void cut(long length) throws IOException {
                    real.cut(length);
                }

                @Override
                public long length() throws IOException {
                    return real.length();
                }

                @Override
                public byte[] content() throws IOException {
                    return real.content();
                }

                @Override
                public boolean isThere() throws IOException {
                    return real.isThere();
                }

                @Override
                public void close() throws IOException {
                    real.close();
                }
            };
        }
    }

    @Test
    void whereverTheDiskIsFullNothingIsLostOrDoubledWhenThereIsRoomAgain() throws IOException {
        long head = Files.size(written());
        for (long room : new long[] {0, 10, head, head + 20, head + 60, head + 75}) {
            Files.delete(file());
            SmallDisk disk = new SmallDisk(room);
            try (RunLog log = RunLog.begin(file(), HEAD, NOW, watch, disk)) {
                IntStream.range(0, 3).forEach(i -> log.record(note("note " + i)));
                waitFor(() -> !watch.troubles.isEmpty());
                log.record(note("note 3"));
                log.retry();
                waitFor(() -> watch.troubles.size() >= 2);
                disk.room = 1 << 20;
                log.retry();
            }
            assertThat(notes(RunLogReader.read(file()))).containsExactly("note 0", "note 1", "note 2", "note 3");
            watch.troubles.clear();
        }
    }

    @Test
    void aFolderThatMayNotBeWrittenToIsToldAtOnce() {
        LogDisk readOnly = new LogDisk() {
            @Override
            public LogPlace create(Path file) throws IOException {
                throw new AccessDeniedException(file.toString());
            }

            @Override
            public LogPlace open(Path file) throws IOException {
                throw new AccessDeniedException(file.toString());
            }
        };
        RunLog.begin(file(), HEAD, NOW, watch, readOnly).close();
        assertThat(watch.troubles.get(0).message().text()).contains("access to it is not permitted");
        written("first");
        // a log that may be read only is taken up, in trouble from the beginning
        RunLog.Resumed resumed = RunLog.resume(file(), HEAD, NOW, watch, readOnly);
        resumed.log().close();
        assertThat(notes(resumed.record())).containsExactly("first");
        assertThat(watch.troubles).hasSize(2);
    }

    @Test
    void aFolderThatIsTakenAwayDuringTheRunIsToldAndTheRunIsWrittenWholeWhenItIsBack() throws IOException {
        Path stick = Files.createDirectory(folder.resolve("stick"));
        Path there = stick.resolve("run.csv");
        try (RunLog log = RunLog.begin(there, HEAD, NOW, watch)) {
            log.record(note("first"));
            waitFor(() -> watch.lines == 11);
            Files.delete(there);
            Files.delete(stick);
            log.record(note("second"));
            waitFor(() -> !watch.troubles.isEmpty());
            assertThat(watch.troubles.get(0).message().text()).contains("its folder is not there", "12 lines");
            Files.createDirectory(stick);
            log.record(note("third"));
        }
        assertThat(notes(RunLogReader.read(there))).containsExactly("first", "second", "third");
    }

    @Test
    void theFileThatIsLeftSaysWhereTheRunWentOn() {
        Path other = folder.resolve("other.csv");
        try (RunLog log = RunLog.begin(file(), HEAD, NOW, watch)) {
            log.record(note("first"));
            log.continueIn(other);
        }
        RunRecord left = RunLogReader.read(file());
        assertThat(left.isEnded()).isTrue();
        assertThat(left.entries().get(1).text()).contains("other.csv");
        assertThat(notes(RunLogReader.read(other))).containsExactly("first");
        assertThat(RunLogs.unfinished(folder, HEAD)).isEmpty();
    }

    @Test
    void unfinishedRunsOfThePlanAreFoundAndNothingElse() throws IOException {
        Path first = RunLogs.freshName(folder, "Rig & \u00c4 Co.", RunHeads.BEGUN);
        assertThat(first.getFileName().toString()).isEqualTo("run-rig-co-20260301-093000.csv");
        RunLog.begin(first, HEAD, NOW, watch).close();
        Path second = RunLogs.freshName(folder, "Rig & \u00c4 Co.", RunHeads.BEGUN);
        assertThat(second).isNotEqualTo(first);
        try (RunLog log = RunLog.begin(second, HEAD, NOW, watch)) {
            log.record(LogEntry.of(RunHeads.BEGUN, LogKind.END, "by-hand", ""));
        }
        RunLog.begin(folder.resolve("run-b.csv"), RunHeads.head("Another"), NOW, watch)
                .close();
        Files.writeString(folder.resolve("run-c.csv"), "no log");
        assertThat(RunLogs.unfinished(folder, HEAD)).extracting(RunRecord::file).containsExactly(first);
        assertThat(RunLogs.unfinished(folder.resolve("nowhere"), HEAD)).isEmpty();
    }
}
