package boilwright.dashboard.parts;

import boilwright.answers.Margin;

public final class LedgerView extends javafx.scene.control.ListView<String> {
    public void setMargins(java.util.List<Margin> margins) {
        getItems()
                .setAll(margins.stream()
                        .map(m -> m.status().mark() + " " + m.status().id() + " " + m.title() + " " + m.ratio())
                        .toList());
    }
}
