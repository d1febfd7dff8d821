package boilwright.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;

/** The labels of the time band as they stand on the screen. */
final class MarksSeen {
    private static final double HAIR = 0.01;

    private final Node band;
    private final List<Label> chips;

    MarksSeen(Node band) {
        this.band = band;
        chips = band.lookupAll(".mark").stream()
                .filter(Node::isVisible)
                .map(Label.class::cast)
                .toList();
        assertThat(chips).as("labels seen").hasSizeGreaterThan(5);
    }

    /** The label with this text. */
    Label chip(String text) {
        return chips.stream()
                .filter(chip -> chip.getText().equals(text))
                .findFirst()
                .orElseThrow();
    }

    /** Pairs of labels that share a place. */
    List<String> overlapping() {
        List<String> pairs = new ArrayList<>();
        for (int i = 0; i < chips.size(); i++) {
            for (int j = i + 1; j < chips.size(); j++) {
                if (inner(chips.get(i)).intersects(inner(chips.get(j)))) {
                    pairs.add(chips.get(i).getText() + " / " + chips.get(j).getText());
                }
            }
        }
        return pairs;
    }

    /** Labels that leave the band. */
    List<String> outside() {
        Bounds all = band.localToScene(band.getBoundsInLocal());
        return chips.stream()
                .filter(chip -> !all.contains(inner(chip)))
                .map(Label::getText)
                .toList();
    }

    private static Bounds inner(Label chip) {
        Bounds b = chip.localToScene(chip.getLayoutBounds());
        return new BoundingBox(
                b.getMinX() + HAIR, b.getMinY() + HAIR, b.getWidth() - 2 * HAIR, b.getHeight() - 2 * HAIR);
    }

    /** The colour that its fills, one over the other, give a region; the lowest one covers. */
    static Color ground(Region region) {
        Color all = Color.TRANSPARENT;
        for (BackgroundFill fill : region.getBackground().getFills()) {
            Color over = (Color) fill.getFill();
            all = all.interpolate(Color.color(over.getRed(), over.getGreen(), over.getBlue()), over.getOpacity());
        }
        assertThat(all.isOpaque()).isTrue();
        return all;
    }
}
