package boilwright.fluid;

import boilwright.units.Dimension;
import boilwright.units.PhysicalConstants;
import boilwright.units.UnitSpelling;
import boilwright.units.UnitTable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a fluid file must state, in the order in which it is shown: key, title, SI unit, other units a file may use, what
 * is plausible, and how it must change with temperature.
 */
enum FluidProperty {
    MOLAR_MASS("molarMass", "molar mass", Kind.NUMBER, true, "kg/mol", 2e-3, 20, Map.of("g/mol", 1e-3)),
    HEAT_CAPACITY_RATIO("heatCapacityRatio", "heat capacity ratio of the vapour", Kind.NUMBER, true, "1", 1.0005, 1.67),
    VAPOUR_VISCOSITY("vapourViscosity", "viscosity of the vapour", Kind.NUMBER, true, "Pa s", 1e-6, 3e-4),
    VAPOUR_PRESSURE(
            "vapourPressure",
            "vapour pressure",
            Trend.RISES,
            "Pa",
            1e-30,
            1e8,
            Map.of("Torr", PhysicalConstants.TORR_PA, "MPa", 1e6),
            List.of(
                    EquationForm.LOG10_INVERSE,
                    EquationForm.LN_ANTOINE,
                    EquationForm.LOG10_VOGEL,
                    EquationForm.DIPPR_101,
                    EquationForm.WAGNER)),
    LATENT_HEAT(
            "latentHeat",
            "latent heat",
            Trend.FALLS,
            "J/kg",
            5e3,
            3e6,
            Map.of("kJ/kg", 1e3, "J/kmol", Double.NaN),
            List.of(EquationForm.LINEAR, EquationForm.POLYNOMIAL, EquationForm.DIPPR_106)),
    DENSITY(
            "liquidDensity",
            "liquid density",
            Trend.FALLS,
            "kg/m3",
            200,
            2e4,
            Map.of("kmol/m3", Double.NaN),
            List.of(EquationForm.EXPANSION, EquationForm.DIPPR_105, EquationForm.LINEAR, EquationForm.POLYNOMIAL)),
    SPECIFIC_HEAT(
            "liquidSpecificHeat",
            "liquid specific heat",
            Trend.ANY,
            "J/(kg K)",
            50,
            1e4,
            Map.of("kJ/(kg K)", 1e3, "J/(kmol K)", Double.NaN),
            List.of(EquationForm.CONSTANT, EquationForm.LINEAR, EquationForm.POLYNOMIAL)),
    CONDUCTIVITY(
            "liquidConductivity",
            "liquid thermal conductivity",
            Trend.ANY,
            "W/(m K)",
            0.01,
            100,
            Map.of(),
            List.of(EquationForm.CONSTANT, EquationForm.LINEAR, EquationForm.POLYNOMIAL)),
    VISCOSITY(
            "liquidViscosity",
            "liquid viscosity",
            Trend.FALLS,
            "Pa s",
            1e-6,
            1e12,
            Map.of("mPa s", 1e-3),
            List.of(EquationForm.LOG10_VOGEL, EquationForm.LOG10_INVERSE, EquationForm.DIPPR_101)),
    SURFACE_TENSION(
            "surfaceTension",
            "surface tension",
            Trend.FALLS,
            "N/m",
            1e-5,
            2,
            Map.of("mN/m", 1e-3),
            List.of(EquationForm.DIPPR_106, EquationForm.LINEAR, EquationForm.POLYNOMIAL)),
    BOILER_PRESSURE("boilerPressure", "usual boiler pressure", Kind.NUMBER, true, "Pa", 1, 1e5),
    BULK_LIMIT("bulkLimit", "highest bulk temperature", Kind.NUMBER, false, "K", 300, 1500),
    FILM_LIMIT("filmLimit", "highest film temperature at a heated wall", Kind.NUMBER, false, "K", 300, 1500),
    AIR_ADMISSION_LIMIT(
            "airAdmissionLimit", "highest temperature for letting in air", Kind.NUMBER, false, "K", 280, 500),
    DISSOLVED_AIR("dissolvedAir", "dissolved air, volume per volume", Kind.NUMBER, false, "1", 1e-6, 1),
    FLASH_POINT("flashPoint", "flash point", Kind.NUMBER, false, "K", 250, 1000),
    AUTO_IGNITION("autoIgnition", "auto-ignition temperature", Kind.NUMBER, false, "K", 350, 1500),
    RESISTS_OXIDATION("resistsOxidation", "resists oxidation when hot", Kind.FLAG, true, "1", 0, 1),
    TOXIC_VAPOUR("toxicVapour", "vapour poisonous at room temperature", Kind.FLAG, true, "1", 0, 1);

    /** What a property is in the file. */
    enum Kind {
        RELATION,
        NUMBER,
        FLAG
    }

    /** How a property changes with temperature. */
    enum Trend {
        RISES,
        FALLS,
        ANY
    }

    private final String key;
    private final String title;
    private final Kind kind;
    private final boolean required;
    private final Trend trend;
    private final String unit;
    private final double lowest;
    private final double highest;
    private final Map<String, Double> otherUnits;
    private final List<EquationForm> forms;

    FluidProperty(String key, String title, Kind kind, boolean required, String unit, double lowest, double highest) {
        this(key, title, kind, required, unit, lowest, highest, Map.of());
    }

    FluidProperty(
            String key,
            String title,
            Kind kind,
            boolean required,
            String unit,
            double lowest,
            double highest,
            Map<String, Double> otherUnits) {
        this(key, title, kind, required, Trend.ANY, unit, lowest, highest, otherUnits, List.of());
    }

    FluidProperty(
            String key,
            String title,
            Trend trend,
            String unit,
            double lowest,
            double highest,
            Map<String, Double> otherUnits,
            List<EquationForm> forms) {
        this(key, title, Kind.RELATION, true, trend, unit, lowest, highest, otherUnits, forms);
    }

    FluidProperty(
            String key,
            String title,
            Kind kind,
            boolean required,
            Trend trend,
            String unit,
            double lowest,
            double highest,
            Map<String, Double> otherUnits,
            List<EquationForm> forms) {
        this.key = key;
        this.title = title;
        this.kind = kind;
        this.required = required;
        this.trend = trend;
        this.unit = unit;
        this.lowest = lowest;
        this.highest = highest;
        this.otherUnits = otherUnits;
        this.forms = forms;
    }

    /** Its name in data files. */
    String key() {
        return key;
    }

    /** Its name for people. */
    String title() {
        return title;
    }

    Kind kind() {
        return kind;
    }

    /** False when a file may say that no figure is available. */
    boolean required() {
        return required;
    }

    Trend trend() {
        return trend;
    }

    /** The SI unit. */
    String unit() {
        return unit;
    }

    /** What kind of quantity it is; a ratio for a yes-or-no. */
    Dimension dimension() {
        return UnitTable.find(unit).stream()
                .map(UnitSpelling::dimension)
                .filter(dimension -> dimension != Dimension.TEMPERATURE_DIFFERENCE)
                .findFirst()
                .orElseThrow();
    }

    /** Lowest plausible value, SI. */
    double lowest() {
        return lowest;
    }

    /** Highest plausible value, SI. */
    double highest() {
        return highest;
    }

    /** Equation forms a file may use; none for a plain number or a yes-or-no. */
    List<EquationForm> forms() {
        return forms;
    }

    /** Units a file may use, the SI unit first. */
    List<String> units() {
        LinkedHashMap<String, Double> all = new LinkedHashMap<>();
        all.put(unit, 1.0);
        otherUnits.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(e -> all.put(e.getKey(), e.getValue()));
        return List.copyOf(all.keySet());
    }

    /**
     * What a figure in a unit of {@link #units} is multiplied by to be SI.
     *
     * @param molarMass kg/mol, for units per amount of substance
     */
    double factor(String unitOfFile, double molarMass) {
        if (unitOfFile.equals(unit)) {
            return 1;
        }
        double factor = otherUnits.get(unitOfFile);
        if (!Double.isNaN(factor)) {
            return factor;
        }
        double perKilomole = molarMass * 1000;
        return this == DENSITY ? perKilomole : 1 / perKilomole;
    }
}
