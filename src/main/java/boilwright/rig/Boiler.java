package boilwright.rig;

import java.util.OptionalDouble;

/**
 * The vessel that holds the charge.
 *
 * @param material wall material
 * @param innerDiameterM inner diameter at the oil level, m
 * @param wallThicknessM wall thickness of the heated base, m
 * @param heatedAreaM2 outside area that the source reaches, m2
 * @param wettedAreaM2 inside area through which heat enters the oil, m2 (fins counted)
 * @param outsideAreaM2 outside area that loses heat to the room, m2 (without the heated area while the source covers it)
 * @param insulationThicknessM insulation over the outside area, m; 0 for none
 * @param insulationConductivity conductivity of that insulation, W/(m K)
 * @param emissivity emissivity of the outside
 * @param wallMassKg mass of the wall that follows the boiler's temperature, kg; empty: from area and thickness
 */
public record Boiler(
        Material material,
        double innerDiameterM,
        double wallThicknessM,
        double heatedAreaM2,
        double wettedAreaM2,
        double outsideAreaM2,
        double insulationThicknessM,
        double insulationConductivity,
        double emissivity,
        OptionalDouble wallMassKg) {
    /** Free surface of the oil from which vapour rises, m2. */
    public double surfaceAreaM2() {
        return Math.PI / 4 * innerDiameterM * innerDiameterM;
    }
}
