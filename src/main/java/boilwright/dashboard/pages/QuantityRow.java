package boilwright.dashboard.pages;

import boilwright.dashboard.session.RigFields;
import boilwright.units.QuantityReader;
import boilwright.units.Reading;
import java.util.OptionalDouble;
import javafx.scene.control.TextField;

/** A field that holds a quantity. */
final class QuantityRow extends FieldRow {
    private final TextField input = new TextField();
    private String shown = "";

    QuantityRow(PageContext context, String path) {
        super(context, path);
        input.setOnAction(event -> take());
        input.focusedProperty().addListener((property, before, now) -> {
            if (!now) {
                take();
            }
        });
        put(input);
    }

    private void take() {
        String text = input.getText().strip();
        if (text.equals(shown)) {
            return;
        }
        Reading reading = QuantityReader.read(text, field().dimension().orElseThrow());
        if (reading instanceof Reading.Read read) {
            if (commit(fields -> fields.with(path(), read.si()))) {
                shown = text;
            }
        } else if (reading instanceof Reading.Refused refused) {
            say(refused.fault().text());
        }
    }

    @Override
    void show(RigFields fields) {
        OptionalDouble now = fields.quantity(path());
        String text = fields.text(path()).orElse("");
        boolean same = QuantityReader.read(shown, field().dimension().orElseThrow()) instanceof Reading.Read read
                && now.isPresent()
                && read.si() == now.getAsDouble();
        if (!same) {
            shown = text;
            input.setText(text);
            say("");
        }
    }

    @Override
    void focusControl() {
        input.requestFocus();
    }
}
