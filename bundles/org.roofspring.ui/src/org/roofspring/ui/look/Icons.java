package org.roofspring.ui.look;

import java.net.URL;
import java.util.Map;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ImageRegistry;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.graphics.Image;
import org.osgi.framework.FrameworkUtil;

/** The icons of the workbench, drawn for it. Images are shared and must not be disposed by those who use them. */
public final class Icons {
    private static final Map<String, String> BY_CLASS = Map.ofEntries(Map.entry("Site", "site"), Map.entry("RainSource", "rain"),
            Map.entry("ClimateStress", "rain"), Map.entry("Target", "target"), Map.entry("Roof", "roof"),
            Map.entry("Gutter", "gutter"), Map.entry("GutterOutlet", "gutter"), Map.entry("Downpipe", "downpipe"),
            Map.entry("Screen", "screen"), Map.entry("FirstFlushDiverter", "diverter"), Map.entry("Tank", "tank"),
            Map.entry("TankLink", "link"), Map.entry("Siting", "ground"), Map.entry("Pump", "pump"),
            Map.entry("PumpCandidate", "pump"), Map.entry("PipeRun", "pipe"), Map.entry("Junction", "junction"),
            Map.entry("PressureVessel", "vessel"), Map.entry("Tap", "tap"), Map.entry("Use", "use"),
            Map.entry("UseCalendar", "calendar"), Map.entry("RationingRule", "ration"), Map.entry("TopUp", "truck"),
            Map.entry("RawWater", "sample"), Map.entry("TreatmentTrain", "treatment"), Map.entry("TreatmentStep", "treatment"),
            Map.entry("CostItem", "money"), Map.entry("AlternativeSupply", "truck"), Map.entry("Economy", "money"),
            Map.entry("Stage", "stage"), Map.entry("Option", "option"), Map.entry("UpkeepTask", "upkeep"),
            Map.entry("SafetyMeasure", "shield"), Map.entry("Inspection", "list"), Map.entry("Reading", "gauge"),
            Map.entry("WaterTest", "sample"), Map.entry("Incident", "warning"), Map.entry("SharedScheme", "use"),
            Map.entry("Remark", "remark"));

    private Icons() {
    }

    /** The icon of a kind of element. */
    public static Image of(EClass type) {
        return image(BY_CLASS.getOrDefault(type.getName(), "part"));
    }

    /** The icon of a group of elements. */
    public static Image of(EReference group) {
        return of(group.getEReferenceType());
    }

    /** An icon by its name, the file {@code icons/NAME.svg}. */
    public static Image image(String name) {
        ImageRegistry images = JFaceResources.getImageRegistry();
        String key = "org.roofspring.ui/" + name;
        if (images.getDescriptor(key) == null) {
            images.put(key, descriptor(name));
        }
        return images.get(key);
    }

    /** The descriptor of an icon, for actions. */
    public static ImageDescriptor descriptor(String name) {
        URL file = FrameworkUtil.getBundle(Icons.class).getEntry("icons/" + name + ".svg");
        if (file == null) {
            throw new IllegalArgumentException("there is no icon " + name);
        }
        return ImageDescriptor.createFromURL(file);
    }
}
