package boilwright.dashboard.vacuum;

import boilwright.rig.LinePiece;
import boilwright.rig.PieceKind;
import javafx.scene.canvas.GraphicsContext;

/** Draws one piece of a line between two heights, from left to right: plain outlines, each kind with a mark of its own. */
final class PieceDrawing {
    private static final int HOSE_RINGS = 6;
    private static final int VANES = 5;

    private PieceDrawing() {}

    /**
     * Draws a piece.
     *
     * @param g where; stroke and fill are set
     * @param piece what
     * @param x left edge
     * @param width width
     * @param middle height of the axis
     * @param in half height at the left
     * @param out half height at the right
     */
    static void draw(GraphicsContext g, LinePiece piece, double x, double width, double middle, double in, double out) {
        double[] xs = {x, x + width, x + width, x};
        double[] ys = {middle - in, middle - out, middle + out, middle + in};
        g.fillPolygon(xs, ys, 4);
        g.strokeLine(x, middle - in, x + width, middle - out);
        g.strokeLine(x, middle + in, x + width, middle + out);
        if (piece.kind() == PieceKind.HOSE) {
            for (int i = 1; i < HOSE_RINGS; i++) {
                double at = x + width * i / HOSE_RINGS;
                g.strokeLine(at, middle - in, at, middle + in);
            }
        } else if (piece.kind() == PieceKind.VALVE) {
            g.strokeLine(x + width / 2, middle - in, x + width / 2, middle - in - 8);
            g.strokeLine(x + width / 2 - 6, middle - in - 8, x + width / 2 + 6, middle - in - 8);
            g.strokeLine(x, middle - in, x + width, middle + in);
            g.strokeLine(x, middle + in, x + width, middle - in);
        } else if (piece.kind() == PieceKind.APERTURE) {
            g.strokeLine(x + width / 2, middle - in - 7, x + width / 2, middle - in);
            g.strokeLine(x + width / 2, middle + in, x + width / 2, middle + in + 7);
        } else if (piece.kind() == PieceKind.ELBOW) {
            g.strokeArc(x + width / 2 - in, middle - in, 2 * in, 2 * in, 0, 90, javafx.scene.shape.ArcType.OPEN);
        } else if (piece.kind().isBaffle()) {
            vanes(g, piece.kind(), x, width, middle, in);
        }
    }

    private static void vanes(GraphicsContext g, PieceKind kind, double x, double width, double middle, double half) {
        double pitch = 2 * half / VANES;
        for (int i = 0; i < VANES; i++) {
            double top = middle - half + i * pitch;
            double centre = x + width / 2;
            if (kind == PieceKind.OPAQUE_COIL) {
                g.strokeOval(centre - pitch / 3 + (i % 2 == 0 ? -4 : 4), top + pitch / 6, 2 * pitch / 3, 2 * pitch / 3);
            } else {
                g.strokeLine(centre - pitch / 2, top, centre, top + pitch / 2);
                if (kind == PieceKind.CHEVRON) {
                    g.strokeLine(centre, top + pitch / 2, centre - pitch / 2, top + pitch);
                }
            }
        }
    }
}
