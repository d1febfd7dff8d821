package boilwright.answers;

import boilwright.rig.ContactBody;
import boilwright.rig.HeatSource;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.DeliveredHeat;
import boilwright.thermal.NeededState;

/**
 * Names the one thing that keeps a source from delivering what is needed, and what would cure it.
 *
 * @param kind the one thing
 * @param source what the source is called
 * @param reason what limits it, a whole sentence
 * @param cure what would help, a whole sentence
 */
public record HeatLimiter(Kind kind, String source, String reason, String cure) {
    /** What can limit a source. */
    public enum Kind {
        /** The schedule ends with the heat off. */
        OFF("off"),
        /** The schedule ends at a part of the power, and all of it would do. */
        LEVEL("level"),
        /** An induction field that finds nothing to heat. */
        NOT_FERROUS("not-ferrous"),
        /** A flame that licks past the base. */
        FLAME_WIDER_THAN_BASE("flame-wider-than-base"),
        /** The rated power itself. */
        RATING("rating"),
        /** The contact between source and boiler. */
        CONTACT("contact"),
        /** The temperature that the source may reach: not even a perfect contact would do. */
        SOURCE_TEMPERATURE("source-temperature"),
        /** Conduction through the boiler's wall. */
        WALL_CONDUCTION("wall-conduction");

        private final String id;

        Kind(String id) {
            this.id = id;
        }

        /** How files spell it. */
        public String id() {
            return id;
        }
    }

    /** Share of the gas below which a flame counts as wider than the base. */
    private static final double WIDE_FLAME_SHARE = 0.45;
    /** A heated body this near to its limit is held back by it, K. */
    private static final double AT_LIMIT_K = 12;
    /** The best contacts that are had on glass and on metal, W/(m2 K): the upper ends of their ranges. */
    private static final double GOOD_ON_GLASS = Parameter.CONTACT_FLAT_GLASS.high();

    private static final double GOOD_ON_METAL = Parameter.CONTACT_MACHINED_METAL.high();

    /**
     * What limits the source of a rig.
     *
     * @param rig the rig
     * @param values its parameter values
     * @param needed the state in which its weakest jet is just full
     */
    public static HeatLimiter of(Rig rig, ParameterValues values, NeededState needed) {
        HeatSource source = rig.heatSource();
        String name = source.title();
        double level = lastLevel(rig);
        if (level == 0) {
            return new HeatLimiter(Kind.OFF, name, AnswerText.LIMIT_OFF.say(), AnswerText.CURE_OFF.say());
        }
        if (isBare(source.path()) && needed.heatAvailableW() == 0) {
            return new HeatLimiter(
                    Kind.NOT_FERROUS, name, AnswerText.LIMIT_NOT_FERROUS.say(), AnswerText.CURE_NOT_FERROUS.say());
        }
        if (level < 1 && atFullLevelW(rig, values, needed) >= needed.heatNeededW()) {
            return new HeatLimiter(
                    Kind.LEVEL, name, AnswerText.LIMIT_LEVEL.say(Say.percent(level)), AnswerText.CURE_LEVEL.say());
        }
        return source.isFlame()
                ? flame(name, source.ratedPowerW() * level, values, needed)
                : body(rig, values, needed, name, level);
    }

    /** What all of the power would deliver there, W: more gas does not heat in proportion, and a thermostat holds more back. */
    private static double atFullLevelW(Rig rig, ParameterValues values, NeededState needed) {
        return DeliveredHeat.atFullPower(rig, values)
                .watts(needed.state().outerFaceK(), needed.state().liquidTemperatureK());
    }

    /** Whether a field has only the boiler itself to heat. */
    private static boolean isBare(HeatSource.HeatPath path) {
        return switch (path) {
            case FLAME, CONTACT, OIL -> false;
            case BASE, NOWHERE -> true;
        };
    }

    private static HeatLimiter flame(String name, double fuel, ParameterValues values, NeededState needed) {
        double share = needed.heatAvailableW() / fuel;
        // a burner that is too small for any base gains nothing from a wider one
        boolean small = fuel * values.get(Parameter.BURNER_BEST_EFFICIENCY) < needed.heatNeededW();
        return share < WIDE_FLAME_SHARE && !small
                ? new HeatLimiter(
                        Kind.FLAME_WIDER_THAN_BASE,
                        name,
                        AnswerText.LIMIT_FLAME_WIDE.say(Say.power(fuel), Say.percent(share)),
                        AnswerText.CURE_FLAME_WIDE.say())
                : new HeatLimiter(
                        Kind.RATING,
                        name,
                        AnswerText.LIMIT_FLAME_SMALL.say(Say.power(fuel)),
                        AnswerText.CURE_FLAME_SMALL.say());
    }

    private static HeatLimiter body(Rig rig, ParameterValues values, NeededState needed, String name, double level) {
        HeatSource source = rig.heatSource();
        double face = needed.state().outerFaceK();
        if (source.path() == HeatSource.HeatPath.BASE) {
            double limit = source.limitK().orElseThrow();
            if (face > limit - AT_LIMIT_K) {
                return tooCold(name, limit, face);
            }
        }
        double most = source.ratedPowerW() * level * source.efficiency();
        if (most < needed.heatNeededW()) {
            return new HeatLimiter(
                    Kind.RATING,
                    name,
                    AnswerText.LIMIT_RATING_SMALL.say(name, Say.power(most), Say.power(needed.heatNeededW())),
                    AnswerText.CURE_RATING_SMALL.say());
        }
        if (source.touches()) {
            ContactBody body = source.body().orElseThrow();
            double conductance = body.conductance(values);
            double bodyK = face + needed.heatAvailableW() / (conductance * body.areaM2());
            if (bodyK > body.limitK() - AT_LIMIT_K) {
                return passage(rig, body, conductance, needed, name);
            }
        }
        double rated = source.ratedPowerW() * level;
        double lost = Math.max(0, rated - needed.heatAvailableW());
        return new HeatLimiter(
                Kind.RATING,
                name,
                AnswerText.LIMIT_RATING.say(name, Say.power(rated), Say.power(lost)),
                AnswerText.CURE_RATING.say());
    }

    /**
     * A body at its limit. Its contact is to blame when a good one over the whole base would carry the heat; the wall, when a good contact would
     * do it with a wall that conducts perfectly, and drops less than the wall; else the body is too cold for this boiler.
     */
    private static HeatLimiter passage(Rig rig, ContactBody body, double conductance, NeededState needed, String name) {
        double face = needed.state().outerFaceK();
        double limit = body.limitK();
        double room = limit - AT_LIMIT_K - face;
        double wallDrop = face - needed.state().innerFaceK();
        double wanted = needed.heatNeededW() * wantedRatio(rig);
        double good = rig.boiler().material().isGlass() ? GOOD_ON_GLASS : GOOD_ON_METAL;
        double area = Math.max(rig.boiler().heatedAreaM2(), body.areaM2());
        double best = Math.max(good, conductance) * area;
        if (room * best >= wanted) {
            return new HeatLimiter(
                    Kind.CONTACT,
                    name,
                    AnswerText.LIMIT_CONTACT.say(
                            name, Say.temperature(limit), Say.coefficient(conductance), word(body.contact())),
                    (body.contact() == HeatSource.Contact.WRAPPED
                                    ? AnswerText.CURE_CONTACT_WRAPPED
                                    : AnswerText.CURE_CONTACT)
                            .say());
        }
        if ((room + wallDrop) * best >= wanted && wallDrop > wanted / best) {
            return new HeatLimiter(
                    Kind.WALL_CONDUCTION,
                    name,
                    AnswerText.LIMIT_WALL.say(
                            name,
                            Say.temperature(limit),
                            Say.kelvins(wallDrop),
                            Say.kelvins(needed.heatNeededW() / (conductance * body.areaM2()))),
                    AnswerText.CURE_WALL.say());
        }
        return tooCold(name, limit, face);
    }

    private static HeatLimiter tooCold(String name, double limitK, double faceK) {
        return new HeatLimiter(
                Kind.SOURCE_TEMPERATURE,
                name,
                AnswerText.LIMIT_TOO_COLD.say(name, Say.temperature(limitK), Say.temperature(faceK)),
                AnswerText.CURE_TOO_COLD.say());
    }

    private static String word(HeatSource.Contact contact) {
        return switch (contact) {
            case MACHINED_METAL -> AnswerText.CONTACT_MACHINED_METAL.say();
            case FLAT_GLASS -> AnswerText.CONTACT_FLAT_GLASS.say();
            case DOMED_GLASS -> AnswerText.CONTACT_DOMED_GLASS.say();
            case WRAPPED -> AnswerText.CONTACT_MANTLE.say();
        };
    }

    /** Heat available over heat needed that is wanted: the rig's own, else 1.25. */
    public static double wantedRatio(Rig rig) {
        return rig.limits().heatMargin().orElse(MarginRules.HEAT_MARGIN);
    }

    private static double lastLevel(Rig rig) {
        return rig.schedule().last().level();
    }
}
