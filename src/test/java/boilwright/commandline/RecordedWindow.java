package boilwright.commandline;

import boilwright.dashboard.Opening;
import boilwright.numerics.CancelToken;
import java.util.ArrayList;
import java.util.List;

/** A window that nobody sees: it only remembers how it was asked for. */
final class RecordedWindow implements WindowSource {
    static final byte[] PICTURE = {1, 2, 3};

    private final List<Opening> shown = new ArrayList<>();
    private final List<Opening> drawn = new ArrayList<>();

    @Override
    public void show(Opening opening, CancelToken stop) {
        shown.add(opening);
    }

    @Override
    public byte[] picture(Opening opening) {
        drawn.add(opening);
        return PICTURE.clone();
    }

    List<Opening> shown() {
        return shown;
    }

    List<Opening> drawn() {
        return drawn;
    }
}
