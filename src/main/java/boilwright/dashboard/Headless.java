package boilwright.dashboard;

/** The toolkit without a screen. Must be prepared before the toolkit starts. */
final class Headless {
    private Headless() {}

    /** Has the toolkit draw into memory. */
    static void prepare() {
        set("java.awt.headless", "true");
        set("glass.platform", "Monocle");
        set("monocle.platform", "Headless");
        set("prism.order", "sw");
        set("prism.text", "t2k");
    }

    private static void set(String property, String value) {
        System.setProperty(property, value);
    }
}
