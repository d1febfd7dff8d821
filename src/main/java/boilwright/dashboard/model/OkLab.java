package boilwright.dashboard.model;

import javafx.scene.paint.Color;

/**
 * A colour in the OKLab space, in which equal distances look about equally far. Source: B. Ottosson, "A perceptual color
 * space for image processing", 2020 (matrices as published there).
 *
 * @param lightness 0 black to 1 white
 * @param a green to red
 * @param b blue to yellow
 */
record OkLab(double lightness, double a, double b) {

    /** From lightness, chroma and hue in degrees. */
    static OkLab ofHue(double lightness, double chroma, double hueDegrees) {
        double hue = Math.toRadians(hueDegrees);
        return new OkLab(lightness, chroma * Math.cos(hue), chroma * Math.sin(hue));
    }

    /** A screen colour in this space; its opacity is left out. */
    static OkLab of(Color color) {
        double red = linear(color.getRed());
        double green = linear(color.getGreen());
        double blue = linear(color.getBlue());
        double l = Math.cbrt(0.4122214708 * red + 0.5363325363 * green + 0.0514459929 * blue);
        double m = Math.cbrt(0.2119034982 * red + 0.6806995451 * green + 0.1073969566 * blue);
        double s = Math.cbrt(0.0883024619 * red + 0.2817188376 * green + 0.6299787005 * blue);
        return new OkLab(
                0.2104542553 * l + 0.7936177850 * m - 0.0040720468 * s,
                1.9779984951 * l - 2.4285922050 * m + 0.4505937099 * s,
                0.0259040371 * l + 0.7827717662 * m - 0.8086757660 * s);
    }

    /** As linear red, green and blue; outside 0 to 1 where no screen shows it. */
    double[] toLinear() {
        double l = cube(lightness + 0.3963377774 * a + 0.2158037573 * b);
        double m = cube(lightness - 0.1055613458 * a - 0.0638541728 * b);
        double s = cube(lightness - 0.0894841775 * a - 1.2914855480 * b);
        return new double[] {
            4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
            -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
            -0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s
        };
    }

    /** As a screen colour, clamped to what a screen shows. */
    Color toColor() {
        double[] rgb = toLinear();
        return Color.color(screen(rgb[0]), screen(rgb[1]), screen(rgb[2]));
    }

    /** How far another colour looks. */
    double distance(OkLab other) {
        return Math.sqrt(square(lightness - other.lightness) + square(a - other.a) + square(b - other.b));
    }

    /** The colour a share of the way to another. */
    OkLab towards(OkLab other, double share) {
        return new OkLab(
                lightness + share * (other.lightness - lightness),
                a + share * (other.a - a),
                b + share * (other.b - b));
    }

    private static double cube(double x) {
        return x * x * x;
    }

    private static double square(double x) {
        return x * x;
    }

    private static double linear(double screen) {
        return screen <= 0.04045 ? screen / 12.92 : Math.pow((screen + 0.055) / 1.055, 2.4);
    }

    private static double screen(double linear) {
        double value = linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.pow(linear, 1 / 2.4) - 0.055;
        return Math.max(0, Math.min(1, value));
    }
}
