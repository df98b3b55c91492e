// SPDX-License-Identifier: Apache-2.0
package spadework.office.reply;

import java.nio.file.Path;
import java.util.Optional;
import spadework.press.template.Templates;

/**
 * Where templates of one's own lie.
 *
 * @param folder whose files take the place of bundled ones with the same path; empty where all are the bundled ones
 */
public record TemplateFolder(Optional<Path> folder) {
    public static final TemplateFolder NONE = new TemplateFolder(Optional.empty());

    /**
     * The templates that this makes.
     *
     * @throws spadework.press.template.TemplateFault if the folder or its words cannot be used
     */
    public Templates templates() {
        return folder.map(Templates::with).orElseGet(Templates::bundled);
    }
}
