// SPDX-License-Identifier: Apache-2.0
package spadework.press.sheet;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** One part of a workbook's file: elements and attributes, written one after the other. */
final class XmlPart {
    /** Written as it is: a writer that knows its encoding would take letters beyond the first plane apart. */
    private final StringWriter text = new StringWriter();

    private final XMLStreamWriter xml;

    /** A part with its outermost element open. */
    XmlPart(String root, String namespace) {
        try {
            xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
            xml.writeStartDocument("UTF-8", "1.0");
            xml.writeStartElement(root);
            xml.writeDefaultNamespace(namespace);
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
    }

    /** Opens an element; its attributes are given as name, value, name, value. */
    XmlPart open(String name, Object... attributes) {
        try {
            xml.writeStartElement(name);
            attributes(attributes);
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
        return this;
    }

    /** An element without content. */
    XmlPart empty(String name, Object... attributes) {
        try {
            xml.writeEmptyElement(name);
            attributes(attributes);
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
        return this;
    }

    /** Attributes of the element that was opened last. */
    XmlPart attributes(Object... attributes) {
        try {
            for (int i = 0; i < attributes.length; i += 2) {
                xml.writeAttribute(attributes[i].toString(), attributes[i + 1].toString());
            }
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
        return this;
    }

    /** Words, with what XML reserves written as entities. */
    XmlPart words(String words) {
        try {
            xml.writeCharacters(words);
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
        return this;
    }

    /** An element that holds words only. */
    XmlPart element(String name, String words, Object... attributes) {
        return open(name, attributes).words(words).close();
    }

    /** Closes the element that was opened last. */
    XmlPart close() {
        try {
            xml.writeEndElement();
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
        return this;
    }

    /** The part as it is stored; whatever is open is closed. */
    byte[] bytes() {
        try {
            xml.writeEndDocument();
            xml.close();
        } catch (XMLStreamException e) {
            throw impossible(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static IllegalStateException impossible(XMLStreamException e) {
        return new IllegalStateException("text in memory can always be written", e);
    }
}
