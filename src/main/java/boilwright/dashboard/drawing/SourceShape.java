package boilwright.dashboard.drawing;

import boilwright.rig.HeatSource;
import boilwright.rig.Rig;
import boilwright.rig.SourceKind;

/**
 * The heat source as it stands under or around the boiler, m. What its areas and heat capacity do not tell is drawn in usual
 * proportions.
 *
 * @param kind which of the six
 * @param radiusM half its width where it touches
 * @param thicknessM of plate, heater or mantle
 * @param sideM how far it reaches up the boiler's side from the bottom's edge
 * @param insulationM insulation around it
 * @param standM height of what it stands on, below it
 * @param bodyHot whether it has a body of its own temperature
 */
record SourceShape(
        SourceKind kind,
        double radiusM,
        double thicknessM,
        double sideM,
        double insulationM,
        double standM,
        boolean bodyHot) {
    /** Heat capacity of iron by volume, J/(m3 K), from density and specific heat of mild steel. */
    private static final double IRON = 7854 * 434.0;

    static SourceShape of(Rig rig, BoilerShape boiler) {
        HeatSource source = rig.heatSource();
        double outside = boiler.radiusM() + boiler.wallM();
        if (source instanceof HeatSource.ContactPlate plate) {
            return new SourceShape(
                    SourceKind.CONTACT_PLATE,
                    disc(plate.contactAreaM2(), outside),
                    slab(plate.heatCapacity(), plate.contactAreaM2(), outside),
                    0,
                    Math.min(plate.insulationThicknessM(), outside),
                    0.22 * outside,
                    true);
        }
        if (source instanceof HeatSource.HeatingMantle mantle) {
            return new SourceShape(
                    SourceKind.HEATING_MANTLE,
                    outside,
                    0.07 * outside,
                    side(mantle.wrappedAreaM2(), boiler),
                    Math.min(mantle.insulationThicknessM(), outside),
                    0.1 * outside,
                    true);
        }
        if (source instanceof HeatSource.ClampedHeater heater) {
            return new SourceShape(
                    SourceKind.CLAMPED_HEATER,
                    Math.min(outside, disc(heater.contactAreaM2(), outside)),
                    slab(heater.heatCapacity(), heater.contactAreaM2(), outside),
                    side(heater.contactAreaM2(), boiler),
                    Math.min(heater.insulationThicknessM(), outside),
                    0.08 * outside,
                    true);
        }
        if (source instanceof HeatSource.Induction coil) {
            boolean plate = coil.susceptor() == HeatSource.Susceptor.PLATE;
            return new SourceShape(
                    SourceKind.INDUCTION,
                    disc(coil.contactAreaM2(), outside),
                    plate ? slab(coil.heatCapacity(), coil.contactAreaM2(), outside) : 0,
                    0,
                    0,
                    0.3 * outside,
                    plate);
        }
        if (source instanceof HeatSource.ImmersedElement) {
            return new SourceShape(SourceKind.IMMERSED_ELEMENT, outside, 0, 0, 0, 0.08 * outside, false);
        }
        return new SourceShape(SourceKind.GAS_BURNER, 0.45 * outside, 0.42 * outside, 0, 0, 0.3 * outside, false);
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
