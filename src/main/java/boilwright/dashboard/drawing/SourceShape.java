package boilwright.dashboard.drawing;

import boilwright.rig.ContactBody;
import boilwright.rig.HeatSource;
import boilwright.rig.Rig;

/**
 * The heat source as it stands under or around the boiler, m. What its areas and heat capacity do not tell is drawn in usual
 * proportions.
 *
 * @param look what it looks like
 * @param radiusM half its width where it touches
 * @param thicknessM of plate, heater or mantle
 * @param sideM how far it reaches up the boiler's side from the bottom's edge
 * @param insulationM insulation around it
 * @param standM height of what it stands on, below it
 * @param bodyHot whether it has a body of its own temperature
 */
record SourceShape(
        Look look,
        double radiusM,
        double thicknessM,
        double sideM,
        double insulationM,
        double standM,
        boolean bodyHot) {
    /** Heat capacity of iron by volume, J/(m3 K), from density and specific heat of mild steel. */
    private static final double IRON = 7854 * 434.0;

    /** What a source looks like. */
    enum Look {
        /** A plate on a housing, under the boiler. */
        PLATE,
        /** A layer round the boiler. */
        WRAP,
        /** A coil under a cover, with or without a plate on it. */
        COIL,
        /** A burner with its flame. */
        FLAME,
        /** Rods in the oil; the boiler stands on feet. */
        RODS
    }

    static SourceShape of(Rig rig, BoilerShape boiler) {
        HeatSource source = rig.heatSource();
        double outside = boiler.radiusM() + boiler.wallM();
        return switch (source.kind()) {
            case CONTACT_PLATE -> plate(source.body().orElseThrow(), outside);
            case HEATING_MANTLE -> mantle(source.body().orElseThrow(), boiler);
            case CLAMPED_HEATER -> clamped(source.body().orElseThrow(), boiler);
            case INDUCTION -> coil(source, source.body().orElseThrow(), outside);
            case IMMERSED_ELEMENT -> new SourceShape(Look.RODS, outside, 0, 0, 0, 0.08 * outside, false);
            case GAS_BURNER -> new SourceShape(Look.FLAME, 0.45 * outside, 0.42 * outside, 0, 0, 0.3 * outside, false);
        };
    }

    private static SourceShape plate(ContactBody plate, double outside) {
        return new SourceShape(
                Look.PLATE,
                disc(plate.areaM2(), outside),
                slab(plate.heatCapacity(), plate.areaM2(), outside),
                0,
                Math.min(plate.insulationThicknessM(), outside),
                0.22 * outside,
                true);
    }

    private static SourceShape mantle(ContactBody mantle, BoilerShape boiler) {
        double outside = boiler.radiusM() + boiler.wallM();
        return new SourceShape(
                Look.WRAP,
                outside,
                0.07 * outside,
                side(mantle.areaM2(), boiler),
                Math.min(mantle.insulationThicknessM(), outside),
                0.1 * outside,
                true);
    }

    private static SourceShape clamped(ContactBody heater, BoilerShape boiler) {
        double outside = boiler.radiusM() + boiler.wallM();
        return new SourceShape(
                Look.WRAP,
                Math.min(outside, disc(heater.areaM2(), outside)),
                slab(heater.heatCapacity(), heater.areaM2(), outside),
                side(heater.areaM2(), boiler),
                Math.min(heater.insulationThicknessM(), outside),
                0.08 * outside,
                true);
    }

    private static SourceShape coil(HeatSource coil, ContactBody susceptor, double outside) {
        return new SourceShape(
                Look.COIL,
                disc(susceptor.areaM2(), outside),
                coil.touches() ? slab(susceptor.heatCapacity(), susceptor.areaM2(), outside) : 0,
                0,
                0,
                0.3 * outside,
                coil.touches());
    }

    /** Lowest point of it below the outside of the boiler's bottom, m. */
    double depthM() {
        return thicknessM + insulationM + standM;
    }

    private static double disc(double areaM2, double outside) {
        return Math.max(0.25 * outside, Math.min(1.8 * outside, Math.sqrt(areaM2 / Math.PI)));
    }

    private static double slab(double heatCapacity, double areaM2, double outside) {
        double thickness = heatCapacity / (IRON * areaM2);
        return Math.max(0.05 * outside, Math.min(0.45 * outside, thickness));
    }

    private static double side(double areaM2, BoilerShape boiler) {
        double r = boiler.radiusM() + boiler.wallM();
        double ratio = boiler.domeM() / r;
        double bottom = Math.PI * r * r * (1 + ratio * ratio);
        double room = boiler.heightM() - boiler.domeM() - boiler.shoulderM();
        return Math.max(0, Math.min(0.85 * room, (areaM2 - 1.05 * bottom) / (2 * Math.PI * r)));
    }
}
