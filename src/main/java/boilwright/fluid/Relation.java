package boilwright.fluid;

/** One property as a function of temperature. Implementations never allocate. */
interface Relation {
    /** The property at a temperature in K, in the unit of the coefficients. */
    double value(double temperatureK);

    /** Its derivative, per K. */
    double slope(double temperatureK);

    /** A relation times a factor; polynomials stay polynomials, because enthalpy is their integral. */
    static Relation scaled(Relation relation, double factor) {
        if (factor == 1) {
            return relation;
        }
        return relation instanceof Polynomial polynomial ? polynomial.times(factor) : new Scaled(relation, factor);
    }

    /** {@code ln y = a + b / (T - c)}: A-B/T lines, Antoine and Vogel equations after their logarithm is made natural. */
    record LogInverse(double a, double b, double c) implements Relation {
        @Override
        public double value(double t) {
            return Math.exp(a + b / (t - c));
        }

        @Override
        public double slope(double t) {
            double d = t - c;
            return -value(t) * b / (d * d);
        }
    }

    /** {@code ln y = c1 + c2 / T + c3 ln T + c4 T^c5}, equation 101 of the DIPPR project. */
    record Dippr101(double c1, double c2, double c3, double c4, double c5) implements Relation {
        @Override
        public double value(double t) {
            return Math.exp(c1 + c2 / t + c3 * Math.log(t) + c4 * Math.pow(t, c5));
        }

        @Override
        public double slope(double t) {
            return value(t) * (-c2 / (t * t) + c3 / t + c4 * c5 * Math.pow(t, c5 - 1));
        }
    }

    /** {@code y = c1 / c2^(1 + (1 - T/c3)^c4)}, equation 105 of the DIPPR project. */
    record Dippr105(double c1, double c2, double c3, double c4) implements Relation {
        @Override
        public double value(double t) {
            return c1 / Math.pow(c2, 1 + Math.pow(1 - t / c3, c4));
        }

        @Override
        public double slope(double t) {
            return value(t) * Math.log(c2) * c4 / c3 * Math.pow(1 - t / c3, c4 - 1);
        }
    }

    /**
     * {@code y = c1 (1 - Tr)^(c2 + c3 Tr + c4 Tr^2)}, {@code Tr = T / tc}: equation 106 of the DIPPR project; with c3 and
     * c4 zero, Guggenheim's and Watson's forms.
     */
    record Dippr106(double tc, double c1, double c2, double c3, double c4) implements Relation {
        @Override
        public double value(double t) {
            double tr = t / tc;
            return c1 * Math.pow(1 - tr, c2 + tr * (c3 + tr * c4));
        }

        @Override
        public double slope(double t) {
            double tr = t / tc;
            double exponent = c2 + tr * (c3 + tr * c4);
            return value(t) / tc * ((c3 + 2 * c4 * tr) * Math.log(1 - tr) - exponent / (1 - tr));
        }
    }

    /** {@code ln(y / yc) = (Tc / T) sum a_i (1 - T/Tc)^n_i}: Wagner's form. */
    record Wagner(double tc, double yc, double[] a, double[] n) implements Relation {
        @Override
        public double value(double t) {
            double tau = 1 - t / tc;
            double sum = 0;
            for (int i = 0; i < a.length; i++) {
                sum += a[i] * Math.pow(tau, n[i]);
            }
            return yc * Math.exp(tc / t * sum);
        }

        @Override
        public double slope(double t) {
            double tau = 1 - t / tc;
            double sum = 0;
            double sumSlope = 0;
            for (int i = 0; i < a.length; i++) {
                double term = a[i] * Math.pow(tau, n[i] - 1);
                sum += term * tau;
                sumSlope += term * n[i];
            }
            return yc * Math.exp(tc / t * sum) * -(tc / t * sum + sumSlope) / t;
        }
    }

    /** {@code y = c0 + c1 x + c2 x^2 + ...}, {@code x = T - t0}. */
    record Polynomial(double t0, double[] c) implements Relation {
        @Override
        public double value(double t) {
            double x = t - t0;
            double y = 0;
            for (int i = c.length - 1; i >= 0; i--) {
                y = y * x + c[i];
            }
            return y;
        }

        @Override
        public double slope(double t) {
            double x = t - t0;
            double y = 0;
            for (int i = c.length - 1; i >= 1; i--) {
                y = y * x + i * c[i];
            }
            return y;
        }

        /** The polynomial whose slope this is; zero at the given temperature. */
        Polynomial integralFrom(double zeroK) {
            double[] integral = new double[c.length + 1];
            for (int i = 0; i < c.length; i++) {
                integral[i + 1] = c[i] / (i + 1);
            }
            integral[0] = -new Polynomial(t0, integral).value(zeroK);
            return new Polynomial(t0, integral);
        }

        /** The same polynomial times a factor. */
        Polynomial times(double factor) {
            double[] scaled = c.clone();
            for (int i = 0; i < scaled.length; i++) {
                scaled[i] *= factor;
            }
            return new Polynomial(t0, scaled);
        }
    }

    /** {@code y = y0 exp(-b (T - t0))}: a liquid of constant volume expansion. */
    record Exponential(double y0, double b, double t0) implements Relation {
        @Override
        public double value(double t) {
            return y0 * Math.exp(-b * (t - t0));
        }

        @Override
        public double slope(double t) {
            return -b * value(t);
        }
    }

    /** A relation times a factor: from the unit of the file to SI. */
    record Scaled(Relation relation, double factor) implements Relation {
        @Override
        public double value(double t) {
            return factor * relation.value(t);
        }

        @Override
        public double slope(double t) {
            return factor * relation.slope(t);
        }
    }
}
