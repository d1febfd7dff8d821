package boilwright.report;

import boilwright.choice.CarbonMonoxide;
import boilwright.choice.GasUse;
import boilwright.choice.SourceRow;
import boilwright.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What to know of gas: chilled cartridges and carbon monoxide, in whole sentences. */
final class GasWords {
    private GasWords() {}

    /** What becomes of unregulated cartridges, and what helps. */
    static List<String> sentences(List<SourceRow> burners) {
        List<String> list = new ArrayList<>();
        for (SourceRow row : burners) {
            GasUse gas = row.gas().orElseThrow();
            if (gas.coldestK().isEmpty() || gas.leastFuelW().isEmpty()) {
                continue;
            }
            String least = Sections.quantity(gas.leastFuelW().getAsDouble(), Dimension.POWER);
            if (gas.chillsAfterS().isPresent()) {
                list.add(row.id() + ": burning chills the cartridge; "
                        + EventWords.clock(gas.chillsAfterS().getAsDouble())
                        + " after lighting it is at "
                        + Sections.quantity(gas.chilledK().orElseThrow(), Dimension.TEMPERATURE)
                        + " and the flame is below the " + least + " that full jets need.");
            } else {
                list.add(row.id() + ": the cartridge falls to "
                        + Sections.quantity(gas.coldestK().getAsDouble(), Dimension.TEMPERATURE)
                        + " at full flame, and the flame stays above the " + least + " that full jets need.");
            }
            gas.emptyAfterS()
                    .ifPresent(t -> list.add(
                            row.id() + ": at full flame it is empty " + EventWords.clock(t) + " after lighting."));
        }
        if (!list.isEmpty()) {
            list.add("What helps: a regulated supply, a larger and fuller cartridge, a second one"
                    + " to change to, a burner with a plate that leads heat back, or the cartridge standing in a pan of"
                    + " lukewarm water, never warmer than the hand bears and never near the flame.");
        }
        return list;
    }

    /** What one burner does to the room, with its numbers. */
    static List<String> carbonMonoxide(CarbonMonoxide room) {
        return List.of(
                String.format(
                        Locale.ROOT,
                        "One burner in a room of %s with %s air changes an hour: after %s %s to %s ppm, in the end %s to %s"
                                + " ppm.",
                        Sections.quantity(room.roomM3(), Dimension.VOLUME),
                        number(room.airChangesPerH()),
                        EventWords.clock(room.hours() * 3600),
                        whole(room.lowPpm()),
                        whole(room.highPpm()),
                        whole(room.lowSteadyPpm()),
                        whole(room.highSteadyPpm())),
                String.format(
                        Locale.ROOT,
                        "Headache comes at some 200 ppm in two to three hours, danger to life above some 800 ppm (from memory);"
                                + " the guideline for one hour is %s ppm (WHO 2010, from memory). Holding it with the worst"
                                + " burner takes %s air changes an hour: an open door or a hood, not a tilted window.",
                        whole(CarbonMonoxide.ONE_HOUR_PPM),
                        number(room.airChangesForOneHour())),
                "Emissions of 5 to 140 mL/min were measured on camping burners under pots (FFI report 2010/01888); a cold boiler"
                        + " in the flame makes more. The air of the room is taken as mixed, and clean at the start.",
                "Use an alarm. Local codes and licensed practice for gas stand above this answer.");
    }

    private static String whole(double value) {
        return Long.toString(Math.round(value));
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, value < 9.95 ? "%.1f" : "%.0f", value);
    }
}
