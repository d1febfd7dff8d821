package boilwright.fluid;

import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.units.PhysicalConstants;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import tools.jackson.databind.JsonNode;

/**
 * Ethylene or propylene glycol in water by A. Melinder, Properties of secondary working fluids for indirect systems, IIF/IIR,
 * Paris 2010: polynomials in the share of glycol and the temperature. 5 to 60 percent glycol by mass, from -20 degrees Celsius
 * or the freezing point, whichever is higher, to 100. The packed file of each glycol names the place and the uncertainty of
 * every property. Boiling points were not available: {@link #boilingK} is that of water, which the mixture exceeds.
 * Corrosion inhibitors of ready-made coolants are not considered.
 */
public final class GlycolWater implements Coolant {
    private static final double MILLI = 1e-3;

    private final String title;
    private final DataFile file;
    private final double middleK;
    private final double lowestK;
    private final double highestK;
    private final double freezingK;
    private final double enthalpyAtZero;
    private final double[] density;
    private final double[] specificHeat;
    private final double[] conductivity;
    private final double[] logViscosity;

    private GlycolWater(DataFile file, double massShare) {
        this.file = file;
        title = file.title() + ", " + Numbers.text(massShare * 100) + " percent by mass";
        middleK = PhysicalConstants.ZERO_CELSIUS_K + file.middleCelsius();
        density = file.atShare("density", massShare);
        specificHeat = file.atShare("specificHeat", massShare);
        conductivity = file.atShare("conductivity", massShare);
        logViscosity = file.atShare("viscosity", massShare);
        freezingK = PhysicalConstants.ZERO_CELSIUS_K + file.atShare("freezing", massShare)[0];
        lowestK = Math.max(file.end("temperatureSpan", 0), freezingK);
        highestK = file.end("temperatureSpan", 1);
        enthalpyAtZero = integral(specificHeat, PhysicalConstants.ZERO_CELSIUS_K - middleK);
    }

    /**
     * A mixture.
     *
     * @param glycol which glycol
     * @param massShare glycol over the whole, by mass: 0.05 to 0.6
     * @throws ComputationException for any other share
     */
    public static GlycolWater of(Glycol glycol, double massShare) {
        DataFile file = DataFile.read(glycol);
        double least = file.end("massShare", 0);
        double most = file.end("massShare", 1);
        if (!(massShare >= least && massShare <= most)) {
            throw new ComputationException(Message.of(
                    MessageKey.GLYCOL_SHARE_OUTSIDE,
                    file.title(),
                    Numbers.text(massShare),
                    Numbers.text(least),
                    Numbers.text(most)));
        }
        return new GlycolWater(file, massShare);
    }

    @Override
    public String title() {
        return title;
    }

    @Override
    public double lowestK() {
        return lowestK;
    }

    @Override
    public double highestK() {
        return highestK;
    }

    @Override
    public double density(double temperatureK) {
        return value(density, offset("density", temperatureK));
    }

    @Override
    public double specificHeat(double temperatureK) {
        return value(specificHeat, offset("specific heat", temperatureK));
    }

    @Override
    public double enthalpy(double temperatureK) {
        return integral(specificHeat, offset("enthalpy", temperatureK)) - enthalpyAtZero;
    }

    @Override
    public double viscosity(double temperatureK) {
        return MILLI * Math.exp(value(logViscosity, offset("viscosity", temperatureK)));
    }

    @Override
    public double conductivity(double temperatureK) {
        return value(conductivity, offset("thermal conductivity", temperatureK));
    }

    /** Volume expansion, 1/K: the derivative of the density. */
    @Override
    public double expansion(double temperatureK) {
        double t = offset("volume expansion", temperatureK);
        double slope = density[1] + t * (2 * density[2] + t * 3 * density[3]);
        return -slope / value(density, t);
    }

    @Override
    public double freezingK() {
        return freezingK;
    }

    /** Where the data come from, in words. */
    public String source() {
        return file.source();
    }

    /**
     * Uncertainty of a property: a share of its value, for the freezing point an amount in K. An estimate; the file says how
     * it was made.
     *
     * @param property density, specificHeat, conductivity, viscosity or freezing
     */
    public double uncertainty(String property) {
        return file.uncertainty(property);
    }

    private double offset(String property, double temperatureK) {
        if (!(temperatureK >= lowestK && temperatureK <= highestK)) {
            throw Outside.temperature(title, property, temperatureK, lowestK, highestK);
        }
        return temperatureK - middleK;
    }

    private static double value(double[] a, double t) {
        return a[0] + t * (a[1] + t * (a[2] + t * a[3]));
    }

    private static double integral(double[] a, double t) {
        return t * (a[0] + t * (a[1] / 2 + t * (a[2] / 3 + t * a[3] / 4)));
    }

    /**
     * The packed data of one glycol in water: for each property a polynomial in the share of glycol (percent by mass) and
     * temperature (degrees Celsius), both counted from a middle value. The file gives sources, ranges and uncertainties.
     */
    private record DataFile(JsonNode root) {
        private static final double HUNDRED = 100;

        static DataFile read(Glycol glycol) {
            String name = "/boilwright/fluid/" + glycol.id() + ".json";
            try (InputStream stream = DataFile.class.getResourceAsStream(name)) {
                return new DataFile(FluidFileReader.tree(name, stream.readAllBytes()));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        String title() {
            return root.get("title").stringValue();
        }

        String source() {
            return root.get("source").stringValue() + "; " + root.get("where").stringValue();
        }

        /** Lower or upper end of a range. */
        double end(String range, int which) {
            return root.get(range).get(which).doubleValue();
        }

        /** Temperature from which the polynomials count, degrees Celsius. */
        double middleCelsius() {
            return root.get("t0").doubleValue();
        }

        /** Coefficients in powers of the temperature for one share of glycol. */
        double[] atShare(String property, double massShare) {
            JsonNode rows = root.get("properties").get(property).get("coefficients");
            double x = massShare * HUNDRED - root.get("x0").doubleValue();
            double[] sums = new double[rows.get(0).size()];
            double power = 1;
            for (int i = 0; i < rows.size(); i++) {
                JsonNode row = rows.get(i);
                for (int j = 0; j < row.size(); j++) {
                    sums[j] += row.get(j).doubleValue() * power;
                }
                power *= x;
            }
            return sums;
        }

        /** Uncertainty of a property, relative or, for the freezing point, in K. */
        double uncertainty(String property) {
            JsonNode uncertainty = root.get("properties").get(property).get("uncertainty");
            return uncertainty.iterator().next().doubleValue();
        }
    }
}
