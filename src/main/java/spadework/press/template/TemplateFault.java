// SPDX-License-Identifier: Apache-2.0
package spadework.press.template;

/**
 * A template, or what a template gave, cannot be used. The message names the template and, where known, the line and
 * column, so that whoever changed a template finds the place.
 */
public final class TemplateFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String template;
    private final int line;
    private final int column;

    /**
     * A fault with its place.
     *
     * @param template path of the template below the templates folder
     * @param line from 1; 0 when the fault is about the template as a whole
     * @param column from 1; 0 when the fault is about the template as a whole
     * @param problem what is wrong, in one sentence
     */
    public TemplateFault(String template, int line, int column, String problem, Throwable cause) {
        super(template + (line > 0 ? ":" + line + ":" + column : "") + ": " + problem, cause);
        this.template = template;
        this.line = line;
        this.column = column;
    }

    /** A fault of the template as a whole. */
    public TemplateFault(String template, String problem, Throwable cause) {
        this(template, 0, 0, problem, cause);
    }

    public String template() {
        return template;
    }

    public int line() {
        return line;
    }

    public int column() {
        return column;
    }
}
