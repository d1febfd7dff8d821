package boilwright.dashboard;

import boilwright.dashboard.text.WindowText;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The pages of the window, in their order. */
public enum PageName {
    RIG("rig"),
    HEAT("heat"),
    TIME("time"),
    WATER("water"),
    VACUUM("vacuum"),
    RUN("run"),
    FLUIDS("fluids");

    private final String id;

    PageName(String id) {
        this.id = id;
    }

    /** How the command line spells it. */
    public String id() {
        return id;
    }

    /** What people read. */
    public String title() {
        return WindowText.say("frame.page." + id);
    }

    /** The page with this spelling. */
    public static Optional<PageName> find(String id) {
        return Arrays.stream(values()).filter(page -> page.id.equals(id)).findFirst();
    }

    /** Every spelling, in the order of the pages. */
    public static List<String> ids() {
        return Arrays.stream(values()).map(PageName::id).toList();
    }
}
