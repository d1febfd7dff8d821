package boilwright.rig;

import boilwright.units.Reading;
import boilwright.units.UnitSpelling;
import boilwright.units.UnitTable;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds the likely meaning of an unusual value: the same number with the unit that people of the trade mix up with the one
 * written (kW for W, L for mL, Torr for mTorr, mm for cm or inches, L/s for L/min ...), when that gives a usual value.
 * Units of nearly the same size (cm and in, cm2 and in2) are no slips here: any value just outside the usual would look
 * like one.
 */
public final class LikelySlip {
    /** For each unit, the ones it is written for by mistake, the most usual first; common practice, no source. */
    private static final Map<String, List<String>> WRITTEN_FOR = Map.ofEntries(
            Map.entry("m", List.of("mm", "cm")),
            Map.entry("cm", List.of("mm", "m")),
            Map.entry("mm", List.of("cm", "m", "in", "um")),
            Map.entry("um", List.of("mm")),
            Map.entry("in", List.of("mm")),
            Map.entry("ft", List.of("in")),
            Map.entry("m2", List.of("cm2", "mm2")),
            Map.entry("cm2", List.of("mm2", "m2")),
            Map.entry("mm2", List.of("cm2")),
            Map.entry("in2", List.of("mm2")),
            Map.entry("m3", List.of("L", "mL")),
            Map.entry("L", List.of("mL")),
            Map.entry("mL", List.of("L")),
            Map.entry("cm3", List.of("L")),
            Map.entry("cc", List.of("L")),
            Map.entry("gal", List.of("mL")),
            Map.entry("s", List.of("min", "h")),
            Map.entry("min", List.of("s", "h")),
            Map.entry("h", List.of("min", "s")),
            Map.entry("kg", List.of("g")),
            Map.entry("g", List.of("kg")),
            Map.entry("lb", List.of("g")),
            Map.entry("L/s", List.of("L/min", "mL/s")),
            Map.entry("L/min", List.of("mL/min", "L/h", "L/s", "m3/h")),
            Map.entry("L/h", List.of("L/min")),
            Map.entry("mL/min", List.of("L/min", "mL/s")),
            Map.entry("mL/s", List.of("mL/min")),
            Map.entry("m3/s", List.of("m3/h", "L/min")),
            Map.entry("m3/h", List.of("L/h", "L/min")),
            Map.entry("CFM", List.of("L/min")),
            Map.entry("m/s", List.of("ft/min", "cm/s")),
            Map.entry("cm/s", List.of("m/s")),
            Map.entry("ft/min", List.of("m/s")),
            Map.entry("kg/s", List.of("g/s", "g/h")),
            Map.entry("g/s", List.of("g/h")),
            Map.entry("g/min", List.of("g/h")),
            Map.entry("kg/h", List.of("g/h")),
            Map.entry("Torr", List.of("mTorr")),
            Map.entry("mmHg", List.of("mTorr")),
            Map.entry("mTorr", List.of("Torr")),
            Map.entry("micron", List.of("Torr")),
            Map.entry("bar", List.of("mbar")),
            Map.entry("mbar", List.of("mTorr", "Pa", "bar")),
            Map.entry("ubar", List.of("mbar")),
            Map.entry("Pa", List.of("kPa", "hPa", "mbar", "MPa")),
            Map.entry("hPa", List.of("Pa")),
            Map.entry("kPa", List.of("Pa", "MPa")),
            Map.entry("MPa", List.of("kPa", "Pa")),
            Map.entry("atm", List.of("Torr", "mTorr")),
            Map.entry("psi", List.of("Torr")),
            Map.entry("K", List.of("degC")),
            Map.entry("degC", List.of("degF", "K")),
            Map.entry("\u00b0C", List.of("degF", "K")),
            Map.entry("degF", List.of("degC")),
            Map.entry("\u00b0F", List.of("degC")),
            Map.entry("W", List.of("kW")),
            Map.entry("kW", List.of("W")),
            Map.entry("BTU/h", List.of("W")),
            Map.entry("J/K", List.of("kJ/K")),
            Map.entry("kJ/K", List.of("J/K")),
            Map.entry("kW/(m2 K)", List.of("W/(m2 K)")),
            Map.entry("kW/m2K", List.of("W/(m2 K)")),
            Map.entry("1", List.of("%")),
            Map.entry("%", List.of("1")));

    private LikelySlip() {}

    /**
     * What an unusual value was probably meant to be.
     *
     * @param field the field it stands in
     * @param text as it was written
     * @param read what the text says
     * @return the likely text; empty when the value is usual for the field, or when no usual slip explains it
     */
    public static Optional<String> meant(Field field, String text, Reading.Read read) {
        if (field.isTypical(read.si())) {
            return Optional.empty();
        }
        String number = number(text.strip(), read.unit());
        double value = read.unit().fromSi(read.si());
        return WRITTEN_FOR.getOrDefault(read.unit().text(), List.of()).stream()
                // The unit in which people write this field comes before all others.
                .sorted(Comparator.comparing(unit -> !unit.equals(field.unit())))
                .map(unit -> UnitTable.find(unit, read.unit().dimension()))
                .flatMap(Optional::stream)
                .filter(unit -> field.isTypical(unit.toSi(value)))
                .findFirst()
                .map(unit -> written(number, unit));
    }

    private static String number(String text, UnitSpelling unit) {
        return unit.isPlain()
                ? text
                : text.substring(0, text.length() - unit.text().length()).strip();
    }

    private static String written(String number, UnitSpelling unit) {
        if (unit.isPlain()) {
            return number;
        }
        String plain = number + " " + unit.text();
        // The trade reads foreline gauges in microns.
        return "mTorr".equals(unit.text()) ? plain + " (" + number + " micron)" : plain;
    }
}
