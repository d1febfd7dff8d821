package boilwright.dashboard.band;

import boilwright.dashboard.text.WindowText;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.AccessibleRole;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** The label of a mark, or of neighbours that share one. */
final class MarkChip extends Label {
    private final Region sign = new Region();
    private final List<BandMark> own;
    private List<BandMark> marks = List.of();

    /** A label for one mark. */
    MarkChip(BandMark mark) {
        own = List.of(mark);
        getStyleClass().add("mark");
        sign.getStyleClass().addAll("mark-sign", mark.sign().id());
        if (mark.sign() != BandMark.Sign.NONE) {
            setGraphic(sign);
            getStyleClass().add(mark.sign().id());
        }
        setManaged(false);
        setFocusTraversable(false);
        setAccessibleRole(AccessibleRole.BUTTON);
        show(own);
    }

    /** The mark that it was made for. */
    List<BandMark> own() {
        return own;
    }

    /** The marks that it stands for now. */
    List<BandMark> marks() {
        return marks;
    }

    /** Stands for these marks; the first is its own. */
    void show(List<BandMark> shown) {
        if (marks.equals(shown)) {
            return;
        }
        marks = shown;
        setText(text(shown));
        boolean signed =
                shown.stream().allMatch(mark -> mark.sign() == own.get(0).sign());
        setContentDisplay(signed ? ContentDisplay.LEFT : ContentDisplay.TEXT_ONLY);
        setAccessibleText(BandMark.words(shown));
    }

    /** How wide it is when it stands for these marks, px. */
    double widthFor(List<BandMark> shown) {
        show(shown);
        return snapSizeX(prefWidth(-1));
    }

    private static String text(List<BandMark> shown) {
        if (shown.size() == 1) {
            return shown.get(0).label();
        }
        BandMark.Sign sign = shown.get(0).sign();
        if (sign.isOfJet() && shown.stream().allMatch(mark -> mark.sign() == sign)) {
            return shown.stream().map(BandMark::label).distinct().sorted().collect(Collectors.joining(" "));
        }
        return WindowText.say("band.mark.several", Integer.toString(shown.size()));
    }
}
