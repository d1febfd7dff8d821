package boilwright.thermal;

/** Names of states for messages. */
final class StateNames {
    private StateNames() {}

    static String of(StateLayout layout, SourceBlock source, SupplyBlock supply, int i) {
        if (i == layout.boilerWall) {
            return "boiler wall temperature";
        } else if (i == layout.oil) {
            return "oil temperature";
        } else if (i == layout.oilMass) {
            return "oil mass";
        } else if (i == layout.gas) {
            return "dissolved gas";
        } else if (i < layout.column) {
            return source.stateName(i - layout.source);
        } else if (i < layout.walls) {
            return "temperature of column cell " + (i - layout.column + 1);
        } else if (i < layout.water) {
            return "temperature of body wall " + (i - layout.walls + 1);
        } else if (i < layout.fill) {
            return "water temperature " + (i - layout.water + 1);
        } else if (i < layout.supply) {
            return "water level " + (i - layout.fill + 1);
        } else if (i == layout.foreline && layout.forelineSize > 0) {
            return "foreline pressure";
        } else if (i < layout.quadratures) {
            return supply.stateName(i - layout.supply);
        }
        return StateLayout.Quadrature.values()[i - layout.quadratures].name().toLowerCase(java.util.Locale.ROOT)
                + " energy";
    }
}
