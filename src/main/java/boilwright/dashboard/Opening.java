package boilwright.dashboard;

import boilwright.fluid.FluidLibrary;
import boilwright.rig.Rig;
import java.nio.file.Path;
import java.util.Optional;

/**
 * How a window begins.
 *
 * @param rig the rig as its file has it
 * @param edited the rig with what is edited from the start; the same where nothing is
 * @param file the file that the rig was read from; empty for a demo
 * @param fluids the fluids that rigs may name
 * @param page the page shown first
 * @param width width of the window's inside, pixels; 0 for what fits the screen
 * @param height height of the window's inside, pixels; 0 for what fits the screen
 * @param theme its look; empty for the one chosen last
 */
public record Opening(
        Rig rig,
        Rig edited,
        Optional<Path> file,
        FluidLibrary fluids,
        PageName page,
        int width,
        int height,
        Optional<Theme> theme) {
    /** Least width of a window, pixels. */
    public static final int LEAST_WIDTH = 800;
    /** Least height of a window, pixels. */
    public static final int LEAST_HEIGHT = 600;
    /** Greatest width, pixels: 8K. */
    public static final int GREATEST_WIDTH = 7680;
    /** Greatest height, pixels. */
    public static final int GREATEST_HEIGHT = 4320;
}
