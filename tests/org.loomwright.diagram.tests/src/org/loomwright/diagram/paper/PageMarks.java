// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.paper;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** What a page has within its clips: points of lines and areas, and of letters, in pt. Lines between two letters are not kept. */
final class PageMarks extends PDFGraphicsStreamEngine {
    private final List<Point2D> path = new ArrayList<>();
    private final List<Point2D> marks = new ArrayList<>();
    private final List<Point2D> letters = new ArrayList<>();
    private boolean clips;
    private int images;

    private PageMarks(PDPage page) {
        super(page);
    }

    static PageMarks of(PDPage page) throws IOException {
        PageMarks marks = new PageMarks(page);
        marks.processPage(page);
        return marks;
    }

    /** Ends of painted lines and corners of painted areas that are not clipped away. */
    List<Point2D> marks() {
        return marks;
    }

    /** Where letters begin, those that are not clipped away. */
    List<Point2D> letters() {
        return letters;
    }

    int images() {
        return images;
    }

    private void painted() {
        path.stream().filter(this::seen).forEach(marks::add);
        path.clear();
    }

    private boolean seen(Point2D point) {
        return getGraphicsState().getCurrentClippingPath().getBounds2D().contains(point);
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        path.addAll(List.of(p0, p1, p2, p3));
    }

    @Override
    public void drawImage(PDImage image) {
        images++;
    }

    @Override
    public void clip(int windingRule) {
        clips = true;
    }

    @Override
    public void moveTo(float x, float y) {
        path.add(new Point2D.Float(x, y));
    }

    @Override
    public void lineTo(float x, float y) {
        path.add(new Point2D.Float(x, y));
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.add(new Point2D.Float(x3, y3));
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.isEmpty() ? new Point2D.Float() : path.get(path.size() - 1);
    }

    @Override
    public void closePath() {
        // the first point is known
    }

    @Override
    public void endPath() {
        if (clips) {
            java.awt.geom.GeneralPath outline = new java.awt.geom.GeneralPath();
            for (int i = 0; i < path.size(); i++) {
                if (i == 0) {
                    outline.moveTo(path.get(i).getX(), path.get(i).getY());
                } else {
                    outline.lineTo(path.get(i).getX(), path.get(i).getY());
                }
            }
            outline.closePath();
            getGraphicsState().intersectClippingPath(outline);
            clips = false;
        }
        path.clear();
    }

    @Override
    public void strokePath() {
        painted();
    }

    @Override
    public void fillPath(int windingRule) {
        painted();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        painted();
    }

    @Override
    public void shadingFill(COSName name) {
        throw new IllegalStateException("drawings have no shading");
    }

    @Override
    protected void showGlyph(Matrix at, PDFont font, int code, Vector displacement) throws IOException {
        Point2D point = new Point2D.Float(at.getTranslateX(), at.getTranslateY());
        if (seen(point)) {
            letters.add(point);
        }
    }
}
