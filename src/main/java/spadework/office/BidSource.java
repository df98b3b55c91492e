// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.nio.file.Path;
import java.util.Optional;
import spadework.contract.Revision;
import spadework.office.records.AgreedRecord;

/**
 * What a bid is made from beside the job that was read.
 *
 * @param file the job's file, for faults
 * @param record what the records of the job say against it
 * @param revision that the papers carry; empty where none is issued
 */
record BidSource(Path file, AgreedRecord record, Optional<Revision> revision) {

    static BidSource of(Path file, AgreedRecord record) {
        return new BidSource(file, record, Optional.empty());
    }
}
