package org.steelyard.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Objects;

/**
 * What is around the content of a page that works from disk without a network: it runs no script and loads nothing; its
 * policy allows its own style sheet, known by checksum, and nothing else.
 */
final class PageShell {

    private PageShell() {}

    /** Begins a page, up to the open body. */
    static Html begin(String title, String styleSheet) {
        Html html = new Html();
        html.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en");
        String css = css(styleSheet);
        html.open("head").empty("meta", "charset", "utf-8");
        html.empty(
                "meta",
                "http-equiv",
                "Content-Security-Policy",
                "content",
                "default-src 'none'; style-src 'sha256-" + sha256(css) + "'; base-uri 'none'; form-action 'none'");
        html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        html.empty("meta", "name", "color-scheme", "content", "light dark");
        html.element("title", title);
        html.style(css).closeBlock();
        return html.open("body");
    }

    /** Ends a page that {@link #begin} began. */
    static String end(Html html) {
        return html.close().close().page();
    }

    private static String css(String name) {
        try (InputStream sheet = Objects.requireNonNull(PageShell.class.getResourceAsStream(name))) {
            return new String(sheet.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String sha256(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
