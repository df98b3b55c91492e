package spadework.office;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import spadework.company.Company;
import spadework.finding.Finding;
import spadework.job.Job;
import spadework.job.WarrantyPart;
import spadework.law.WarrantyDisclosures;
import spadework.law.WarrantyWording;
import spadework.law.WrittenWarranty;
import spadework.press.Templates;

/** What the certificate will say, from the job and from its templates, held to the law of written warranties. */
final class PrintedWarranty {
    private static final String PAGE = "certificate/page.ftlh";
    private static final String SHARED = "shared/warranty.ftlh";
    private static final Pattern COMMENT = Pattern.compile("<#--.*?-->", Pattern.DOTALL);
    private static final Pattern MARKUP = Pattern.compile("<[^>]*>");

    private final String page;
    private final String shared;

    PrintedWarranty(Templates templates) {
        this.page = COMMENT.matcher(templates.source(PAGE)).replaceAll("");
        this.shared = COMMENT.matcher(templates.source(SHARED)).replaceAll("");
    }

    /** What there is to say about the warranty and about the texts that stand beside it. */
    List<Finding> findings(Job job, Company company) {
        List<Finding> found = new ArrayList<>(WarrantyDisclosures.of(written(job, company)));
        found.addAll(WarrantyWording.of(texts(job, company)));
        return found;
    }

    private WrittenWarranty written(Job job, Company company) {
        List<WarrantyPart> parts = job.warranty().parts();
        String text = plain(page) + " " + plain(shared);
        String all = text + " " + String.join(" ", texts(job, company).values());
        return new WrittenWarranty(
                element("h1").orElse(""),
                job.customer().names(),
                parts.stream().map(WarrantyPart::promise).toList(),
                job.warranty().notCovered(),
                used("remedy").orElse(""),
                job.closed().map(closed -> closed.completed().toString()).or(() -> part("A term begins")).orElse(""),
                parts.stream().map(part -> part.years() + " years").toList(),
                used("service").stream().toList(),
                company.name(),
                company.address().text(),
                Optional.empty(),
                false,
                WarrantyWording.limitsImplied(all),
                !job.warranty().notCovered().isEmpty(),
                used("rights").orElse(plain(page)));
    }

    /** Every text that the buyer reads and somebody typed, by where it stands. */
    private Map<String, String> texts(Job job, Company company) {
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put("templates/" + PAGE, plain(page));
        texts.put("templates/" + SHARED, plain(shared));
        put(texts, "company terms", company.terms());
        put(texts, "company excluded", company.excluded());
        put(texts, "company preparation", company.preparation());
        put(texts, "title", List.of(job.title()));
        put(texts, "terms", job.terms());
        put(texts, "excluded", job.excluded());
        put(texts, "assumed", job.assumed());
        put(texts, "protection", job.protection());
        put(texts, "notFixed", job.notFixed());
        put(texts, "observations", job.observations().stream()
                .flatMap(seen -> Stream.of(seen.seen(), seen.evidence(), seen.cause(), seen.cure()))
                .toList());
        put(texts, "payments", job.payments().stream().map(payment -> payment.when()).toList());
        put(texts, "options", job.agreement().options().stream()
                .flatMap(option -> Stream.of(option.title(), option.why()))
                .toList());
        put(texts, "changes", job.agreement().changes().stream()
                .flatMap(change -> Stream.of(change.title(), change.why(), change.evidence()))
                .toList());
        put(texts, "warranty parts", job.warranty().parts().stream()
                .flatMap(part -> Stream.of(part.part(), part.promise()))
                .toList());
        put(texts, "warranty notCovered", job.warranty().notCovered());
        put(texts, "warranty duties", job.warranty().duties());
        return texts;
    }

    private static void put(Map<String, String> texts, String place, List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            texts.put(place + " " + (i + 1), lines.get(i));
        }
    }

    /** The text of a macro that the certificate calls. */
    private Optional<String> used(String macro) {
        Matcher body = Pattern.compile("<#macro " + macro + "\\b[^>]*>(.*?)</#macro>", Pattern.DOTALL).matcher(shared);
        boolean called = page.contains("<@terms." + macro);
        return called && body.find() ? Optional.of(plain(body.group(1))) : Optional.empty();
    }

    private Optional<String> element(String name) {
        Matcher element = Pattern.compile("<" + name + ">(.*?)</" + name + ">", Pattern.DOTALL).matcher(page);
        return element.find() ? Optional.of(plain(element.group(1))) : Optional.empty();
    }

    private Optional<String> part(String words) {
        return plain(page).contains(words) ? Optional.of(words) : Optional.empty();
    }

    private static String plain(String template) {
        return MARKUP.matcher(template).replaceAll(" ").replaceAll("\\s+", " ").strip();
    }
}
