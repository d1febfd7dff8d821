package boilwright.dashboard.pages;

import boilwright.dashboard.text.WindowText;
import boilwright.outgassing.MaterialLibrary;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.SourceKind;
import java.util.List;

/** The row that fits a field. */
final class FieldRows {
    private FieldRows() {}

    static FieldRow of(PageContext context, String path) {
        Field field = FieldCatalogue.find(path).orElseThrow();
        if (field.path().equals("fluid")) {
            return fluid(context, path);
        }
        if (isGasMaterial(field)) {
            MaterialLibrary materials = MaterialLibrary.builtIn();
            return new ChoiceRow(
                    context,
                    path,
                    List.copyOf(materials.ids()),
                    id -> materials.find(id).title());
        }
        if (field.kind() == Field.Kind.CHOICE) {
            return new ChoiceRow(context, path, field.choices(), FieldRows::choiceWord);
        }
        if (isPoints(field)) {
            return new PointsRow(context, path);
        }
        return field.kind() == Field.Kind.QUANTITY ? new QuantityRow(context, path) : new TextRow(context, path);
    }

    /** The fluids of the library, also of one that is read later. */
    private static FieldRow fluid(PageContext context, String path) {
        ChoiceRow row = new ChoiceRow(
                context,
                path,
                context.fluids().workingFluids(),
                id -> context.fluids().find(id).title());
        context.shelf().libraryProperty().addListener((property, before, now) -> row.offer(now.workingFluids()));
        return row;
    }

    /** Whether a field names a material because of the gas that it gives off. */
    static boolean isGasMaterial(Field field) {
        return field.kind() == Field.Kind.TEXT && field.name().equals("material");
    }

    /** Whether a field is a list of points, each of them a few quantities and nothing else: a curve or a table. */
    static boolean isPoints(Field field) {
        return field.kind() == Field.Kind.LIST
                && FieldCatalogue.children(field.path()).stream()
                        .allMatch(column -> column.kind() == Field.Kind.QUANTITY && column.required());
    }

    /** What a word of a rig file is called. */
    static String choiceWord(String id) {
        return SourceKind.find(id).map(SourceKind::title).orElseGet(() -> WindowText.say("pages.choice." + id));
    }
}
