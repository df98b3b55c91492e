// SPDX-License-Identifier: Apache-2.0
package spadework.register;

import java.io.IOException;
import java.time.DateTimeException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import spadework.reason.Reason;
import spadework.warranty.ClaimStep;
import spadework.warranty.Warranty;

/** A line of the register as bytes. */
final class EntryJson {
    private EntryJson() {}

    /** The sealed line, without a line feed; the seal that the entry carries is not looked at. */
    static byte[] write(Entry entry) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("line", entry.line());
        object.put("on", entry.on().toString());
        object.put("event", entry.event().words());
        entry.number().ifPresent(number -> {
            object.put("number", number.text());
            object.put("revision", entry.revision());
        });
        object.put("files", entry.files().stream().map(EntryJson::file).toList());
        object.put("facts", entry.facts());
        entry.warranty().ifPresent(warranty -> object.put("warranty", WarrantyJson.write(warranty)));
        object.put("previous", entry.previous());
        return Seal.sealed(Json.write(object));
    }

    /** How a line with this number begins, whatever it tells. */
    static String beginning(int line) {
        return "{\"line\":" + line + ",\"on\":\"";
    }

    static Entry read(byte[] line) throws IOException {
        JsonMembers members = new JsonMembers(Json.read(line));
        String event = members.text("event");
        Optional<String> number = members.maybe("number");
        Optional<DocumentNumber> read = number.flatMap(DocumentNumber::of);
        if (number.isPresent() && read.isEmpty()) {
            throw new IOException("\"" + number.get() + "\", which is no number of a document");
        }
        Optional<Warranty> warranty = members.object().containsKey("warranty")
                ? Optional.of(WarrantyJson.read(members.member("warranty")))
                : Optional.empty();
        if (event.equals(Event.CLAIM.words())) {
            claim(members);
        }
        return new Entry(
                members.whole("line"),
                members.date("on"),
                Event.of(event).orElseThrow(() -> new IOException("the event \"" + event + "\", which is not known")),
                read,
                read.isPresent() ? members.whole("revision") : 0,
                members.list("files", file -> new RegisteredFile(file.text("name"), file.text("sha256"))),
                members.facts("facts"),
                warranty,
                members.text("previous"),
                members.text("seal"));
    }

    /** A claim's facts have to be such as a claim can be read from. */
    private static void claim(JsonMembers members) throws IOException {
        try {
            ClaimStep.of(members.date("on"), members.facts("facts"));
        } catch (DateTimeException | ArithmeticException | IllegalArgumentException unreadable) {
            throw new IOException("a claim that cannot be read: " + Reason.of(unreadable));
        }
    }

    private static Map<String, String> file(RegisteredFile file) {
        Map<String, String> object = new LinkedHashMap<>();
        object.put("name", file.name());
        object.put("sha256", file.sha256());
        return object;
    }
}
