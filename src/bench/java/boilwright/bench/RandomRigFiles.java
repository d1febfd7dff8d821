package boilwright.bench;

import boilwright.answers.Asked;
import boilwright.answers.CheckQuestion;
import boilwright.answers.Model;
import boilwright.errors.CancelledException;
import boilwright.errors.ComputationException;
import boilwright.fluid.FluidLibrary;
import boilwright.invariants.RandomRigs;
import boilwright.numerics.CancelToken;
import boilwright.rig.Rig;
import boilwright.rig.file.RigWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Writes random rigs as files, for {@code same-answers} and for anybody who wants to look at one: the first ones of a seed that have
 * an answer, or none at once. Rigs whose warm-up takes more than {@value #MOST_STEPS} steps are passed over: some take minutes.
 * Arguments: folder, seed, how many.
 */
public final class RandomRigFiles {
    private static final int MOST_STEPS = 1500;

    private RandomRigFiles() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        long seed = Long.parseLong(arguments[1]);
        int count = Integer.parseInt(arguments[2]);
        FluidLibrary fluids = FluidLibrary.builtIn();
        int written = 0;
        for (int i = 0; written < count; i++) {
            Rig rig = RandomRigs.of(seed, i).rig();
            if (isQuick(Asked.of(rig, fluids))) {
                RigWriter.save(rig, folder.resolve(String.format("rig-%03d.json", i)));
                written++;
            }
        }
    }

    private static boolean isQuick(Asked asked) {
        CancelToken cancel = new CancelToken();
        int[] steps = new int[1];
        try {
            Model.COMPUTING.answer(new CheckQuestion(asked), cancel, (share, phase) -> {
                if (++steps[0] > MOST_STEPS) {
                    cancel.cancel();
                }
            });
            return true;
        } catch (ComputationException noAnswer) {
            return true;
        } catch (CancelledException slow) {
            return false;
        }
    }
}
