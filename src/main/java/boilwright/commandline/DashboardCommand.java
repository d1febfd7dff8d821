package boilwright.commandline;

import boilwright.dashboard.Opening;
import boilwright.dashboard.PageName;
import boilwright.dashboard.Theme;
import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.files.AtomicFile;
import boilwright.fluid.FluidLibrary;
import boilwright.rig.Rig;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The window, or a picture of it. */
@Command(
        name = "dashboard",
        description = "The window: the pump drawn, the verdict, the margins and the time line, and everything to edit.",
        sortOptions = false)
final class DashboardCommand implements Callable<Integer> {
    private static final String USUAL_RIG = "demo:neon-workshop";
    private static final Pattern SIZE = Pattern.compile("(\\d{1,5})x(\\d{1,5})");

    private final Terminal terminal;
    private final WindowSource window;

    @Parameters(paramLabel = "RIG", arity = "0..1", description = "A rig file, or demo:NAME.", defaultValue = USUAL_RIG)
    private String rigName;

    @Option(
            names = "--page",
            paramLabel = "P",
            description = "The page shown first: rig, heat, time, water, vacuum or fluids.")
    private String page = PageName.RIG.id();

    @Option(names = "--size", paramLabel = "WxH", description = "Inner size in pixels, such as 1920x1080.")
    private String size = "";

    @Option(names = "--theme", paramLabel = "THEME", description = "The look: light or dark.")
    private String theme = "";

    @Option(
            names = "--picture",
            paramLabel = "FILE",
            description = "Draw the window to this PNG file; needs no screen.")
    private Path picture;

    @Mixin
    private SetOption set;

    @Mixin
    private FluidsOption fluids;

    @Option(
            names = "--accept",
            paramLabel = "FIELD",
            description = "Go on although this field looks like a slip; repeat it for several fields.")
    private List<String> accepted = List.of();

    @Mixin
    private HelpOption help;

    DashboardCommand(Terminal terminal, WindowSource window) {
        this.terminal = terminal;
        this.window = window;
    }

    @Override
    public Integer call() {
        Opening opening = opening();
        if (picture == null) {
            window.show(opening, terminal.cancel());
            return ExitCode.HOLDS;
        }
        new Outputs(null, picture).refuseOverlap(opening.file());
        AtomicFile.requireWritable(picture);
        AtomicFile.write(picture, window.picture(opening));
        return ExitCode.HOLDS;
    }

    private Opening opening() {
        PageName first = PageName.find(page)
                .orElseThrow(() -> refused(MessageKey.PAGE_UNKNOWN, page, String.join(", ", PageName.ids())));
        Optional<Theme> look = Optional.empty();
        if (!theme.isEmpty()) {
            look = Optional.of(Theme.find(theme).orElseThrow(() -> refused(MessageKey.THEME_UNKNOWN, theme)));
        }
        int[] wanted = size.isEmpty() ? new int[2] : size();
        FluidLibrary library = fluids.library();
        RigChoice choice = new RigChoice(rigName);
        Rig rig = choice.read(library, accepted);
        return new Opening(
                rig, set.applied(rig, library, accepted), choice.file(), library, first, wanted[0], wanted[1], look);
    }

    private int[] size() {
        Matcher matcher = SIZE.matcher(size);
        if (matcher.matches()) {
            int width = Integer.parseInt(matcher.group(1));
            int height = Integer.parseInt(matcher.group(2));
            boolean fits = width >= Opening.LEAST_WIDTH
                    && height >= Opening.LEAST_HEIGHT
                    && width <= Opening.GREATEST_WIDTH
                    && height <= Opening.GREATEST_HEIGHT;
            if (fits) {
                return new int[] {width, height};
            }
        }
        throw refused(
                MessageKey.SIZE_NOT_UNDERSTOOD,
                size,
                Opening.LEAST_WIDTH + "x" + Opening.LEAST_HEIGHT,
                Opening.GREATEST_WIDTH + "x" + Opening.GREATEST_HEIGHT);
    }

    private static InputRefusedException refused(MessageKey key, String... values) {
        return new InputRefusedException(Message.of(key, values));
    }
}
