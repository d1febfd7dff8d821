package boilwright.dashboard.drawing;

import boilwright.errors.InputRefusedException;
import boilwright.rig.Column;
import boilwright.rig.Cooling;
import boilwright.rig.ElementKind;
import boilwright.rig.Rig;
import boilwright.rig.Stage;
import boilwright.vacuum.BackingSide;
import boilwright.water.CircuitSolver;
import java.util.ArrayList;
import java.util.List;

/**
 * The pump's outlines in m: heights from the column's foot, radii from the axis. Measures that the rig does not tell (flange,
 * foreline stub, skirts, the boiler's height) follow from those that it does in usual proportions.
 */
final class PumpShape {
    /** A piece of the column. */
    record Tube(double bottomM, double topM, double innerM, double outerM, boolean glass) {}

    /** The plate over the top jet. */
    record Plate(double bottomM, double radiusM, double thicknessM) {}

    final Rig rig;
    /** Foreline pressure at rest, Pa. */
    final double forelinePa;
    /** Water that flows, m3/s; none when the supply cannot lift it, which the answer says in words. */
    final double waterFlowM3PerS;

    final BoilerShape boiler;
    final SourceShape source;
    final List<Tube> tubes = new ArrayList<>();
    final List<JetShape> jets = new ArrayList<>();
    final List<WaterShape> water = new ArrayList<>();
    /** Heights that bound the body's zones: end of the lower wall, then the top of every zone. */
    final double[] zoneEdgesM;

    final double columnTopM;
    final double bodyInnerM;
    final double bodyOuterM;
    final boolean bodyGlass;
    final Plate cap;
    final double bodyTopM;
    final double flangeM;
    final double flangeRadiusM;
    final double stubM;
    final double stubRadiusM;
    final double stubEndM;
    final double leftM;
    final double rightM;
    final double bottomM;
    final double topM;

    private PumpShape(Rig rig) {
        this.rig = rig;
        forelinePa = BackingSide.of(rig).restingPa();
        waterFlowM3PerS = waterFlow(rig);
        boiler = BoilerShape.of(rig);
        source = SourceShape.of(rig, boiler);
        bodyInnerM = rig.body().innerDiameterM() / 2;
        bodyOuterM = bodyInnerM + rig.body().wallThicknessM();
        bodyGlass = rig.body().material().isGlass();
        columnTopM = rig.column().heightM();
        tubes();
        zoneEdgesM = new double[rig.stages().size() + 1];
        zoneEdgesM[0] = rig.body().uncooledLowerHeightM();
        for (int k = 0; k < rig.stages().size(); k++) {
            boolean last = k == rig.stages().size() - 1;
            zoneEdgesM[k + 1] = last ? columnTopM : rig.stages().get(k).heightM();
        }
        jets();
        double domeTop = Math.max(columnTopM, jets.get(jets.size() - 1).skirtTopM());
        cap = rig.topCap()
                .map(plate -> new Plate(
                        domeTop + 0.08 * bodyInnerM,
                        Math.min(0.92 * bodyInnerM, Math.sqrt(plate.areaM2() / Math.PI)),
                        plate.thicknessM()))
                .orElse(null);
        water();
        double coil = water.stream()
                .filter(w -> w.kind() == ElementKind.CAP_COIL)
                .mapToDouble(WaterShape::thicknessM)
                .max()
                .orElse(0);
        double covered = cap == null ? domeTop : cap.bottomM() + cap.thicknessM() + 1.6 * coil;
        bodyTopM = covered + 0.28 * bodyInnerM;
        flangeM = 0.11 * bodyInnerM;
        flangeRadiusM = bodyOuterM + 0.24 * bodyInnerM;
        double lower = zoneEdgesM[0];
        stubRadiusM = Math.min(0.22 * bodyInnerM, Math.max(0.11 * bodyInnerM, 0.36 * lower));
        stubM = Math.max(1.25 * stubRadiusM, 0.5 * lower);
        double jacket = water.stream()
                .filter(w -> w.kind() != ElementKind.CAP_COIL)
                .mapToDouble(w -> w.thicknessM() + w.shellM())
                .max()
                .orElse(0);
        double wide = Math.max(bodyOuterM + jacket, flangeRadiusM);
        stubEndM = Math.max(bodyOuterM + jacket + 0.35 * bodyInnerM, boiler.radiusM() + boiler.wallM());
        double sourceWide = source.radiusM()
                + source.insulationM()
                + (source.sideM() > 0 ? source.thicknessM() : 0.12 * source.radiusM());
        leftM = Math.max(Math.max(wide, boiler.radiusM() + boiler.wallM()), sourceWide);
        rightM = Math.max(leftM, stubEndM);
        bottomM = -boiler.heightM() - boiler.wallM() - source.depthM();
        topM = bodyTopM + flangeM;
    }

    /** The outlines of a rig. */
    static PumpShape of(Rig rig) {
        return new PumpShape(rig);
    }

    private void tubes() {
        double bottom = 0;
        for (Column.Segment segment : rig.column().segments()) {
            double inner = segment.innerDiameterM() / 2;
            tubes.add(new Tube(
                    bottom,
                    bottom + segment.heightM(),
                    inner,
                    inner + segment.wallThicknessM(),
                    segment.material().isGlass()));
            bottom += segment.heightM();
        }
    }

    /** The piece of column at a height. */
    Tube tubeAt(double heightM) {
        for (Tube tube : tubes) {
            if (heightM <= tube.topM() + 1e-9) {
                return tube;
            }
        }
        return tubes.get(tubes.size() - 1);
    }

    private void jets() {
        List<Stage> stages = rig.stages();
        for (int k = 0; k < stages.size(); k++) {
            Stage stage = stages.get(k);
            double inner = (stage.throatDiameterM() - stage.throatGapM()) / 2;
            double outer = (stage.throatDiameterM() + stage.throatGapM()) / 2;
            double column = tubeAt(stage.heightM()).outerM();
            boolean closes = k == stages.size() - 1;
            double above = closes ? Double.MAX_VALUE : stages.get(k + 1).heightM() - stage.heightM();
            double skirt = Math.min(0.6 * outer, 0.45 * above);
            double below = stage.heightM() - (k == 0 ? 0 : stages.get(k - 1).heightM());
            double drop = Math.min(2.2 * Math.max(0, bodyInnerM - outer), 0.62 * below);
            jets.add(new JetShape(
                    stage.heightM(),
                    inner,
                    outer,
                    column,
                    (closes ? Math.max(columnTopM, stage.heightM()) : stage.heightM()) + skirt,
                    closes,
                    stage.heightM() - drop));
        }
    }

    private void water() {
        List<Cooling.Element> elements = rig.cooling().elements();
        for (int e = 0; e < elements.size(); e++) {
            Cooling.Element element = elements.get(e);
            if (element.jacket().isPresent()) {
                Cooling.Jacket jacket = element.jacket().get();
                for (String name : jacket.covers()) {
                    zone(ElementKind.JACKET, e, jacket.covers(), name, jacket.gapM(), jacket.shellThicknessM(), 0);
                }
            } else if (element.solderedCoil().isPresent()) {
                Cooling.SolderedCoil coil = element.solderedCoil().get();
                double total = coil.covers().stream()
                        .mapToDouble(name -> height(stage(name)))
                        .sum();
                double turn = Math.PI * (2 * bodyOuterM + coil.tubeInnerDiameterM());
                for (String name : coil.covers()) {
                    double length = coil.tubeLengthM() * height(stage(name)) / total;
                    int turns = (int) Math.max(1, Math.round(length / turn));
                    zone(ElementKind.SOLDERED_COIL, e, coil.covers(), name, coil.tubeInnerDiameterM(), 0, turns);
                }
            } else if (element.capCoil().isPresent() && cap != null) {
                Cooling.CapCoil coil = element.capCoil().get();
                double middle = Math.PI * cap.radiusM();
                int turns = (int) Math.max(1, Math.min(6, Math.round(coil.tubeLengthM() / middle)));
                double bottom = cap.bottomM() + cap.thicknessM();
                water.add(new WaterShape(
                        ElementKind.CAP_COIL, e, -1, bottom, bottom, coil.tubeInnerDiameterM(), 0, turns, true));
            }
        }
    }

    private void zone(
            ElementKind kind, int element, List<String> covers, String name, double gap, double shell, int turns) {
        int stage = stage(name);
        int first = stage(covers.get(0));
        int last = stage(covers.get(covers.size() - 1));
        water.add(new WaterShape(
                kind, element, stage, zoneEdgesM[stage], zoneEdgesM[stage + 1], gap, shell, turns, first >= last));
    }

    private double height(int stage) {
        return zoneEdgesM[stage + 1] - zoneEdgesM[stage];
    }

    private int stage(String name) {
        for (int k = 0; k < rig.stages().size(); k++) {
            if (rig.stages().get(k).name().equals(name)) {
                return k;
            }
        }
        throw new IllegalArgumentException("no stage " + name);
    }

    private static double waterFlow(Rig rig) {
        try {
            return CircuitSolver.operatingPoint(rig).volumeFlowM3PerS();
        } catch (InputRefusedException notLifted) {
            return 0;
        }
    }
}
