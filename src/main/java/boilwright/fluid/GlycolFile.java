package boilwright.fluid;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import tools.jackson.databind.JsonNode;

/**
 * The packed data of one glycol in water: for each property a polynomial in the share of glycol (percent by mass) and
 * temperature (degrees Celsius), both counted from a middle value. The file gives sources, ranges and uncertainties.
 */
record GlycolFile(JsonNode root) {
    private static final double HUNDRED = 100;

    static GlycolFile read(Glycol glycol) {
        String name = "/boilwright/fluid/" + glycol.id() + ".json";
        try (InputStream stream = GlycolFile.class.getResourceAsStream(name)) {
            return new GlycolFile(FluidFileReader.tree(name, stream.readAllBytes()));
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
