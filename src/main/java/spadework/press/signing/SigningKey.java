// SPDX-License-Identifier: Apache-2.0
package spadework.press.signing;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A private key with its certificates.
 *
 * @param chain the certificate of the key first, then those that vouch for it
 */
public record SigningKey(PrivateKey key, List<X509Certificate> chain) {
    /** System property that names the key's file; without it nothing is signed. */
    public static final String FILE = "spadework.signingKey";
    /** System property with the password of that file; without it the password is empty. */
    public static final String PASSWORD = "spadework.signingPassword";

    static final String KIND = "PKCS12";

    public SigningKey {
        chain = List.copyOf(chain);
    }

    /**
     * The key that is set up, if one is.
     *
     * @throws IOException if its file is there and cannot be used
     */
    public static Optional<SigningKey> setUp() throws IOException {
        String file = System.getProperty(FILE, "");
        return file.isEmpty() || !Files.exists(Path.of(file))
                ? Optional.empty()
                : Optional.of(read(Path.of(file), System.getProperty(PASSWORD, "")));
    }

    /**
     * Reads a key file.
     *
     * @param file in PKCS #12, the format in which certificate offices hand keys out
     * @throws IOException if it is none, the password is wrong, or no key is in it
     */
    public static SigningKey read(Path file, String password) throws IOException {
        try {
            KeyStore store = KeyStore.getInstance(KIND);
            store.load(new ByteArrayInputStream(Files.readAllBytes(file)), password.toCharArray());
            for (String alias : java.util.Collections.list(store.aliases())) {
                if (store.getKey(alias, password.toCharArray()) instanceof PrivateKey key) {
                    return new SigningKey(key, chain(store.getCertificateChain(alias)));
                }
            }
            throw new IOException("no private key is in it");
        } catch (GeneralSecurityException | IOException unusable) {
            throw new IOException(
                    file + " cannot be used as a signing key: it is no key file in PKCS #12, or its password is not the"
                            + " one given; set the password in SPADEWORK_KEY_PASSWORD, or make a key with: spadework"
                            + " key make",
                    unusable);
        }
    }

    private static List<X509Certificate> chain(Certificate[] certificates) {
        List<X509Certificate> chain = new ArrayList<>();
        for (Certificate one : certificates) {
            chain.add((X509Certificate) one);
        }
        return chain;
    }

    /** Whether nobody but its maker vouches for it. */
    public boolean isSelfMade() {
        return chain.get(0).getIssuerX500Principal().equals(chain.get(0).getSubjectX500Principal());
    }

    /** Whom it names, in one line. */
    public String holder() {
        return chain.get(0)
                .getSubjectX500Principal()
                .getName()
                .replaceAll("^CN=([^,]*).*", "$1")
                .replace("\\", "");
    }
}
