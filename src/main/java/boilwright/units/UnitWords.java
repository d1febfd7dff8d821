package boilwright.units;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Ways of writing a unit that people use and the table does not accept, with the spelling to offer instead. They only
 * serve to name the likely meaning in a refusal; letter distance alone would offer K for "C".
 */
final class UnitWords {
    private static final Map<String, List<String>> MEANT = Map.ofEntries(
            Map.entry("c", List.of("degC")),
            Map.entry("deg c", List.of("degC")),
            Map.entry("celsius", List.of("degC")),
            Map.entry("f", List.of("degF")),
            Map.entry("deg f", List.of("degF")),
            Map.entry("fahrenheit", List.of("degF")),
            Map.entry("kelvin", List.of("K")),
            Map.entry("sec", List.of("s")),
            Map.entry("seconds", List.of("s")),
            Map.entry("minutes", List.of("min")),
            Map.entry("hr", List.of("h")),
            Map.entry("hours", List.of("h")),
            Map.entry("watt", List.of("W")),
            Map.entry("watts", List.of("W")),
            Map.entry("btu/hr", List.of("BTU/h")),
            Map.entry("litre", List.of("L")),
            Map.entry("litres", List.of("L")),
            Map.entry("liter", List.of("L")),
            Map.entry("liters", List.of("L")),
            Map.entry("gallon", List.of("gal")),
            Map.entry("gallons", List.of("gal")),
            Map.entry("gpm", List.of("gal/min")),
            Map.entry("lpm", List.of("L/min")),
            Map.entry("fpm", List.of("ft/min")),
            Map.entry("kph", List.of("km/h")),
            Map.entry("\u00b5m", List.of("um")),
            Map.entry("\u03bcm", List.of("um")),
            Map.entry("micron", List.of("um")),
            Map.entry("microns", List.of("micron", "um")),
            Map.entry("\u00b5bar", List.of("ubar")),
            Map.entry("\u03bcbar", List.of("ubar")),
            Map.entry("inch", List.of("in")),
            Map.entry("inches", List.of("in")),
            Map.entry("\"", List.of("in")),
            Map.entry("foot", List.of("ft")),
            Map.entry("feet", List.of("ft")),
            Map.entry("pascal", List.of("Pa")),
            Map.entry("millitorr", List.of("mTorr")),
            Map.entry("percent", List.of("%")));

    private UnitWords() {}

    /** The accepted spelling that a word most likely stands for: by the words above, else by letters. */
    static Optional<String> likely(String found, Collection<String> accepted) {
        String plain = found.replace('\u00b2', '2').replace('\u00b3', '3').replace('\u00b7', ' ');
        if (accepted.contains(plain)) {
            return Optional.of(plain);
        }
        return MEANT.getOrDefault(plain.toLowerCase(Locale.ROOT), List.of()).stream()
                .filter(accepted::contains)
                .findFirst()
                .or(() -> NearestSpelling.of(plain, accepted));
    }
}
