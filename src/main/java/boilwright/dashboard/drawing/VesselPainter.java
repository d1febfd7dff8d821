package boilwright.dashboard.drawing;

import boilwright.dashboard.model.JetState;
import boilwright.dashboard.model.MomentState;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.paint.Color;

/** Boiler with its oil, body wall with its film of condensate, flange and foreline stub. */
final class VesselPainter {
    private static final int ARC = 20;
    /** Width of the film at the lowest point when the pump works hard, px per thin line. */
    private static final double MOST_FILM = 5;

    /** Heat that makes a kilogram of vapour from cool condensate, for the width of the film only, J/kg. */
    private static final double EVAPORATION = 6e5;

    private final Sheet s;
    private final PumpShape shape;
    private final BoilerShape boiler;

    VesselPainter(Sheet sheet, PumpShape shape) {
        s = sheet;
        this.shape = shape;
        boiler = shape.boiler;
    }

    /** Inside of the boiler from the bottom's middle up to the mouth, right side. */
    List<double[]> inside() {
        List<double[]> points = new ArrayList<>();
        double bottom = -boiler.heightM();
        double r = boiler.radiusM();
        if (boiler.domeM() > 0) {
            for (int i = 0; i <= ARC; i++) {
                double angle = Math.PI / 2 * i / ARC;
                points.add(new double[] {r * Math.sin(angle), bottom + boiler.domeM() * (1 - Math.cos(angle))});
            }
        } else {
            points.add(new double[] {0, bottom});
            double corner = boiler.glass() ? Math.min(0.12 * r, 0.2 * boiler.heightM()) : 0.03 * r;
            for (int i = 0; i <= ARC / 2; i++) {
                double angle = Math.PI / 2 * i / (ARC / 2);
                points.add(
                        new double[] {r - corner + corner * Math.sin(angle), bottom + corner * (1 - Math.cos(angle))});
            }
        }
        double mouth = shape.bodyInnerM;
        if (boiler.shoulderM() > 0) {
            for (int i = 0; i <= ARC; i++) {
                double t = (double) i / ARC;
                points.add(new double[] {
                    bezier(t, r, r, mouth, mouth),
                    bezier(t, -boiler.shoulderM(), -0.35 * boiler.shoulderM(), -0.45 * boiler.shoulderM(), 0)
                });
            }
        } else {
            points.add(new double[] {r, 0});
            if (Math.abs(r - mouth) > 1e-6) {
                points.add(new double[] {mouth, 0});
            }
        }
        return points;
    }

    private static double bezier(double t, double a, double b, double c, double d) {
        double u = 1 - t;
        return u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d;
    }

    private List<double[]> outside(List<double[]> inside, double wall) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i < inside.size(); i++) {
            double[] before = inside.get(Math.max(0, i - 1));
            double[] after = inside.get(Math.min(inside.size() - 1, i + 1));
            double dr = after[0] - before[0];
            double dz = after[1] - before[1];
            double length = Math.max(1e-12, Math.hypot(dr, dz));
            double[] at = inside.get(i);
            points.add(new double[] {Math.max(0, at[0] + wall * dz / length), at[1] - wall * dr / length});
        }
        points.get(0)[0] = 0;
        return points;
    }

    /** Outside of the boiler, from the bottom's middle up to the mouth. */
    List<double[]> outside() {
        return outside(inside(), s.wall(boiler.wallM()));
    }

    /** Height of the oil's surface, m from the column's foot. */
    double surfaceM(MomentState moment) {
        return -boiler.heightM() + boiler.oilDepthM(shape.rig.chargeM3() * moment.liquidFraction());
    }

    /** The oil, and the vapour over it. */
    void oil(MomentState moment) {
        double surface = surfaceM(moment);
        double depth = surface + boiler.heightM();
        List<double[]> inside = inside();
        if (moment.vapourFlowKgPerS() > 0) {
            s.mirrored(inside);
            s.g.setFill(Palette.thin(s.heat(moment.oilK()), ColumnPainter.VAPOUR_COVER));
            s.g.fill();
        }
        List<double[]> pool = new ArrayList<>();
        for (double[] point : inside) {
            if (point[1] < surface) {
                pool.add(point);
            }
        }
        pool.add(new double[] {boiler.radiusAtM(depth), surface});
        s.mirrored(pool);
        s.g.setFill(s.heat(moment.oilK()));
        s.g.fill();
        s.stroke(s.palette.ink(), s.line);
        double r = boiler.radiusAtM(depth);
        s.g.strokeLine(s.x(-r), s.y(surface), s.x(r), s.y(surface));
        // the short strokes under a level, as on a drawing board
        double x = s.x(r) - 0.9 * s.lettering.size();
        for (int i = 1; i <= 2; i++) {
            double half = (0.42 - 0.14 * i) * s.lettering.size();
            double y = s.y(surface) + i * 2.4 * s.line;
            if (y < s.y(-boiler.heightM() + boiler.domeM() * 0.3) - s.line) {
                s.g.strokeLine(x - half, y, x + half, y);
            }
        }
    }

    /** The boiler's wall. */
    void boilerWall(MomentState moment) {
        double wall = s.wall(boiler.wallM());
        List<double[]> inside = inside();
        List<double[]> outside = outside(inside, wall);
        Color color = s.heat(moment.boilerWallK());
        for (int side = -1; side <= 1; side += 2) {
            List<double[]> ring = new ArrayList<>(inside);
            for (int i = outside.size() - 1; i >= 0; i--) {
                ring.add(outside.get(i));
            }
            s.path(side, ring);
            s.g.setFill(color);
            s.g.fill();
            s.stroke(s.palette.ink(), boiler.glass() ? 0.9 * s.line : 1.3 * s.line);
            s.path(side, inside);
            s.g.stroke();
            s.path(side, outside);
            s.g.stroke();
        }
    }

    /** The body's wall by zones, flange and stub. */
    void body(MomentState moment) {
        double inner = shape.bodyInnerM;
        double outer = inner + s.wall(shape.bodyOuterM - shape.bodyInnerM);
        stub(moment, outer);
        List<JetState> jets = moment.jets();
        double[] edges = shape.zoneEdgesM;
        double lowerK = (moment.boilerWallK() + jets.get(0).wallK()) / 2;
        for (int side = -1; side <= 1; side += 2) {
            s.g.setFill(s.heat(lowerK));
            s.box(side, inner, outer, edges[0], 0);
            for (int k = 0; k < jets.size(); k++) {
                s.g.setFill(s.heat(jets.get(k).wallK()));
                s.box(side, inner, outer, edges[k + 1], edges[k]);
            }
            s.g.setFill(s.heat(jets.get(jets.size() - 1).wallK()));
            s.box(side, inner, outer, shape.bodyTopM, edges[jets.size()]);
            s.stroke(s.palette.ink(), shape.bodyGlass ? 0.9 * s.line : 1.3 * s.line);
            s.upright(side, inner, shape.bodyTopM, 0);
            s.upright(side, outer, shape.bodyTopM, 0);
        }
        flange(s.heat(jets.get(jets.size() - 1).wallK()), inner);
    }

    private void flange(Color color, double inner) {
        double top = shape.topM;
        double bottom = shape.bodyTopM;
        for (int side = -1; side <= 1; side += 2) {
            s.g.setFill(color);
            s.box(side, inner, shape.flangeRadiusM, top, bottom);
            s.stroke(s.palette.ink(), (shape.bodyGlass ? 0.9 : 1.3) * s.line);
            double left = s.x(side > 0 ? inner : -shape.flangeRadiusM);
            s.g.strokeRect(left, s.y(top), s.px(shape.flangeRadiusM - inner), s.px(top - bottom));
        }
    }

    /** The stub through which the backing pump draws; its wall is cut away where it meets the body. */
    private void stub(MomentState moment, double outer) {
        double wall = s.wall(shape.bodyOuterM - shape.bodyInnerM);
        double r = shape.stubRadiusM;
        double from = outer;
        double to = shape.stubEndM;
        s.g.setFill(s.heat(moment.jets().get(0).wallK()));
        for (int up = -1; up <= 1; up += 2) {
            double edge = shape.stubM + up * r;
            double low = Math.min(edge, edge + up * wall);
            s.g.fillRect(s.x(from), s.y(low + wall), s.px(to - from), s.px(wall));
        }
        s.stroke(s.palette.ink(), (shape.bodyGlass ? 0.9 : 1.3) * s.line);
        for (int up = -1; up <= 1; up += 2) {
            s.level(1, from, to, shape.stubM + up * r);
            s.level(1, from, to, shape.stubM + up * (r + wall));
        }
        double lip = r + 2.2 * wall;
        s.g.setFill(s.heat(moment.jets().get(0).wallK()));
        double thick = s.px(Math.max(wall, 0.35 * r));
        for (int up = -1; up <= 1; up += 2) {
            double top = up > 0 ? shape.stubM + lip : shape.stubM - r;
            s.g.fillRect(s.x(to), s.y(top), thick, s.px(lip - r));
            s.g.strokeRect(s.x(to), s.y(top), thick, s.px(lip - r));
        }
    }

    /** Opens the wall where the stub is, after the wall was drawn. */
    void stubMouth() {
        double outer = shape.bodyInnerM + s.wall(shape.bodyOuterM - shape.bodyInnerM);
        s.g.setFill(s.palette.paper());
        s.g.fillRect(
                s.x(shape.bodyInnerM) - s.line,
                s.y(shape.stubM + shape.stubRadiusM),
                s.px(outer - shape.bodyInnerM) + 2 * s.line,
                s.px(2 * shape.stubRadiusM));
    }

    /** What runs down the wall: thicker the more there is, down to the boiler. */
    void condensate(MomentState moment) {
        // the rated power behind it: the most that could ever run down
        double reference = shape.rig.heatSource().ratedPowerW() / EVAPORATION;
        List<JetState> jets = moment.jets();
        double running = 0;
        for (int k = jets.size() - 1; k >= 0; k--) {
            double added = jets.get(k).condensateKgPerS();
            double hit = shape.jets.get(k).reachM();
            double end = k == 0 ? 0 : shape.jets.get(k - 1).reachM();
            running += added;
            if (running <= 0) {
                continue;
            }
            double share = Math.cbrt(Math.min(1, running / reference));
            double thick = s.metres(MOST_FILM * s.line * share);
            Color film = s.heat(jets.get(k).wallK());
            for (int side = -1; side <= 1; side += 2) {
                drip(side, hit, end, thick, film);
            }
        }
    }

    private void drip(int side, double top, double bottom, double thick, Color color) {
        double wall = shape.bodyInnerM;
        double taper = Math.min(top - bottom, 2.5 * thick);
        s.path(side, List.of(new double[] {wall, top}, new double[] {wall - thick, top - taper}, new double[] {
            wall - thick, bottom
        }));
        s.g.lineTo(s.x(side * wall), s.y(bottom));
        s.g.closePath();
        s.g.setFill(Palette.thin(color.interpolate(s.palette.ink(), 0.25), 0.9));
        s.g.fill();
        s.stroke(Palette.thin(s.palette.ink(), 0.6), 0.8 * s.line);
        s.path(side, List.of(new double[] {wall, top}, new double[] {wall - thick, top - taper}, new double[] {
            wall - thick, bottom
        }));
        s.g.stroke();
    }
}
