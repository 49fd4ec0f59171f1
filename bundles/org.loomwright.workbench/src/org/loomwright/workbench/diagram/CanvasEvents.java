// SPDX-License-Identifier: EPL-2.0
package org.loomwright.workbench.diagram;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Cursor;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.loomwright.diagram.scene.Point;
import org.loomwright.diagram.tool.KeyEvent;
import org.loomwright.diagram.tool.PointerEvent;
import org.loomwright.diagram.tool.Tool;

/** Hands what pointer, wheel and keys do over a canvas to its tool. */
final class CanvasEvents {
    private static final double ZOOM_STEP = 1.2;
    private static final double WHEEL_PAN_PX = 20;
    private final SceneCanvas canvas;

    CanvasEvents(SceneCanvas canvas) {
        this.canvas = canvas;
        canvas.addListener(SWT.MouseDown, event -> {
            canvas.setFocus();
            pointer(PointerEvent.What.PRESS, event);
        });
        canvas.addListener(SWT.MouseMove, event -> pointer(PointerEvent.What.MOVE, event));
        canvas.addListener(SWT.MouseUp, event -> pointer(PointerEvent.What.RELEASE, event));
        canvas.addListener(SWT.MouseDoubleClick, event -> pointer(PointerEvent.What.DOUBLE, event));
        canvas.addListener(SWT.MouseExit, event -> pointer(PointerEvent.What.LEAVE, event));
        canvas.addListener(SWT.MouseHover, event -> canvas.resting(new Point(event.x, event.y)));
        canvas.addListener(SWT.MouseVerticalWheel, this::wheel);
        canvas.addListener(SWT.FocusOut, event -> canvas.apply(canvas.tool().captureLost()));
        canvas.addListener(SWT.KeyDown, this::key);
        canvas.addListener(SWT.Traverse, CanvasEvents::traverse);
    }

    /** The pointer's shape for a tool. */
    static Cursor cursor(Display display, Tool.Cursor shape) {
        return display.getSystemCursor(switch (shape) {
            case ARROW -> SWT.CURSOR_ARROW;
            case CROSS -> SWT.CURSOR_CROSS;
            case HAND -> SWT.CURSOR_HAND;
            case MOVE -> SWT.CURSOR_SIZEALL;
        });
    }

    private void pointer(PointerEvent.What what, Event event) {
        canvas.pointer(new PointerEvent(what, new Point(event.x, event.y), event.button, shift(event), ctrl(event)));
    }

    /** Keys that tools know stay in the canvas; Tab with ctrl, and what tools do not know, lead out of it. */
    private static void traverse(Event event) {
        event.doit = switch (event.detail) {
            case SWT.TRAVERSE_TAB_NEXT, SWT.TRAVERSE_TAB_PREVIOUS -> ctrl(event);
            case SWT.TRAVERSE_ARROW_NEXT, SWT.TRAVERSE_ARROW_PREVIOUS, SWT.TRAVERSE_ESCAPE, SWT.TRAVERSE_RETURN -> false;
            default -> true;
        };
    }

    /** Zooms around the pointer with ctrl, shifts the sheet without; sideways with shift. */
    private void wheel(Event event) {
        event.doit = false;
        if (ctrl(event)) {
            canvas.seen(canvas.viewport().zoomed(event.count > 0 ? ZOOM_STEP : 1 / ZOOM_STEP, new Point(event.x, event.y)));
        } else {
            double by = WHEEL_PAN_PX * event.count;
            canvas.seen(canvas.viewport().panned(shift(event) ? by : 0, shift(event) ? 0 : by));
        }
    }

    private void key(Event event) {
        KeyEvent.Key key = switch (event.keyCode) {
            case SWT.ESC -> KeyEvent.Key.ESCAPE;
            case SWT.ARROW_LEFT -> KeyEvent.Key.LEFT;
            case SWT.ARROW_RIGHT -> KeyEvent.Key.RIGHT;
            case SWT.ARROW_UP -> KeyEvent.Key.UP;
            case SWT.ARROW_DOWN -> KeyEvent.Key.DOWN;
            case SWT.TAB -> ctrl(event) ? null : KeyEvent.Key.TAB;
            case SWT.CR, SWT.KEYPAD_CR -> KeyEvent.Key.ENTER;
            case SWT.INSERT -> KeyEvent.Key.INSERT;
            case ' ' -> KeyEvent.Key.SPACE;
            case 'a' -> ctrl(event) ? KeyEvent.Key.SELECT_ALL : null;
            default -> null;
        };
        if (key != null) {
            canvas.key(new KeyEvent(key, shift(event), ctrl(event)));
        } else if (event.character == '+' || event.character == '-') {
            canvas.seen(canvas.viewport().at(canvas.viewport().scale() * (event.character == '+' ? ZOOM_STEP : 1 / ZOOM_STEP)));
        } else if (event.character == '0') {
            canvas.fit();
        }
    }

    private static boolean shift(Event event) {
        return (event.stateMask & SWT.SHIFT) != 0;
    }

    private static boolean ctrl(Event event) {
        return (event.stateMask & SWT.MOD1) != 0;
    }
}
