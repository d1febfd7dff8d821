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
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** The files that a command was asked to write: looked at before the computation, written together after it. */
final class Outputs {
    private final Optional<Path> csv;
    private final Optional<Path> png;

    /** Files for the table and for the picture; null for none. */
    Outputs(Path csv, Path png) {
        this.csv = Optional.ofNullable(csv);
        this.png = Optional.ofNullable(png);
    }

    /**
     * Looks whether two outputs, or an output and the rig's file, are one.
     *
     * @throws InputRefusedException when they are
     */
    void refuseOverlap(Optional<Path> input) {
        if (csv.isPresent() && png.isPresent() && same(csv.get(), png.get())) {
            throw new InputRefusedException(Message.of(
                    MessageKey.OUTPUTS_COINCIDE, "--csv and --png", csv.get().toString()));
        }
        refuse("--csv", csv, input);
        refuse("--png", png, input);
    }

    /**
     * Looks whether the files can be written and the picture drawn.
     *
     * @throws OutputNotWrittenException when not
     */
    void requireWritable() {
        csv.ifPresent(AtomicFile::requireWritable);
        png.ifPresent(AtomicFile::requireWritable);
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
     */
    void write(Supplier<String> table, Supplier<byte[]> picture) {
        Map<Path, byte[]> contents = new LinkedHashMap<>();
        csv.ifPresent(file -> contents.put(file, table.get().getBytes(StandardCharsets.UTF_8)));
        png.ifPresent(file -> contents.put(file, picture.get()));
        AtomicFile.writeAll(contents);
    }

    private static void refuse(String option, Optional<Path> output, Optional<Path> input) {
        if (output.isPresent() && input.isPresent() && same(output.get(), input.get())) {
            throw new InputRefusedException(Message.of(
                    MessageKey.OUTPUT_OVER_INPUT, option, output.get().toString()));
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
