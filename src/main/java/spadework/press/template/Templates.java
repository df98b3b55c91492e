// SPDX-License-Identifier: Apache-2.0
package spadework.press.template;

import freemarker.cache.ClassTemplateLoader;
import freemarker.cache.FileTemplateLoader;
import freemarker.cache.MultiTemplateLoader;
import freemarker.cache.StrongCacheStorage;
import freemarker.cache.TemplateLoader;
import freemarker.core.InvalidReferenceException;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import spadework.reason.Reason;
import spadework.spelling.FormerSpelling;
import spadework.wording.Language;

/**
 * The words and shapes of the documents: the bundled templates, or those with some replaced by the contractor's own.
 *
 * <p>A template sees the finished record it is given and nothing else: it can make no object, reach no class and read
 * no clock, locale or file but templates. What a record holds is always printed, never read as a template. One
 * instance may be used by many threads.
 */
public final class Templates {
    private static final String UTF_8 = StandardCharsets.UTF_8.name();

    /** Names the bundled texts, one a line, because a packed program cannot list its own folders. */
    private static final String INDEX = "/spadework/press/templates.txt";

    /** The sentences of the templates of a folder. */
    private static final String SENTENCES = "words.properties";

    private static final Pattern TEXT = Pattern.compile(".*\\.(ftlh|ftlx|css|properties)");

    private final TemplateLoader loader;
    private final Optional<Path> own;
    private final Configuration configuration;

    /** By the file that lies beside the template. */
    private final Map<String, Map<String, String>> sentences = new ConcurrentHashMap<>();

    private Templates() {
        this.loader = bundledLoader();
        this.own = Optional.empty();
        this.configuration = configure(loader);
    }

    private Templates(TemplateLoader loader, Path own) {
        this.loader = loader;
        this.own = Optional.of(own);
        this.configuration = configure(loader);
    }

    /** The templates that come with the program. */
    public static Templates bundled() {
        return new Templates();
    }

    /**
     * The templates that come with the program, save those that {@code folder} replaces: a file there stands for the
     * bundled one with the same path below the templates folder, as {@code proposal/page.ftlh}.
     *
     * @throws TemplateFault if {@code folder} is not a readable folder
     */
    public static Templates with(Path folder) {
        try {
            TemplateLoader own = new FileTemplateLoader(folder.toFile());
            TemplateLoader both = new MultiTemplateLoader(new TemplateLoader[] {own, bundledLoader()});
            Templates templates = new Templates(both, folder);
            templates.canBeBrokenOff();
            return templates;
        } catch (IOException e) {
            throw new TemplateFault(folder.toString(), "the templates folder cannot be read", e);
        }
    }

    /** Puts looks at the budget between the steps of each template of the contractor's own. */
    private void canBeBrokenOff() throws IOException {
        configuration.setCacheStorage(new StrongCacheStorage());
        for (String path : ownPaths()) {
            if (path.endsWith(".ftlh") || path.endsWith(".ftlx")) {
                try {
                    FillBudget.watched(configuration.getTemplate(path));
                } catch (IOException | IllegalArgumentException unreadable) {
                    // Told when it is filled, and with its place: what is kept of a failure has none.
                    configuration.removeTemplateFromCache(path);
                }
            }
        }
    }

    /** Fills a template in English. */
    public String fill(String template, Map<String, Object> model) {
        return fill(template, model, Language.ENGLISH);
    }

    /**
     * Fills a template.
     *
     * @param template its path below the templates folder, as {@code proposal/page.ftlh}
     * @param model the finished records by the names the template gives them; {@code words} is added to them, which
     *     says the sentences of {@code words.properties} beside the template and of {@code shared/words.properties}
     * @param language in which it says them
     * @throws TemplateFault if there is no such template, it is malformed, or it asks for something not in the model
     */
    public String fill(String template, Map<String, Object> model, Language language) {
        Map<String, Object> given = new HashMap<>(model);
        given.put("words", new TemplateWords(sentences(template, language), language));
        try {
            return FillBudget.spend(configuration.getTemplate(template), given, own.isPresent());
        } catch (FillBudget.Overspent | StackOverflowError | OutOfMemoryError e) {
            throw new TemplateFault(template, Reason.of(e), e);
        } catch (ParseException e) {
            throw new TemplateFault(
                    e.getTemplateName(), e.getLineNumber(), e.getColumnNumber(), e.getEditorMessage(), e);
        } catch (TemplateNotFoundException e) {
            throw new TemplateFault(template, "there is no such template", e);
        } catch (TemplateException e) {
            throw new TemplateFault(
                    e.getTemplateSourceName() == null ? template : e.getTemplateSourceName(),
                    e.getLineNumber() == null ? 0 : e.getLineNumber(),
                    e.getColumnNumber() == null ? 0 : e.getColumnNumber(),
                    problem(e),
                    e);
        } catch (IOException e) {
            throw new TemplateFault(template, "it cannot be read: " + Reason.of(e), e);
        }
    }

    /**
     * The texts of a properties file in UTF-8, in the order of their keys; a key in its former spelling, as a file
     * of the contractor's own may have it, is there in the spelling of today too.
     *
     * <p>What a file of the contractor's own lacks is said in the bundled words: it may be older than the program.
     *
     * @param path below the templates folder, as {@code words/findings.properties}
     * @throws TemplateFault if there is no such file or it is malformed
     */
    public Map<String, String> words(String path) {
        Properties read = new Properties();
        try {
            Object source = loader.findTemplateSource(path);
            if (source == null) {
                throw new TemplateFault(path, "there is no such file", null);
            }
            try (Reader reader = loader.getReader(source, UTF_8)) {
                read.load(reader);
            } finally {
                loader.closeTemplateSource(source);
            }
        } catch (IOException | IllegalArgumentException e) {
            throw new TemplateFault(path, "it cannot be read: " + Reason.of(e), e);
        }
        Map<String, String> words = new TreeMap<>();
        read.stringPropertyNames().forEach(key -> words.put(key, read.getProperty(key)));
        Map<String, String> found = new TreeMap<>(words);
        found.forEach((key, text) -> words.putIfAbsent(FormerSpelling.current(key), text));
        if (own.isPresent() && Templates.class.getResource("/templates/" + path) != null) {
            bundled().words(path).forEach(words::putIfAbsent);
        }
        return Collections.unmodifiableMap(words);
    }

    /**
     * The same in another language, from the file beside it: {@code words/findings_es.properties}. What that lacks is
     * said in English.
     */
    public Map<String, String> words(String path, Language language) {
        Map<String, String> words = new TreeMap<>(words(path));
        if (!language.isEnglish()) {
            words.putAll(words(language.file(path)));
        }
        return Collections.unmodifiableMap(words);
    }

    /** The sentences of a template: those beside it, and those that several papers say. */
    private Map<String, String> sentences(String template, Language language) {
        String folder = template.substring(0, template.lastIndexOf('/') + 1);
        return sentences.computeIfAbsent(language.file(folder + SENTENCES), file -> {
            Map<String, String> said = new TreeMap<>(found("shared/" + SENTENCES, language));
            said.putAll(found(folder + SENTENCES, language));
            return said;
        });
    }

    private Map<String, String> found(String path, Language language) {
        try {
            return loader.findTemplateSource(path) == null ? Map.of() : words(path, language);
        } catch (IOException e) {
            throw new TemplateFault(path, "it cannot be read: " + Reason.of(e), e);
        }
    }

    /**
     * Every text that the papers are made with, by its path: whoever has them prints the same papers again. Fonts are
     * not among them.
     */
    public Map<String, String> texts() {
        Map<String, String> texts = new TreeMap<>();
        try {
            for (String path : paths()) {
                texts.put(path, text(path));
            }
        } catch (IOException e) {
            throw new TemplateFault(INDEX, "the templates cannot be read: " + Reason.of(e), e);
        }
        return Collections.unmodifiableMap(texts);
    }

    /**
     * A text that the papers are made with, as it is written.
     *
     * @param path below the templates folder, as {@code certificate/page.ftlh}
     * @throws TemplateFault if there is no such file
     */
    public String source(String path) {
        try {
            return text(path);
        } catch (IOException e) {
            throw new TemplateFault(path, "it cannot be read: " + Reason.of(e), e);
        }
    }

    private Set<String> paths() throws IOException {
        Set<String> paths = new TreeSet<>();
        try (InputStream index = Templates.class.getResourceAsStream(INDEX)) {
            new String(index.readAllBytes(), StandardCharsets.UTF_8).lines().forEach(paths::add);
        }
        paths.addAll(ownPaths());
        return paths;
    }

    private Set<String> ownPaths() throws IOException {
        Set<String> paths = new TreeSet<>();
        if (own.isPresent()) {
            try (Stream<Path> files = Files.walk(own.get())) {
                files.filter(Files::isRegularFile)
                        .map(file -> own.get().relativize(file).toString().replace('\\', '/'))
                        .filter(path -> TEXT.matcher(path).matches())
                        .forEach(paths::add);
            }
        }
        return paths;
    }

    private String text(String path) throws IOException {
        Object source = loader.findTemplateSource(path);
        if (source == null) {
            throw new TemplateFault(path, "there is no such file", null);
        }
        try (Reader reader = loader.getReader(source, UTF_8)) {
            StringWriter text = new StringWriter();
            reader.transferTo(text);
            return text.toString();
        } finally {
            loader.closeTemplateSource(source);
        }
    }

    /** What went wrong, in one line, without the advice to template writers that the library adds. */
    private static String problem(TemplateException fault) {
        if (fault instanceof InvalidReferenceException missing && missing.getBlamedExpressionString() != null) {
            return "it asks for " + missing.getBlamedExpressionString() + ", which is not there";
        }
        return fault.getMessageWithoutStackTop()
                .split("\n-{4}")[0]
                .replaceAll("\\s+", " ")
                .strip();
    }

    private static TemplateLoader bundledLoader() {
        return new ClassTemplateLoader(Templates.class, "/templates");
    }

    private static Configuration configure(TemplateLoader loader) {
        Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
        configuration.setTemplateLoader(loader);
        configuration.setLocalizedLookup(false);
        configuration.setDefaultEncoding(UTF_8);
        configuration.setOutputEncoding(UTF_8);
        configuration.setRecognizeStandardFileExtensions(true);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        configuration.setWrapUncheckedExceptions(true);
        configuration.setFallbackOnNullLoopVariable(false);
        configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        configuration.setAPIBuiltinEnabled(false);
        configuration.setLocale(Locale.ROOT);
        configuration.setTimeZone(TimeZone.getTimeZone("UTC"));
        configuration.setNumberFormat("computer");
        configuration.setBooleanFormat("c");
        configuration.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
        return configuration;
    }
}
