package boilwright.rig;

import boilwright.units.Dimension;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Collects the fields of one part of a rig, with short ways to say what is the same for most of them. */
final class FieldSet {
    /** No publication collects the sizes of such pumps. */
    static final String SIZES =
            "sizes of glass and metal pumps from 20 mm to 1 m bore, from memory; engineering judgement";
    /** Figures that users may override but seldom know. */
    static final String JUDGEMENT = "engineering judgement, from memory";
    /** Counts and lengths of text have no physics in them. */
    static final String FORMAT = "the file format";

    private final List<Field> fields = new ArrayList<>();
    private final String parent;
    private final String textRoot;
    private List<String> variants = List.of();

    /** @param parent path of the object whose fields these are; empty for the rig itself */
    FieldSet(String parent) {
        this(parent, parent);
    }

    /**
     * Fields of a part that stands in several places with the same texts.
     *
     * @param parent path of the object whose fields these are
     * @param textRoot what stands for the path in the keys of their texts
     */
    FieldSet(String parent, String textRoot) {
        this.parent = parent;
        this.textRoot = textRoot;
    }

    /** The fields that follow exist only in these variants of the object; none: in all. */
    FieldSet only(String... variantIds) {
        variants = List.of(variantIds);
        return this;
    }

    FieldSet quantity(
            String name, Dimension dimension, String unit, double low, double high, double usualLow, double usualHigh) {
        return add(name, Field.Kind.QUANTITY, Optional.of(dimension), unit, SIZES, low, high, usualLow, usualHigh);
    }

    /** A quantity whose range does not come from the sizes of pumps. */
    FieldSet quantityFrom(
            String source,
            String name,
            Dimension dimension,
            String unit,
            double low,
            double high,
            double usualLow,
            double usualHigh) {
        return add(name, Field.Kind.QUANTITY, Optional.of(dimension), unit, source, low, high, usualLow, usualHigh);
    }

    FieldSet text(String name, int shortest, int longest) {
        return add(name, Field.Kind.TEXT, Optional.empty(), "", FORMAT, shortest, longest, shortest, longest);
    }

    FieldSet whole(String name, int low, int high) {
        return add(name, Field.Kind.INTEGER, Optional.empty(), "", FORMAT, low, high, low, high);
    }

    FieldSet list(String name, int fewest, int most) {
        return add(name, Field.Kind.LIST, Optional.empty(), "", FORMAT, fewest, most, fewest, most);
    }

    FieldSet textList(String name, int fewest, int most) {
        return add(name, Field.Kind.TEXT_LIST, Optional.empty(), "", FORMAT, fewest, most, fewest, most);
    }

    FieldSet object(String name) {
        return add(name, Field.Kind.OBJECT, Optional.empty(), "", FORMAT, 0, 0, 0, 0);
    }

    FieldSet choice(String name, String... choices) {
        Field plain = field(name, Field.Kind.CHOICE, Optional.empty(), "", FORMAT, 0, 0, 0, 0);
        fields.add(new Field(
                plain.path(),
                plain.kind(),
                plain.dimension(),
                "",
                0,
                0,
                0,
                0,
                true,
                FORMAT,
                plain.textKey(),
                List.of(choices),
                variants));
        return this;
    }

    FieldSet material(String name) {
        return choice(name, Arrays.stream(Material.values()).map(Material::id).toArray(String[]::new));
    }

    /** A file may leave out the field added last. */
    FieldSet optional() {
        Field last = fields.remove(fields.size() - 1);
        fields.add(new Field(
                last.path(),
                last.kind(),
                last.dimension(),
                last.unit(),
                last.allowedLow(),
                last.allowedHigh(),
                last.typicalLow(),
                last.typicalHigh(),
                false,
                last.source(),
                last.textKey(),
                last.choices(),
                last.variants()));
        return this;
    }

    List<Field> fields() {
        return List.copyOf(fields);
    }

    private FieldSet add(
            String name,
            Field.Kind kind,
            Optional<Dimension> dimension,
            String unit,
            String source,
            double low,
            double high,
            double usualLow,
            double usualHigh) {
        fields.add(field(name, kind, dimension, unit, source, low, high, usualLow, usualHigh));
        return this;
    }

    private Field field(
            String name,
            Field.Kind kind,
            Optional<Dimension> dimension,
            String unit,
            String source,
            double low,
            double high,
            double usualLow,
            double usualHigh) {
        String suffix = kind == Field.Kind.LIST || kind == Field.Kind.TEXT_LIST ? "[]" : "";
        String path = (parent.isEmpty() ? "" : parent + ".") + name + suffix;
        return new Field(
                path,
                kind,
                dimension,
                unit,
                low,
                high,
                usualLow,
                usualHigh,
                true,
                source,
                ((textRoot.isEmpty() ? "" : textRoot + ".") + name).replace("[]", ""),
                List.of(),
                variants);
    }
}
