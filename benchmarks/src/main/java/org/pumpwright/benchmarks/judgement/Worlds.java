package org.pumpwright.benchmarks.judgement;

import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.pumpwright.host.plant.PumpParameters;

/** Several worlds of one kind, among which units take turns. Thread-safe. */
final class Worlds {
    private final TestStand stand;
    private final List<World> worlds;
    private final Progress progress;

    private Worlds(TestStand stand, List<World> worlds, Progress progress) {
        this.stand = stand;
        this.worlds = worlds;
        this.progress = progress;
    }

    /** Makes the worlds of these numbers, each with its curve. */
    static Worlds made(TestStand stand, int count, boolean changed, Progress progress) {
        List<World> worlds = IntStream.range(0, count)
                .mapToObj(number -> {
                    progress.say("healthy curve %d of %d".formatted(number + 1, count));
                    return World.of(stand, number, changed);
                })
                .toList();
        return new Worlds(stand, worlds, progress);
    }

    /** The same worlds, with their curves, on a stand with another plan. */
    Worlds on(TestStand other) {
        return new Worlds(other, worlds, progress);
    }

    TestStand stand() {
        return stand;
    }

    Progress progress() {
        return progress;
    }

    List<World> all() {
        return worlds;
    }

    World of(int unit) {
        return worlds.get(unit % worlds.size());
    }

    /** The world by whose curve a run was graded. */
    World of(Judgement judgement) {
        return worlds.stream()
                .filter(world -> world.curve() == judgement.curve())
                .findFirst()
                .orElseThrow();
    }

    /** Makes units on both cores, in their order. */
    <T> List<T> each(String words, int from, int count, Function<Integer, T> make) {
        progress.begin(words, count);
        return IntStream.range(from, from + count)
                .parallel()
                .mapToObj(unit -> {
                    T made = make.apply(unit);
                    progress.step();
                    return made;
                })
                .toList();
    }

    /** Runs and grades one unit by the curve of its world, on a stand of its own. */
    Judgement judge(int unit, PumpParameters parameters) {
        World world = of(unit);
        return Judgement.of(stand, stand.run(parameters, world.sensors(unit), world.seed(unit)), world.curve());
    }
}
