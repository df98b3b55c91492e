// SPDX-License-Identifier: Apache-2.0
package spadework.intake.source;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spadework.finding.Fault;
import spadework.finding.Place;

/**
 * One file while it is read: what it says, where everything stands in it, and the faults found so far. The places
 * stay here, beside the records and not in them.
 */
public final class SourceFile {
    /** Room for the values of a common job, so that the maps need not grow over and over. */
    private static final int VALUES = 1024;

    private final String file;
    private final Map<String, Place> values = new HashMap<>(VALUES);
    private final Map<String, Place> keys = new HashMap<>(VALUES);
    private final List<Fault> faults = new ArrayList<>();
    private final Set<String> faulty = new HashSet<>();
    private final Set<String> holdsFaulty = new HashSet<>();
    private final Map<String, Set<String>> knownKeys = new HashMap<>();
    private final Map<String, List<String>> knownWords = new HashMap<>();
    private Optional<JsonNode> root = Optional.empty();

    public SourceFile(String file) {
        this.file = file;
    }

    public String file() {
        return file;
    }

    /** The whole document; empty when the file stopped being JSON somewhere. */
    public Optional<SourceNode> root() {
        return root.map(json -> new SourceNode(this, "", json));
    }

    void setRoot(JsonNode json) {
        root = Optional.of(json);
    }

    void placeValue(String pointer, Place place) {
        values.putIfAbsent(pointer, place);
    }

    void placeKey(String pointer, Place place) {
        keys.putIfAbsent(pointer, place);
    }

    /** Where a value stands; for one that is not in the file, where what should hold it stands. */
    public Place placeOf(String pointer) {
        String nearest = pointer;
        while (!values.containsKey(nearest) && !nearest.isEmpty()) {
            nearest = parent(nearest);
        }
        Place found = values.getOrDefault(nearest, Place.ofFile(file));
        return new Place(file, found.line(), found.column(), pointer);
    }

    Place placeOfKey(String pointer) {
        return keys.getOrDefault(pointer, placeOf(pointer));
    }

    /** Notes a fault in the value there as such; what is inside it is not believed from now on. */
    public void fault(String pointer, String found, String allowed, String fix) {
        fault(placeOf(pointer), found, allowed, fix);
    }

    public void fault(Place place, String found, String allowed, String fix) {
        note(new Fault(place, found, allowed, fix));
        faulty.add(place.pointer());
        for (String above = place.pointer(); !above.isEmpty(); above = parent(above)) {
            holdsFaulty.add(above);
        }
        holdsFaulty.add("");
    }

    /** Notes a fault that leaves the value usable for the rest of the reading. */
    public void note(Fault fault) {
        faults.add(fault);
    }

    boolean isFaulty(String pointer) {
        return faulty.contains(pointer);
    }

    /** True when no fault has been found in the value there, inside it or in what holds it. */
    public boolean isSound(String pointer) {
        return !holdsFaulty.contains(pointer) && isWhole(pointer);
    }

    /** True when no fault has been found in the value there as such or in what holds it. */
    public boolean isWhole(String pointer) {
        boolean sound = true;
        for (String above = pointer; sound && !above.isEmpty(); above = parent(above)) {
            sound = !faulty.contains(above);
        }
        return sound && !faulty.contains("");
    }

    public List<Fault> faults() {
        return Collections.unmodifiableList(faults);
    }

    void know(String pointer, Set<String> asked) {
        knownKeys.computeIfAbsent(pointer, p -> new HashSet<>()).addAll(asked);
    }

    public void knowWords(String pointer, List<String> words) {
        knownWords.put(pointer, words);
    }

    /** The keys that the reader asked each object for, by the object's pointer. */
    public Map<String, Set<String>> knownKeys() {
        return knownKeys;
    }

    /** The words that the reader accepts for a value, by its pointer. */
    public Map<String, List<String>> knownWords() {
        return knownWords;
    }

    public static String child(String pointer, String key) {
        boolean plain = key.indexOf('~') < 0 && key.indexOf('/') < 0;
        return pointer + "/" + (plain ? key : key.replace("~", "~0").replace("/", "~1"));
    }

    private static String parent(String pointer) {
        return pointer.substring(0, pointer.lastIndexOf('/'));
    }
}
