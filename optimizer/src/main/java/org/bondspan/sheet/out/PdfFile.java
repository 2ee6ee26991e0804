package org.bondspan.sheet.out;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.bondspan.sheet.plan.Typeface;

/** Drawings as PDF, one page each, with their text as text in an embedded face. */
public final class PdfFile {
    /** The same in every file, so that the same drawing gives the same bytes. */
    private static final long DOCUMENT_ID = 1;

    private PdfFile() {}

    /** The file; at least one drawing. */
    public static byte[] of(List<? extends Drawing> drawings) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument();
                InputStream file = Typeface.open();
                TrueTypeFont face = new TTFParser().parse(new RandomAccessReadBuffer(file))) {
            // Ligatures would change widths, and what a search finds.
            face.setEnableGsub(false);
            document.setDocumentId(DOCUMENT_ID);
            PDDocumentInformation information = new PDDocumentInformation();
            information.setTitle(drawings.get(0).title());
            information.setProducer("Bondspan");
            document.setDocumentInformation(information);
            PDFont font = PDType0Font.load(document, face, true);
            for (Drawing drawing : drawings) {
                addPage(document, font, drawing);
            }
            document.save(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static void addPage(PDDocument document, PDFont font, Drawing drawing) throws IOException {
        PDPage page = new PDPage(new PDRectangle((float) drawing.width(), (float) drawing.height()));
        document.addPage(page);
        PdfBoxGraphics2D g = new PdfBoxGraphics2D(document, (float) drawing.width(), (float) drawing.height());
        g.setFontTextDrawer(new OneFace(font));
        drawing.paint(g);
        g.dispose();
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            content.drawForm(g.getXFormObject());
        }
    }

    /** Every text in the one face of our drawings. */
    private static final class OneFace extends PdfBoxGraphics2DFontTextDrawer {
        private final PDFont font;

        OneFace(PDFont font) {
            this.font = font;
        }

        @Override
        protected PDFont mapFont(Font asked, IFontTextDrawerEnv env) {
            return font;
        }
    }
}
