// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.work;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spadework.job.FootingDrain;
import spadework.job.SolidRun;
import spadework.job.Water;
import spadework.measure.Length;

/**
 * An end of a pipe, seen with the water.
 *
 * @param key by which the job calls the level there
 * @param flow what the water does there
 * @param at the wall that it lies at; empty where the pipe has one way only
 * @param level of the inside bottom there, where it was measured
 */
public record PipeEnd(String key, Flow flow, String at, Optional<Length> level) {

    /** What the water does at an end. */
    public enum Flow {
        IN,
        OUT
    }

    /** The ends of a drain: the highest first, a tee in the middle last. */
    public static List<PipeEnd> of(FootingDrain drain) {
        List<String> along = drain.along();
        PipeEnd start = new PipeEnd("startInvert", Flow.IN, "", drain.startInvert());
        PipeEnd end = new PipeEnd("endInvert", Flow.IN, "", drain.endInvert());
        return switch (drain.teeAt()) {
            case END -> List.of(start, end.out());
            case START -> List.of(end, start.out());
            case MIDDLE ->
                List.of(
                        start.at(along.get(0)),
                        end.at(along.get(along.size() - 1)),
                        new PipeEnd("teeInvert", Flow.OUT, "", drain.teeInvert()));
        };
    }

    /** The ends of a solid pipe. */
    public static List<PipeEnd> of(SolidRun run) {
        return List.of(
                new PipeEnd("startInvert", Flow.IN, "", run.startInvert()),
                new PipeEnd("endInvert", Flow.OUT, "", run.endInvert()));
    }

    /** The ends of the pipe of that name; none where there is no such pipe. */
    public static List<PipeEnd> of(Water water, String label) {
        return Stream.concat(
                        water.drains().stream()
                                .filter(drain -> drain.label().equals(label))
                                .map(PipeEnd::of),
                        Stream.concat(water.mains().stream(), water.roofLines().stream())
                                .filter(run -> run.label().equals(label))
                                .map(PipeEnd::of))
                .findFirst()
                .orElse(List.of());
    }

    private PipeEnd out() {
        return new PipeEnd(key, Flow.OUT, at, level);
    }

    private PipeEnd at(String wall) {
        return new PipeEnd(key, flow, wall, level);
    }
}
