package boilwright.vacuum;

/**
 * Something that gives off gas.
 *
 * @param path path of the field it comes from, such as {@code vacuum.chamber.surfaces[0]}
 * @param kind what it is
 * @param name what people call it: material or piece
 * @param piece number of the piece of the line along whose wall it comes, from 0; -1 for the chamber
 * @param flow gas, Pa m3/s
 * @param low low end of what published figures allow, Pa m3/s
 * @param high high end, Pa m3/s
 */
public record GasSource(String path, Kind kind, String name, int piece, double flow, double low, double high) {
    /** What gives off gas. */
    public enum Kind {
        /** A wall of the chamber. */
        SURFACE,
        /** The inside of a piece of the line. */
        PIECE,
        /** Gas that a ring gives off and lets through. */
        SEAL,
        /** A known leak. */
        LEAK,
        /** Gas that comes back through the jets. */
        BACK_DIFFUSION,
        /** Vapour of the pump's own oil. */
        OIL_VAPOUR,
        /** What the backing pump leaves, while no jet keeps it away. */
        BACKING_PUMP
    }
}
