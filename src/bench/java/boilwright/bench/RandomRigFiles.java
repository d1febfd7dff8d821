package boilwright.bench;

import boilwright.invariants.RandomRigs;
import boilwright.rig.file.RigWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Writes random rigs as files, for {@code same-answers} and for anybody who wants to look at one. Arguments: folder, seed, how many.
 * The rigs of one seed are the same everywhere.
 */
public final class RandomRigFiles {
    private RandomRigFiles() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        long seed = Long.parseLong(arguments[1]);
        int count = Integer.parseInt(arguments[2]);
        for (int i = 0; i < count; i++) {
            RigWriter.save(RandomRigs.of(seed, i).rig(), folder.resolve(String.format("rig-%03d.json", i)));
        }
    }
}
