package org.bondspan.report.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.bondspan.sheet.table.Schedule;
import org.junit.jupiter.api.Test;

/** Escapes as HTML has them: the five characters that could end text or an attribute. */
class HtmlDocumentTest {
    @Test
    void whatTheSiteFileSaysNeverBecomesMarkup() {
        String evil = "<script>alert('x')</script> & \"quoted\" \u001b[31m \u202e";
        String html = new String(
                HtmlDocument.of(new Document(
                        evil,
                        evil,
                        List.of(
                                new Part.Heading(evil),
                                new Part.Verdict(evil),
                                new Part.Paragraph(evil),
                                new Part.Table(new Schedule(evil, List.of(evil), List.of(List.of(evil))))))),
                StandardCharsets.UTF_8);

        assertThat(html).doesNotContain("<script", "\u001b", "\u202e");
        assertThat(html).contains("&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt; &amp; &quot;quoted&quot; ?[31m ?");
    }

    @Test
    void theFileNeedsNothingElse() {
        String html = new String(
                HtmlDocument.of(new Document("a", "b", List.of(new Part.Paragraph("c")))), StandardCharsets.UTF_8);

        assertThat(html).startsWith("<!DOCTYPE html>").doesNotContain("http://", "https://", "<link", "url(");
    }
}
