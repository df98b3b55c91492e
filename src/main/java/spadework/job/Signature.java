// SPDX-License-Identifier: Apache-2.0
package spadework.job;

import java.util.List;
import java.util.Optional;

/**
 * How somebody signed: on paper that is kept as a file, or by a typed name.
 *
 * @param by whose signature it is; empty where it is that of all who are named beside it
 * @param file a scan or photo of the signed paper, in the job's folder
 * @param typed the name as typed
 * @param consent how the signer agreed to sign without paper, in words, as older files have it
 * @param electronic the same as the law asks for it, part by part
 */
public record Signature(
        List<String> by,
        Optional<String> file,
        Optional<String> typed,
        Optional<String> consent,
        Optional<ElectronicConsent> electronic) {

    public Signature {
        by = List.copyOf(by);
    }

    /** Whether it is a typed name without all that 15 USC 7001(c) asks for. */
    public boolean lacksConsent() {
        return typed.isPresent() && electronic.isEmpty();
    }
}
