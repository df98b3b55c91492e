// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import spadework.press.template.TemplateFault;
import spadework.press.template.Templates;
import spadework.wording.Language;

/**
 * Prints a finished record as a workbook. The template {@code <document>/workbook.ftlx} describes the sheets in the
 * language that {@link WorkbookReader} reads; every word and every formula stands there.
 */
public final class WorkbookPress {
    private WorkbookPress() {}

    /**
     * The workbook's bytes in English; the same for the same templates, model and date.
     *
     * @param document folder of the template: {@code proposal}, {@code scope}, {@code certificate}, {@code cost-sheet}
     * @param model the finished records by the names the template gives them
     * @param issued the date the file carries
     * @throws TemplateFault if the template or what it gives cannot be used
     */
    public static byte[] print(Templates templates, String document, Map<String, Object> model, LocalDate issued) {
        return print(templates, document, model, issued, Language.ENGLISH);
    }

    /** The same in another language. */
    public static byte[] print(
            Templates templates, String document, Map<String, Object> model, LocalDate issued, Language language) {
        String template = document + "/workbook.ftlx";
        Map<String, Object> given = new HashMap<>(model);
        given.put("languageTag", language.tag());
        return WorkbookWriter.write(
                template, WorkbookReader.read(template, templates.fill(template, given, language)), issued);
    }
}
