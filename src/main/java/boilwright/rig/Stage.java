package boilwright.rig;

/**
 * One jet: an annular throat at some height of the column.
 *
 * @param name name that people read, unique within the rig
 * @param heightM height of the throat above the column's foot, m
 * @param throatDiameterM mean diameter of the annular throat, m
 * @param throatGapM width of the annular gap, m
 */
public record Stage(String name, double heightM, double throatDiameterM, double throatGapM) {
    /** Area of the throat, m2. */
    public double throatAreaM2() {
        return Math.PI * throatDiameterM * throatGapM;
    }
}
