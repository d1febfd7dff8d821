package boilwright.choice;

import java.util.OptionalDouble;

/**
 * The gas side of a burner on a rig.
 *
 * @param fuelKg fuel of one session, kg; empty when the jets are never all full
 * @param cartridgeKg fuel of one cartridge, kg
 * @param cartridges cartridges to bring for one session; 0 when the jets are never all full
 * @param leastFuelW fuel power that full jets need, W; empty when none is enough
 * @param chillsAfterS from lighting until an unregulated cartridge burns less than full jets need, s; empty when it does not
 * @param chilledK temperature of the cartridge then, K; empty with the above
 * @param coldestK coldest that the cartridge becomes, K; empty for a regulated supply
 * @param emptyAfterS from lighting until it is empty at full flame, s; empty when it lasts or the supply is regulated
 */
public record GasUse(
        OptionalDouble fuelKg,
        double cartridgeKg,
        int cartridges,
        OptionalDouble leastFuelW,
        OptionalDouble chillsAfterS,
        OptionalDouble chilledK,
        OptionalDouble coldestK,
        OptionalDouble emptyAfterS) {}
