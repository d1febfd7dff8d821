package boilwright.commandline;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.errors.OutputNotWrittenException;
import boilwright.files.AtomicFile;
import boilwright.report.RunPicture;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** The files that a command was asked to write: looked at before the computation, written together after it. */
final class Outputs {
    private final Optional<Path> csv;
    private final Optional<Path> png;
    private final Map<String, Path> more;

    /** Files for the table and for the picture; null for none. */
    Outputs(Path csv, Path png) {
        this(csv, png, Map.of());
    }

    /** The same with further files, by their options. */
    Outputs(Path csv, Path png, Map<String, Path> more) {
        this.csv = Optional.ofNullable(csv);
        this.png = Optional.ofNullable(png);
        this.more = more;
    }

    /**
     * Looks whether two outputs, or an output and the rig's file, are one.
     *
     * @throws InputRefusedException when they are
     */
    void refuseOverlap(Optional<Path> input) {
        Map<String, Path> all = all();
        List<String> options = new ArrayList<>(all.keySet());
        for (int i = 0; i < options.size(); i++) {
            Path file = all.get(options.get(i));
            for (int j = i + 1; j < options.size(); j++) {
                if (same(file, all.get(options.get(j)))) {
                    throw new InputRefusedException(Message.of(
                            MessageKey.OUTPUTS_COINCIDE, options.get(i) + " and " + options.get(j), file.toString()));
                }
            }
        }
        all.forEach((option, file) -> refuse(option, file, input));
    }

    private Map<String, Path> all() {
        Map<String, Path> all = new LinkedHashMap<>();
        csv.ifPresent(file -> all.put("--csv", file));
        png.ifPresent(file -> all.put("--png", file));
        all.putAll(more);
        return all;
    }

    /**
     * Looks whether the files can be written and the picture drawn.
     *
     * @throws OutputNotWrittenException when not
     */
    void requireWritable() {
        all().values().forEach(AtomicFile::requireWritable);
        if (png.isPresent() && !RunPicture.canDraw()) {
            throw new OutputNotWrittenException(
                    Message.of(MessageKey.PICTURE_NEEDS_FONTS, png.get().toString()), null);
        }
    }

    /**
     * Writes the files that were asked for, all or none.
     *
     * @param table content of the file named after --csv
     * @param picture content of the file named after --png
     * @param sheets contents of the further files, by their options; a file without content is not written
     */
    void write(Supplier<String> table, Supplier<byte[]> picture, Map<String, Supplier<byte[]>> sheets) {
        Map<Path, byte[]> contents = new LinkedHashMap<>();
        csv.ifPresent(file -> contents.put(file, table.get().getBytes(StandardCharsets.UTF_8)));
        png.ifPresent(file -> contents.put(file, picture.get()));
        more.forEach((option, file) -> {
            if (sheets.containsKey(option)) {
                contents.put(file, sheets.get(option).get());
            }
        });
        AtomicFile.writeAll(contents);
    }

    private static void refuse(String option, Path output, Optional<Path> input) {
        if (input.isPresent() && same(output, input.get())) {
            throw new InputRefusedException(Message.of(MessageKey.OUTPUT_OVER_INPUT, option, output.toString()));
        }
    }

    private static boolean same(Path one, Path other) {
        if (one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize())) {
            return true;
        }
        try {
            return Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other);
        } catch (IOException e) {
            return false; // whoever opens the file next says what is wrong with it
        }
    }
}
