// SPDX-License-Identifier: Apache-2.0
package spadework.press.template;

import freemarker.core.CommonMarkupOutputFormat;
import freemarker.core.CommonTemplateMarkupOutputModel;
import freemarker.core.HTMLOutputFormat;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateNumberModel;
import freemarker.template.TemplateScalarModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import spadework.wording.Language;
import spadework.wording.Sentence;

/**
 * The sentences of a paper by key, as a template asks for them: {@code words("due", number)}.
 *
 * <p>A sentence is text. Where {@code <strong>} stands in it, or a value that a template made, what comes of it is
 * markup, and everything else in it is printed as it is written.
 */
final class TemplateWords implements TemplateMethodModelEx {
    /** Characters that nobody writes: they hold the place of a value that is markup. */
    private static final char FIRST_PLACE = '\uE000';

    /** The same for where a sentence itself grows heavy and light again; a value cannot ask for that. */
    private static final String STRONG = "\uF000";

    private static final String STRONG_END = "\uF001";

    /** What a value may not hold: the characters above. */
    private static final Pattern PLACES = Pattern.compile("[\uE000-\uF8FF]");

    private final Map<String, String> texts;
    private final Language language;

    TemplateWords(Map<String, String> texts, Language language) {
        this.texts = texts;
        this.language = language;
    }

    @Override
    @SuppressWarnings("rawtypes")
    public Object exec(List arguments) throws TemplateModelException {
        if (arguments.isEmpty()) {
            throw new TemplateModelException("words needs the key of a sentence");
        }
        String key = text(arguments.get(0), "key");
        String text = texts.get(key);
        if (text == null) {
            throw new TemplateModelException("there are no words for " + key);
        }
        List<Object> values = new ArrayList<>();
        List<CommonTemplateMarkupOutputModel<?>> markup = new ArrayList<>();
        for (Object argument : arguments.subList(1, arguments.size())) {
            if (argument instanceof CommonTemplateMarkupOutputModel<?> made) {
                values.add(String.valueOf((char) (FIRST_PLACE + markup.size())));
                markup.add(made);
            } else {
                values.add(
                        argument instanceof TemplateNumberModel number
                                ? number.getAsNumber()
                                : PLACES.matcher(text(argument, key)).replaceAll(""));
            }
        }
        String heavy = text.replace("<strong>", STRONG).replace("</strong>", STRONG_END);
        String said = said(key, heavy, values.toArray());
        return markup.isEmpty() && heavy.equals(text) ? new SimpleScalar(said) : marked(said, markup);
    }

    private String said(String key, String text, Object... values) throws TemplateModelException {
        try {
            return Sentence.of(text, language, values);
        } catch (IllegalArgumentException malformed) {
            throw new TemplateModelException("the words for " + key + " cannot be used: " + malformed.getMessage());
        }
    }

    private static String text(Object value, String key) throws TemplateModelException {
        if (value instanceof TemplateScalarModel text) {
            return text.getAsString();
        }
        throw new TemplateModelException("a value of words for " + key + " is neither text nor number");
    }

    private static Object marked(String said, List<CommonTemplateMarkupOutputModel<?>> markup)
            throws TemplateModelException {
        String page = HTMLOutputFormat.INSTANCE
                .escapePlainText(said)
                .replace(STRONG, "<strong>")
                .replace(STRONG_END, "</strong>");
        for (int i = 0; i < markup.size(); i++) {
            page = page.replace(String.valueOf((char) (FIRST_PLACE + i)), source(markup.get(i)));
        }
        return markup.isEmpty() ? HTMLOutputFormat.INSTANCE.fromMarkup(page) : like(markup.get(0), page);
    }

    @SuppressWarnings("unchecked")
    private static <M extends CommonTemplateMarkupOutputModel<M>> String source(CommonTemplateMarkupOutputModel<?> made)
            throws TemplateModelException {
        return ((CommonMarkupOutputFormat<M>) made.getOutputFormat()).getMarkupString((M) made);
    }

    @SuppressWarnings("unchecked")
    private static <M extends CommonTemplateMarkupOutputModel<M>> Object like(
            CommonTemplateMarkupOutputModel<?> made, String page) throws TemplateModelException {
        return ((CommonMarkupOutputFormat<M>) made.getOutputFormat()).fromMarkup(page);
    }
}
