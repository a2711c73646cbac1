package org.roofspring.report.internal.html;

import static org.roofspring.report.internal.html.HtmlText.escape;
import static org.roofspring.report.internal.html.HtmlText.fragment;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

import org.roofspring.drawing.SvgWriter;
import org.roofspring.report.Block;
import org.roofspring.report.ReportDocument;

/** Writes the blocks of one report. */
public final class HtmlWriter {
    private final ReportDocument report;
    private final StringBuilder out = new StringBuilder(1 << 20);
    private int drawings;

    public HtmlWriter(ReportDocument report) {
        this.report = report;
    }

    /** The whole file. */
    public String write() {
        out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>")
                .append(escape(report.title())).append("</title>\n<style>\n").append(style())
                        .append("</style>\n</head>\n<body>\n")
                .append("<header>\n<h1>").append(escape(report.title())).append("</h1>\n<p class=\"sub\">")
                .append(escape(report.subtitle())).append("</p>\n<p class=\"sub\">Design report of ")
                        .append(report.date())
                .append("</p>\n</header>\n");
        contents();
        out.append("<main>\n");
        report.blocks().forEach(this::write);
        out.append("</main>\n</body>\n</html>\n");
        return out.toString();
    }

    private static String style() {
        try (InputStream stream = HtmlWriter.class.getResourceAsStream("report.css")) {
            if (stream == null) {
                throw new IllegalStateException("the style sheet is missing from the report bundle");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void contents() {
        out.append("<nav aria-label=\"Contents\">\n<h2>Contents</h2>\n<ul>\n");
        for (Block block : report.blocks()) {
            if (block instanceof Block.Heading heading && heading.level() == 1 && !heading.id().isEmpty()) {
                out.append("<li><a href=\"").append(fragment(heading.id())).append("\">").append(escape(heading.text()))
                        .append("</a></li>\n");
            }
        }
        out.append("</ul>\n</nav>\n");
    }

    private void write(Block block) {
        switch (block) {
            case Block.Heading heading -> {
                // the title of the report is the only heading of the first level
                String tag = "h" + (heading.level() + 1);
                out.append('<').append(tag).append(id(heading.id())).append('>')
                        .append(escape(heading.text())).append("</")
                        .append(tag).append(">\n");
            }
            case Block.Paragraph paragraph -> out.append(paragraph.small() ? "<p class=\"small\">" : "<p>")
                    .append(escape(paragraph.text())).append("</p>\n");
            case Block.KeyValues values -> write(values);
            case Block.Table table -> write(table);
            case Block.Figure figure -> write(figure);
            case Block.Statement statement -> write(statement);
            case Block.CautionBox caution -> write(caution);
            case Block.Workings workings -> write(workings);
            case Block.Card card -> {
                out.append("<section class=\"card\">\n<h2>").append(escape(card.title())).append("</h2>\n");
                card.blocks().forEach(this::write);
                out.append("</section>\n");
            }
            case Block.PageBreak pageBreak -> out.append("<div class=\"break\"></div>\n");
            case Block.SignatureSpace space -> {
                out.append("<div class=\"sign\">\n");
                space.roles().forEach(role -> out.append("<p><span class=\"line\"></span>").append(escape(role))
                        .append(", name, licence number, date</p>\n"));
                out.append("</div>\n");
            }
        }
    }

    private void write(Block.KeyValues values) {
        out.append("<dl>\n");
        for (Block.Entry entry : values.entries()) {
            out.append("<div><dt>").append(escape(entry.label())).append("</dt><dd")
                    .append(id(entry.value().id())).append('>')
                    .append(linked(entry.value().text(), entry.value().link())).append("</dd></div>\n");
        }
        out.append("</dl>\n");
    }

    private void write(Block.Table table) {
        out.append("<div class=\"wide\"><table").append(id(table.id())).append(">\n");
        if (!table.caption().isEmpty()) {
            out.append("<caption>").append(linked(table.caption(), table.link())).append("</caption>\n");
        }
        out.append("<thead><tr>");
        table.columns().forEach(column -> out.append(column.number() ? "<th class=\"n\" scope=\"col\">"
                : "<th scope=\"col\">")
                .append(escape(column.title())).append("</th>"));
        out.append("</tr></thead>\n<tbody>\n");
        for (List<Block.Cell> row : table.shownRows()) {
            out.append("<tr>");
            for (int i = 0; i < row.size(); i++) {
                out.append(table.columns().get(i).number() ? "<td class=\"n\""
                        : "<td").append(id(row.get(i).id())).append('>')
                        .append(linked(row.get(i).text(), row.get(i).link())).append("</td>");
            }
            out.append("</tr>\n");
        }
        out.append("</tbody>\n</table></div>\n");
        if (!table.shownNote().isEmpty()) {
            out.append("<p class=\"small\">").append(escape(table.shownNote())).append("</p>\n");
        }
    }

    private void write(Block.Figure figure) {
        String prefix = "drawing" + ++drawings;
        out.append("<figure>");
        figure.findings().stream().filter(finding -> !finding.id().isEmpty())
                .forEach(finding -> out.append("<span").append(id(finding.id())).append("></span>"));
        out.append('\n').append(SvgWriter.element(figure.drawing(), prefix)).append("\n<figcaption>");
        List<Block.Cell> explained = figure.explained();
        out.append(linked(figure.caption(), explained.size() == 1 ? explained.get(0).link() : ""));
        if (explained.size() > 1) {
            out.append(" Workings: ");
            for (int i = 0; i < explained.size(); i++) {
                out.append(i == 0 ? "" : "; ").append(linked(explained.get(i).text(), explained.get(i).link()));
            }
            out.append('.');
        }
        out.append("</figcaption>\n</figure>\n");
    }

    private void write(Block.Statement statement) {
        out.append("<div class=\"statement ").append(tone(statement.tone())).append('"').append(id(statement.id()))
                .append(">\n<p><span class=\"tone\">").append(escape(statement.tone().word())).append("</span> ")
                .append(statement.title().isEmpty() ? "" : "<b>" + escape(statement.title()) + "</b>: ")
                .append(linked(statement.text(), statement.link())).append("</p>\n");
        if (!statement.reasons().isEmpty()) {
            out.append("<ul>\n");
            statement.reasons().forEach(reason -> out.append("<li>").append(escape(reason)).append("</li>\n"));
            out.append("</ul>\n");
        }
        out.append("</div>\n");
    }

    private void write(Block.CautionBox caution) {
        out.append("<div class=\"statement ").append(tone(caution.tone())).append("\">\n<p><span class=\"tone\">")
                .append(escape(caution.tone().word())).append("</span> ")
                .append(caution.about().isEmpty() ? "" : "<b>" + escape(caution.about()) + "</b>: ");
        if (caution.texts().size() == 1) {
            out.append(escape(caution.texts().get(0))).append("</p>\n");
        } else {
            out.append("</p>\n<ul>\n");
            caution.texts().forEach(text -> out.append("<li>").append(escape(text)).append("</li>\n"));
            out.append("</ul>\n");
        }
        out.append("<p class=\"small\">").append(escape(caution.source())).append(" \u00b7 ")
                .append(escape(caution.code()))
                .append("</p>\n</div>\n");
    }

    private void write(Block.Workings workings) {
        out.append("<section class=\"working\"").append(id(workings.id())).append(">\n<h4>")
                .append(linked(workings.title(), workings.link())).append("</h4>\n<ol>\n");
        for (Block.Step step : workings.steps()) {
            out.append("<li>").append(escape(step.meaning()));
            if (!step.formula().isEmpty()) {
                out.append("<br><code>").append(escape(step.formula())).append("</code>");
            }
            if (!step.inputs().isEmpty()) {
                out.append("<br><span class=\"small\">").append(escape(step.inputs())).append("</span>");
            }
            if (!step.substituted().isEmpty() && !step.substituted().equals(step.formula())) {
                out.append("<br><code>= ").append(escape(step.substituted())).append("</code>");
            }
            if (!step.result().isEmpty()) {
                out.append("<br><b>= ").append(escape(step.result())).append("</b>");
            }
            out.append("<br><span class=\"small\">").append(escape(step.source())).append("</span></li>\n");
        }
        out.append("</ol>\n</section>\n");
    }

    private static String tone(Block.Tone tone) {
        return tone.name().toLowerCase(Locale.ROOT);
    }

    private static String id(String id) {
        return id.isEmpty() ? "" : " id=\"" + escape(id) + "\"";
    }

    private static String linked(String text, String link) {
        return link.isEmpty() ? escape(text) : "<a href=\"" + fragment(link) + "\">" + escape(text) + "</a>";
    }
}
