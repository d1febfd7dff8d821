package boilwright.vacuum;

import boilwright.gasflow.Gas;
import boilwright.rig.GasSide;
import boilwright.rig.LinePiece;
import boilwright.rig.Rig;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Pressures at rest: gas of every source, through every piece, to what the jets do. */
public final class SteadyVacuum {
    private final PumpLine ways;
    private final JetAction jets;
    private final List<GasSource> sources;
    private final LinePressures pressures;

    private SteadyVacuum(PumpLine ways, JetAction jets, double sinceAirS) {
        this.ways = ways;
        this.jets = jets;
        sources = GasLoads.of(ways.rig(), ways.rates, sinceAirS);
        pressures = new LinePressures(ways.line);
    }

    /**
     * The pressures.
     *
     * @param rig a rig with chamber and line
     * @param jets what its jets do
     * @param sinceAirS time since its surfaces stood in air, s
     * @param rates what its materials give off
     * @param gas what flows
     */
    public static VacuumState of(Rig rig, JetAction jets, double sinceAirS, SurfaceRates rates, Gas gas) {
        return new SteadyVacuum(new PumpLine(rig, rates, gas), jets, sinceAirS).state();
    }

    private VacuumState state() {
        double chamber = PumpLine.ofChamber(sources);
        double[] along = ways.ofPieces(sources);
        double all = GasLoads.sum(sources);
        PumpEnd end = new PumpEnd(ways.backing::pressureFor, ways.throughPump);
        end.jets(jets);
        double comesBack = jets.backDiffusionPa() + jets.oilVapourPa();
        double inlet = end.inletPa(all);
        pressures.forFlow(inlet, chamber, along);
        int gauge = ways.gaugeJunction();
        double gaugePa = pressures.junctionPa[gauge];
        double speed = end.takes(all) ? jets.speedM3PerS() : all / inlet;
        double gasDrop = pressures.junctionPa[0] - comesBack;
        double chamberSpeed = gasDrop > 0 ? all / gasDrop : speed;
        double reading =
                gaugePa * ways.side.gauge().map(GasSide.Gauge::gasFactor).orElse(1.0);
        List<Double> junctions = new ArrayList<>();
        for (double pa : pressures.junctionPa) {
            junctions.add(pa);
        }
        return new VacuumState(
                gaugePa,
                reading,
                pressures.junctionPa[0],
                inlet,
                ways.backing.pressureFor(all + jets.gasOfOil()),
                junctions,
                all,
                speed,
                chamberSpeed,
                jets.speedM3PerS() > 0 && !end.takes(all),
                shares(gauge, gaugePa, inlet, all, !end.takes(all)),
                costs(),
                closure(chamber, along, inlet, end, comesBack, all));
    }

    /** Gas through the last piece and what it gives off against what all sources give, from the pressures alone. */
    private double closure(double chamber, double[] along, double inlet, PumpEnd end, double comesBack, double all) {
        double arrived = chamber;
        for (int i = 0; i < along.length; i++) {
            double drop = pressures.junctionPa[i] - pressures.junctionPa[i + 1];
            double through = Double.isInfinite(pressures.conductance[i])
                    ? arrived + along[i] / 2
                    : pressures.conductance[i] * drop;
            arrived = through + along[i] / 2;
        }
        double taken = end.takes(all) ? (inlet - comesBack) * jets.speedM3PerS() : all;
        return all == 0 ? 0 : Math.max(Math.abs(arrived - all), Math.abs(taken - all)) / all;
    }

    private List<SourceShare> shares(int gauge, double gaugePa, double inlet, double all, boolean dark) {
        double comesBack = jets.backDiffusionPa() + jets.oilVapourPa();
        List<SourceShare> shares = new ArrayList<>();
        // with the conductances as they are, every source adds its flow times the way it has in common with the gauge
        double base = dark ? ways.backing.pressureFor(jets.gasOfOil()) : comesBack;
        double perFlowAtInlet = all > 0 ? (inlet - base) / all : 0;
        for (GasSource source : sources) {
            double pressure = source.flow() * perFlowAtInlet;
            for (int i = gauge; i < ways.line.count(); i++) {
                double passes = source.piece() < i ? 1 : source.piece() == i ? 0.5 : 0;
                pressure += Double.isInfinite(pressures.conductance[i])
                        ? 0
                        : passes * source.flow() / pressures.conductance[i];
            }
            shares.add(new SourceShare(source, pressure, pressure / gaugePa));
        }
        if (dark) {
            add(shares, GasSource.Kind.BACKING_PUMP, base, gaugePa);
        } else {
            add(shares, GasSource.Kind.BACK_DIFFUSION, jets.backDiffusionPa(), gaugePa);
            add(shares, GasSource.Kind.OIL_VAPOUR, jets.oilVapourPa(), gaugePa);
        }
        shares.sort(Comparator.comparingDouble(SourceShare::atGaugePa).reversed());
        return shares;
    }

    private static void add(List<SourceShare> shares, GasSource.Kind kind, double pressure, double gaugePa) {
        if (pressure > 0) {
            shares.add(new SourceShare(new GasSource("", kind, "", -1, 0, 0, 0), pressure, pressure / gaugePa));
        }
    }

    private List<PieceCost> costs() {
        List<PieceCost> costs = new ArrayList<>();
        double lost = 0;
        for (double conductance : pressures.conductance) {
            lost += 1 / conductance;
        }
        for (int i = 0; i < ways.line.count(); i++) {
            LinePiece piece = ways.side.line().get(i);
            double own = 1 / pressures.conductance[i];
            costs.add(new PieceCost(
                    piece.name(),
                    "vacuum.line[" + i + "]",
                    pressures.conductance[i],
                    pressures.junctionPa[i] - pressures.junctionPa[i + 1],
                    lost > 0 ? own / lost : 0));
        }
        return costs;
    }
}
