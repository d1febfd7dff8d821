package boilwright;

import java.util.List;

/** How much a test does: enough to notice a fault in the usual build, and the large counts with {@code mvn -Pdeep verify}. */
public final class Counts {
    private static final boolean DEEP = Boolean.getBoolean("boilwright.deep");

    private Counts() {}

    /** One of two counts. */
    public static int of(int usual, int deep) {
        return DEEP ? deep : usual;
    }

    /** The first of some things, and all of them when the large counts are wanted; the first is the one that has most to show. */
    @SafeVarargs
    public static <T> List<T> firstOf(T... things) {
        return List.of(things).subList(0, of(1, things.length));
    }
}
