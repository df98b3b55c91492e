// SPDX-License-Identifier: Apache-2.0
package spadework.press.page;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.GregorianCalendar;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;

/**
 * Writes what a PDF says about itself, alike in its information dictionary and in its metadata.
 *
 * <p>The renderer dates both from the clock, and a PDF takes its identity from the time of day, so that no two files
 * would be the same. Here all of it comes from the issue date and the title.
 */
public final class PdfMetadata {
    private static final String PROGRAM = "Spadework";

    /** The claim to PDF/UA is not among the names PDF/A knows, so the packet describes it (ISO 19005-3, 6.6.2.3). */
    private static final String PACKET = """
            <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/">
            <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
             xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:xmp="http://ns.adobe.com/xap/1.0/"
             xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/"
             xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/"
             xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#"
             xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
            <dc:format>application/pdf</dc:format>
            <dc:title><rdf:Alt><rdf:li xml:lang="x-default">{title}</rdf:li></rdf:Alt></dc:title>
            <dc:creator><rdf:Seq><rdf:li>{author}</rdf:li></rdf:Seq></dc:creator>
            <dc:language><rdf:Bag><rdf:li>{language}</rdf:li></rdf:Bag></dc:language>
            <pdf:Producer>{program}</pdf:Producer>
            <xmp:CreatorTool>{program}</xmp:CreatorTool>
            <xmp:CreateDate>{date}</xmp:CreateDate>
            <xmp:ModifyDate>{date}</xmp:ModifyDate>
            <pdfaid:part>3</pdfaid:part>
            <pdfaid:conformance>A</pdfaid:conformance>
            <pdfuaid:part>1</pdfuaid:part>
            <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
            <pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
            <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
            <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
            <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
            <pdfaProperty:name>part</pdfaProperty:name>
            <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
            <pdfaProperty:category>internal</pdfaProperty:category>
            <pdfaProperty:description>Part of ISO 14289 that the file conforms to</pdfaProperty:description>
            </rdf:li></rdf:Seq></pdfaSchema:property>
            </rdf:li></rdf:Bag></pdfaExtension:schemas>
            </rdf:Description>
            </rdf:RDF>
            </x:xmpmeta>
            <?xpacket end="w"?>
            """;

    private PdfMetadata() {}

    /**
     * Stamps the document.
     *
     * @param title as the template's {@code <title>} gives it
     */
    static void put(PDDocument document, String title, PageInfo info) throws IOException {
        // Noon, so that the date is the same day wherever in the country the file is read.
        ZonedDateTime issued = info.issued().atTime(LocalTime.NOON).atZone(ZoneOffset.UTC);

        PDDocumentInformation dictionary = new PDDocumentInformation();
        dictionary.setTitle(title);
        dictionary.setAuthor(info.author());
        dictionary.setCreator(PROGRAM);
        dictionary.setProducer(PROGRAM);
        dictionary.setCreationDate(GregorianCalendar.from(issued));
        dictionary.setModificationDate(GregorianCalendar.from(issued));
        document.setDocumentInformation(dictionary);
        document.setDocumentId(issued.toEpochSecond());
        document.getDocumentCatalog().setLanguage(info.language());

        String packet = PACKET.replace("{program}", PROGRAM)
                .replace("{date}", DateTimeFormatter.ISO_INSTANT.format(issued))
                .replace("{language}", markup(info.language()))
                .replace("{author}", markup(info.author()))
                .replace("{title}", markup(title));
        PDMetadata metadata =
                new PDMetadata(document, new ByteArrayInputStream(packet.getBytes(StandardCharsets.UTF_8)));
        document.getDocumentCatalog().setMetadata(metadata);
    }

    private static String markup(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("{", "&#123;");
    }
}
