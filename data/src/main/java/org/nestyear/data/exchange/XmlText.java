package org.nestyear.data.exchange;

import java.io.StringWriter;
import java.util.Map;
import java.util.TreeMap;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** A small XML document, written element by element. */
final class XmlText {
    private final StringWriter text = new StringWriter();
    private final XMLStreamWriter xml;

    XmlText() {
        try {
            xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
            xml.writeStartDocument("UTF-8", "1.0");
            text.append('\n');
        } catch (XMLStreamException e) {
            throw failed(e);
        }
    }

    /** Opens an element; attributes come in the order of their names. */
    XmlText open(String name, Map<String, String> attributes) {
        try {
            xml.writeStartElement(name);
            for (Map.Entry<String, String> attribute : new TreeMap<>(attributes).entrySet()) {
                xml.writeAttribute(attribute.getKey(), legal(attribute.getValue()));
            }
            return this;
        } catch (XMLStreamException e) {
            throw failed(e);
        }
    }

    XmlText open(String name) {
        return open(name, Map.of());
    }

    XmlText close() {
        try {
            xml.writeEndElement();
            return this;
        } catch (XMLStreamException e) {
            throw failed(e);
        }
    }

    /** An element that holds text. */
    XmlText leaf(String name, String value) {
        open(name);
        try {
            xml.writeCharacters(legal(value));
        } catch (XMLStreamException e) {
            throw failed(e);
        }
        return close();
    }

    /** An element that holds nothing but its attributes. */
    XmlText empty(String name, Map<String, String> attributes) {
        return open(name, attributes).close();
    }

    /** The document; nothing may follow. */
    String end() {
        try {
            xml.writeEndDocument();
            xml.close();
        } catch (XMLStreamException e) {
            throw failed(e);
        }
        return text.append('\n').toString();
    }

    /** Characters that XML 1.0 §2.2 does not allow, as spaces. */
    private static String legal(String value) {
        StringBuilder legal = new StringBuilder();
        value.codePoints().map(c -> isLegal(c) ? c : ' ').forEach(legal::appendCodePoint);
        return legal.toString();
    }

    private static boolean isLegal(int c) {
        return c == '\t'
                || c == '\n'
                || c == '\r'
                || (c >= 0x20 && c <= 0xD7FF)
                || (c >= 0xE000 && c <= 0xFFFD)
                || c >= 0x10000;
    }

    private static IllegalStateException failed(XMLStreamException e) {
        return new IllegalStateException("a document in memory cannot fail", e);
    }
}
