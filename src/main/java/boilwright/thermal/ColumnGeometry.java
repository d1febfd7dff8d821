package boilwright.thermal;

import boilwright.rig.Column;
import boilwright.rig.Rig;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * The column cut into cells, bottom to top. Faces lie on every joint and on every throat, so that no stage is moved to a
 * neighbouring cell. Arrays are shared and never changed after construction.
 */
final class ColumnGeometry {
    /** Usual number of cells. */
    static final int USUAL_CELLS = 60;

    final int cells;
    final double heightM;
    final double[] midM;
    final double[] cellM;
    final double[] boreM;
    final double[] flowAreaM2;
    final double[] innerAreaM2;
    final double[] outerAreaM2;
    final double[] emissivity;
    final double[] heatCapacity;
    /** Conductance along the wall between cell j and j + 1, W/K. */
    final double[] axialConductance;
    /** For each stage the cell at whose top face its throat lies. */
    final int[] nozzleCell;

    ColumnGeometry(Rig rig, int wantedCells) {
        List<Double> faces = faces(rig, wantedCells);
        cells = faces.size() - 1;
        heightM = faces.get(cells);
        midM = new double[cells];
        cellM = new double[cells];
        boreM = new double[cells];
        flowAreaM2 = new double[cells];
        innerAreaM2 = new double[cells];
        outerAreaM2 = new double[cells];
        emissivity = new double[cells];
        heatCapacity = new double[cells];
        axialConductance = new double[Math.max(0, cells - 1)];
        double[] axialResistance = new double[cells];
        for (int j = 0; j < cells; j++) {
            double low = faces.get(j);
            double high = faces.get(j + 1);
            Column.Segment segment = segmentAt(rig.column(), (low + high) / 2);
            double bore = segment.innerDiameterM();
            double wall = segment.wallThicknessM();
            double metalArea = Math.PI * (bore + wall) * wall;
            midM[j] = (low + high) / 2;
            cellM[j] = high - low;
            boreM[j] = bore;
            flowAreaM2[j] = Math.PI / 4 * bore * bore;
            innerAreaM2[j] = Math.PI * bore * cellM[j];
            outerAreaM2[j] = Math.PI * (bore + 2 * wall) * cellM[j];
            emissivity[j] = segment.emissivity();
            heatCapacity[j] = metalArea
                    * cellM[j]
                    * segment.material().density()
                    * segment.material().specificHeat();
            axialResistance[j] = cellM[j] / (2 * segment.material().conductivity() * metalArea);
        }
        for (int j = 0; j < cells - 1; j++) {
            axialConductance[j] = 1 / (axialResistance[j] + axialResistance[j + 1]);
        }
        nozzleCell = new int[rig.stages().size()];
        for (int k = 0; k < nozzleCell.length; k++) {
            double height = rig.stages().get(k).heightM();
            int cell = 0;
            while (cell < cells - 1 && faces.get(cell + 1) < height - 1e-9) {
                cell++;
            }
            nozzleCell[k] = cell;
        }
    }

    private static List<Double> faces(Rig rig, int wantedCells) {
        TreeSet<Double> marks = new TreeSet<>();
        double height = 0;
        marks.add(0.0);
        for (Column.Segment segment : rig.column().segments()) {
            height += segment.heightM();
            marks.add(height);
        }
        for (var stage : rig.stages()) {
            Double near = marks.floor(stage.heightM() + 1e-9);
            if (near == null || stage.heightM() - near > 1e-9) {
                marks.add(stage.heightM());
            }
        }
        List<Double> fixed = new ArrayList<>(marks);
        int spans = fixed.size() - 1;
        int[] share = new int[spans];
        int total = 0;
        for (int i = 0; i < spans; i++) {
            share[i] = (int) Math.max(1, Math.round(wantedCells * (fixed.get(i + 1) - fixed.get(i)) / height));
            total += share[i];
        }
        while (total > Math.max(wantedCells, spans)) {
            share[widest(share)]--;
            total--;
        }
        while (total < wantedCells) {
            share[widest(share)]++;
            total++;
        }
        List<Double> faces = new ArrayList<>(total + 1);
        faces.add(0.0);
        for (int i = 0; i < spans; i++) {
            double low = fixed.get(i);
            double high = fixed.get(i + 1);
            for (int j = 1; j < share[i]; j++) {
                faces.add(low + (high - low) * j / share[i]);
            }
            faces.add(high);
        }
        return faces;
    }

    private static int widest(int[] share) {
        int best = 0;
        for (int i = 1; i < share.length; i++) {
            if (share[i] > share[best]) {
                best = i;
            }
        }
        return best;
    }

    private static Column.Segment segmentAt(Column column, double height) {
        double top = 0;
        for (Column.Segment segment : column.segments()) {
            top += segment.heightM();
            if (height < top) {
                return segment;
            }
        }
        return column.segments().get(column.segments().size() - 1);
    }

    /** The first throat at or above the foot of each cell, and of what would be the cell above the top. */
    int[] firstThroats() {
        int[] first = new int[cells + 1];
        for (int j = 0; j <= cells; j++) {
            while (first[j] < nozzleCell.length && nozzleCell[first[j]] < j) {
                first[j]++;
            }
        }
        return first;
    }
}
