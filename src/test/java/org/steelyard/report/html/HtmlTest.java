package org.steelyard.report.html;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class HtmlTest {

    @Test
    void elementsNestAndTextIsEscaped() {
        String page = new Html()
                .open("p", "title", "\"a\" & 'b'")
                .text("1 < 2")
                .empty("br")
                .data("x")
                .close()
                .page();
        assertThat(page)
                .isEqualTo("<!DOCTYPE html>\n<p title=\"&quot;a&quot; &amp; &#39;b&#39;\">1 &lt; 2<br/>"
                        + "<bdi>x</bdi></p>\n");
    }

    @Test
    void signsThatXmlDoesNotKnowAreReplaced() {
        assertThat(new Html()
                        .text("a\u0000b\u001Fc\uD800d\uFFFEe\u0085f\tg\uD83D\uDE00")
                        .page())
                .endsWith("a\uFFFDb\uFFFDc\uFFFDd\uFFFDe\uFFFDf\tg\uD83D\uDE00\n");
    }

    @Test
    void anElementLeftOpenIsAFault() {
        Html html = new Html().open("p");
        assertThatThrownBy(html::page).isInstanceOf(IllegalStateException.class).hasMessageContaining("p");
    }

    @Test
    void aStyleSheetMayNotHoldMarkup() {
        assertThatThrownBy(() -> new Html().style("</style>")).isInstanceOf(IllegalArgumentException.class);
    }
}
