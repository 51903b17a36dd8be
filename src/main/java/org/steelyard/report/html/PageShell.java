package org.steelyard.report.html;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;

/**
 * What is around the content of a page that works from disk without a network: it loads nothing, and its policy allows
 * its own style sheets and scripts, known by checksum, and nothing else.
 */
public final class PageShell {

    private PageShell() {}

    /** Begins a page that runs no script, up to the open body. */
    public static Html begin(String title, String styleSheet) {
        return begin(title, List.of(ChartLibrary.text(styleSheet)), List.of());
    }

    /**
     * Begins a page, up to the open body.
     *
     * @param styles style sheets
     * @param scripts bodies of scripts, as {@link Html#scriptBody} makes them, which the page may run
     */
    public static Html begin(String title, List<String> styles, List<String> scripts) {
        Html html = new Html();
        html.open("html", "xmlns", "http://www.w3.org/1999/xhtml", "lang", "en");
        html.open("head").empty("meta", "charset", "utf-8");
        html.empty("meta", "http-equiv", "Content-Security-Policy", "content", policy(styles, scripts));
        html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        html.empty("meta", "name", "color-scheme", "content", "light dark");
        html.element("title", title);
        styles.forEach(html::style);
        html.closeBlock();
        return html.open("body");
    }

    private static String policy(List<String> styles, List<String> scripts) {
        return "default-src 'none'; " + sources("script-src", scripts) + sources("style-src", styles)
                + "base-uri 'none'; form-action 'none'";
    }

    private static String sources(String kind, List<String> texts) {
        if (texts.isEmpty()) {
            return "";
        }
        StringBuilder all = new StringBuilder(kind);
        texts.forEach(text -> all.append(" 'sha256-").append(sha256(text)).append('\''));
        return all.append("; ").toString();
    }

    /** Ends a page that {@link #begin} began. */
    public static String end(Html html) {
        return html.close().close().page();
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
