// SPDX-License-Identifier: Apache-2.0
package spadework.cli.option;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import spadework.office.reply.Reply;

/** A command whose whole answer comes from the office. */
public abstract class ReplyCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    /** Asks the office. */
    protected abstract Reply reply() throws IOException;

    @Override
    public final Integer call() throws IOException {
        CommandLine line = spec.commandLine();
        Reply reply = reply();
        reply.out().forEach(line.getOut()::println);
        reply.err().forEach(line.getErr()::println);
        return reply.done() ? ExitCode.DONE : ExitCode.REFUSED;
    }

    protected final CommandLine line() {
        return spec.commandLine();
    }
}
