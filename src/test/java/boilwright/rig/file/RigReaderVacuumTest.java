package boilwright.rig.file;

import static boilwright.rig.file.Texts.faults;
import static org.assertj.core.api.Assertions.assertThat;

import boilwright.rig.Foreline;
import boilwright.rig.GasSide;
import boilwright.rig.LinePiece;
import boilwright.rig.PieceKind;
import boilwright.rig.Protection;
import boilwright.rig.Rig;
import boilwright.rig.RigPaths;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The gas side of rig files: what is read, and what is refused in which words. */
class RigReaderVacuumTest {
    private static final String MIRRORS = "version-3/mirror-club";

    private static String changed(String from, String to) {
        return Texts.changed(MIRRORS, from, to);
    }

    @Test
    void everyPartIsRead() {
        Rig rig = Texts.read(Texts.sample(MIRRORS));
        GasSide side = rig.vacuum().orElseThrow();
        assertThat(side.chamber().volumeM3()).isEqualTo(0.13);
        assertThat(side.chamber().exposure()).isEqualTo(GasSide.Exposure.HUMID_AIR);
        assertThat(side.chamber().surfaces()).hasSize(3);
        assertThat(side.chamber().seals()).hasSize(2);
        assertThat(side.line().get(1).kind()).isEqualTo(PieceKind.CHEVRON);
        assertThat(((LinePiece.Baffle) side.line().get(1).shape()).angleRad()).isEqualTo(Math.PI / 4);
        GasSide.Gauge gauge = side.gauge().orElseThrow();
        assertThat(gauge.lowestPa()).isEqualTo(GasSide.GaugeKind.COLD_CATHODE.lowestPa());
        assertThat(side.roughing()).hasSize(2);
        Foreline.Backing backing = (Foreline.Backing) rig.foreline();
        assertThat(backing.pump().ballastUltimatePa())
                .isEqualTo(10 * backing.pump().ultimatePa());
        assertThat(backing.pump().presentUltimatePa()).isEqualTo(5);
        assertThat(rig.protection().trips())
                .containsExactly(
                        new Protection.Trip(Protection.TripKind.BODY_TEMPERATURE, 353.15, 0),
                        new Protection.Trip(Protection.TripKind.WATER_FLOW, 0.5e-3 / 60, 5));
        assertThat(RigPaths.of(rig)).contains("vacuum.line[1].vanePitch", "foreline.pump.curve[2].speed");
    }

    @Test
    void whatIsWrittenReadsBack() {
        for (String name : new String[] {"mirror-club", "neon-workshop", "teaching-lab"}) {
            Rig rig = Texts.read(Texts.sample("version-3/" + name));
            assertThat(Texts.read(RigWriter.write(rig))).isEqualTo(rig);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"at\": \"chamber\"|\"at\": \"cellar\"|vacuum.gauge.at|water-cooled baffle",
                "\"length\": \"70 mm\"|\"length\": \"0 mm\"|vacuum.line[0].length|\"aperture\"",
                "\"length\": \"70 mm\"|\"length\": \"-70 mm\"|vacuum.line[0].length|accepted",
                "\"target\": \"0.01 Pa\"|\"target\": \"0 Pa\"|vacuum.target|accepted",
                "\"target\": \"0.01 Pa\"|\"target\": \"-1 Pa\"|vacuum.target|accepted",
                "\"target\": \"0.01 Pa\"|\"target\": \"10e-5 Pa\"|vacuum.target|1e-5",
                "\"vanePitch\": \"25 mm\"|\"vanePitch\": \"31 mm\"|vacuum.line[1].vanePitch|straight through",
                "\"material\": \"aluminium\", \"area\": \"0.4 m2\"|\"material\": \"aluminum\", \"area\": \"0.4 m2\"|"
                        + "vacuum.chamber.surfaces[1].material|aluminium",
                "\"name\": \"roughing valve\"|\"name\": \"roughing tube\"|vacuum.roughing[1].name|of its own",
                "\"name\": \"roughing valve\"|\"name\": \"chamber\"|vacuum.roughing[1].name|place of every rig",
                "\"cordDiameter\": \"8 mm\"|\"cordDiameter\": \"400 mm\"|vacuum.chamber.seals[0].cordDiameter|accepted",
                "\"volume\": \"2 L\"|\"volume\": \"2 L/min\"|foreline.volume|a volume flow",
                "\"pressure\": \"1000 Pa\"|\"pressure\": \"5 Pa\"|foreline.pump.curve[1].pressure|rising pressure",
                "\"ultimate\": \"5 Pa\"|\"ultimate\": \"5 Torr\"|foreline.pump.ultimate|5 mTorr",
                "\"angle\": \"90 deg\"|\"angle\": \"150 deg\"|foreline.line[1].angle|accepted",
                "\"kind\": \"chevron\"|\"kind\": \"chevrons\"|vacuum.line[1].kind|chevron",
                "\"delay\": \"5 s\"|\"delay\": \"5 h\"|protection.trips[1].delay|did you mean 5 s",
                "\"flow\": \"0.5 L/min\", \"delay\"|\"temperature\": \"80 degC\", \"delay\"|protection.trips[1].flow|missing",
                "\"kind\": \"backing-pump\"|\"kind\": \"pump\"|foreline.kind|backing-pump",
            })
    void badInputNamesFieldAndWhatIsAccepted(String from, String to, String path, String accepted) {
        assertThat(faults(changed(from, to)))
                .anySatisfy(fault ->
                        assertThat(fault).contains("line ").contains(path).contains(accepted));
    }

    @Test
    void aValveBetterThanItsBoreAndAConeOfOneBoreAreRefused() {
        assertThat(faults(changed("\"length\": \"70 mm\" }", "\"length\": \"70 mm\", \"conductance\": \"9000 L/s\" }")))
                .singleElement()
                .asString()
                .contains("vacuum.line[0].conductance")
                .contains("bare hole");
        assertThat(faults(Texts.changed(
                        "version-3/teaching-lab", "\"outletDiameter\": \"56 mm\"", "\"outletDiameter\": \"32 mm\"")))
                .singleElement()
                .asString()
                .contains("vacuum.line[1].outletDiameter")
                .contains("\"tube\"");
    }
}
