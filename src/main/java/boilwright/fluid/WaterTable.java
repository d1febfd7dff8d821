package boilwright.fluid;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;

/**
 * The table of {@link Water} as packed with the program: columns one after the other, each 151 doubles in Java's byte order
 * at equal steps from the lowest to the highest temperature. Units: kg/m3, J/kg, J/(kg K), Pa s, W/(m K), 1/K, J/kg. It is
 * written and checked by a test that has the library at hand; docs/decisions says why the program itself has not.
 */
final class WaterTable {
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

    private WaterTable(ByteBuffer bytes) {
        this.bytes = bytes;
    }

    static WaterTable read() {
        try (InputStream stream = WaterTable.class.getResourceAsStream(RESOURCE)) {
            byte[] all = stream.readAllBytes();
            if (all.length != COLUMNS * (INTERVALS + 1) * Double.BYTES) {
                throw new IllegalStateException(RESOURCE + ": " + all.length + " bytes");
            }
            return new WaterTable(ByteBuffer.wrap(all));
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

    /** Temperature of line i, K. */
    static double temperature(int i) {
        double step = (Water.HIGHEST_K - Water.LOWEST_K) / INTERVALS;
        return i == INTERVALS ? Water.HIGHEST_K : Water.LOWEST_K + i * step;
    }
}
