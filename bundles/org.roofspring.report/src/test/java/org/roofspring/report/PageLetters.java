package org.roofspring.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Reads the text of a PDF and notes every letter that lies outside the margins of its page. */
final class PageLetters extends PDFTextStripper {
    /** Level text begins and ends inside the margins of 48 points; a hair is left for rounding. */
    private static final float MARGIN = 47.5f;
    private static final float ABOVE = 30;
    private static final float BELOW = 20;

    private final List<String> outside = new ArrayList<>();
    private int count;

    PageLetters() throws IOException {
        // the stripper reads its settings from a resource
    }

    @Override
    protected void processTextPosition(TextPosition letter) {
        count++;
        PDPage page = getCurrentPage();
        float width = page.getMediaBox().getWidth();
        float height = page.getMediaBox().getHeight();
        // the titles of axes are turned; their places are given along their own direction
        boolean level = letter.getDir() == 0;
        float margin = level ? MARGIN : 0;
        float across = level ? width : height;
        float down = level ? height : width;
        float right = letter.getXDirAdj() + letter.getWidthDirAdj();
        boolean inside = letter.getXDirAdj() >= margin && right <= across - margin && letter.getYDirAdj() > (level
                ? ABOVE : 0)
                && letter.getYDirAdj() < down - (level ? BELOW : 0);
        if (!inside) {
            outside.add("page " + getCurrentPageNo() + ": " + letter.getUnicode() + " at " + letter.getXDirAdj() + ", "
                    + letter.getYDirAdj());
        }
        super.processTextPosition(letter);
    }

    List<String> outside() {
        return outside;
    }

    int count() {
        return count;
    }
}
