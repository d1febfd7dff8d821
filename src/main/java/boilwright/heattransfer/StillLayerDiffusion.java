package boilwright.heattransfer;

/**
 * How long gas dissolved in a still layer of liquid takes to leave through the free surface: the slowest mode of one-sided
 * diffusion, tau = 4 h^2/(pi^2 D) (J. Crank, The Mathematics of Diffusion, ch. 4, plane sheet). Any stirring is faster.
 */
public final class StillLayerDiffusion {
    private StillLayerDiffusion() {}

    /**
     * Time in which the content falls to 1/e once the first transient is over.
     *
     * @param depthM depth of the layer, closed below, m
     * @param diffusivity of the gas in the liquid, m2/s
     * @return s
     */
    public static double timeConstant(double depthM, double diffusivity) {
        return 4 * depthM * depthM / (Math.PI * Math.PI * diffusivity);
    }
}
