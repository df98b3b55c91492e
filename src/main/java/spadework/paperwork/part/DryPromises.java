// SPDX-License-Identifier: Apache-2.0
package spadework.paperwork.part;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spadework.finding.Finding;
import spadework.finding.Severity;
import spadework.job.Job;
import spadework.job.Observation;
import spadework.job.WarrantyPart;
import spadework.pricebook.PriceBook;
import spadework.takeoff.wall.WarrantedWalls;

/**
 * Texts of a job that promise a dry wall although one of its walls is dampproofed, which slows moisture and holds no
 * standing water (IRC R406.1, F-17). It looks for the usual wordings, in any language that papers are in; that it finds
 * none clears nothing.
 */
public final class DryPromises {
    private static final Pattern SENTENCE = Pattern.compile("[^.;!?]+");
    private static final Pattern DRY = anyCase("\\b(?:"
            + "no (?:more )?(?:liquid )?water\\b.{0,40}\\b(?:comes?|gets?|enters?|leaks?|runs?|in|through)"
            + "|(?:keep|stay|remain|guarantee|promise|warrant)\\w*(?: \\w+){0,5} dry|will be (?:bone )?dry"
            + "|(?:never|not|no) (?:again )?leaks?|water[- ]?tight|leak[- ]?(?:free|proof)"
            + "|no (?:entra|pasa|llega|penetra)\\w*\\b.{0,25}\\bagua|(?:queda|permanece|sigue|mantiene)\\w*"
            + "(?: \\w+){0,4} sec[ao]s?|impermeables?|no (?:gotea|filtra)\\w*)\\b");
    private static final Pattern UNPROMISED =
            anyCase("\\b(?:not?|cannot|never) (?:promise|guarantee|warrant|built|be sure)|\\bno (?:prometemos|está)");

    private DryPromises() {}

    /** A finding for the first text that promises more than a dampproofed wall does; else nothing. */
    public static List<Finding> of(Job job, PriceBook book) {
        WarrantedWalls walls = new WarrantedWalls(job, book);
        if (walls.dampproofed().isEmpty()) {
            return List.of();
        }
        for (Map.Entry<String, String> text : texts(job, walls).entrySet()) {
            Optional<String> words = promise(text.getValue());
            if (words.isPresent()) {
                return List.of(new Finding(
                        "dry-promised",
                        Severity.MUST,
                        String.join(", ", walls.dampproofed()),
                        Map.of("words", words.get(), "place", text.getKey()),
                        "IRC R406.1, R406.2 (newer list; older editions differ)"));
            }
        }
        return List.of();
    }

    /** What the buyer reads as a promise, by where it stands. */
    private static Map<String, String> texts(Job job, WarrantedWalls walls) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (WarrantyPart part : walls.partsOfAllWalls()) {
            texts.put("warranty parts: " + part.part(), part.promise());
        }
        texts.put("title", job.title());
        texts.put("terms", String.join(". ", job.terms()));
        texts.put(
                "observations",
                String.join(
                        ". ", job.observations().stream().map(Observation::cure).toList()));
        job.agreement()
                .options()
                .forEach(option -> texts.put("option " + option.label(), option.title() + ". " + option.why()));
        return texts;
    }

    private static Optional<String> promise(String text) {
        Matcher sentences = SENTENCE.matcher(text);
        while (sentences.find()) {
            String sentence = sentences.group().strip();
            if (DRY.matcher(sentence).find() && !UNPROMISED.matcher(sentence).find()) {
                return Optional.of(sentence);
            }
        }
        return Optional.empty();
    }

    private static Pattern anyCase(String pattern) {
        return Pattern.compile(pattern, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }
}
