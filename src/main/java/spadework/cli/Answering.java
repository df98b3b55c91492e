package spadework.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import spadework.office.Told;

/** A command whose whole answer comes from the office. */
public abstract class Answering implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    /** Asks the office. */
    protected abstract Told told() throws IOException;

    @Override
    public final Integer call() throws IOException {
        CommandLine line = spec.commandLine();
        Told told = told();
        told.out().forEach(line.getOut()::println);
        told.err().forEach(line.getErr()::println);
        return told.done() ? Spadework.DONE : Spadework.REFUSED;
    }

    protected final CommandLine line() {
        return spec.commandLine();
    }
}
