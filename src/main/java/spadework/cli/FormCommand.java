// SPDX-License-Identifier: Apache-2.0
package spadework.cli;

import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spadework.cli.option.ExitCode;
import spadework.cli.option.OpensOffice;
import spadework.cli.option.TemplateOption;
import spadework.cli.store.OfficeWindow;
import spadework.form.Forms;
import spadework.office.files.JobsHome;
import spadework.office.reply.TemplateFolder;
import spadework.office.store.OfficeFile;

/** Opens the form. */
@Command(
        name = "form",
        description = "Fill in a job in a window: the price, what was found and the page stand beside it.",
        footerHeading = "%nExample:%n",
        footer = "  spadework form jobs/2026-014")
final class FormCommand implements Callable<Integer>, OpensOffice {
    @Parameters(
            arity = "0..1",
            paramLabel = "JOB",
            description =
                    "A job file, or the folder that holds its job.json; without it the list of jobs, or a new job.")
    private Path job;

    @Mixin
    private TemplateOption arguments;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException, InterruptedException {
        if (GraphicsEnvironment.isHeadless()) {
            spec.commandLine()
                    .getErr()
                    .println("form: found no screen; allowed: a machine with one; fix: edit the job"
                            + " file and use the other commands");
            return ExitCode.UNUSABLE;
        }
        OfficeWindow.show(spec, job, (home, shown) -> {
            if (shown == null) {
                Forms.open(home, arguments.templates(), LocalDate.now());
            } else {
                Forms.open(shown, home, arguments.templates(), LocalDate.now());
            }
        });
        return ExitCode.DONE;
    }

    /**
     * Whether a command line is this command as it is given most often: alone, or with a job that is there. Then it
     * needs none of the other commands, and the window is there sooner; anything else, and all that may be wrong with
     * it, goes the usual way.
     */
    static boolean isPlain(String... arguments) {
        return arguments.length > 0
                && arguments[0].equals("form")
                && ((arguments.length == 1 && !Files.exists(Path.of(OfficeFile.NAME)))
                        || (arguments.length == 2
                                && arguments[1].matches("[^-@].*")
                                && Files.exists(Path.of(arguments[1]))))
                && !GraphicsEnvironment.isHeadless();
    }

    /** Opens the window of such a command line, and comes back when the last one is closed. */
    static void openPlain(String... arguments) throws InterruptedException {
        Forms.loadEarly();
        if (arguments.length == 1) {
            Forms.open(JobsHome.FOLDERS, TemplateFolder.NONE, LocalDate.now());
        } else {
            Forms.open(Path.of(arguments[1]), JobsHome.FOLDERS, TemplateFolder.NONE, LocalDate.now());
        }
    }
}
