// SPDX-License-Identifier: Apache-2.0
package spadework.form.kit;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import spadework.finding.Fault;

/** A fault in words of the window: what cannot be, and what can; never how a file is spelled. */
public final class FaultWords {
    private static final Pattern MISSING = Pattern.compile("no \".*|empty text|nothing");
    private static final Pattern QUOTED = Pattern.compile("\"(.*)\"");
    /** The checks name the nearest word that is right, as {@code write "M1"}. */
    private static final Pattern NAMED = Pattern.compile("write \"([^\"\u2026]+)\"(?:,.*)?");

    private static final Pattern OF_THE_FILE = Pattern.compile("[{}\\[\\]]|quotes|add \"|the key|\u2026");

    private FaultWords() {}

    /** Whether nothing is written where something has to be. */
    public static boolean isMissing(Fault fault) {
        return MISSING.matcher(fault.found()).matches();
    }

    public static String of(Fault fault) {
        if (isMissing(fault)) {
            return Messages.of("fault.missing");
        }
        Matcher quoted = QUOTED.matcher(fault.found());
        String found = quoted.matches()
                ? Messages.of("fault.unread", quoted.group(1))
                : Messages.of("fault.found", said(fault.found()));
        String allowed = said(plain(fault.allowed()));
        String fix = said(plain(fault.fix()));
        return found
                + (allowed.isEmpty() ? "" : " " + Messages.of("fault.allowed", allowed))
                + (fix.isEmpty() ? "" : " " + Messages.of("fault.fix", capital(fix)));
    }

    public static String of(List<Fault> faults) {
        return faults.stream().map(FaultWords::of).distinct().collect(Collectors.joining("\n"));
    }

    /** The word that would be right in place of what was written, where the check knows it. */
    public static Optional<String> fix(Fault fault) {
        Matcher named = NAMED.matcher(fault.fix());
        return isMissing(fault) || !named.matches() ? Optional.empty() : Optional.of(named.group(1));
    }

    /** What speaks of the spelling of a file says nothing in the window. */
    static String plain(String words) {
        String plain = words.replace(", in quotes", "").replace("put it in quotes, as", "write it as");
        return OF_THE_FILE.matcher(plain).find() ? "" : plain;
    }

    /** In the window's language, as far as that has words for it. */
    private static String said(String words) {
        return Messages.faults().flatMap(phrases -> phrases.of(words)).orElse(words);
    }

    private static String capital(String words) {
        return words.isEmpty() ? "" : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
