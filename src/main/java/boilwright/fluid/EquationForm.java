package boilwright.fluid;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** The equation forms a data file may name, T in K and y in the unit the file states. */
enum EquationForm {
    CONSTANT("y = a", 1, 1, c -> new Relation.Polynomial(0, c.clone())),
    LINEAR(
            "y = a + b (T - T0); coefficients a, b, T0",
            3,
            3,
            c -> new Relation.Polynomial(c[2], new double[] {c[0], c[1]})),
    POLYNOMIAL("y = a + b T + c T^2 + ...; coefficients a, b, c ...", 2, 6, c -> new Relation.Polynomial(0, c.clone())),
    EXPANSION(
            "y = a exp(-b (T - T0)), b the volume expansion; coefficients a, b, T0",
            3,
            3,
            c -> new Relation.Exponential(c[0], c[1], c[2])),
    LOG10_INVERSE(
            "log10 y = A - B/T; coefficients A, B",
            2,
            2,
            c -> new Relation.LogInverse(c[0] * Math.log(10), -c[1] * Math.log(10), 0)),
    LOG10_VOGEL(
            "log10 y = A + B/(T - C); coefficients A, B, C",
            3,
            3,
            c -> new Relation.LogInverse(c[0] * Math.log(10), c[1] * Math.log(10), c[2])),
    LN_ANTOINE("ln y = A - B/(T + C); coefficients A, B, C", 3, 3, c -> new Relation.LogInverse(c[0], -c[1], -c[2])),
    DIPPR_101(
            "ln y = A + B/T + C ln T + D T^E; coefficients A, B, C, D, E",
            5,
            5,
            c -> new Relation.Dippr101(c[0], c[1], c[2], c[3], c[4])),
    DIPPR_105(
            "y = A / B^(1 + (1 - T/C)^D); coefficients A, B, C, D",
            4,
            4,
            c -> new Relation.Dippr105(c[0], c[1], c[2], c[3])),
    DIPPR_106(
            "y = A (1 - Tr)^(B + C Tr + D Tr^2), Tr = T/Tc; coefficients Tc, A, B, C, D",
            5,
            5,
            c -> new Relation.Dippr106(c[0], c[1], c[2], c[3], c[4])),
    WAGNER(
            "ln(y/yc) = (Tc/T) sum of a (1 - T/Tc)^n; coefficients Tc, yc, then a and n of each term",
            4,
            16,
            EquationForm::wagner);

    private final String meaning;
    private final int fewest;
    private final int most;
    private final Function<double[], Relation> maker;

    EquationForm(String meaning, int fewest, int most, Function<double[], Relation> maker) {
        this.meaning = meaning;
        this.fewest = fewest;
        this.most = most;
        this.maker = maker;
    }

    /** The form's name in data files. */
    String text() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The equation, for people. */
    String meaning() {
        return meaning;
    }

    /** Whether so many coefficients make one such equation. */
    boolean takes(int coefficients) {
        return coefficients >= fewest && coefficients <= most && (this != WAGNER || coefficients % 2 == 0);
    }

    /** How many coefficients it takes, for people. */
    String coefficientCount() {
        return fewest == most ? Integer.toString(fewest) : fewest + " to " + most;
    }

    /** The relation with the given coefficients, of which {@link #takes} has approved the number. */
    Relation relation(double[] coefficients) {
        return maker.apply(coefficients);
    }

    static Optional<EquationForm> of(String text) {
        return Arrays.stream(values()).filter(form -> form.text().equals(text)).findFirst();
    }

    static List<String> texts(List<EquationForm> forms) {
        return forms.stream().map(EquationForm::text).toList();
    }

    private static Relation wagner(double[] c) {
        int terms = c.length / 2 - 1;
        double[] a = new double[terms];
        double[] n = new double[terms];
        for (int i = 0; i < terms; i++) {
            a[i] = c[2 + 2 * i];
            n[i] = c[3 + 2 * i];
        }
        return new Relation.Wagner(c[0], c[1], a, n);
    }
}
