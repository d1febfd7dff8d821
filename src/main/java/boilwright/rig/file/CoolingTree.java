package boilwright.rig.file;

import boilwright.rig.Cooling;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.Room;
import boilwright.rig.Supply;

/** Lays the cooling out as the object of a rig's file. */
final class CoolingTree {
    private CoolingTree() {}

    static void fill(FieldWriter out, Cooling cooling, Room room) {
        supply(out.object("supply"), cooling.supply(), room);
        out.list("elements");
        cooling.elements().forEach(element -> element(out.entry("elements"), element));
    }

    private static void supply(FieldWriter out, Supply supply, Room room) {
        out.text("kind", supply.kind().id());
        if (supply instanceof Supply.GivenFlow given) {
            out.quantity("inletTemperature", given.temperatureK())
                    .quantity("flow", given.flowM3PerS())
                    .optional("chillerCapacity", given.capacityW());
        } else if (supply instanceof Supply.Chiller chiller) {
            chiller(out, chiller);
        } else if (supply instanceof Supply.Tap tap) {
            out.quantity("inletTemperature", tap.temperatureK())
                    .quantity("staticPressure", tap.staticPressurePa())
                    .quantity("lineFlowAtOneBar", tap.lineFlowAtOneBarM3PerS());
        } else if (supply instanceof Supply.Tank tank) {
            out.quantity("startTemperature", tank.temperatureK())
                    .quantity("volume", tank.volumeM3())
                    .quantity("ice", tank.iceKg())
                    .quantity("airConductance", tank.airConductance());
            pump(out, tank.pump());
        } else if (supply instanceof Supply.FinsAndFan fins) {
            // Air of the room follows the room when that is changed later.
            if (fins.temperatureK() != room.temperatureK()) {
                out.quantity("airTemperature", fins.temperatureK());
            }
            out.quantity("airSpeed", fins.airSpeedMPerS())
                    .quantity("finPitch", fins.finPitchM())
                    .quantity("finHeight", fins.finHeightM())
                    .quantity("finThickness", fins.finThicknessM())
                    .text("finMaterial", fins.finMaterial().id());
        }
    }

    private static void chiller(FieldWriter out, Supply.Chiller chiller) {
        out.quantity("setPoint", chiller.temperatureK());
        if (chiller.capacity() instanceof Supply.RatedCapacity rated) {
            out.quantity("capacity", rated.ratedW())
                    .quantity("ratedWaterTemperature", rated.waterK())
                    .quantity("ratedRoomTemperature", rated.roomK())
                    .quantity("capacityPerWaterKelvin", rated.perWaterKelvin())
                    .quantity("capacityPerRoomKelvin", rated.perRoomKelvin());
        } else if (chiller.capacity() instanceof Supply.CapacityTable table) {
            table.points()
                    .forEach(point -> out.entry("capacityTable")
                            .quantity("water", point.waterK())
                            .quantity("room", point.roomK())
                            .quantity("capacity", point.capacityW()));
        }
        out.text("control", FieldCatalogue.id(chiller.control()))
                .quantity("hysteresis", chiller.hysteresisK())
                .quantity("tankVolume", chiller.volumeM3());
        pump(out, chiller.pump());
    }

    private static void pump(FieldWriter out, Supply.Pump pump) {
        out.quantity("pumpHeat", pump.heatW());
        pump.curve()
                .forEach(point -> out.entry("pumpCurve")
                        .quantity("flow", point.flowM3PerS())
                        .quantity("head", point.headM()));
    }

    private static void element(FieldWriter out, Cooling.Element element) {
        out.text("kind", element.kind().id());
        if (!element.place().name().isEmpty()) {
            out.text("name", element.place().name());
        }
        if (!element.place().branch().isEmpty()) {
            out.text("branch", element.place().branch());
        }
        if (element instanceof Cooling.Jacket jacket) {
            out.texts("covers", jacket.covers())
                    .quantity("gap", jacket.gapM())
                    .quantity("shellThickness", jacket.shellThicknessM());
        } else if (element instanceof Cooling.Tube tube) {
            tube(out, tube);
        } else if (element instanceof Cooling.Valve valve) {
            out.quantity("flowAtOneBar", valve.flowAtOneBarM3PerS());
        } else if (element instanceof Cooling.Rise rise) {
            out.quantity("height", rise.heightM());
        }
    }

    private static void tube(FieldWriter out, Cooling.Tube tube) {
        if (tube instanceof Cooling.SolderedCoil coil) {
            out.texts("covers", coil.covers());
        }
        out.quantity("tubeInnerDiameter", tube.tubeInnerDiameterM()).quantity("tubeLength", tube.tubeLengthM());
        if (tube instanceof Cooling.SolderedCoil coil) {
            out.quantity("bondConductance", coil.bondConductance());
        } else if (tube instanceof Cooling.CapCoil coil) {
            out.quantity("bondConductance", coil.bondConductance());
        } else if (tube instanceof Cooling.CooledPart part) {
            out.quantity("heatLoad", part.heatLoadW()).quantity("airConductance", part.airConductance());
        } else if (tube instanceof Cooling.Hose hose) {
            out.quantity("airConductancePerMetre", hose.airConductance());
        }
    }
}
