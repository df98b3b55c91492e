// SPDX-License-Identifier: Apache-2.0
package spadework.language;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Flesch-Kincaid grade of whole sentences: 0.39 words a sentence + 11.8 syllables a word - 15.59 (Kincaid and others,
 * 1975, Navy Research Branch Report 8-75). Table cells and labels that are no sentence are left out.
 */
record ReadingGrade(int sentences, int words, int syllables) {

    static ReadingGrade of(List<String> blocks) {
        int sentences = 0;
        int words = 0;
        int syllables = 0;
        for (String block : blocks) {
            for (String sentence : block.split("(?<=[.!?:;]) +")) {
                String[] found = Arrays.stream(sentence.split("[^A-Za-z0-9'½¼¾.,$%-]+"))
                        .filter(word -> word.matches(".*[A-Za-z0-9].*"))
                        .toArray(String[]::new);
                if (found.length >= 4 && sentence.matches("(?s).*[.!?:;]\\)?$")) {
                    sentences++;
                    words += found.length;
                    syllables += Arrays.stream(found)
                            .mapToInt(ReadingGrade::syllables)
                            .sum();
                }
            }
        }
        return new ReadingGrade(sentences, words, syllables);
    }

    double grade() {
        return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
    }

    double wordsInASentence() {
        return (double) words / sentences;
    }

    /** Groups of vowels, without a silent e at the end; a figure counts as one. */
    static int syllables(String word) {
        String plain = word.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
        if (plain.isEmpty()) {
            return 1;
        }
        String spoken = plain.replaceAll("(?<=[^aeiouyl])e$|(?<=[^aeioutd])ed$|(?<=[^aeiouscxzg])es$", "");
        return Math.max(1, (int) java.util.regex.Pattern.compile("[aeiouy]+")
                .matcher(spoken)
                .results()
                .count());
    }
}
