// SPDX-License-Identifier: Apache-2.0
package spadework.cli.start;

import picocli.CommandLine.Mixin;
import spadework.cli.option.DryRunOption;
import spadework.cli.option.TemplateOption;
import spadework.office.Office;

/** What every command takes that begins a job or changes its file, and the office that prices it then. */
final class JobEditOptions {
    @Mixin
    private TemplateOption templates;

    @Mixin
    @SuppressWarnings("UnusedVariable") // picocli fills it, and the program asks picocli for it
    private DryRunOption dryRun;

    Office office() {
        return Office.with(templates.templates());
    }
}
