package boilwright.choice;

import boilwright.rig.HeatSource;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import java.util.OptionalDouble;

/** The same heat source with one of its figures changed, and which of these figures a source has. */
final class SourceChange {
    private SourceChange() {}

    static HeatSource power(HeatSource source, double watts) {
        if (source instanceof HeatSource.GasBurner b) {
            return new HeatSource.GasBurner(watts, b.cartridge());
        } else if (source instanceof HeatSource.ImmersedElement e) {
            return new HeatSource.ImmersedElement(watts, e.surfaceAreaM2());
        }
        return body(source, watts, areaOf(source), conductanceOf(source), limitOf(source));
    }

    /** The same plate, mantle, heater or susceptor with another contact, W/(m2 K). */
    static HeatSource conductance(HeatSource source, double h) {
        return body(source, source.ratedPowerW(), areaOf(source), OptionalDouble.of(h), limitOf(source));
    }

    static HeatSource limit(HeatSource source, double limitK) {
        return body(source, source.ratedPowerW(), areaOf(source), conductanceOf(source), limitK);
    }

    /** The same plate, mantle, heater or susceptor touching another area, m2. */
    static HeatSource area(HeatSource source, double m2) {
        return body(source, source.ratedPowerW(), m2, conductanceOf(source), limitOf(source));
    }

    /** Whether heat passes from a heated body through a contact into the boiler. */
    static boolean touches(HeatSource source) {
        return source instanceof HeatSource.ContactPlate
                || source instanceof HeatSource.HeatingMantle
                || source instanceof HeatSource.ClampedHeater
                || (source instanceof HeatSource.Induction i && i.susceptor() == HeatSource.Susceptor.PLATE);
    }

    /** Contact conductance, given or usual, W/(m2 K); the source touches. */
    static double conductance(HeatSource source, ParameterValues values) {
        return conductanceOf(source).orElseGet(() -> values.get(usual(source)));
    }

    private static Parameter usual(HeatSource source) {
        if (source instanceof HeatSource.HeatingMantle) {
            return Parameter.CONTACT_MANTLE;
        }
        HeatSource.Contact contact = source instanceof HeatSource.ContactPlate p
                ? p.contact()
                : source instanceof HeatSource.Induction i ? i.contact() : HeatSource.Contact.MACHINED_METAL;
        return switch (contact) {
            case MACHINED_METAL -> Parameter.CONTACT_MACHINED_METAL;
            case FLAT_GLASS -> Parameter.CONTACT_FLAT_GLASS;
            case DOMED_GLASS -> Parameter.CONTACT_DOMED_GLASS;
        };
    }

    private static OptionalDouble conductanceOf(HeatSource source) {
        if (source instanceof HeatSource.ContactPlate p) {
            return p.contactConductance();
        } else if (source instanceof HeatSource.HeatingMantle m) {
            return m.contactConductance();
        } else if (source instanceof HeatSource.ClampedHeater c) {
            return c.contactConductance();
        }
        return ((HeatSource.Induction) source).contactConductance();
    }

    /** Area of contact, m2, of a source that has one. */
    static double areaOf(HeatSource source) {
        if (source instanceof HeatSource.ContactPlate p) {
            return p.contactAreaM2();
        } else if (source instanceof HeatSource.HeatingMantle m) {
            return m.wrappedAreaM2();
        } else if (source instanceof HeatSource.ClampedHeater c) {
            return c.contactAreaM2();
        }
        return ((HeatSource.Induction) source).contactAreaM2();
    }

    /** Temperature at which the source holds itself, K, of a source that has one. */
    static double limitOf(HeatSource source) {
        if (source instanceof HeatSource.ContactPlate p) {
            return p.limitK();
        } else if (source instanceof HeatSource.HeatingMantle m) {
            return m.limitK();
        } else if (source instanceof HeatSource.ClampedHeater c) {
            return c.limitK();
        }
        return ((HeatSource.Induction) source).limitK();
    }

    private static HeatSource body(HeatSource source, double watts, double m2, OptionalDouble h, double limitK) {
        if (source instanceof HeatSource.ContactPlate p) {
            return new HeatSource.ContactPlate(
                    watts,
                    p.contact(),
                    m2,
                    h,
                    p.heatCapacity(),
                    limitK,
                    p.thermostat(),
                    p.lossAreaM2(),
                    p.lossEmissivity(),
                    p.insulationThicknessM(),
                    p.insulationConductivity());
        } else if (source instanceof HeatSource.HeatingMantle m) {
            return new HeatSource.HeatingMantle(
                    watts,
                    m2,
                    h,
                    m.heatCapacity(),
                    limitK,
                    m.lossAreaM2(),
                    m.lossEmissivity(),
                    m.insulationThicknessM(),
                    m.insulationConductivity());
        } else if (source instanceof HeatSource.ClampedHeater c) {
            return new HeatSource.ClampedHeater(
                    watts,
                    m2,
                    h,
                    c.heatCapacity(),
                    limitK,
                    c.thermostat(),
                    c.lossAreaM2(),
                    c.lossEmissivity(),
                    c.insulationThicknessM(),
                    c.insulationConductivity());
        }
        HeatSource.Induction i = (HeatSource.Induction) source;
        return new HeatSource.Induction(
                watts,
                i.susceptor(),
                i.efficiency(),
                i.contact(),
                m2,
                h,
                i.heatCapacity(),
                limitK,
                i.lossAreaM2(),
                i.lossEmissivity());
    }
}
