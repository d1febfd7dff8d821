package boilwright.fluid;

/** One property as a function of temperature. Implementations never allocate. */
interface Relation {
    /** The property at a temperature in K, in the unit of the coefficients. */
    double value(double temperatureK);

    /** Its derivative, per K. */
    double slope(double temperatureK);
}
