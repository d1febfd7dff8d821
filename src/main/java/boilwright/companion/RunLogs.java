package boilwright.companion;

import boilwright.errors.InputRefusedException;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** The folder in which run logs lie. */
public final class RunLogs {
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss", Locale.ROOT).withZone(ZoneOffset.UTC);
    private static final int LONGEST_NAME = 40;
    /** Most files that are looked into, the last written ones. */
    private static final int MOST = 50;

    private RunLogs() {}

    /** A name that no file of the folder has: rig and time of the beginning (UTC). */
    public static Path freshName(Path folder, String rig, Instant now) {
        String plain =
                rig.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String name = "run-" + (plain.length() > LONGEST_NAME ? plain.substring(0, LONGEST_NAME) : plain) + "-"
                + STAMP.format(now);
        Path file = folder.resolve(name + ".csv");
        for (int number = 2; Files.exists(file); number++) {
            file = folder.resolve(name + "-" + number + ".csv");
        }
        return file;
    }

    /**
     * Logs of a plan whose run was not ended, the last written first. Files that are no run logs are passed over; a folder that
     * can't be read has none.
     */
    public static List<RunRecord> unfinished(Path folder, LogHead plan) {
        List<RunRecord> found = new ArrayList<>();
        for (Path file : lately(folder)) {
            try {
                RunRecord record = RunLogReader.read(file);
                if (!record.isEnded() && record.head().suits(plan)) {
                    found.add(record);
                }
            } catch (InputRefusedException e) {
                // A log that can't be read is told when somebody opens it; here it is only no offer.
                continue;
            }
        }
        found.sort(Comparator.comparing(RunRecord::lastTime).reversed());
        return found;
    }

    private static List<Path> lately(Path folder) {
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, "run-*.csv")) {
            all.forEach(files::add);
        } catch (IOException | java.nio.file.DirectoryIteratorException e) {
            return List.of();
        }
        files.sort(Comparator.comparing((Path file) -> file.toFile().lastModified())
                .reversed());
        return files.subList(0, Math.min(MOST, files.size()));
    }
}
