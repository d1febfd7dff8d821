package boilwright.dashboard.session;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.Rig;
import boilwright.rig.file.RigReader;
import boilwright.rig.file.RigWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Rig files on the disk, and whether one was changed by somebody else meanwhile. May take long: not for the window's thread. */
public final class RigFiles {
    private RigFiles() {}

    /**
     * A rig and where it stands.
     *
     * @param rig the rig
     * @param file its file; empty for a demo or a new rig
     * @param stamp what the file held when it was read or written; empty without a file
     */
    public record Stored(Rig rig, Optional<Path> file, String stamp) {
        /** A rig that stands in no file yet. */
        public static Stored nowhere(Rig rig) {
            return new Stored(rig, Optional.empty(), "");
        }
    }

    /**
     * Reads a rig.
     *
     * @param slipsMeant whether values that look like slips are meant as they are written
     * @throws InputRefusedException with every fault found
     */
    public static Stored read(Path file, Collection<String> fluidIds, boolean slipsMeant) {
        Set<String> accepted =
                slipsMeant ? FieldCatalogue.fields().stream().map(Field::path).collect(Collectors.toSet()) : Set.of();
        String stamp = stamp(file);
        return new Stored(RigReader.read(file, fluidIds, accepted), Optional.of(file), stamp);
    }

    /** A rig that was just read from this file. */
    public static Stored known(Rig rig, Path file) {
        return new Stored(rig, Optional.of(file), stamp(file));
    }

    /** Whether the only faults are values that look like slips, which a person may say are meant. */
    public static boolean onlySlips(InputRefusedException refusal) {
        return refusal.faults().stream()
                .map(Message::key)
                .allMatch(key -> key == MessageKey.RIG_FIELD_SLIP || key == MessageKey.RIG_FIELD_QUANTITY_SLIP);
    }

    /**
     * Whether somebody else changed the file since it was read or written here. A file that is gone counts as unchanged:
     * writing it again loses nothing.
     */
    public static boolean changedMeanwhile(Stored stored) {
        if (stored.file().isEmpty()) {
            return false;
        }
        String now = stamp(stored.file().get());
        return !now.isEmpty() && !now.equals(stored.stamp());
    }

    /**
     * Writes a rig, whole or not at all.
     *
     * @throws InputRefusedException when it can't be written; what was there is unchanged
     */
    public static Stored write(Rig rig, Path file) {
        RigWriter.save(rig, file);
        return new Stored(rig, Optional.of(file), stamp(file));
    }

    private static String stamp(Path file) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return Files.isRegularFile(file) ? HexFormat.of().formatHex(digest.digest(Files.readAllBytes(file))) : "";
        } catch (IOException e) {
            return "";
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
