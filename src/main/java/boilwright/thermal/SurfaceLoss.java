package boilwright.thermal;

import boilwright.fluid.Air;
import boilwright.heattransfer.NaturalConvectionInAir;
import boilwright.heattransfer.ThermalRadiation;
import boilwright.numerics.Roots;
import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * Heat flux from a wall to the room through optional insulation, by natural convection (Churchill and Chu 1975) and
 * radiation, tabulated over the wall temperature as entries are wanted because the room does not change.
 */
final class SurfaceLoss {
    private static final double LOWEST_K = 255;
    private static final double HIGHEST_K = 1100;
    private static final double SPACING_K = 5;

    private final double lowestK;
    private final double highestK;
    private final double heightM;
    private final double emissivity;
    private final double insulationM;
    private final double insulationConductivity;
    private final double roomK;
    /** Flux and surface temperature at the grid's wall temperatures; NaN until first wanted. */
    private final double[] flux;

    private final double[] surfaceK;
    private final DoubleUnaryOperator insulationBalance = this::insulationBalance;
    private double balancedWallK;

    /**
     * Sets the table up; entries are worked out when first wanted.
     *
     * @param heightM height of the surface, m
     * @param emissivity emissivity of the outermost surface
     * @param insulationM insulation thickness, m; 0 for none
     * @param insulationConductivity W/(m K)
     * @param roomK room temperature, K
     */
    SurfaceLoss(double heightM, double emissivity, double insulationM, double insulationConductivity, double roomK) {
        this.heightM = heightM;
        this.emissivity = emissivity;
        this.insulationM = insulationM;
        this.insulationConductivity = insulationConductivity;
        this.roomK = roomK;
        // one entry lies on the room's temperature, where the loss is exactly zero
        lowestK = roomK - SPACING_K * Math.floor((roomK - LOWEST_K) / SPACING_K);
        int count = (int) Math.ceil((HIGHEST_K - lowestK) / SPACING_K) + 1;
        highestK = lowestK + (count - 1) * SPACING_K;
        flux = new double[count];
        surfaceK = new double[count];
        Arrays.fill(flux, Double.NaN);
    }

    private void fill(int i) {
        double wallK = lowestK + i * SPACING_K;
        double outsideK = wallK;
        if (insulationM > 0 && Math.abs(wallK - roomK) > 1e-9) {
            balancedWallK = wallK;
            outsideK = Roots.bracketed(
                    insulationBalance,
                    Math.min(wallK, roomK),
                    Math.max(wallK, roomK),
                    1e-10,
                    0,
                    "surface temperature of the insulation");
        }
        surfaceK[i] = outsideK;
        flux[i] = bareFlux(heightM, emissivity, outsideK, roomK);
    }

    private double insulationBalance(double s) {
        return insulationConductivity / insulationM * (balancedWallK - s) - bareFlux(heightM, emissivity, s, roomK);
    }

    /** Convection and radiation from a bare vertical surface, W/m2. */
    static double bareFlux(double heightM, double emissivity, double surfaceK, double roomK) {
        double filmK = (surfaceK + roomK) / 2;
        double viscosity = Air.viscosity(filmK) / Air.density(filmK);
        double h = NaturalConvectionInAir.coefficient(
                surfaceK, roomK, heightM, viscosity, viscosity / Air.prandtl(filmK), Air.conductivity(filmK));
        return h * (surfaceK - roomK) + ThermalRadiation.flux(emissivity, surfaceK, roomK);
    }

    /** Heat flux to the room at this wall temperature, W/m2; negative when the wall is colder than the room. */
    double flux(double wallK) {
        return interpolate(flux, wallK);
    }

    /** Temperature of the outermost surface, K. */
    double surfaceTemperature(double wallK) {
        return interpolate(surfaceK, wallK);
    }

    private void require(int first, int last) {
        for (int i = first; i <= last; i++) {
            if (Double.isNaN(flux[i])) {
                fill(i);
            }
        }
    }

    /** Cubic through the four nearest entries: continuous, and the slopes of neighbours agree to the third order. */
    private double interpolate(double[] table, double wallK) {
        if (wallK > highestK - 2 * SPACING_K) {
            // only trial states of a search come here: straight on, so that the search stays monotone
            int last = table.length - 1;
            require(last - 1, last);
            return table[last] + (table[last] - table[last - 1]) * (wallK - highestK) / SPACING_K;
        }
        double x = (wallK - lowestK) / SPACING_K;
        int i = Math.max(1, (int) Math.floor(x));
        require(i - 1, i + 2);
        double u = x - i;
        double a = table[i - 1];
        double b = table[i];
        double c = table[i + 1];
        double d = table[i + 2];
        double slopeB = (c - a) / 2;
        double slopeC = (d - b) / 2;
        double u2 = u * u;
        double u3 = u2 * u;
        return (2 * u3 - 3 * u2 + 1) * b + (u3 - 2 * u2 + u) * slopeB + (3 * u2 - 2 * u3) * c + (u3 - u2) * slopeC;
    }
}
