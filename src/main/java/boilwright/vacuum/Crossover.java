package boilwright.vacuum;

import java.util.OptionalDouble;

/**
 * From roughing to the jets.
 *
 * @param aroundPump whether the chamber is roughed past the pump; otherwise through it, and nothing has to be switched
 * @param roughingFromS when roughing begins, s after the foreline is down; negative when it is done through the pump before
 * @param roughingS how long it takes, s
 * @param timeS when the jets take over, s; empty when they are not ready or roughing does not get there
 * @param allowedPa chamber pressure at which they may, Pa
 * @param overloadS how long the jets are overloaded after that, s: V p/Qmax; infinite when they carry nothing
 */
public record Crossover(
        boolean aroundPump,
        double roughingFromS,
        double roughingS,
        OptionalDouble timeS,
        double allowedPa,
        double overloadS) {}
