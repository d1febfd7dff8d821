package boilwright.dashboard.drawing;

import boilwright.rig.Boiler;
import boilwright.rig.HeatSource;
import boilwright.rig.Rig;

/**
 * The boiler's inside as a drawing needs it, m. Diameter and wall are the rig's; a rig says nothing of the height, so it is
 * the one at which the side has the boiler's outside area. A round bottom is as deep as the charge allows.
 *
 * @param radiusM inner radius at the oil level
 * @param wallM thickness of the wall
 * @param heightM inside height from the bottom's lowest point to the mouth
 * @param domeM depth of a round bottom, 0 for a flat one
 * @param shoulderM height over which the side draws in to the body
 * @param glass whether it is glass
 */
record BoilerShape(double radiusM, double wallM, double heightM, double domeM, double shoulderM, boolean glass) {
    private static final double MANTLE_DOME = 0.5;
    private static final double STANDING_DOME = 0.16;
    /** A round bottom holds at most this share of the charge, so that the oil level stays where the diameter is told. */
    private static final double CHARGE_IN_DOME = 0.85;

    private static final double LEAST_HEIGHTS_OF_OIL = 1.9;
    private static final double LEAST_SHARE = 0.5;
    private static final double MOST_SHARE = 2.6;
    private static final int HALVINGS = 50;

    static BoilerShape of(Rig rig) {
        Boiler boiler = rig.boiler();
        double radius = boiler.innerDiameterM() / 2;
        double wall = boiler.wallThicknessM();
        double meanDepth = rig.chargeM3() / (Math.PI * radius * radius);
        double wanted = dome(rig.heatSource()) * radius;
        // a half-ellipsoid of depth d holds as much as a cylinder two thirds as deep
        double dome = Math.min(wanted, 1.5 * CHARGE_IN_DOME * meanDepth);
        double side = boiler.outsideAreaM2() / (2 * Math.PI * (radius + wall));
        double most = MOST_SHARE * radius;
        double oil = dome / 3 + meanDepth;
        double height = Math.max(Math.max(LEAST_SHARE * radius, LEAST_HEIGHTS_OF_OIL * oil), Math.min(most, side));
        double narrowing = Math.max(0, radius - rig.body().innerDiameterM() / 2);
        boolean glass = boiler.material().isGlass();
        double shoulder = glass ? Math.min(0.9 * narrowing, 0.55 * (height - oil)) : 0;
        return new BoilerShape(radius, wall, height, dome, shoulder, glass);
    }

    private static double dome(HeatSource source) {
        if (source.contact().isEmpty() || source.path() == HeatSource.HeatPath.BASE) {
            return 0;
        }
        return switch (source.contact().get()) {
            case WRAPPED -> MANTLE_DOME;
            case DOMED_GLASS -> STANDING_DOME;
            case MACHINED_METAL, FLAT_GLASS -> 0;
        };
    }

    /** Height of the oil over the bottom's lowest point when the boiler holds a volume, m3. */
    double oilDepthM(double volumeM3) {
        double area = Math.PI * radiusM * radiusM;
        double inDome = 2.0 / 3 * area * domeM;
        if (volumeM3 >= inDome) {
            return Math.min(heightM, domeM + (volumeM3 - inDome) / area);
        }
        double low = 0;
        double high = domeM;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (volumeInDome(middle) < volumeM3) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private double volumeInDome(double depth) {
        // of a half-ellipsoid with its pole down: the integral of pi r^2 (1 - (1 - z/d)^2)
        double u = depth / domeM;
        return Math.PI * radiusM * radiusM * domeM * (u * u - u * u * u / 3);
    }

    /** Inner radius at a height over the bottom's lowest point, below the shoulder, m. */
    double radiusAtM(double height) {
        if (height >= domeM) {
            return radiusM;
        }
        double u = 1 - Math.max(0, height) / domeM;
        return radiusM * Math.sqrt(Math.max(0, 1 - u * u));
    }
}
