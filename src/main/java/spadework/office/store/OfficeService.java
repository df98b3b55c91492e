// SPDX-License-Identifier: Apache-2.0
package spadework.office.store;

import java.io.IOException;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spadework.office.reply.Reply;
import spadework.office.reply.TextColumns;
import spadework.store.FolderHead;
import spadework.store.FolderVersion;
import spadework.store.Store;
import spadework.store.StoreText;

/** What an office answers about what it holds. */
public final class OfficeService {
    private static final DateTimeFormatter AT = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss 'UTC'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);

    private static final int SHOWN = 4;

    private OfficeService() {}

    /** The jobs in which all the words occur; without words those changed last. */
    public static Reply jobs(Store store, String words, int most) throws IOException {
        List<FolderHead> heads = store.find(words, most);
        if (heads.isEmpty()) {
            return Reply.done(List.of(StoreText.of(words.isBlank() ? "jobs.none" : "jobs.nothing", words)));
        }
        List<List<String>> rows = new ArrayList<>(List.of(List.of(
                StoreText.of("jobs.folder"),
                StoreText.of("jobs.number"),
                StoreText.of("jobs.stands"),
                StoreText.of("jobs.title"))));
        heads.forEach(head ->
                rows.add(List.of(head.name(), head.number(), head.stands().word(), head.title())));
        return Reply.done(TextColumns.of(rows));
    }

    /** The states that a folder had. */
    public static Reply history(Store store, String name) throws IOException {
        List<FolderVersion> versions = store.history(name);
        if (versions.isEmpty()) {
            return new Reply(List.of(), List.of(StoreText.of("visit.unknown", name)), false);
        }
        return Reply.done(versions.stream()
                .map(one -> one.what().isEmpty()
                        ? StoreText.of("history.only", AT.format(one.at()))
                        : StoreText.of(
                                "history.one", one.count(), AT.format(one.at()), one.by(), shortened(one.what())))
                .toList());
    }

    /** Who has a job open. */
    public static Reply open(Store store, String name) throws IOException {
        List<String> others = store.openTo(name, "");
        return Reply.done(List.of(
                others.isEmpty()
                        ? StoreText.of("open.nobody", name)
                        : StoreText.of("open.others", name, String.join(", ", others))));
    }

    /** The first of many paths. */
    private static String shortened(String paths) {
        List<String> all = List.of(paths.split(", "));
        return all.size() <= SHOWN
                ? paths
                : StoreText.of("history.more", String.join(", ", all.subList(0, SHOWN)), all.size() - SHOWN);
    }
}
