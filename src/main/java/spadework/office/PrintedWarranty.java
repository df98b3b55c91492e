// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import spadework.company.Company;
import spadework.finding.Finding;
import spadework.job.Job;
import spadework.job.WarrantyPart;
import spadework.job.WarrantyTerms;
import spadework.law.WarrantyDisclosures;
import spadework.law.WarrantyWording;
import spadework.law.WrittenClaims;
import spadework.law.WrittenCoverage;
import spadework.law.WrittenLimits;
import spadework.law.WrittenWarranty;
import spadework.press.template.Templates;

/**
 * What the certificate will say, from the job and from its templates, held to the law of written warranties.
 *
 * <p>A text that stands where it stood at the asking before keeps what was found in it: between two keystrokes that is
 * all but one of them, and searching them took a third of the time to a new total.
 */
public final class PrintedWarranty {
    private static final String PAGE = "certificate/page.ftlh";
    /** Front and back of the certificate, which the reissued one and the specimen in a contract show as well. */
    private static final String BODY = "shared/certificate.ftlh";

    private static final String SHARED = "shared/warranty.ftlh";
    /** What the certificate says stands in what several papers say. */
    private static final String SENTENCES = "shared/words.properties";

    private static final Pattern SENTENCE = Pattern.compile("\\$\\{words\\(\"([^\"]+)\"[^}]*\\)}");
    private static final Pattern COMMENT = Pattern.compile("<#--.*?-->", Pattern.DOTALL);
    private static final Pattern MARKUP = Pattern.compile("<[^>]*>");

    private final String page;
    private final String shared;
    private final String plainPage;
    private final String plainShared;
    private final Optional<String> heading;
    private final Optional<String> remedy;
    private final Optional<String> service;
    private final Optional<String> rights;
    private volatile Asked before = new Asked(List.of(), Map.of());

    /** What one text says of warranties. */
    private record Searched(List<Finding> found, boolean limitsImplied) {}

    /** A text at its place, or some that stand there under numbers. */
    private record Texts(String place, boolean numbered, List<String> lines) {}

    /** What was asked, and what each text said, by its place and its words. */
    private record Asked(List<Texts> texts, Map<Map.Entry<String, String>, Searched> said) {}

    PrintedWarranty(Templates templates) {
        this.page = whole(templates);
        this.shared = said(SHARED, templates);
        this.plainPage = plain(page);
        this.plainShared = plain(shared);
        this.heading = element("h1");
        this.remedy = used("remedy");
        this.service = used("service");
        this.rights = used("rights");
    }

    /** The page with the sides that it calls. */
    private static String whole(Templates templates) {
        String own = said(PAGE, templates);
        String body = said(BODY, templates);
        StringBuilder whole = new StringBuilder(own);
        for (String side : List.of("front", "back")) {
            if (own.contains("<@body." + side)) {
                macro(side, body).ifPresent(whole::append);
            }
        }
        return whole.toString();
    }

    /** A template with the sentences that it asks for by key, as it says them in English. */
    private static String said(String path, Templates templates) {
        Map<String, String> sentences = templates.words(SENTENCES);
        return SENTENCE.matcher(COMMENT.matcher(templates.source(path)).replaceAll(""))
                .replaceAll(asked -> Matcher.quoteReplacement(sentences.getOrDefault(asked.group(1), asked.group())));
    }

    private static Optional<String> macro(String name, String template) {
        Matcher body = Pattern.compile("<#macro " + name + "\\b[^>]*>(.*?)</#macro>", Pattern.DOTALL)
                .matcher(template);
        return body.find() ? Optional.of(body.group(1)) : Optional.empty();
    }

    /** What there is to say about the warranty and about the texts that stand beside it. */
    List<Finding> findings(Job job, Company company) {
        WarrantyTerms terms = job.warranty();
        Map<Map.Entry<String, String>, Searched> now = searched(texts(job, terms, company));
        boolean limitsImplied = now.values().stream().anyMatch(Searched::limitsImplied);
        List<Finding> found = new ArrayList<>(WarrantyDisclosures.of(written(job, terms, company, limitsImplied)));
        now.values().forEach(text -> found.addAll(text.found()));
        return found;
    }

    private Map<Map.Entry<String, String>, Searched> searched(List<Texts> texts) {
        Asked known = before;
        if (known.texts.equals(texts)) {
            return known.said;
        }
        Map<Map.Entry<String, String>, Searched> now = new LinkedHashMap<>();
        for (Texts at : texts) {
            for (int i = 0; i < at.lines.size(); i++) {
                String place = at.numbered ? at.place + " " + (i + 1) : at.place;
                Map.Entry<String, String> key = Map.entry(place, at.lines.get(i));
                Searched old = known.said.get(key);
                now.put(key, old != null ? old : searched(key));
            }
        }
        before = new Asked(texts, now);
        return now;
    }

    private static Searched searched(Map.Entry<String, String> text) {
        return new Searched(WarrantyWording.of(Map.ofEntries(text)), WarrantyWording.limitsImplied(text.getValue()));
    }

    private WrittenWarranty written(Job job, WarrantyTerms terms, Company company, boolean limitsImplied) {
        List<WarrantyPart> parts = terms.parts();
        WrittenCoverage coverage = new WrittenCoverage(
                job.customer().names(),
                parts.stream().map(WarrantyPart::promise).toList(),
                terms.notCovered(),
                remedy.orElse(""));
        return new WrittenWarranty(
                heading.orElse(""),
                coverage,
                job.closed()
                        .map(closed -> closed.completed().toString())
                        .or(() -> part("A term begins"))
                        .orElse(""),
                parts.stream().map(part -> part.years() + " years").toList(),
                new WrittenClaims(
                        service.stream().toList(),
                        company.name(),
                        company.address().text(),
                        Optional.empty(),
                        false),
                new WrittenLimits(limitsImplied, !terms.notCovered().isEmpty()),
                rights.orElse(plainPage));
    }

    /** Every text that the buyer reads and somebody typed, by where it stands. */
    private List<Texts> texts(Job job, WarrantyTerms terms, Company company) {
        List<Texts> texts = new ArrayList<>();
        texts.add(new Texts("templates/" + PAGE, false, List.of(plainPage)));
        texts.add(new Texts("templates/" + SHARED, false, List.of(plainShared)));
        put(texts, "company terms", company.terms());
        put(texts, "company excluded", company.excluded());
        put(texts, "company preparation", company.preparation());
        put(texts, "title", List.of(job.title()));
        put(texts, "terms", job.terms());
        put(texts, "excluded", job.excluded());
        put(texts, "assumed", job.assumed());
        put(texts, "protection", job.protection());
        put(texts, "notFixed", job.notFixed());
        put(
                texts,
                "observations",
                job.observations().stream()
                        .flatMap(seen -> Stream.of(seen.seen(), seen.evidence(), seen.cause(), seen.cure()))
                        .toList());
        put(
                texts,
                "payments",
                job.payments().stream().map(payment -> payment.when()).toList());
        put(
                texts,
                "options",
                job.agreement().options().stream()
                        .flatMap(option -> Stream.of(option.title(), option.why()))
                        .toList());
        put(
                texts,
                "changes",
                job.agreement().changes().stream()
                        .flatMap(change -> Stream.of(change.title(), change.why(), change.evidence()))
                        .toList());
        put(
                texts,
                "warranty parts",
                terms.parts().stream()
                        .flatMap(part -> Stream.of(part.part(), part.promise()))
                        .toList());
        put(texts, "warranty notCovered", terms.notCovered());
        put(texts, "warranty duties", terms.duties());
        new TreeMap<>(company.letterhead().translated(job.head().language()))
                .forEach((text, said) ->
                        texts.add(new Texts("company translations \"" + text + "\"", false, List.of(said))));
        return texts;
    }

    private static void put(List<Texts> texts, String place, List<String> lines) {
        texts.add(new Texts(place, true, lines));
    }

    /** The text of a macro that the certificate calls. */
    private Optional<String> used(String macro) {
        boolean called = page.contains("<@terms." + macro);
        return called ? macro(macro, shared).map(PrintedWarranty::plain) : Optional.empty();
    }

    private Optional<String> element(String name) {
        Matcher element = Pattern.compile("<" + name + ">(.*?)</" + name + ">", Pattern.DOTALL)
                .matcher(page);
        return element.find() ? Optional.of(plain(element.group(1))) : Optional.empty();
    }

    private Optional<String> part(String words) {
        return plainPage.contains(words) ? Optional.of(words) : Optional.empty();
    }

    private static String plain(String template) {
        return MARKUP.matcher(template).replaceAll(" ").replaceAll("\\s+", " ").strip();
    }
}
