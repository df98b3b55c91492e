// SPDX-License-Identifier: Apache-2.0
package spadework.office.agreement;

import java.util.List;
import spadework.office.records.JobRecords;
import spadework.register.DocumentNumber;
import spadework.register.Entry;
import spadework.register.Event;
import spadework.register.Guard;
import spadework.wording.Wording;

/** Lets something happen once in the life of a job, also when two programs try at the same time. */
public final class OnceGuard {
    private static final Wording WORDS = Wording.beside(OnceGuard.class);

    private OnceGuard() {}

    /** That event may stand in the register once. */
    static Guard of(Event event) {
        return entries -> {
            entries.stream().filter(entry -> entry.event() == event).findFirst().ifPresent(first -> {
                throw new IllegalStateException(WORDS.get("once.event", event.words(), said(first)));
            });
        };
    }

    /** Nobody signs the same paper twice. */
    static Guard signed(DocumentNumber paper, List<String> by) {
        return entries -> {
            for (Entry entry : entries) {
                boolean same = entry.event() == Event.SIGNATURE_RECEIVED
                        && entry.number().filter(paper::equals).isPresent()
                        && entry.fact("by")
                                .filter(names -> by.stream().anyMatch(names::contains))
                                .isPresent();
                if (same) {
                    throw new IllegalStateException(WORDS.get("once.signature", paper.text(), said(entry)));
                }
            }
        };
    }

    /** A change order is decided once. */
    static Guard decided(DocumentNumber number) {
        return entries -> {
            entries.stream()
                    .filter(entry -> JobRecords.decides(entry, number))
                    .findFirst()
                    .ifPresent(first -> {
                        throw new IllegalStateException(WORDS.get("once.decision", number.text(), said(first)));
                    });
        };
    }

    /** What the one who came too late is told of the one who was first. */
    private static String said(Entry first) {
        return first.fact("by")
                .map(by -> WORDS.get("once.by", first.line(), first.on(), by))
                .orElseGet(() -> WORDS.get("once.on", first.line(), first.on()));
    }
}
