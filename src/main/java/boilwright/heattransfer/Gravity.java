package boilwright.heattransfer;

/** The acceleration that drives films and natural convection. */
public final class Gravity {
    /** Standard acceleration of free fall, m/s2 (exact by convention, 3rd CGPM 1901). */
    public static final double STANDARD = 9.80665;

    private Gravity() {}
}
