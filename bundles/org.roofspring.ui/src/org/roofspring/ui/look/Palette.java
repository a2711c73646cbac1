package org.roofspring.ui.look;

import org.eclipse.jface.resource.ColorRegistry;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.PlatformUI;

/**
 * The colours of the workbench, by what they mean. They are defined in plugin.xml, so that a theme and the preferences
 * can change them; wherever a colour says something, words say it too.
 */
public final class Palette {
    private final ColorRegistry colors;

    private Palette(ColorRegistry colors) {
        this.colors = colors;
    }

    public static Palette of(Control control) {
        return new Palette(PlatformUI.isWorkbenchRunning()
                ? PlatformUI.getWorkbench().getThemeManager().getCurrentTheme().getColorRegistry() : JFaceResources.getColorRegistry());
    }

    /** Text beside a field. */
    public Color label() {
        return color("label", new RGB(0x3c, 0x46, 0x50));
    }

    /** Text that matters less: units, sources, places. */
    public Color muted() {
        return color("muted", new RGB(0x5f, 0x6b, 0x76));
    }

    /** What is out of date. */
    public Color stale() {
        return color("stale", new RGB(0x76, 0x80, 0x8a));
    }

    /** Someone can be hurt; or a value is wrong. */
    public Color danger() {
        return color("danger", new RGB(0xa8, 0x1c, 0x1c));
    }

    /** The design may not do what it should. */
    public Color warning() {
        return color("warning", new RGB(0x8a, 0x55, 0x00));
    }

    /** All is well. */
    public Color good() {
        return color("good", new RGB(0x1d, 0x6b, 0x3a));
    }

    /** Water, and the trace of its volume. */
    public Color water() {
        return color("water", new RGB(0x1b, 0x62, 0xa5));
    }

    /** Lines of a chart's grid and between entries. */
    public Color line() {
        return color("line", new RGB(0xd9, 0xde, 0xe3));
    }

    private Color color(String name, RGB usual) {
        String key = "org.roofspring.ui.color." + name;
        Color color = colors.get(key);
        if (color == null) {
            colors.put(key, usual);
            color = colors.get(key);
        }
        return color;
    }
}
