package boilwright.dashboard.drawing;

import java.util.List;

/**
 * A label with its leader line.
 *
 * @param part part it tells of
 * @param right whether it stands right of the pump
 * @param x where its leader ends, px; NaN for none
 * @param y where its leader ends, px
 * @param mark the state of a jet
 * @param name what it is called
 * @param brief a shorter name where there is little room
 * @param values its figures; those after the first may be left out
 * @param weight the higher, the longer it stays where there is little room
 */
record Callout(
        Part part,
        boolean right,
        double x,
        double y,
        Mark mark,
        String name,
        String brief,
        List<String> values,
        int weight) {
    /** A mark of a jet's state that needs no colour. */
    enum Mark {
        NONE,
        DARK,
        LIT,
        FULL
    }

    Callout {
        values = List.copyOf(values);
    }
}
