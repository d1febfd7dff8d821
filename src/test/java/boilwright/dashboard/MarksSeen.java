package boilwright.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Label;

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
        return new javafx.geometry.BoundingBox(
                b.getMinX() + HAIR, b.getMinY() + HAIR, b.getWidth() - 2 * HAIR, b.getHeight() - 2 * HAIR);
    }
}
