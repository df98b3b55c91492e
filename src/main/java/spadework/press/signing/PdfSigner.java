// SPDX-License-Identifier: Apache-2.0
package spadework.press.signing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.security.GeneralSecurityException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.ExternalSigningSupport;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.SignatureOptions;
import org.apache.pdfbox.pdmodel.interactive.form.PDSignatureField;
import org.bouncycastle.asn1.DERSet;
import org.bouncycastle.asn1.cms.Attribute;
import org.bouncycastle.asn1.cms.AttributeTable;
import org.bouncycastle.asn1.cms.CMSAttributes;
import org.bouncycastle.asn1.ess.ESSCertIDv2;
import org.bouncycastle.asn1.ess.SigningCertificateV2;
import org.bouncycastle.asn1.pkcs.PKCSObjectIdentifiers;
import org.bouncycastle.cert.jcajce.JcaCertStore;
import org.bouncycastle.cms.CMSException;
import org.bouncycastle.cms.CMSProcessableByteArray;
import org.bouncycastle.cms.CMSSignedDataGenerator;
import org.bouncycastle.cms.DefaultSignedAttributeTableGenerator;
import org.bouncycastle.cms.SignerInfoGenerator;
import org.bouncycastle.cms.jcajce.JcaSimpleSignerInfoGeneratorBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import spadework.wording.Wording;

/**
 * Signs PDFs as PAdES asks for at its baseline (ETSI EN 319 142-1, level B-B): a detached CMS signature over the whole
 * file but its own place, which names its certificate by hash. No time stamp service vouches for the day; the day is
 * the one on which the paper was issued. With an RSA key the same paper signed again gives the same bytes.
 */
public final class PdfSigner {
    private static final Wording WORDS = Wording.beside(PdfSigner.class);

    private static final COSName PADES = COSName.getPDFName("ETSI.CAdES.detached");
    /** Room for the signature and some certificates, in bytes. */
    private static final int ROOM = 24 * 1024;

    private final SigningKey key;

    public PdfSigner(SigningKey key) {
        this.key = key;
    }

    /**
     * The PDF with a signature added behind it; what was there stays as it is, byte for byte.
     *
     * @param day on which the paper was issued
     * @throws IOException if it is no PDF, or the key cannot sign
     */
    public byte[] signed(byte[] pdf, LocalDate day) throws IOException {
        GregorianCalendar noon =
                GregorianCalendar.from(day.atTime(LocalTime.NOON).atZone(ZoneOffset.UTC));
        ByteArrayOutputStream out = new ByteArrayOutputStream(pdf.length + 3 * ROOM);
        try (PDDocument document = Loader.loadPDF(pdf);
                SignatureOptions room = new SignatureOptions()) {
            room.setPreferredSignatureSize(ROOM);
            document.setDocumentId(day.toEpochDay());
            document.addSignature(signature(noon), room);
            tag(document);
            ExternalSigningSupport signing = document.saveIncrementalForExternalSigning(out);
            signing.setSignature(cms(signing.getContent().readAllBytes()));
        }
        return out.toByteArray();
    }

    private PDSignature signature(GregorianCalendar noon) {
        PDSignature signature = new PDSignature();
        signature.setFilter(PDSignature.FILTER_ADOBE_PPKLITE);
        signature.setSubFilter(PADES);
        signature.setName(key.holder());
        signature.setReason(
                key.isSelfMade()
                        ? WORDS.get("pdf-signer.shows-this-paper-unaltered", key.holder())
                        : "Issued by " + key.holder() + ".");
        signature.setSignDate(noon);
        return signature;
    }

    /** What PDF/UA-1 asks of a form field: a name to be read out, and an order of fields on its page (7.18). */
    private static void tag(PDDocument document) throws IOException {
        PDSignatureField field = document.getSignatureFields().get(0);
        field.setAlternateFieldName(WORDS.get("pdf-signer.digital-signature-contractor"));
        field.getCOSObject().setNeedToBeUpdated(true);
        PDPage page = document.getPage(0);
        page.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.getPDFName("S"));
        page.getCOSObject().setNeedToBeUpdated(true);
    }

    private byte[] cms(byte[] content) throws IOException {
        try {
            CMSSignedDataGenerator generator = new CMSSignedDataGenerator();
            generator.addSignerInfoGenerator(signer());
            generator.addCertificates(new JcaCertStore(key.chain()));
            return generator
                    .generate(new CMSProcessableByteArray(content), false)
                    .getEncoded();
        } catch (GeneralSecurityException | OperatorCreationException | CMSException unable) {
            throw new IOException("the signing key cannot sign; make another with: spadework key make", unable);
        }
    }

    /** With the certificate's hash among what is signed, and without a time of signing, as PAdES wants it. */
    private SignerInfoGenerator signer() throws GeneralSecurityException, OperatorCreationException {
        byte[] hash = java.security.MessageDigest.getInstance("SHA-256")
                .digest(key.chain().get(0).getEncoded());
        Attribute named = new Attribute(
                PKCSObjectIdentifiers.id_aa_signingCertificateV2,
                new DERSet(new SigningCertificateV2(new ESSCertIDv2(hash))));
        DefaultSignedAttributeTableGenerator attributes =
                new DefaultSignedAttributeTableGenerator(new AttributeTable(named));
        String algorithm = key.key().getAlgorithm().equals("EC") ? "SHA256withECDSA" : "SHA256withRSA";
        return new JcaSimpleSignerInfoGeneratorBuilder()
                .setSignedAttributeGenerator(
                        parameters -> attributes.getAttributes(parameters).remove(CMSAttributes.signingTime))
                .build(algorithm, key.key(), key.chain().get(0));
    }
}
