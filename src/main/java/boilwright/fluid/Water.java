package boilwright.fluid;

import boilwright.units.PhysicalConstants;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;

/**
 * Liquid water at 0.5 MPa between 0 and 150 degrees Celsius: IAPWS-IF97 (release R7-97) and the IAPWS releases on
 * viscosity and thermal conductivity, tabulated from a published library and read by cubic Hermite interpolation, within
 * 1e-6 of the library. Nothing allocates after the first call. Whether water freezes or boils is judged by temperature and
 * pressure ({@link CoolantState}), because a formula for the liquid would silently answer for ice and steam. Every method
 * takes K and throws {@link boilwright.errors.ComputationException} outside the span.
 */
public final class Water {
    /** Lower end of the tables, K. */
    public static final double LOWEST_K = PhysicalConstants.ZERO_CELSIUS_K;
    /** Upper end of the tables, K. */
    public static final double HIGHEST_K = 423.15;
    /** Freezing point at atmospheric pressure, K; 7 mK lower for each bar more. */
    public static final double FREEZING_K = PhysicalConstants.ZERO_CELSIUS_K;

    /** Heat that melts ice, J/kg. IAPWS R10-06 for ice Ih gives 333.4, handbooks 333.55 to 334 kJ/kg (from memory). */
    public static final double FUSION_HEAT = 333.6e3;

    /** Pressure at which the tables are made: above saturation over the whole span, Pa. */
    static final double TABLE_PRESSURE_PA = 0.5e6;

    private static final String NAME = "water";

    private Water() {}

    /** Water as one of the coolants. */
    public static Coolant coolant() {
        return AsCoolant.WATER;
    }

    /** Density, kg/m3. */
    public static double density(double temperatureK) {
        check("density", temperatureK);
        return Tables.DENSITY.value(temperatureK);
    }

    /** Specific heat at constant pressure, J/(kg K); exactly the derivative of {@link #enthalpy}. */
    public static double specificHeat(double temperatureK) {
        check("specific heat", temperatureK);
        return Tables.ENTHALPY.slope(temperatureK);
    }

    /** Enthalpy, J/kg, zero at 273.15 K. */
    public static double enthalpy(double temperatureK) {
        check("enthalpy", temperatureK);
        return Tables.ENTHALPY.value(temperatureK);
    }

    /** Dynamic viscosity, Pa s. */
    public static double viscosity(double temperatureK) {
        check("viscosity", temperatureK);
        return Tables.VISCOSITY.value(temperatureK);
    }

    /** Thermal conductivity, W/(m K). */
    public static double conductivity(double temperatureK) {
        check("thermal conductivity", temperatureK);
        return Tables.CONDUCTIVITY.value(temperatureK);
    }

    /** Prandtl number. */
    public static double prandtl(double temperatureK) {
        return viscosity(temperatureK) * specificHeat(temperatureK) / conductivity(temperatureK);
    }

    /** Volume expansion, 1/K; negative below 4 degrees Celsius. */
    public static double expansion(double temperatureK) {
        check("volume expansion", temperatureK);
        return Tables.EXPANSION.value(temperatureK);
    }

    /**
     * Boiling temperature, K; {@link WaterSaturation}, within the pressures for which the tables hold.
     *
     * @param pressurePa absolute pressure, 1 kPa to 0.45 MPa
     */
    public static double boilingTemperature(double pressurePa) {
        double lowest = 1e3;
        double highest = 0.45e6;
        if (!(pressurePa >= lowest && pressurePa <= highest)) {
            throw Outside.pressure(NAME, pressurePa, lowest, highest);
        }
        return WaterSaturation.temperature(pressurePa);
    }

    /** Latent heat of boiling at a boiling temperature, J/kg; IAPWS-IF97, 2257 kJ/kg at 100 degrees Celsius. */
    public static double latentHeat(double temperatureK) {
        check("latent heat", temperatureK);
        return Tables.LATENT_HEAT.value(temperatureK);
    }

    private static void check(String property, double temperatureK) {
        if (!(temperatureK >= LOWEST_K && temperatureK <= HIGHEST_K)) {
            throw Outside.temperature(NAME, property, temperatureK, LOWEST_K, HIGHEST_K);
        }
    }

    /** Read at first use; a few milliseconds. */
    private static final class Tables {
        private static final Table FILE = Table.read();
        private static final HermiteTable DENSITY = table(Table.DENSITY);
        private static final HermiteTable VISCOSITY = table(Table.VISCOSITY);
        private static final HermiteTable CONDUCTIVITY = table(Table.CONDUCTIVITY);
        private static final HermiteTable EXPANSION = table(Table.EXPANSION);
        private static final HermiteTable LATENT_HEAT = table(Table.LATENT_HEAT);
        private static final HermiteTable ENTHALPY =
                new HermiteTable(LOWEST_K, HIGHEST_K, FILE.column(Table.ENTHALPY), FILE.column(Table.SPECIFIC_HEAT));

        private static HermiteTable table(int column) {
            return new HermiteTable(LOWEST_K, HIGHEST_K, FILE.column(column));
        }
    }

    /**
     * The table of {@link Water} as packed with the program: columns one after the other, each 151 doubles in Java's byte order
     * at equal steps from the lowest to the highest temperature. Units: kg/m3, J/kg, J/(kg K), Pa s, W/(m K), 1/K, J/kg. It is
     * written and checked by a test that has the library at hand; docs/decisions says why the program itself has not.
     */
    static final class Table {
        static final String RESOURCE = "/boilwright/fluid/liquid-water-0.5MPa.doubles";
        /** Equal steps between the ends of the table. */
        static final int INTERVALS = 150;

        static final int DENSITY = 0;
        static final int ENTHALPY = 1;
        static final int SPECIFIC_HEAT = 2;
        static final int VISCOSITY = 3;
        static final int CONDUCTIVITY = 4;
        static final int EXPANSION = 5;
        static final int LATENT_HEAT = 6;
        static final int COLUMNS = 7;

        private final ByteBuffer bytes;

        private Table(ByteBuffer bytes) {
            this.bytes = bytes;
        }

        static Table read() {
            try (InputStream stream = Table.class.getResourceAsStream(RESOURCE)) {
                byte[] all = stream.readAllBytes();
                if (all.length != COLUMNS * (INTERVALS + 1) * Double.BYTES) {
                    throw new IllegalStateException(RESOURCE + ": " + all.length + " bytes");
                }
                return new Table(ByteBuffer.wrap(all));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        /** Values of one column, one a step. */
        double[] column(int which) {
            double[] values = new double[INTERVALS + 1];
            for (int i = 0; i <= INTERVALS; i++) {
                values[i] = bytes.getDouble((which * (INTERVALS + 1) + i) * Double.BYTES);
            }
            return values;
        }
    }

    /** {@link Water} where either water or a mixture may flow. */
    private enum AsCoolant implements Coolant {
        WATER;

        @Override
        public String title() {
            return "water";
        }

        @Override
        public double lowestK() {
            return Water.LOWEST_K;
        }

        @Override
        public double highestK() {
            return Water.HIGHEST_K;
        }

        @Override
        public double density(double temperatureK) {
            return Water.density(temperatureK);
        }

        @Override
        public double specificHeat(double temperatureK) {
            return Water.specificHeat(temperatureK);
        }

        @Override
        public double enthalpy(double temperatureK) {
            return Water.enthalpy(temperatureK);
        }

        @Override
        public double viscosity(double temperatureK) {
            return Water.viscosity(temperatureK);
        }

        @Override
        public double conductivity(double temperatureK) {
            return Water.conductivity(temperatureK);
        }

        @Override
        public double expansion(double temperatureK) {
            return Water.expansion(temperatureK);
        }

        @Override
        public double freezingK() {
            return Water.FREEZING_K;
        }
    }
}
