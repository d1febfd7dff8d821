package boilwright.rig.file;

import boilwright.errors.MessageKey;
import boilwright.fluid.Water;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import boilwright.rig.Supply.CapacityPoint;
import boilwright.rig.Supply.CurvePoint;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Whether the figures of a supply fit one another and the room. */
final class SupplyChecks {
    /** Farthest from its rating that a chiller's straight lines are used, K; engineering judgement. */
    private static final double RATING_REACH_K = 15;
    /** Ice floats: its density at the melting point, kg/m3 (Feistel and Wagner 2006, IAPWS R10; from memory). */
    private static final double ICE_DENSITY = 916.7;

    private static final String AT = "cooling.supply.";
    private static final String TABLE = AT + "capacityTable";
    private static final String ROOM = "room.temperature";

    private final Rig rig;
    private final Findings findings;

    private SupplyChecks(Rig rig, Findings findings) {
        this.rig = rig;
        this.findings = findings;
    }

    static void run(Rig rig, Findings findings) {
        SupplyChecks checks = new SupplyChecks(rig, findings);
        Supply supply = rig.cooling().supply();
        if (supply instanceof Supply.Pumped pumped) {
            checks.curve(pumped.pump().curve());
        }
        if (supply instanceof Supply.Chiller chiller && chiller.capacity() instanceof Supply.RatedCapacity rated) {
            checks.rated(chiller, rated);
        } else if (supply instanceof Supply.Chiller chiller
                && chiller.capacity() instanceof Supply.CapacityTable table
                && checks.inOrder(table.points())) {
            checks.table(chiller, table.points());
        } else if (supply instanceof Supply.Tank tank) {
            checks.ice(tank);
        } else if (supply instanceof Supply.FinsAndFan fins) {
            checks.fins(fins);
        }
    }

    private void curve(List<CurvePoint> curve) {
        for (int i = 1; i < curve.size(); i++) {
            String at = AT + "pumpCurve[" + i + "]";
            String before = AT + "pumpCurve[" + (i - 1) + "]";
            if (curve.get(i).flowM3PerS() <= curve.get(i - 1).flowM3PerS()) {
                follows(at + ".flow", MessageKey.RIG_PUMP_CURVE_ORDER, before + ".flow");
            } else if (curve.get(i).headM() >= curve.get(i - 1).headM()) {
                follows(at + ".head", MessageKey.RIG_PUMP_CURVE_RISING, before + ".head");
            }
        }
    }

    private void rated(Supply.Chiller chiller, Supply.RatedCapacity rated) {
        boolean water = near(AT + "setPoint", chiller.temperatureK(), AT + "ratedWaterTemperature", rated.waterK());
        boolean room = near(ROOM, rig.room().temperatureK(), AT + "ratedRoomTemperature", rated.roomK());
        double left = rated.ratedW()
                + rated.perWaterKelvin() * (chiller.temperatureK() - rated.waterK())
                - rated.perRoomKelvin() * (rig.room().temperatureK() - rated.roomK());
        if (water && room && left <= 0) {
            String path = AT + "setPoint";
            findings.reportField(
                    path, MessageKey.RIG_CHILLER_WITHOUT_CAPACITY, findings.found(path), findings.found(ROOM));
        }
    }

    private boolean near(String path, double asked, String ratedPath, double rated) {
        // A kelvin written in another unit rounds.
        if (Math.abs(asked - rated) <= RATING_REACH_K + 1e-9 || Double.isNaN(asked - rated)) {
            return true;
        }
        String reach = QuantityWriter.writeAuto(RATING_REACH_K, Dimension.TEMPERATURE_DIFFERENCE);
        findings.reportField(path, MessageKey.RIG_RATING_FAR, findings.found(path), findings.found(ratedPath), reach);
        return false;
    }

    /** Whether all entries were read and follow one another as they should. */
    private boolean inOrder(List<CapacityPoint> points) {
        boolean whole = points.stream()
                .noneMatch(p -> Double.isNaN(p.waterK()) || Double.isNaN(p.roomK()) || Double.isNaN(p.capacityW()));
        boolean ordered = true;
        for (int i = 1; i < points.size(); i++) {
            double rooms = points.get(i).roomK() - points.get(i - 1).roomK();
            String name = rooms < 0 ? ".room" : ".water";
            if (rooms < 0
                    || (rooms == 0
                            && points.get(i).waterK() <= points.get(i - 1).waterK())) {
                ordered = false;
                follows(TABLE + "[" + i + "]" + name, MessageKey.RIG_TABLE_ORDER, TABLE + "[" + (i - 1) + "]" + name);
            }
        }
        return whole && ordered && !points.isEmpty();
    }

    private void table(Supply.Chiller chiller, List<CapacityPoint> points) {
        Map<Double, List<Double>> watersByRoom = new TreeMap<>();
        points.forEach(p -> watersByRoom
                .computeIfAbsent(p.roomK(), room -> new ArrayList<>())
                .add(p.waterK()));
        List<Double> first = watersByRoom.get(points.get(0).roomK());
        int at = 0;
        for (List<Double> waters : watersByRoom.values()) {
            if (!waters.equals(first)) {
                findings.reportField(
                        TABLE + "[" + at + "]", MessageKey.RIG_TABLE_GRID, temperatures(waters), temperatures(first));
            }
            at += waters.size();
        }
        covered(AT + "setPoint", chiller.temperatureK(), first.get(0), first.get(first.size() - 1));
        covered(
                ROOM,
                rig.room().temperatureK(),
                points.get(0).roomK(),
                points.get(points.size() - 1).roomK());
    }

    private void covered(String path, double asked, double low, double high) {
        if (asked < low || asked > high) {
            findings.reportField(
                    path, MessageKey.RIG_TABLE_OUTSIDE, findings.found(path), temperature(low), temperature(high));
        }
    }

    private void ice(Supply.Tank tank) {
        if (tank.iceKg() > 0 && Math.abs(tank.temperatureK() - Water.FREEZING_K) > 1e-9) {
            String path = AT + "startTemperature";
            findings.reportField(path, MessageKey.RIG_ICE_IN_WARM_WATER, findings.found(path));
        }
        double ice = tank.iceKg() / ICE_DENSITY;
        if (ice > tank.volumeM3()) {
            String path = AT + "ice";
            String volume = QuantityWriter.writeAuto(ice, Dimension.VOLUME);
            findings.reportField(
                    path, MessageKey.RIG_ICE_ABOVE_WATER, findings.found(path), volume, findings.found(AT + "volume"));
        }
    }

    private void fins(Supply.FinsAndFan fins) {
        if (fins.finThicknessM() >= fins.finPitchM()) {
            follows(AT + "finThickness", MessageKey.RIG_FINS_CLOSED, AT + "finPitch");
        }
    }

    /** Reports a field with what was found there and at another one. */
    private void follows(String path, MessageKey key, String other) {
        findings.reportField(path, key, findings.found(path), findings.found(other));
    }

    private static String temperatures(List<Double> kelvins) {
        return kelvins.stream().map(SupplyChecks::temperature).collect(Collectors.joining(", "));
    }

    private static String temperature(double kelvin) {
        return QuantityWriter.writeAuto(kelvin, Dimension.TEMPERATURE);
    }
}
