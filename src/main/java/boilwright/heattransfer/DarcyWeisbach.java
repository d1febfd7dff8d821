package boilwright.heattransfer;

/**
 * Pressure lost by friction along a duct, dp = f (L/d) rho v^2/2 (Incropera, Bergman, Lavine, DeWitt, sec. 8.1.4), written with
 * f Re in place of f so that a stopped flow needs no exception: dp = (f Re) mu v L/(2 d^2).
 */
public final class DarcyWeisbach {
    private DarcyWeisbach() {}

    /**
     * Loss of pressure along the flow, Pa; it has the sign of the velocity.
     *
     * @param frictionTimesReynolds Darcy friction factor times Reynolds number, both on the same diameter
     * @param viscosity dynamic viscosity, Pa s
     * @param velocity mean velocity, m/s
     * @param lengthM length of the duct, m
     * @param diameterM bore, or hydraulic diameter, m
     */
    public static double pressureDrop(
            double frictionTimesReynolds, double viscosity, double velocity, double lengthM, double diameterM) {
        return frictionTimesReynolds * viscosity * velocity * lengthM / (2 * diameterM * diameterM);
    }
}
