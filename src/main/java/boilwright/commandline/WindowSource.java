package boilwright.commandline;

import boilwright.dashboard.Dashboard;
import boilwright.dashboard.Opening;
import boilwright.numerics.CancelToken;

/** Who shows the window: the window itself, or in tests someone who only looks at what was asked. */
interface WindowSource {
    /** The window itself. */
    WindowSource ITSELF = new WindowSource() {
        @Override
        public void show(Opening opening, CancelToken stop) {
            Dashboard.show(opening, stop);
        }

        @Override
        public byte[] picture(Opening opening) {
            return Dashboard.picture(opening);
        }
    };

    /** As {@link Dashboard#show}. */
    void show(Opening opening, CancelToken stop);

    /** As {@link Dashboard#picture}. */
    byte[] picture(Opening opening);
}
