// SPDX-License-Identifier: Apache-2.0
package spadework.post;

import jakarta.activation.DataHandler;
import jakarta.mail.Message;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import jakarta.mail.util.ByteArrayDataSource;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Properties;

/**
 * A letter with its enclosures, before anybody sends it.
 *
 * @param from the writer's address
 * @param to the reader's address; an address that cannot be used is left out, for the writer to fill in
 * @param subject one line
 * @param words plain text
 */
public record Letter(String from, String to, String subject, String words, List<Enclosure> enclosures) {
    private static final String UTF_8 = StandardCharsets.UTF_8.name();

    public Letter {
        enclosures = List.copyOf(enclosures);
    }

    /** The letter as an {@code .eml} file that a mail program opens as a draft. */
    public byte[] draft() {
        try {
            MimeMessage message = new Unsent();
            message.setHeader("X-Unsent", "1");
            address(from).ifPresent(a -> set(() -> message.setFrom(a)));
            address(to).ifPresent(a -> set(() -> message.setRecipient(Message.RecipientType.TO, a)));
            message.setSubject(subject.replaceAll("\\s+", " ").strip(), UTF_8);
            MimeMultipart parts = new MimeMultipart();
            MimeBodyPart note = new MimeBodyPart();
            note.setText(words, UTF_8);
            parts.addBodyPart(note);
            for (Enclosure enclosure : enclosures) {
                MimeBodyPart part = new MimeBodyPart();
                part.setDataHandler(new DataHandler(new ByteArrayDataSource(enclosure.content(), enclosure.type())));
                part.setFileName(enclosure.name());
                parts.addBodyPart(part);
            }
            message.setContent(parts);
            message.saveChanges();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            message.writeTo(out);
            return out.toByteArray();
        } catch (MessagingException unusable) {
            throw new IllegalStateException(unusable);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    private static Optional<InternetAddress> address(String written) {
        try {
            InternetAddress address = new InternetAddress(written.strip(), true);
            address.validate();
            return Optional.of(address);
        } catch (AddressException unusable) {
            return Optional.empty();
        }
    }

    private interface MessageSetting {
        void run() throws MessagingException;
    }

    private static void set(MessageSetting step) {
        try {
            step.run();
        } catch (MessagingException unusable) {
            throw new IllegalStateException(unusable);
        }
    }

    /** A message without an identity: the mail program that sends it gives it one. */
    private static final class Unsent extends MimeMessage {
        Unsent() {
            super(Session.getInstance(new Properties()));
        }

        @Override
        protected void updateMessageID() throws MessagingException {
            removeHeader("Message-ID");
        }
    }
}
