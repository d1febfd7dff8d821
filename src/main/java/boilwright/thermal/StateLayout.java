package boilwright.thermal;

/** Where each block's states lie in the state vector of one rig. */
final class StateLayout {
    /** Quadratures of the boundary flows, J. */
    enum Quadrature {
        IN,
        WATER,
        AIR,
        FORELINE,
        SOURCE_INPUT,
        /** What a chiller removes from the supply. */
        CHILLER,
        /** What pump and room bring into the supply. */
        SUPPLY_GAIN,
        /** What the stream brings back to the supply. */
        STREAM
    }

    final int boilerWall = 0;
    final int oil = 1;
    final int oilMass = 2;
    final int gas = 3;
    final int source = 4;
    final int sourceSize;
    final int column;
    final int cells;
    final int walls;
    final int wallCount;
    final int water;
    final int waterCount;
    final int fill;
    final int supply;
    final int supplySize;
    /** Foreline pressure, when a backing pump is followed. */
    final int foreline;

    final int forelineSize;
    final int quadratures;
    final int size;

    StateLayout(int sourceSize, int cells, int wallCount, int waterCount, int supplySize, int forelineSize) {
        this.sourceSize = sourceSize;
        this.cells = cells;
        this.wallCount = wallCount;
        this.waterCount = waterCount;
        column = source + sourceSize;
        walls = column + cells;
        water = walls + wallCount;
        fill = water + waterCount;
        this.supplySize = supplySize;
        supply = fill + waterCount;
        this.forelineSize = forelineSize;
        foreline = supply + supplySize;
        quadratures = foreline + forelineSize;
        size = quadratures + Quadrature.values().length;
    }

    int quadrature(Quadrature q) {
        return quadratures + q.ordinal();
    }

    /** True for states that are temperatures of walls, cells, oil or water. */
    boolean isTemperature(int i) {
        return i == boilerWall || i == oil || (i >= column && i < fill) || (i == supply && supplySize > 0);
    }

    /** True for states that are temperatures of water, in the circuit or behind it. */
    boolean isWater(int i) {
        return (i >= water && i < fill) || (i == supply && supplySize > 0);
    }
}
