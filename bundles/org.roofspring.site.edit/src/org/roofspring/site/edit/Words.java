package org.roofspring.site.edit;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.roofspring.site.Element;
import org.roofspring.site.NamedElement;

/** What classes, features, choices and elements are called on screen. Derived from their names in the model. */
public final class Words {
    /** Where splitting a name at its capitals does not give what people say. */
    private static final Map<String, String> SPOKEN = new HashMap<>();

    static {
        List.of("ph=pH", "npshRequired=NPSH required", "uvDose=UV dose", "uvLamp=UV lamp", "pvc=PVC", "eColi=E. coli",
                "csv=CSV", "ghcnDaily=GHCN-Daily (.dly)", "ghcnStationCsv=GHCN-Daily station CSV", "unstated=not stated",
                "auto=found by itself", "usCustomary=US customary", "imperial=imperial gallons", "json=JSON",
                "elbow90=elbow 90\u00b0", "elbow45=elbow 45\u00b0", "tote=tote (intermediate bulk container)",
                "FirstFlushDiverter=First-flush diverter", "RawWater=Raw water", "Siting=Ground and surroundings",
                "siting=Ground and surroundings", "ClimateStress=Climate stress", "stress=Climate stress",
                "RainSource=Rain record", "rain=Rain record", "Target=What is to be achieved",
                "target=What is to be achieved", "diverters=First-flush diverters", "trains=Treatment",
                "TreatmentTrain=Treatment train", "TreatmentStep=Treatment step", "alternatives=Other supplies",
                "AlternativeSupply=Other supply", "economy=Money matters", "Economy=Money matters", "upkeep=Upkeep tasks",
                "UpkeepTask=Upkeep task", "safetyPlan=Water safety plan", "scheme=Shared scheme", "costs=Costs",
                "topUps=Top-ups", "TopUp=Top-up", "rationing=Rationing rules", "calendars=Calendars",
                "UseCalendar=Calendar", "extensions=Data of plug-ins", "ExtensionEntry=Plug-in value",
                "lossCoefficient=Loss coefficient K", "inUse=In use", "drainsTo=Drains to", "overflowsTo=Overflows to",
                "to=To", "seed=Seed", "factor=Factor", "timeReliability=Days met in full",
                "volumetricReliability=Share of volume supplied", "from=From", "donorFile=Donor file",
                "headLossClean=Head loss, clean", "headLossFouled=Head loss, fouled", "changeInterval=Change interval",
                "waterTemperatureMin=Coldest water", "waterTemperatureUsual=Usual water temperature",
                "waterTemperatureMax=Warmest water", "TankLink=Link between tanks", "tankLinks=Links between tanks",
                "pipeRuns=Pipe runs", "PipeRun=Pipe run", "waterTests=Water tests", "openTogether=Open at once",
                "amountEach=Amount each", "placeInGround=Place in the ground", "perLitre=Number in a litre",
                "infectionTarget=Chance of infection", "burdenTarget=Burden of disease", "yes=yes", "no=no",
                "rateHead=Rated head", "levelVolume=Volume against height", "points=Pump curve", "drains=Drains",
                "normals=Monthly normals", "intensities=Design intensities", "profile=Profile", "none=none")
                .forEach(pair -> SPOKEN.put(pair.substring(0, pair.indexOf('=')), pair.substring(pair.indexOf('=') + 1)));
    }

    private Words() {
    }

    /** What sort of thing a class is, such as "Pipe run". */
    public static String kind(EClass type) {
        return spoken(type.getName());
    }

    /** The name of a feature, such as "Plan area"; of a containment, the kind in the plural. */
    public static String feature(EStructuralFeature feature) {
        return spoken(feature.getName());
    }

    /** A choice of an enumeration in words, such as "galvanised steel". */
    public static String choice(Enumerator literal) {
        String words = SPOKEN.get(literal.getName());
        return words != null ? words : split(literal.getName());
    }

    /** What an element is called: its name, else its kind, with its place among its like where there are several. */
    public static String name(EObject object) {
        if (object instanceof NamedElement named && named.getName() != null && !named.getName().isBlank()) {
            return named.getName().strip();
        }
        EReference containment = object.eContainmentFeature();
        String kind = kind(object.eClass());
        if (containment == null || !containment.isMany()) {
            return kind;
        }
        int place = ((List<?>) object.eContainer().eGet(containment)).indexOf(object) + 1;
        if (object instanceof Element) {
            return kind + " " + place;
        }
        return kind + " " + place + " of " + name(object.eContainer());
    }

    private static String spoken(String name) {
        String words = SPOKEN.get(name);
        if (words == null) {
            String split = split(name);
            words = split.substring(0, 1).toUpperCase(Locale.ROOT) + split.substring(1);
        }
        return words;
    }

    /** "longTermLoss" becomes "long term loss". */
    private static String split(String name) {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < name.length(); i++) {
            char letter = name.charAt(i);
            if (Character.isUpperCase(letter)) {
                if (i > 0) {
                    words.append(' ');
                }
                words.append(Character.toLowerCase(letter));
            } else {
                words.append(letter);
            }
        }
        return words.toString();
    }
}
