package boilwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boilwright.answers.Margin;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.TimeSeries;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class SeriesCsvTest {
    @Test
    void givesEveryValueBackToTheLastBit() throws IOException {
        TimeSeries series = Samples.check(Margin.Status.HOLDS).warmup().series();
        try (CSVParser parser = CSVParser.parse(
                SeriesCsv.write(series),
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            List<CSVRecord> rows = parser.getRecords();
            assertThat(rows).hasSize(361);
            for (TimeSeries.Column column : series.columns()) {
                assertThat(rows.stream().mapToDouble(row -> Double.parseDouble(row.get(column.key()))))
                        .containsExactly(Arrays.stream(column.values()).boxed().toArray(Double[]::new));
            }
        }
    }

    @Test
    void headNamesTheKeysWithTheirUnits() {
        String head = SeriesCsv.write(
                        Samples.check(Margin.Status.HOLDS).warmup().series())
                .lines()
                .findFirst()
                .orElseThrow();
        assertThat(head).startsWith("timeS,liquidTemperatureK,").contains("stage3FlowKgPerS");
    }

    @Test
    void aValueThatIsNoNumberIsAFaultOfTheProgram() {
        TimeSeries series = new TimeSeries(List.of(
                new TimeSeries.Column(SeriesQuantity.TIME, 0, "time", new double[] {0, Double.POSITIVE_INFINITY})));
        assertThatThrownBy(() -> SeriesCsv.write(series)).hasMessageContaining("timeS");
    }
}
