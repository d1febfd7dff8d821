package boilwright.rig;

/**
 * Wall materials with the figures the model needs, at 300 K unless said otherwise. Metals: Incropera, Bergman, Lavine and
 * DeWitt, Fundamentals of Heat and Mass Transfer, table A.1 (from memory). Borosilicate: ISO 3585 and ISO 7991 as printed
 * on glass data sheets; its heat capacity from memory.
 */
public enum Material {
    /** Borosilicate glass 3.3. */
    BOROSILICATE("borosilicate", 1.2, 2230, 830, 3.3e-6, 64e9, 0.20, 0.90, true, false),
    /** Austenitic stainless steel, 304 type. */
    STAINLESS("stainless", 14.9, 7900, 477, 17.3e-6, 193e9, 0.29, 0.30, false, false),
    /** Plain carbon steel. */
    MILD_STEEL("mild-steel", 60.5, 7854, 434, 11.7e-6, 200e9, 0.29, 0.60, false, true),
    /** Copper. */
    COPPER("copper", 401, 8933, 385, 16.5e-6, 117e9, 0.34, 0.30, false, false),
    /** Aluminium. */
    ALUMINIUM("aluminium", 237, 2702, 903, 23.6e-6, 70e9, 0.33, 0.10, false, false);

    private final String id;
    private final double conductivity;
    private final double density;
    private final double specificHeat;
    private final double expansion;
    private final double youngsModulus;
    private final double poissonRatio;
    private final double usualEmissivity;
    private final boolean glass;
    private final boolean ferrous;

    Material(
            String id,
            double conductivity,
            double density,
            double specificHeat,
            double expansion,
            double youngsModulus,
            double poissonRatio,
            double usualEmissivity,
            boolean glass,
            boolean ferrous) {
        this.id = id;
        this.conductivity = conductivity;
        this.density = density;
        this.specificHeat = specificHeat;
        this.expansion = expansion;
        this.youngsModulus = youngsModulus;
        this.poissonRatio = poissonRatio;
        this.usualEmissivity = usualEmissivity;
        this.glass = glass;
        this.ferrous = ferrous;
    }

    /** How a rig file spells it. */
    public String id() {
        return id;
    }

    /** Thermal conductivity, W/(m K). */
    public double conductivity() {
        return conductivity;
    }

    /** Density, kg/m3. */
    public double density() {
        return density;
    }

    /** Specific heat capacity, J/(kg K). */
    public double specificHeat() {
        return specificHeat;
    }

    /** Linear expansion, 1/K. */
    public double expansion() {
        return expansion;
    }

    /** Young's modulus, Pa. */
    public double youngsModulus() {
        return youngsModulus;
    }

    /** Poisson's ratio. */
    public double poissonRatio() {
        return poissonRatio;
    }

    /** Usual total emissivity of a pump part in service (from memory). */
    public double usualEmissivity() {
        return usualEmissivity;
    }

    /** True for glass, which is judged by thermal stress and shock. */
    public boolean isGlass() {
        return glass;
    }

    /** True when an induction field heats it. */
    public boolean isFerrous() {
        return ferrous;
    }
}
