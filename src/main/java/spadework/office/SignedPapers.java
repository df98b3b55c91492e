// SPDX-License-Identifier: Apache-2.0
package spadework.office;

import java.io.IOException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import spadework.press.signing.PdfSigner;
import spadework.press.signing.SigningKey;

/** Issued papers with the firm's digital signature on each PDF but reading copies, where a key is set up. */
public final class SignedPapers {
    private SignedPapers() {}

    /**
     * The same files, their PDFs signed.
     *
     * @param day on which they are issued
     * @throws IOException if a key is set up and cannot be used
     */
    public static Map<String, byte[]> of(Map<String, byte[]> papers, LocalDate day) throws IOException {
        Optional<SigningKey> key = SigningKey.setUp();
        if (key.isEmpty()) {
            return papers;
        }
        PdfSigner signer = new PdfSigner(key.get());
        Map<String, byte[]> signed = new LinkedHashMap<>();
        for (Map.Entry<String, byte[]> paper : papers.entrySet()) {
            boolean pdf = paper.getKey().endsWith(".pdf") && !paper.getKey().endsWith(HomeownerPapers.READING + ".pdf");
            signed.put(paper.getKey(), pdf ? signer.signed(paper.getValue(), day) : paper.getValue());
        }
        return signed;
    }
}
