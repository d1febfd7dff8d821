package boilwright.validation;

import boilwright.fluid.FluidLibrary;
import boilwright.rig.Rig;
import boilwright.rig.file.RigReader;
import java.nio.file.Path;
import java.util.Set;

/** The demo rigs that come with the program, read from the sources. */
final class DemoRig {
    private DemoRig() {}

    static Rig named(String name) {
        return RigReader.read(
                Path.of("src", "main", "resources", "boilwright", "demo", name + ".json"),
                FluidLibrary.builtIn().workingFluids(),
                Set.of());
    }
}
