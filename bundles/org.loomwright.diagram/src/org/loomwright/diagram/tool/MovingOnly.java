// SPDX-License-Identifier: EPL-2.0
package org.loomwright.diagram.tool;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.loomwright.diagram.scene.Point;

/**
 * Advice of a drawing on which things can be moved and nothing else.
 *
 * @param which what may be moved
 */
record MovingOnly(Predicate<String> which) implements Advice {
    private static final Verdict NO = Verdict.refused("not on this drawing");

    @Override
    public boolean movable(String element) {
        return which.test(element);
    }

    @Override
    public String label(String element) {
        return element;
    }

    @Override
    public Verdict place(String part, String target, Point at) {
        return NO;
    }

    @Override
    public Verdict drop(Set<String> elements, String target, Point at) {
        return null;
    }

    @Override
    public List<Ending> endings(String element) {
        return List.of();
    }

    @Override
    public String natural(String element, String otherEnding) {
        return null;
    }

    @Override
    public Verdict connect(String from, String to) {
        return NO;
    }

    @Override
    public List<EdgeEnd> ends(String edge) {
        return List.of();
    }

    @Override
    public String kept(EdgeEnd moved) {
        return null;
    }

    @Override
    public Verdict reconnect(EdgeEnd end, String to) {
        return NO;
    }

    @Override
    public List<Point> line(String edge) {
        return null;
    }

    @Override
    public boolean isPlace(String element) {
        return false;
    }

    @Override
    public Verdict makePlace(Point at) {
        return NO;
    }

    @Override
    public Verdict makeRun(String from, String to) {
        return NO;
    }
}
