package boilwright.fluid;

/**
 * One line of what is known of a fluid, as text for people.
 *
 * @param title which property; an alternative that is recorded but not used says so
 * @param valueText the figure or the equation with its coefficients, or that and why no figure is available
 * @param unit unit of the figure as the source gives it; empty for a yes-or-no or a ratio
 * @param range temperatures between which the source vouches for it, and what is done outside; empty when not stated
 * @param uncertainty how far off it may be; empty when not known
 * @param source citation with table or page; empty when no figure is available
 * @param fromMemory true when the source was not seen by those who wrote the figure down
 */
public record PropertyEntry(
        String title,
        String valueText,
        String unit,
        String range,
        String uncertainty,
        String source,
        boolean fromMemory) {}
