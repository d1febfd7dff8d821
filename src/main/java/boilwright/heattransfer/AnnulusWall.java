package boilwright.heattransfer;

/** Which wall of an annular gap passes heat to the fluid; the other is insulated. */
public enum AnnulusWall {
    /** The inner wall, as in a jacket around a pump body. */
    INNER,
    /** The outer wall. */
    OUTER,
    /** Both walls, at one temperature. */
    BOTH
}
