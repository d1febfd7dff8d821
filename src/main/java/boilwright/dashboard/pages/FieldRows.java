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
        if (isPoints(field)) {
            return new PointsRow(context, path);
        }
        return field.kind() == Field.Kind.QUANTITY ? new QuantityRow(context, path) : new TextRow(context, path);
    }

    /** Whether a field is a list of points, each of them a few quantities and nothing else: a curve or a table. */
    static boolean isPoints(Field field) {
        return field.kind() == Field.Kind.LIST
                && FieldCatalogue.children(field.path()).stream()
                        .allMatch(column -> column.kind() == Field.Kind.QUANTITY && column.required());
    }
}
