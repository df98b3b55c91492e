// SPDX-License-Identifier: Apache-2.0
package spadework.cli.option;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import spadework.office.reply.TemplateFolder;

/** What every command that prints takes. */
public final class TemplateOption {
    @Option(
            names = "--templates",
            paramLabel = "DIR",
            description = "Templates of your own; a file there takes the place of the bundled one with the same path.")
    private Path templates;

    public TemplateFolder templates() {
        return new TemplateFolder(Optional.ofNullable(templates));
    }
}
