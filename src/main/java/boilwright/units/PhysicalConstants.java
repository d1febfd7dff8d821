package boilwright.units;

/**
 * Constants of nature and of metrology, each once. Exact ones are defined in the SI (BIPM, The International System of Units, 9th
 * ed. 2019) or by convention; the others are CODATA 2018 values (E. Tiesinga and others, Rev. Mod. Phys. 93, 2021, 025010).
 */
public final class PhysicalConstants {
    /** Molar gas constant, J/(mol K): Boltzmann constant times Avogadro constant, both exact in the SI. */
    public static final double MOLAR_GAS_CONSTANT = 8.31446261815324;

    /** Stefan-Boltzmann constant, W/(m2 K4): exact in the SI, rounded to ten figures. */
    public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    /** Standard acceleration of free fall, m/s2: exact by convention (3rd CGPM 1901). */
    public static final double STANDARD_GRAVITY = 9.80665;

    /** Temperature of 0 degC, K: exact by definition of the degree Celsius. */
    public static final double ZERO_CELSIUS_K = 273.15;

    /** Standard atmosphere, Pa: exact by convention (10th CGPM 1954). */
    public static final double STANDARD_ATMOSPHERE_PA = 101_325;

    /** One Torr, Pa: 1/760 of a standard atmosphere. */
    public static final double TORR_PA = STANDARD_ATMOSPHERE_PA / 760;

    private PhysicalConstants() {}
}
