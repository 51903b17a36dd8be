package org.steelyard.report.html;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/**
 * Builds HTML (and SVG within it) that is also well-formed XML. All text and all values of attributes are escaped;
 * there is no way to put in markup but by elements. Signs that XML does not know, as control characters and halves of
 * surrogate pairs, become U+FFFD.
 */
public final class Html {

    private static final char UNKNOWN = '\uFFFD';

    private final StringBuilder out = new StringBuilder(1 << 16);
    private final Deque<String> open = new ArrayDeque<>();

    Html() {
        out.append("<!DOCTYPE html>\n");
    }

    /**
     * Opens an element.
     *
     * @param attributes names and values in turn
     */
    public Html open(String element, String... attributes) {
        start(element, attributes);
        out.append('>');
        open.push(element);
        return this;
    }

    /** Closes the element that was opened last. */
    public Html close() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    /** Closes the element that was opened last and ends the line, where white space does not matter. */
    public Html closeBlock() {
        close();
        out.append('\n');
        return this;
    }

    /** An element without content. */
    public Html empty(String element, String... attributes) {
        start(element, attributes);
        out.append("/>");
        return this;
    }

    /** An element with nothing but text. */
    public Html element(String element, String text, String... attributes) {
        return open(element, attributes).text(text).close();
    }

    /** Text from data, set apart so that its direction of writing does not turn what stands around it. */
    public Html data(String text) {
        return element("bdi", text);
    }

    public Html text(String text) {
        escape(text);
        return this;
    }

    /**
     * A style sheet of our own, which stands in the page as it is.
     *
     * @throws IllegalArgumentException if it holds a sign that HTML and XML would read differently
     */
    Html style(String css) {
        if (css.indexOf('<') >= 0 || css.indexOf('&') >= 0) {
            throw new IllegalArgumentException("a style sheet in a page holds neither < nor &");
        }
        open("style");
        out.append(css);
        return closeBlock();
    }

    /**
     * A script of our own or of a library, which stands in the page as it is, marked so that XML reads it as text, too.
     *
     * @param body what {@link #scriptBody} made of it
     */
    public Html script(String body) {
        open("script");
        out.append(body);
        return closeBlock();
    }

    /**
     * What stands inside the element of a script.
     *
     * @throws IllegalArgumentException if it holds what would end or change the element
     */
    public static String scriptBody(String script) {
        for (String bad : List.of("]]>", "</script", "<!--", "\r")) {
            if (script.contains(bad)) {
                throw new IllegalArgumentException("a script in a page does not hold " + bad);
            }
        }
        return "//<![CDATA[\n" + script + "\n//]]>";
    }

    /** Writes what there is so far and forgets it. */
    public void drain(Writer writer) throws IOException {
        writer.append(out);
        out.setLength(0);
    }

    /** The whole page, or what was not drained of it. */
    String page() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("elements left open: " + open);
        }
        return out.append('\n').toString();
    }

    private void start(String element, String... attributes) {
        out.append('<').append(element);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ').append(attributes[i]).append("=\"");
            escape(attributes[i + 1]);
            out.append('"');
        }
    }

    private void escape(String text) {
        for (int i = 0; i < text.length(); ) {
            int sign = text.codePointAt(i);
            i += Character.charCount(sign);
            switch (sign) {
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '&' -> out.append("&amp;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.appendCodePoint(known(sign) ? sign : UNKNOWN);
            }
        }
    }

    /** Whether a sign may stand in XML 1.0; C1 controls are left out too, as browsers do not show them. */
    private static boolean known(int sign) {
        if (sign < 0x20) {
            return sign == '\t' || sign == '\n' || sign == '\r';
        }
        boolean control = sign >= 0x7F && sign < 0xA0;
        boolean surrogate = sign >= 0xD800 && sign < 0xE000;
        return !control && !surrogate && sign != 0xFFFE && sign != 0xFFFF;
    }
}
