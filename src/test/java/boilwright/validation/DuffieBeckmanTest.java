package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.heattransfer.SolderedTube;
import boilwright.heattransfer.StraightFin;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Tubes on a sheet: J. A. Duffie and W. A. Beckman, Solar Engineering of Thermal Processes, example 6.5.1 (from memory): 8
 * W/(m2 K) on a copper plate of 0.5 mm (k 385), tubes of 10 mm 150 mm apart, 300 W/(m2 K) inside, perfect bond: F 0.938 and F'
 * 0.841.
 */
@Tag("validation")
class DuffieBeckmanTest {
    @Test
    void tubesOnACopperPlate() {
        double fin = StraightFin.efficiency(Math.sqrt(8 / (385 * 0.0005)), (0.150 - 0.010) / 2);
        assertThat(fin).isCloseTo(0.938, within(0.001));
        double tube = 1 / (Math.PI * 0.010 * 300);
        assertThat(SolderedTube.efficiencyFactor(8, 0.150, 0.010, fin, tube)).isCloseTo(0.841, within(0.001));
    }
}
