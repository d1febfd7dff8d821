package boilwright.fluid;

import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;

/** Refusals of a state outside the span of a relation. */
final class Outside {
    private Outside() {}

    static ComputationException temperature(
            String substance, String property, double temperatureK, double lowestK, double highestK) {
        return new ComputationException(Message.of(
                MessageKey.PROPERTY_TEMPERATURE_OUTSIDE,
                substance,
                property,
                Numbers.text(temperatureK),
                Numbers.text(lowestK),
                Numbers.text(highestK)));
    }

    static ComputationException pressure(String substance, double pressurePa, double lowestPa, double highestPa) {
        return new ComputationException(Message.of(
                MessageKey.PROPERTY_PRESSURE_OUTSIDE,
                substance,
                Numbers.text(pressurePa),
                Numbers.text(lowestPa),
                Numbers.text(highestPa)));
    }
}
