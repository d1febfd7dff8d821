package boilwright.heattransfer;

/**
 * Tubes soldered on a sheet at even distances: bond, sheet between the tubes as fins, water inside (J. A. Duffie and W. A.
 * Beckman, Solar Engineering of Thermal Processes, 4th ed. 2013, sec. 6.5, where the sheet is the plate of a collector). All
 * per metre of tube.
 */
public final class SolderedTube {
    private SolderedTube() {}

    /**
     * Conductance of the bond, k b/t, W/(m K).
     *
     * @param conductivity of the solder, W/(m K)
     * @param widthM of the bond on the sheet, m
     * @param thicknessM mean thickness of the solder, m
     */
    public static double bondConductance(double conductivity, double widthM, double thicknessM) {
        return conductivity * widthM / thicknessM;
    }

    /**
     * Resistance between the sheet's mean temperature and its temperature at the bond, m K/W, under even heat flux: 2 w^3/(3 k
     * t p^2) with w = (p - b)/2, from one-dimensional conduction; the limit of {@link #efficiencyFactor} for weak heating.
     *
     * @param pitchM distance between two tubes, m
     * @param bondWidthM width of the bond, above 0 to the pitch, m
     * @param conductivity of the sheet, W/(m K)
     * @param thicknessM of the sheet, m
     */
    public static double sheetResistance(double pitchM, double bondWidthM, double conductivity, double thicknessM) {
        double free = (pitchM - bondWidthM) / 2;
        return 2 * free * free * free / (3 * conductivity * thicknessM * pitchM * pitchM);
    }

    /**
     * Conductance from the sheet's mean temperature to the water, W/(m K).
     *
     * @param coefficient inside the tube, W/(m2 K), above 0
     * @param boreM m
     * @param bondConductance from {@link #bondConductance}, W/(m K)
     * @param sheetResistance from {@link #sheetResistance}, m K/W
     */
    public static double conductance(double coefficient, double boreM, double bondConductance, double sheetResistance) {
        return 1 / (1 / (coefficient * Math.PI * boreM) + 1 / bondConductance + sheetResistance);
    }

    /**
     * Heat to the water over that of a sheet as cold as the water everywhere (Duffie and Beckman, eq. 6.5.18), for a sheet
     * that exchanges heat on its one face.
     *
     * @param faceCoefficient between the sheet and what heats it, W/(m2 K), above 0
     * @param pitchM distance between two tubes, m
     * @param bondWidthM part of the pitch over the tube, m
     * @param finEfficiency of the free sheet: {@link StraightFin#efficiency} with sqrt(h/(k t)) and half the free width
     * @param tubeResistance bond and water, 1/bond + 1/(pi d h), m K/W
     */
    public static double efficiencyFactor(
            double faceCoefficient, double pitchM, double bondWidthM, double finEfficiency, double tubeResistance) {
        double effective = bondWidthM + (pitchM - bondWidthM) * finEfficiency;
        return 1 / (faceCoefficient * pitchM * (1 / (faceCoefficient * effective) + tubeResistance));
    }
}
