package boilwright.dashboard.parts;

public final class VerdictBar extends javafx.scene.layout.VBox {
    private final javafx.scene.control.Label words = new javafx.scene.control.Label();
    private final javafx.scene.control.Label why = new javafx.scene.control.Label();

    public VerdictBar() {
        words.setWrapText(true);
        words.setStyle("-fx-font-size: 1.25em");
        getChildren().addAll(words, why);
    }

    public void setVerdict(String verdict, boolean stale, String staleWhy) {
        words.setText(verdict);
        why.setText(stale ? staleWhy : "");
    }
}
