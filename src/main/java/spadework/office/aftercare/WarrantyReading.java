// SPDX-License-Identifier: Apache-2.0
package spadework.office.aftercare;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spadework.finding.Fault;
import spadework.finding.Place;
import spadework.office.files.RegisterFolders;
import spadework.office.reply.Reply;
import spadework.register.Entry;
import spadework.register.Examination;
import spadework.register.Register;
import spadework.register.WarrantyBook;
import spadework.warranty.Warranty;

/**
 * What a register holds about warranties.
 *
 * @param wrong what does not hold in its lines, told with every answer that is drawn from it
 */
public record WarrantyReading(Path folder, WarrantyBook book, List<String> wrong) {

    /** Reads the register of a job. */
    static WarrantyReading of(Path job) throws IOException {
        Path folder = RegisterFolders.of(job);
        List<Entry> entries = new ArrayList<>();
        Examination found = Register.of(folder).each(entries::add);
        return new WarrantyReading(
                folder,
                WarrantyBook.of(entries),
                found.faults().stream().map(Fault::text).toList());
    }

    /** The warranty that is named by any of its certificates. */
    Optional<Warranty> meant(String certificate) {
        return book.current(certificate);
    }

    /** The warranty of a job that has one only. */
    Optional<Warranty> only() {
        List<Warranty> current = book.current();
        return current.stream().filter(only -> current.size() == 1).findFirst();
    }

    /** The answer where no warranty, or no single one, is meant; or where the register does not hold. */
    Reply refused() {
        if (!wrong.isEmpty()) {
            return new Reply(List.of(), wrong, false);
        }
        List<String> numbers = book.current().stream().map(Warranty::number).toList();
        return Reply.refused(List.of(new Fault(
                Place.ofFile(folder.toString()),
                numbers.isEmpty() ? "no warranty" : "no warranty that is meant alone",
                numbers.isEmpty() ? "a job whose certificate was issued" : "one of " + String.join(", ", numbers),
                numbers.isEmpty() ? "name the folder of a closed job" : "name it with --certificate")));
    }
}
