package boilwright.water;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.rig.Supply;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.List;

/**
 * What a chiller carries away at a temperature of the water and of the room: straight lines from one rating, at most 15 K from
 * it (engineering judgement), or a data sheet's table, bilinear between its entries. Never answered beyond.
 */
public final class ChillerCapacity {
    /** How far from its rating a rated capacity is used, K. */
    private static final double REACH_K = 15;

    private final double[] waterK;
    private final double[] roomK;
    private final double[][] wattsByRoom;

    private ChillerCapacity(double[] waterK, double[] roomK, double[][] wattsByRoom) {
        this.waterK = waterK;
        this.roomK = roomK;
        this.wattsByRoom = wattsByRoom;
    }

    /** The capacity as the rig describes it. */
    public static ChillerCapacity of(Supply.Capacity capacity) {
        return capacity.match(ChillerCapacity::ofRating, ChillerCapacity::ofTable);
    }

    // Two straight lines are bilinear: a rating is a table of its four corners.
    private static ChillerCapacity ofRating(Supply.RatedCapacity rated) {
        double[] water = {rated.waterK() - REACH_K, rated.waterK() + REACH_K};
        double[] room = {rated.roomK() - REACH_K, rated.roomK() + REACH_K};
        double[][] watts = new double[2][2];
        for (int r = 0; r < 2; r++) {
            for (int w = 0; w < 2; w++) {
                watts[r][w] = rated.ratedW()
                        + rated.perWaterKelvin() * (water[w] - rated.waterK())
                        - rated.perRoomKelvin() * (room[r] - rated.roomK());
            }
        }
        return new ChillerCapacity(water, room, watts);
    }

    private static ChillerCapacity ofTable(Supply.CapacityTable table) {
        List<Supply.CapacityPoint> points = table.points();
        double[] room = points.stream()
                .mapToDouble(Supply.CapacityPoint::roomK)
                .distinct()
                .toArray();
        int columns = points.size() / room.length;
        double[] water = points.stream()
                .limit(columns)
                .mapToDouble(Supply.CapacityPoint::waterK)
                .toArray();
        double[][] watts = new double[room.length][columns];
        for (int i = 0; i < points.size(); i++) {
            watts[i / columns][i % columns] = points.get(i).capacityW();
        }
        return new ChillerCapacity(water, room, watts);
    }

    /** Whether the capacity is known at these temperatures, K. */
    public boolean covers(double waterTemperatureK, double roomTemperatureK) {
        return within(waterK, waterTemperatureK) && within(roomK, roomTemperatureK);
    }

    /**
     * The capacity, W; nothing where the straight lines go below zero.
     *
     * @param waterTemperatureK temperature of the water that it holds, K
     * @param roomTemperatureK temperature of the room that takes its heat, K
     * @throws InputRefusedException beyond what is known
     */
    public double wattsAt(double waterTemperatureK, double roomTemperatureK) {
        if (!covers(waterTemperatureK, roomTemperatureK)) {
            throw new InputRefusedException(Message.of(
                    MessageKey.WATER_CAPACITY_UNKNOWN,
                    text(waterTemperatureK),
                    text(roomTemperatureK),
                    text(lowestWaterK()),
                    text(highestWaterK()),
                    text(lowestRoomK()),
                    text(highestRoomK())));
        }
        int r = piece(roomK, roomTemperatureK);
        int next = Math.min(r + 1, roomK.length - 1);
        double low = alongWater(wattsByRoom[r], waterTemperatureK);
        double high = alongWater(wattsByRoom[next], waterTemperatureK);
        return Math.max(0, low + (high - low) * share(roomK, r, roomTemperatureK));
    }

    /** Coldest water for which it is known, K. */
    public double lowestWaterK() {
        return waterK[0];
    }

    /** Warmest water for which it is known, K. */
    public double highestWaterK() {
        return waterK[waterK.length - 1];
    }

    /** Coldest room for which it is known, K. */
    public double lowestRoomK() {
        return roomK[0];
    }

    /** Warmest room for which it is known, K. */
    public double highestRoomK() {
        return roomK[roomK.length - 1];
    }

    private double alongWater(double[] watts, double temperature) {
        int w = piece(waterK, temperature);
        int next = Math.min(w + 1, waterK.length - 1);
        return watts[w] + (watts[next] - watts[w]) * share(waterK, w, temperature);
    }

    private static boolean within(double[] grid, double value) {
        return value >= grid[0] && value <= grid[grid.length - 1];
    }

    private static int piece(double[] grid, double value) {
        int i = 0;
        while (i < grid.length - 2 && value > grid[i + 1]) {
            i++;
        }
        return i;
    }

    private static double share(double[] grid, int i, double value) {
        return i + 1 < grid.length ? (value - grid[i]) / (grid[i + 1] - grid[i]) : 0;
    }

    private static String text(double temperatureK) {
        return QuantityWriter.writeAuto(temperatureK, Dimension.TEMPERATURE);
    }
}
