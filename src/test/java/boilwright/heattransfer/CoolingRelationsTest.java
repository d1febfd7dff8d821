package boilwright.heattransfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The relations of the cooling side against their own limits, each other and independent numerical work. */
class CoolingRelationsTest {
    @Test
    void nothingFlowsNothingIsLost() {
        assertThat(DarcyWeisbach.pressureDrop(ChurchillFriction.timesReynolds(0, 0.001), 1e-3, 0, 2, 8e-3))
                .isZero();
        assertThat(MinorLoss.pressureDrop(2, 1000, 0)).isZero();
        assertThat(FlowCoefficient.pressureDrop(0.5, 1000, 0)).isZero();
        assertThat(EffectivenessNtu.heat(10, 0, 350, 290)).isZero();
        assertThat(EffectivenessNtu.heat(0, 0, 350, 290)).isZero();
        assertThat(EffectivenessNtu.outlet(10, 0, 350, 290)).isEqualTo(350);
        assertThat(PlateFinChannel.nusselt(0, 0.7)).isZero();
    }

    /** Backwards through the same tube loses the same. */
    @Test
    void lossesHaveTheSignOfTheFlow() {
        assertThat(DarcyWeisbach.pressureDrop(64, 1e-3, -0.1, 2, 8e-3))
                .isEqualTo(-DarcyWeisbach.pressureDrop(64, 1e-3, 0.1, 2, 8e-3));
        assertThat(MinorLoss.pressureDrop(2, 1000, -0.5)).isEqualTo(-250);
        assertThat(FlowCoefficient.pressureDrop(1, 1000, -1 / 3600.0)).isCloseTo(-1e5, within(1e-6));
    }

    /** Hagen and Poiseuille: 32 mu v L/d^2. */
    @Test
    void laminarLossIsPoiseuilles() {
        double fRe = ChurchillFriction.timesReynolds(800, 0);
        assertThat(DarcyWeisbach.pressureDrop(fRe, 1e-3, 0.1, 2, 8e-3))
                .isCloseTo(32 * 1e-3 * 0.1 * 2 / 64e-6, within(1e-9));
    }

    /** 1 Cv, which is 0.865 Kv: one US gallon (3.785411784 L) a minute at 1 psi (6894.757 Pa). */
    @Test
    void theFlowCoefficientAgreesWithItsDefinition() {
        assertThat(FlowCoefficient.pressureDrop(0.865, 1000, 3.785411784e-3 / 60))
                .isCloseTo(6894.757, within(1.0));
    }

    @Test
    void smoothMaximumIsTheMaximumAwayFromTheCrossing() {
        assertThat(SmoothMaximum.of(3, 3)).isCloseTo(3.06, within(1e-3));
        assertThat(SmoothMaximum.of(3, 1)).isCloseTo(3, within(1e-3));
        assertThat(SmoothMaximum.of(0, 5)).isCloseTo(5, within(1e-3));
        assertThat(SmoothMaximum.of(0, 0)).isZero();
    }

    @Test
    void aTubeThatIsHardlyBentIsStraight() {
        assertThat(ManlapazChurchill.nusselt(0, 7)).isCloseTo(3.657, within(1e-9));
        assertThat(MishraGupta.laminarRatio(1)).isEqualTo(1);
        assertThat(MishraGupta.timesReynolds(1500, 1e-9, 0)).isCloseTo(64, within(0.5));
        for (double reynolds = 6000; reynolds < 1e5; reynolds *= 1.3) {
            assertThat(MishraGupta.timesReynolds(reynolds, 1e-9, 1e-4)
                            / ChurchillFriction.timesReynolds(reynolds, 1e-4))
                    .isCloseTo(1, within(0.002));
        }
        assertThat(CoilFlow.nusselt(0, 7, 0.1, 0.01, 0)).isCloseTo(LaminarTube.DEVELOPED_TEMPERATURE, within(1e-3));
    }

    @Test
    void theFloorHoldsWhenTheFlowStops() {
        assertThat(CoilFlow.nusselt(0, 7, 0.1, 0.01, 12)).isCloseTo(12, within(0.02));
        assertThat(CoilFlow.nusselt(2e4, 7, 0.1, 0.01, 12))
                .isCloseTo(CoilFlow.nusselt(2e4, 7, 0.1, 0.01, 0), within(0.05));
    }

    /** The wall is long: cut in two, both halves together do what the whole does. */
    @Test
    void twoHalvesAreTheWhole() {
        double middle = EffectivenessNtu.outlet(40, 70, 340, 290);
        double halves = EffectivenessNtu.heat(40, 70, 340, 290) + EffectivenessNtu.heat(40, 70, 340, middle);
        double whole = EffectivenessNtu.heat(80, 70, 340, 290);
        assertThat(halves).isCloseTo(whole, within(1e-9));
        assertThat(70 * (EffectivenessNtu.outlet(80, 70, 340, 290) - 290)).isCloseTo(whole, within(1e-9));
        assertThat(80 * (340 - EffectivenessNtu.mean(80, 70, 340, 290))).isCloseTo(whole, within(1e-9));
        assertThat(EffectivenessNtu.mean(0, 70, 340, 290)).isEqualTo(290);
        assertThat(EffectivenessNtu.effectiveness(Double.POSITIVE_INFINITY)).isEqualTo(1);
    }

    @Test
    void finEfficiencyIsContinuousAtItsSeries() {
        assertThat(StraightFin.efficiency(1, 0.99999e-4))
                .isCloseTo(StraightFin.efficiency(1, 1.00001e-4), within(1e-12));
        assertThat(StraightFin.efficiency(1, 0)).isEqualTo(1);
        assertThat(FinnedSurface.efficiency(0.9, 1, 0.5)).isCloseTo(0.55, within(1e-12));
    }

    /** The exact solution with Bessel functions, whose integrals are summed here. */
    @Test
    void annularFinFollowsTheExactSolution() {
        for (double ratio : new double[] {1.2, 1.5, 2, 3}) {
            for (double x = 0.1; x < 3; x += 0.2) {
                double inner = x / (ratio - 1);
                double exact = exactAnnularFin(inner, inner * ratio);
                if (exact > 0.5) {
                    assertThat(AnnularFin.efficiency(1, inner, inner * ratio) / exact)
                            .isBetween(0.983, 1.0005);
                }
            }
        }
    }

    private static double exactAnnularFin(double a, double b) {
        double above = k(1, a) * i(1, b) - i(1, a) * k(1, b);
        double below = i(0, a) * k(1, b) + k(0, a) * i(1, b);
        return 2 * a / (b * b - a * a) * above / below;
    }

    private static double i(int order, double x) {
        int steps = 400;
        double sum = 0;
        for (int j = 0; j < steps; j++) {
            double angle = (j + 0.5) * Math.PI / steps;
            sum += Math.exp(x * Math.cos(angle)) * Math.cos(order * angle);
        }
        return sum / steps;
    }

    private static double k(int order, double x) {
        double step = 0.005;
        double sum = 0;
        for (double t = step / 2; t < 12; t += step) {
            sum += Math.exp(-x * Math.cosh(t)) * Math.cosh(order * t);
        }
        return sum * step;
    }

    /** A sheet with even flux, solved by finite differences. */
    @Test
    void sheetResistanceIsThatOfEvenFlux() {
        double pitch = 0.04;
        double bond = 0.006;
        double kt = 50 * 0.002;
        int cells = 4000;
        double dx = (pitch - bond) / 2 / cells;
        double flux = 1000;
        // from the middle between two tubes (no flow across) to the bond; temperatures above the bond's
        double[] above = new double[cells + 1];
        for (int j = cells - 1; j >= 0; j--) {
            above[j] = above[j + 1] + flux * (j + 0.5) * dx / kt * dx;
        }
        double sum = 0;
        for (int j = 0; j < cells; j++) {
            sum += (above[j] + above[j + 1]) / 2 * dx;
        }
        double mean = 2 * sum / pitch;
        assertThat(SolderedTube.sheetResistance(pitch, bond, 50, 0.002)).isCloseTo(mean / (flux * pitch), within(1e-7));
        double tube = SolderedTube.conductance(
                900, 0.006, SolderedTube.bondConductance(50, bond, 0.001), mean / (flux * pitch));
        assertThat(1 / tube)
                .isCloseTo(1 / (900 * Math.PI * 0.006) + 1 / (50 * 6.0) + mean / (flux * pitch), within(1e-9));
    }

    /** Heated weakly, the collector's factor and the even-flux resistance are one thing. */
    @Test
    void weaklyHeatedSheetHasTheResistanceOfEvenFlux() {
        double pitch = 0.04;
        double bond = 0.006;
        double face = 0.01;
        double parameter = Math.sqrt(face / (50 * 0.002));
        double tube = 0.03;
        double factor = SolderedTube.efficiencyFactor(
                face, pitch, bond, StraightFin.efficiency(parameter, (pitch - bond) / 2), tube);
        double resistance = (1 / factor - 1) / (face * pitch);
        assertThat(resistance).isCloseTo(tube + SolderedTube.sheetResistance(pitch, bond, 50, 0.002), within(1e-5));
    }

    /** Slow air leaves as warm as the fins; fast air meets a flat plate. */
    @Test
    void finChannelHasBothItsLimits() {
        double velocity = 0.001;
        double nu = 16e-6;
        double gap = 4e-3;
        double length = 0.1;
        double re = PlateFinChannel.channelReynolds(velocity, gap, length, nu);
        double conductivity = 0.026;
        double prandtl = 0.71;
        double h = PlateFinChannel.nusselt(re, prandtl) * conductivity / gap;
        // rho cp = k Pr/nu
        double capacity = conductivity * prandtl / nu * velocity * gap;
        assertThat(h * 2 * length / capacity).isCloseTo(1, within(1e-3));
        double fast = 1e6;
        assertThat(PlateFinChannel.nusselt(fast, prandtl) / (0.664 * Math.sqrt(fast) * Math.cbrt(prandtl)))
                .isCloseTo(1, within(0.003));
    }

    @Test
    void tankWarmsToItsBalance() {
        double seconds = 1e6;
        assertThat(StirredTank.temperature(290, 20, 2, 295, 4e4, seconds)).isCloseTo(305, within(1e-6));
        double slight = StirredTank.temperature(290, 300, 1e-9, 295, 4e4, 600);
        assertThat(slight).isCloseTo(StirredTank.temperature(290, 300, 0, 295, 4e4, 600), within(1e-7));
        double halfway = StirredTank.temperature(290, 20, 2, 295, 4e4, 5000);
        assertThat(StirredTank.temperature(halfway, 20, 2, 295, 4e4, 5000))
                .isCloseTo(StirredTank.temperature(290, 20, 2, 295, 4e4, 10000), within(1e-9));
        assertThat(StirredTank.meltingTime(2, 333.6e3, 0)).isInfinite();
        assertThat(StirredTank.meltingTime(0, 333.6e3, 0)).isZero();
    }

    @Test
    void hoseWallIsALogarithm() {
        assertThat(CylinderWall.resistance(0.2, 0.01, 0.01, 1)).isZero();
        double thin = CylinderWall.resistance(0.2, 0.01, 0.01002, 2);
        assertThat(thin).isCloseTo(1e-5 / (0.2 * Math.PI * 0.01001 * 2), within(1e-9));
    }
}
