package boilwright.fluid;

import com.hummeling.if97.IF97;
import com.hummeling.if97.OutOfRangeException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Writes the table that {@link Water} reads, from the library it stands for: if97 1.0.5, that is IAPWS R7-97 (density,
 * enthalpy from 273.15 K, heat capacity, volume expansion, latent heat), IAPWS R12-08 (viscosity) and an industrial release
 * on thermal conductivity before R15-11 (up to 0.65 percent above it). Run by hand after a change of the library, from the
 * folder of pom.xml; {@link WaterTest} tells when that is due.
 */
final class WaterTableWriter {
    private final IF97 library = new IF97(IF97.UnitSystem.SI);
    private final double enthalpyAtZero;

    WaterTableWriter() throws OutOfRangeException {
        enthalpyAtZero = library.specificEnthalpyPT(Water.TABLE_PRESSURE_PA, Water.LOWEST_K);
    }

    public static void main(String[] arguments) throws IOException, OutOfRangeException {
        WaterTableWriter writer = new WaterTableWriter();
        ByteBuffer bytes = ByteBuffer.allocate(Water.Table.COLUMNS * (Water.Table.INTERVALS + 1) * Double.BYTES);
        for (int c = 0; c < Water.Table.COLUMNS; c++) {
            for (int i = 0; i <= Water.Table.INTERVALS; i++) {
                bytes.putDouble(writer.value(c, temperature(i)));
            }
        }
        Path file = Path.of("src", "main", "resources", Water.Table.RESOURCE.substring(1));
        Files.createDirectories(file.getParent());
        Files.write(file, bytes.array());
    }

    /** What column {@code which} holds at a temperature. */
    double value(int which, double t) throws OutOfRangeException {
        double p = Water.TABLE_PRESSURE_PA;
        return switch (which) {
            case Water.Table.DENSITY -> library.densityPT(p, t);
            case Water.Table.ENTHALPY -> library.specificEnthalpyPT(p, t) - enthalpyAtZero;
            case Water.Table.SPECIFIC_HEAT -> library.isobaricHeatCapacityPT(p, t);
            case Water.Table.VISCOSITY -> library.dynamicViscosityPT(p, t);
            case Water.Table.CONDUCTIVITY -> library.thermalConductivityPT(p, t);
            case Water.Table.EXPANSION -> library.isobaricCubicExpansionCoefficientPT(p, t);
            case Water.Table.LATENT_HEAT ->
                library.specificEnthalpySaturatedVapourT(t) - library.specificEnthalpySaturatedLiquidT(t);
            default -> throw new IllegalArgumentException("no column " + which);
        };
    }

    /** Temperature of line i of the table, K. */
    static double temperature(int i) {
        double step = (Water.HIGHEST_K - Water.LOWEST_K) / Water.Table.INTERVALS;
        return i == Water.Table.INTERVALS ? Water.HIGHEST_K : Water.LOWEST_K + i * step;
    }
}
