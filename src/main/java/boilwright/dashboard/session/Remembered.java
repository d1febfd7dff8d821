package boilwright.dashboard.session;

import boilwright.errors.OutputNotWrittenException;
import boilwright.files.AtomicFile;
import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;

/** The few things that a window remembers from one start to the next: files used lately and the theme. */
public final class Remembered {
    private static final int MOST_FILES = 8;
    private static final String THEME = "theme";
    private static final String FILE = "recent.";

    private final Optional<Path> place;
    private final Properties values = new Properties();

    private Remembered(Optional<Path> place) {
        this.place = place;
    }

    /**
     * Reads what was remembered; a damaged file counts as an empty one.
     *
     * @param state the folder of {@link StateFolder}; empty: nothing is remembered
     */
    public static Remembered in(Optional<Path> state) {
        Remembered remembered = new Remembered(state.map(folder -> folder.resolve("window.properties")));
        if (remembered.place.isPresent() && Files.isRegularFile(remembered.place.get())) {
            try (Reader reader = Files.newBufferedReader(remembered.place.get(), StandardCharsets.UTF_8)) {
                remembered.values.load(reader);
            } catch (IOException | IllegalArgumentException e) {
                remembered.values.clear();
            }
        }
        return remembered;
    }

    /** Files used lately, the last first. */
    public synchronized List<Path> recentFiles() {
        List<Path> files = new ArrayList<>();
        for (int i = 0; i < MOST_FILES; i++) {
            String text = values.getProperty(FILE + i, "");
            try {
                if (!text.isBlank()) {
                    files.add(Path.of(text));
                }
            } catch (InvalidPathException e) {
                // A name of another system: of no use here.
            }
        }
        return files;
    }

    /** Remembers that this file was used now. */
    public synchronized void used(Path file) {
        List<Path> files = new ArrayList<>(recentFiles());
        Path full = file.toAbsolutePath().normalize();
        files.remove(full);
        files.add(0, full);
        for (int i = 0; i < MOST_FILES; i++) {
            if (i < files.size()) {
                values.setProperty(FILE + i, files.get(i).toString());
            } else {
                values.remove(FILE + i);
            }
        }
        write();
    }

    /** The name of the theme; empty when none was chosen. */
    public synchronized String theme() {
        return values.getProperty(THEME, "");
    }

    /** Remembers the name of the theme. */
    public synchronized void theme(String name) {
        values.setProperty(THEME, name);
        write();
    }

    private void write() {
        if (place.isEmpty()) {
            return;
        }
        StringWriter text = new StringWriter();
        try {
            values.store(text, null);
            AtomicFile.write(place.get(), text.toString().getBytes(StandardCharsets.UTF_8));
        } catch (IOException | OutputNotWrittenException e) {
            // Convenience only: a full disk or a read-only home must not come between a person and the rig.
            return;
        }
    }
}
