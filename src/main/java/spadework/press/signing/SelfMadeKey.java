// SPDX-License-Identifier: Apache-2.0
package spadework.press.signing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigInteger;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.KeyStore;
import java.security.SecureRandom;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Date;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x500.X500NameBuilder;
import org.bouncycastle.asn1.x500.style.BCStyle;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.cert.CertIOException;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/**
 * A key that a firm makes for itself: RSA of 3072 bits (NIST SP 800-57 Part 1, 128 bits of security), with a
 * certificate that only the firm itself has signed. It shows that a paper is unaltered; who issued it, nobody vouches
 * for.
 */
public final class SelfMadeKey {
    private static final int BITS = 3072;
    private static final int YEARS = 10;

    private SelfMadeKey() {}

    /**
     * A key file.
     *
     * @param name of the firm
     * @param from the first day on which the certificate holds; it does for ten years
     * @throws IOException if the machine's Java lacks what it needs
     */
    public static byte[] file(String name, LocalDate from, String password) throws IOException {
        try {
            KeyPairGenerator generator = KeyPairGenerator.getInstance("RSA");
            generator.initialize(BITS);
            KeyPair pair = generator.generateKeyPair();
            KeyStore store = KeyStore.getInstance(SigningKey.KIND);
            store.load(null, password.toCharArray());
            store.setKeyEntry("papers", pair.getPrivate(), password.toCharArray(), new Certificate[] {
                certificate(name, from, pair)
            });
            ByteArrayOutputStream file = new ByteArrayOutputStream();
            store.store(file, password.toCharArray());
            return file.toByteArray();
        } catch (GeneralSecurityException | OperatorCreationException unable) {
            throw new IOException("no key could be made: this Java lacks RSA or PKCS #12", unable);
        }
    }

    private static X509Certificate certificate(String name, LocalDate from, KeyPair pair)
            throws OperatorCreationException, GeneralSecurityException, CertIOException {
        X500Name firm =
                new X500NameBuilder(BCStyle.INSTANCE).addRDN(BCStyle.CN, name).build();
        JcaX509v3CertificateBuilder builder = new JcaX509v3CertificateBuilder(
                firm,
                new BigInteger(127, new SecureRandom()).setBit(0),
                Date.from(from.minusDays(1).atStartOfDay(ZoneOffset.UTC).toInstant()),
                Date.from(from.plusYears(YEARS).atStartOfDay(ZoneOffset.UTC).toInstant()),
                firm,
                pair.getPublic());
        builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(false));
        builder.addExtension(
                Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature | KeyUsage.nonRepudiation));
        return new JcaX509CertificateConverter()
                .getCertificate(builder.build(new JcaContentSignerBuilder("SHA256withRSA").build(pair.getPrivate())));
    }
}
