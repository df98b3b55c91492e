// SPDX-License-Identifier: Apache-2.0
package spadework.figure;

import java.util.List;
import java.util.Optional;
import spadework.measure.Density;
import spadework.measure.Length;
import spadework.measure.Unit;
import spadework.measure.Volume;
import spadework.pricebook.Measure;
import spadework.pricebook.Pipe;
import spadework.pricebook.PriceBook;
import spadework.working.Listed;
import spadework.working.Working;

/** What the calculators take from a price book where nothing else is given. */
public final class BookFigures {
    private static final String STONE = "weight of the stone";
    private static final String TRUCK = "what a truck takes, loose";

    private final PriceBook book;
    private final List<PipeKind> pipes;

    public BookFigures(PriceBook book) {
        this.book = book;
        this.pipes = PipeKind.of(book);
    }

    /** The kind of pipe with that name, or with an item of that code. */
    public Optional<PipeKind.Chosen> pipe(String name) {
        return PipeKind.find(pipes, name);
    }

    /** Names of the kinds of pipe. */
    public List<String> pipeNames() {
        return pipes.stream().map(PipeKind::name).toList();
    }

    Working density() {
        return Listed.of("w", STONE, book.stoneTonsPerCubicYard(), Unit.TON_PER_CUBIC_YARD, source());
    }

    static Working density(Density given) {
        return Inputs.given("w", STONE, given.tonsPerCubicYard(), Unit.TON_PER_CUBIC_YARD);
    }

    Working truck() {
        return Listed.of("t", TRUCK, book.truckCubicYards(), Unit.CUBIC_YARD, source());
    }

    static Working truck(Volume given) {
        return Inputs.given("t", TRUCK, given.cubicYards(), Unit.CUBIC_YARD);
    }

    /** The discharge pipe of that nominal size, else a plastic pipe of that inside diameter. */
    Pipe discharge(Length size) {
        return book.items().values().stream()
                .filter(item -> item.follows().equals(Optional.of(Measure.SUMP_DISCHARGE)))
                .flatMap(item -> item.pipe().stream())
                .filter(pipe -> Math.abs(pipe.nominal().inches() - size.inches()) < 1e-6)
                .findFirst()
                .orElseGet(() -> new Pipe("given", size, size, size, 0.010, false, Length.ofFeet(10)));
    }

    private String source() {
        return book.title() + ", " + book.dated();
    }
}
