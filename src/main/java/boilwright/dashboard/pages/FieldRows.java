package boilwright.dashboard.pages;

import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;

/** The row that fits a field. */
final class FieldRows {
    private FieldRows() {}

    static FieldRow of(PageContext context, String path) {
        Field field = FieldCatalogue.find(path).orElseThrow();
        if (path.equals("fluid") || field.kind() == Field.Kind.CHOICE) {
            return new ChoiceRow(context, path);
        }
        return field.kind() == Field.Kind.QUANTITY ? new QuantityRow(context, path) : new TextRow(context, path);
    }
}
