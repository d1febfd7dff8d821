package boilwright.vacuum;

import boilwright.gasflow.OutgassingLaw;
import boilwright.outgassing.MaterialLibrary;
import boilwright.outgassing.MaterialRecord;

/** The outgassing data packed with the program. A material without a figure for the baked state is taken as not baked. */
public enum BuiltInRates implements SurfaceRates {
    INSTANCE;

    @Override
    public Rate of(String material, boolean baked, boolean humid, double sinceAirS) {
        MaterialRecord record = MaterialLibrary.builtIn().find(material);
        if (baked && record.baked().isPresent()) {
            return rate(record.baked().get());
        }
        MaterialRecord.Figure first = record.afterOneHour();
        MaterialRecord.Figure share = record.dryGasShare();
        double falls = OutgassingLaw.rate(1, record.exponent().value(), sinceAirS);
        return new Rate(
                first.value() * falls * (humid ? 1 : share.value()),
                first.low() * falls * (humid ? 1 : share.low()),
                first.high() * falls * (humid ? 1 : share.high()));
    }

    @Override
    public Rate permeability(String material) {
        return MaterialLibrary.builtIn()
                .find(material)
                .airPermeability()
                .map(BuiltInRates::rate)
                .orElse(new Rate(0, 0, 0));
    }

    private static Rate rate(MaterialRecord.Figure figure) {
        return new Rate(figure.value(), figure.low(), figure.high());
    }
}
