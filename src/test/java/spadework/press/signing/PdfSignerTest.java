// SPDX-License-Identifier: Apache-2.0
package spadework.press.signing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.bouncycastle.asn1.ASN1InputStream;
import org.bouncycastle.asn1.cms.CMSAttributes;
import org.bouncycastle.asn1.cms.ContentInfo;
import org.bouncycastle.asn1.pkcs.PKCSObjectIdentifiers;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cms.CMSException;
import org.bouncycastle.cms.CMSProcessableByteArray;
import org.bouncycastle.cms.CMSSignedData;
import org.bouncycastle.cms.SignerInformation;
import org.bouncycastle.cms.jcajce.JcaSimpleSignerInfoVerifierBuilder;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spadework.press.PageFixtures;
import spadework.press.VeraPdf;
import spadework.press.page.PageInfo;
import spadework.press.page.PagePress;
import spadework.press.page.RecordCode;
import spadework.press.template.Templates;

/** A signed paper by three readers that are not ours: Bouncy Castle, poppler's pdfsig and veraPDF. */
class PdfSignerTest {
    private static final LocalDate DAY = LocalDate.of(2026, 8, 14);
    private static final String CODE = "12-3f2a-91c0-77de-04b1";

    @TempDir
    private static Path folder;

    private static SigningKey key;
    private static byte[] paper;
    private static byte[] signed;

    @BeforeAll
    static void sign() throws IOException {
        Path file = Files.write(folder.resolve("key.p12"), SelfMadeKey.file("Fennimarsh Groundworks", DAY, ""));
        key = SigningKey.read(file, "");
        Map<String, Object> model = PageFixtures.proposalModel();
        paper = new PagePress(Templates.bundled())
                .print("proposal", model, new PageInfo("en-US", "Fennimarsh Groundworks", DAY, CODE));
        signed = new PdfSigner(key).signed(paper, DAY);
    }

    @Test
    void signatureIsGoodOverTheWholeFileButItsOwnPlace() throws Exception {
        PDSignature signature = signature(signed);
        assertThat(signature.getSubFilter()).isEqualTo("ETSI.CAdES.detached");
        int[] range = signature.getByteRange();
        assertThat(range[0]).isZero();
        assertThat(range[2] + range[3]).as("to the last byte").isEqualTo(signed.length);
        SignerInformation signer = signer(signature, signed);
        assertThat(isGood(signature, signed)).isTrue();
        assertThat(signer.getSignedAttributes().get(PKCSObjectIdentifiers.id_aa_signingCertificateV2))
                .as("PAdES baseline (ETSI EN 319 142-1, 6.3): the certificate by its hash")
                .isNotNull();
        assertThat(signer.getSignedAttributes().get(CMSAttributes.signingTime))
                .as("PAdES baseline: the time stands in the dictionary alone")
                .isNull();
    }

    @Test
    void everyAlteredByteIsFound() throws Exception {
        for (int at : new int[] {20, paper.length / 3, paper.length / 2, paper.length - 40}) {
            byte[] altered = signed.clone();
            altered[at] ^= 1;
            assertThat(isGood(signature(signed), altered)).as("byte " + at).isFalse();
        }
    }

    @Test
    void paperStaysAsItWasAndSigningAgainGivesTheSameBytes() throws IOException {
        assertThat(Arrays.equals(signed, 0, paper.length, paper, 0, paper.length))
                .isTrue();
        assertThat(Arrays.equals(new PdfSigner(key).signed(paper, DAY), signed)).isTrue();
    }

    @Test
    void signedPaperStillConformsToPdfAAndPdfUa() {
        assertThat(VeraPdf.failedRules(signed)).isEmpty();
    }

    @Test
    void selfMadeKeySaysSo() throws IOException {
        assertThat(key.isSelfMade()).isTrue();
        assertThat(key.holder()).isEqualTo("Fennimarsh Groundworks");
        assertThat(signature(signed).getReason())
                .isEqualTo("Shows that this paper is unaltered. The key is self-made by Fennimarsh Groundworks.");
    }

    @Test
    void popplerFindsTheSignatureGood() throws Exception {
        Path file = Files.write(folder.resolve("signed.pdf"), signed);
        Process pdfsig;
        try {
            pdfsig = new ProcessBuilder("pdfsig", "-nocert", file.toString())
                    .redirectErrorStream(true)
                    .start();
        } catch (IOException missing) {
            assumeTrue(false, "no pdfsig on the path (Debian: poppler-utils)");
            return;
        }
        String text = new String(pdfsig.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(pdfsig.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(text)
                .contains("Signature Validation: Signature is Valid.", "Total document signed", "ETSI.CAdES.detached");
    }

    @Test
    void codeOfTheRegisterIsReadFromTheFoot() throws IOException {
        assertThat(RecordCode.in(signed)).contains(CODE);
    }

    @Test
    void wrongPasswordIsOneClearMessage() throws IOException {
        Path file = Files.write(folder.resolve("locked.p12"), SelfMadeKey.file("Fennimarsh Groundworks", DAY, "right"));
        assertThatThrownBy(() -> SigningKey.read(file, "wrong"))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("cannot be used as a signing key")
                .hasMessageContaining("SPADEWORK_KEY_PASSWORD");
    }

    private static PDSignature signature(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getLastSignatureDictionary();
        }
    }

    private static SignerInformation signer(PDSignature signature, byte[] pdf) throws IOException, CMSException {
        return data(signature, pdf).getSignerInfos().getSigners().iterator().next();
    }

    /** What was left free behind the signature in its place is no part of it. */
    private static CMSSignedData data(PDSignature signature, byte[] pdf) throws IOException, CMSException {
        try (ASN1InputStream in = new ASN1InputStream(signature.getContents(signed))) {
            return new CMSSignedData(
                    new CMSProcessableByteArray(signature.getSignedContent(pdf)),
                    ContentInfo.getInstance(in.readObject()));
        }
    }

    private static boolean isGood(PDSignature signature, byte[] pdf) throws Exception {
        CMSSignedData data = data(signature, pdf);
        SignerInformation signer = data.getSignerInfos().getSigners().iterator().next();
        X509CertificateHolder certificate =
                data.getCertificates().getMatches(null).iterator().next();
        try {
            return signer.verify(new JcaSimpleSignerInfoVerifierBuilder().build(certificate));
        } catch (CMSException altered) {
            return false;
        }
    }
}
