package boilwright.dashboard.parts;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.collections.FXCollections;
import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;
import org.controlsfx.control.SearchableComboBox;

/** Lists to choose one of. A long one is searched: what is typed narrows it to the entries whose words hold it. */
public final class ChoiceBoxes {
    /** From so many entries on a list is searched by typing; a shorter one is seen at a glance. */
    private static final int SEARCHED_FROM = 5;

    private ChoiceBoxes() {}

    /**
     * A list.
     *
     * @param choices what may be chosen
     * @param words what an entry is called; never asked for null
     */
    public static <T> ComboBox<T> of(List<T> choices, Function<T, String> words) {
        ComboBox<T> box = choices.size() < SEARCHED_FROM ? new ComboBox<>() : searched(words);
        box.setConverter(new Words<>(words));
        box.getItems().setAll(choices);
        return box;
    }

    /**
     * A long list that is filled later.
     *
     * @param words what an entry is called; never asked for null
     */
    public static <T> ComboBox<T> searched(Function<T, String> words) {
        ComboBox<T> box = new SearchableComboBox<>();
        box.setConverter(new Words<>(words));
        // The input for the search comes with the skin; it is read out under the name of the list.
        box.skinProperty()
                .addListener((property, before, now) -> box.lookupAll(".combo-box-search")
                        .forEach(input -> input.accessibleTextProperty().bind(box.accessibleTextProperty())));
        return box;
    }

    /**
     * Offers other entries, as a list of its own: one that is changed in place is out of step with what was found in it.
     *
     * @param chosen the entry that stands there then
     */
    public static <T> void offer(ComboBox<T> box, List<T> choices, T chosen) {
        box.setItems(FXCollections.observableArrayList(choices));
        box.setValue(chosen);
    }

    /**
     * Hears of a choice once it is made: of the entry that stands there when the list closes, not of those that the arrow keys
     * pass meanwhile.
     *
     * @param chosen gets the entry; null when the list was closed while what was typed fits none
     */
    public static <T> void onChosen(ComboBox<T> box, Consumer<T> chosen) {
        box.valueProperty().addListener((property, before, now) -> {
            if (!box.isShowing()) {
                chosen.accept(now);
            }
        });
        box.showingProperty().addListener((property, before, now) -> {
            if (!now) {
                chosen.accept(box.getValue());
            }
        });
    }

    /** What entries are called; they are chosen from the list, never typed in full. */
    private static final class Words<T> extends StringConverter<T> {
        private final Function<T, String> words;

        Words(Function<T, String> words) {
            this.words = words;
        }

        @Override
        public String toString(T entry) {
            return entry == null ? "" : words.apply(entry);
        }

        @Override
        public T fromString(String text) {
            throw new UnsupportedOperationException(text);
        }
    }
}
