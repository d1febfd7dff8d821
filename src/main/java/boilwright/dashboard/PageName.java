package boilwright.dashboard;

import boilwright.dashboard.text.WindowText;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The pages of the window, in their order. */
public enum PageName {
    RIG("rig", Action.PAGE_RIG, Drawing.WHOLE, Margins.BESIDE),
    HEAT("heat", Action.PAGE_HEAT, Drawing.WHOLE, Margins.BESIDE),
    TIME("time", Action.PAGE_TIME, Drawing.STRIP, Margins.BESIDE),
    WATER("water", Action.PAGE_WATER, Drawing.STRIP, Margins.NONE),
    VACUUM("vacuum", Action.PAGE_VACUUM, Drawing.STRIP, Margins.BESIDE),
    RUN("run", Action.PAGE_RUN, Drawing.STRIP, Margins.NONE),
    FLUIDS("fluids", Action.PAGE_FLUIDS, Drawing.STRIP, Margins.NONE);

    private enum Drawing {
        WHOLE,
        STRIP
    }

    private enum Margins {
        BESIDE,
        NONE
    }

    private final String id;
    private final Action action;
    private final Drawing drawing;
    private final Margins margins;

    PageName(String id, Action action, Drawing drawing, Margins margins) {
        this.id = id;
        this.action = action;
        this.drawing = drawing;
        this.margins = margins;
    }

    /** What shows it. */
    Action action() {
        return action;
    }

    /** Whether the drawing of the pump is a narrow strip beside it, as it needs the room itself. */
    boolean hasStrip() {
        return drawing == Drawing.STRIP;
    }

    /** Whether the margins stand beside it. */
    boolean hasLedger() {
        return margins == Margins.BESIDE;
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
