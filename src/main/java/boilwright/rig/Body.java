package boilwright.rig;

/**
 * The wall around the column on which the jets condense. Its zones are one per stage: zone k reaches from stage k-1 (the
 * bottom zone from the end of the uncooled lower wall) up to stage k; the top zone reaches to the column's top.
 *
 * @param material wall material
 * @param innerDiameterM inner diameter, m; at the top jet it is the pump's bore
 * @param wallThicknessM wall thickness, m
 * @param uncooledLowerHeightM height of the wall above the boiler that no water reaches, m; returning oil is reheated there
 * @param emissivityInside emissivity of the inside, towards the column
 * @param emissivityOutside emissivity of the outside, towards the room
 */
public record Body(
        Material material,
        double innerDiameterM,
        double wallThicknessM,
        double uncooledLowerHeightM,
        double emissivityInside,
        double emissivityOutside) {}
