package boilwright.dashboard.band;

import javafx.animation.AnimationTimer;

/** Moves the cursor with the frames of the screen while the band plays; stopped it costs nothing. */
final class Player extends AnimationTimer {
    /** A frame that took longer than this, as after a pause of the machine, moves the cursor no further, s. */
    private static final double LONGEST_S = 0.25;

    private static final double NANO = 1e-9;

    private final BandModel model;
    private long lastNs;

    Player(BandModel model) {
        this.model = model;
        model.playingProperty().addListener((property, before, now) -> {
            if (now) {
                lastNs = 0;
                start();
            } else {
                stop();
            }
        });
    }

    @Override
    public void handle(long nowNs) {
        if (lastNs != 0) {
            model.tick(Math.min(LONGEST_S, (nowNs - lastNs) * NANO));
        }
        lastNs = nowNs;
    }
}
