// SPDX-License-Identifier: Apache-2.0
package spadework.intake.source;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.exc.StreamReadException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import spadework.finding.Fault;
import spadework.finding.Place;

/** The place where a text stops being JSON, in plain words. */
public final class BrokenJson {
    private static final String ALLOWED = "JSON";

    private BrokenJson() {}

    static Fault fault(String file, String text, StreamReadException broken) {
        JsonLocation at = broken.getLocation();
        Place place = new Place(file, at.getLineNr(), at.getColumnNr(), "");
        String message = broken.getOriginalMessage();
        if (broken instanceof JsonEOFException) {
            return new Fault(place, "the end of the file", ALLOWED, "close the quotes, ] and } that are open");
        }
        int offset = (int) at.getCharOffset();
        String found = offset >= 0 && offset < text.length()
                ? "the character " + Excerpt.of(text.substring(offset, text.offsetByCodePoints(offset, 1)))
                : "something else";
        return new Fault(place, found, ALLOWED, fix(message));
    }

    private static String fix(String message) {
        if (message.contains("was expecting comma")) {
            return "put a comma before it, or close the list or object";
        }
        if (message.contains("double-quote to start field name")) {
            return "put a key in double quotes here, or take out the comma before";
        }
        if (message.contains("colon")) {
            return "put a colon between the key and its value";
        }
        if (message.contains("CTRL-CHAR")) {
            return "inside text write a line break as \\n and a tab as \\t; take other control characters out";
        }
        if (message.contains("escape")) {
            return "write a backslash inside text as \\\\";
        }
        return "look here and just before for a quote, comma, bracket or brace that is missing or too many";
    }
}
