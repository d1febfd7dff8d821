package boilwright.units;

/** The unit in which people usually read a value of a given size. Changes at three figures: 999.6 W is "1.00 kW". */
final class DisplayUnit {
    private DisplayUnit() {}

    /** The unit for a finite SI value. */
    static UnitSpelling of(double si, Dimension dimension) {
        String text = switch (dimension) {
            case LENGTH -> fits(si, dimension, 0.1, "mm", 1000) ? "mm" : outside(si, "um", 1e-4, "m");
            case AREA -> fits(si, dimension, 1, "cm2", 1000) ? "cm2" : outside(si, "mm2", 1e-4, "m2");
            case VOLUME -> sized(si, dimension, "mL", "L", "m3");
            case MASS -> sized(si, dimension, "g", "kg");
            case MASS_FLOW -> fits(si, dimension, 0, "g/h", 360) ? "g/h" : sized(si, dimension, "g/s", "kg/s");
            case VOLUME_FLOW ->
                fits(si, dimension, 0, "mL/min", 1000) ? "mL/min" : sized(si, dimension, "L/min", "L/s");
            case PRESSURE -> sized(si, dimension, "Pa", "kPa", "MPa");
            case TEMPERATURE -> "degC";
            case ANGLE -> "deg";
            case POWER -> sized(si, dimension, "W", "kW");
            case HEAT_FLUX -> sized(si, dimension, "W/m2", "kW/m2");
            case HEAT_CAPACITY -> sized(si, dimension, "J/K", "kJ/K");
            case SPECIFIC_ENERGY -> sized(si, dimension, "J/kg", "kJ/kg");
            case DYNAMIC_VISCOSITY -> sized(si, dimension, "mPa s", "Pa s");
            case SURFACE_TENSION -> "mN/m";
            case MOLAR_MASS -> "g/mol";
            case FRACTION -> Math.abs(si) <= 1.0 ? "%" : "1";
            default -> dimension.siUnit();
        };
        return UnitTable.find(text, dimension).orElseThrow();
    }

    /** The first of some units, small to large, in which the value stays below a thousand; else the last. */
    private static String sized(double si, Dimension dimension, String... units) {
        for (String unit : units) {
            if (fits(si, dimension, 0, unit, 1000)) {
                return unit;
            }
        }
        return units[units.length - 1];
    }

    private static boolean fits(double si, Dimension dimension, double least, String unit, double below) {
        double size = Math.abs(UnitTable.find(unit, dimension).orElseThrow().fromSi(si));
        return (size >= least || size == 0.0) && size < 0.9995 * below;
    }

    private static String outside(double si, String small, double splitSi, String large) {
        return Math.abs(si) < splitSi ? small : large;
    }
}
