package boilwright.spread;

import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.answers.Trial;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.numerics.FirstOrderShares;
import boilwright.numerics.Tally;
import boilwright.thermal.TimeEvent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Takes the samples in, in the order of their indices, and keeps no more of them than the answer needs: tallies, sums and counts, whose
 * size does not grow with the number of samples.
 */
final class Collector {
    private static final double HOUR_S = 3600;
    /** An event at once has no time to compare others with. */
    private static final double LEAST_S = 1;

    private final List<SpreadInput> inputs;
    private final Map<MarginId, MarginTally> margins = new LinkedHashMap<>();
    private final Map<EventKey, EventTally> events = new LinkedHashMap<>();
    private final Map<MessageKey, Rejected> rejected = new LinkedHashMap<>();
    private int done;
    private int accepted;
    private int failing;

    private final class MarginTally {
        private final Margin first;
        private final Optional<Margin> nominal;
        private final Tally value = new Tally();
        private final Tally ratio = new Tally();
        private final FirstOrderShares shares = new FirstOrderShares(inputs.size());
        private long fails;

        MarginTally(Margin first, Optional<Margin> nominal) {
            this.first = first;
            this.nominal = nominal;
        }

        void add(double[] point, Margin margin) {
            margin.value().ifPresent(value::add);
            if (margin.ratio().isPresent()) {
                double r = margin.ratio().getAsDouble();
                ratio.add(r);
                shares.add(point, r / (1 + r)); // far margins are all alike, what counts is near the limit
                fails += r < 1 ? 1 : 0;
            }
        }

        MarginSpread spread() {
            Bands.MarginBand band =
                    new Bands.MarginBand(Band.of(value), Band.of(ratio), new Chance(fails, ratio.finite()));
            return new MarginSpread(first.id(), first.side(), nominal, band, sorted(shares), noise(shares));
        }
    }

    private final class EventTally {
        private final EventKey key;
        private final OptionalDouble nominalS;
        private final boolean ranked;
        private final Tally time = new Tally();
        private final FirstOrderShares shares = new FirstOrderShares(inputs.size());

        EventTally(EventKey key, OptionalDouble nominalS, boolean ranked) {
            this.key = key;
            this.nominalS = nominalS;
            this.ranked = ranked;
        }

        void add(double[] point, OptionalDouble timeS) {
            if (timeS.isPresent()) {
                time.add(timeS.getAsDouble());
            } else {
                time.addNever(1);
            }
            if (ranked) {
                double unit = Math.max(LEAST_S, nominalS.orElse(HOUR_S));
                shares.add(point, timeS.isPresent() ? unit / (unit + timeS.getAsDouble()) : 0);
            }
        }

        EventSpread spread() {
            long all = time.finite() + time.never();
            return new EventSpread(
                    key,
                    nominalS,
                    new Bands.EventBand(Band.of(time), new Chance(time.never(), all)),
                    sorted(shares),
                    noise(shares));
        }
    }

    private static final class Rejected {
        private final int firstIndex;
        private final String example;
        private final boolean impossible;
        private long samples;

        Rejected(int firstIndex, String example, boolean impossible) {
            this.firstIndex = firstIndex;
            this.example = example;
            this.impossible = impossible;
        }
    }

    /**
     * @param inputs what is varied
     * @param nominal the answer of the rig as it stands: it gives the order, and the times that others are compared with
     */
    Collector(List<SpreadInput> inputs, Trial nominal) {
        this.inputs = inputs;
        nominal.margins().forEach(m -> margins.put(m.id(), new MarginTally(m, Optional.of(m))));
        List<EventKey> keys = EventKey.of(nominal.events());
        for (int i = 0; i < keys.size(); i++) {
            events.put(
                    keys.get(i),
                    new EventTally(keys.get(i), nominal.events().get(i).timeS(), true));
        }
    }

    /** A sample with its answer. */
    void add(double[] point, Trial trial) {
        boolean fails = false;
        for (Margin margin : trial.margins()) {
            margins.computeIfAbsent(margin.id(), id -> new MarginTally(margin, Optional.empty()))
                    .add(point, margin);
            fails |= margin.status() == Margin.Status.FAILS;
        }
        addEvents(point, trial.events());
        failing += fails ? 1 : 0;
        accepted++;
        done++;
    }

    private void addEvents(double[] point, List<TimeEvent> list) {
        List<EventKey> keys = EventKey.of(list);
        Map<EventKey, OptionalDouble> times = new HashMap<>();
        for (int i = 0; i < keys.size(); i++) {
            times.put(keys.get(i), list.get(i).timeS());
            if (!events.containsKey(keys.get(i))) {
                EventTally unheardOf = new EventTally(keys.get(i), OptionalDouble.empty(), false);
                unheardOf.time.addNever(accepted);
                events.put(keys.get(i), unheardOf);
            }
        }
        events.forEach((key, tally) -> tally.add(point, times.getOrDefault(key, OptionalDouble.empty())));
    }

    /**
     * A sample without an answer.
     *
     * @param reason what was said
     * @param impossible whether its values do not fit one another
     */
    void reject(Message reason, boolean impossible) {
        rejected.computeIfAbsent(reason.key(), key -> new Rejected(done, reason.text(), impossible)).samples++;
        done++;
    }

    /** How many samples were taken in. */
    int done() {
        return done;
    }

    /** How many of them gave an answer. */
    int accepted() {
        return accepted;
    }

    /** In how many of these some margin fails. */
    Chance failing() {
        return new Chance(failing, accepted);
    }

    List<MarginSpread> margins() {
        return margins.values().stream().map(MarginTally::spread).toList();
    }

    List<EventSpread> events() {
        return events.values().stream().map(EventTally::spread).toList();
    }

    List<SpreadAnswer.Rejection> rejections() {
        List<SpreadAnswer.Rejection> list = new ArrayList<>();
        rejected.forEach((key, r) -> list.add(
                new SpreadAnswer.Rejection(key.bundleKey(), r.samples, r.impossible, r.firstIndex, r.example)));
        list.sort(Comparator.comparingLong(SpreadAnswer.Rejection::samples).reversed());
        return list;
    }

    private List<InputShare> sorted(FirstOrderShares shares) {
        List<InputShare> list = new ArrayList<>();
        for (int i = 0; i < inputs.size() && shares.isKnown(); i++) {
            list.add(new InputShare(inputs.get(i).id(), shares.share(i)));
        }
        // The order of the inputs decides between equals: the sort is stable.
        list.sort(Comparator.comparingDouble(InputShare::share).reversed());
        return list;
    }

    private static double noise(FirstOrderShares shares) {
        return shares.isKnown() ? shares.noise() : 0;
    }
}
