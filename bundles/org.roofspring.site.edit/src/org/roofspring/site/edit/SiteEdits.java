package org.roofspring.site.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EStructuralFeature.Setting;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.roofspring.site.Element;
import org.roofspring.site.Ids;
import org.roofspring.site.NamedElement;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;

/**
 * The edits there are. Each is one command on the stack, so one undo takes it back whole. Call on the thread that owns
 * the model.
 */
public final class SiteEdits {
    private final Site site;
    private final SiteCommandStack commands;
    private boolean inCompound;

    public SiteEdits(Site site, SiteCommandStack commands) {
        this.site = Objects.requireNonNull(site);
        this.commands = Objects.requireNonNull(commands);
    }

    /**
     * Sets a feature, or takes its value away where {@code value} is null. Setting what is there already is no edit.
     *
     * @param value of the feature's type; a list where the feature has many values
     * @return whether anything changed
     */
    public boolean set(EObject element, EStructuralFeature feature, Object value) {
        if (Objects.equals(element.eGet(feature), value) && (value != null || !element.eIsSet(feature))) {
            return false;
        }
        run("Set " + lower(Words.feature(feature)) + " of " + Words.name(element), element, () -> {
            if (value == null) {
                element.eUnset(feature);
            } else {
                element.eSet(feature, value);
            }
        });
        return true;
    }

    /**
     * Adds a new element or row of the reference's type at the end, or sets it where there can be only one. It gets an
     * identifier and a name.
     *
     * @return the new object
     */
    public EObject add(EObject owner, EReference containment) {
        return add(owner, containment, containment.getEReferenceType());
    }

    /** As {@link #add(EObject, EReference)}, where the reference's type is abstract. */
    public EObject add(EObject owner, EReference containment, EClass type) {
        EObject added = EcoreUtil.create(type);
        if (added instanceof Element element) {
            element.setId(Ids.newId(site, type));
        }
        if (added instanceof NamedElement named) {
            named.setName(freeName(owner, containment, type));
        }
        run("Add " + lower(Words.kind(type)), added, () -> attach(owner, containment, added));
        return added;
    }

    private static void attach(EObject owner, EReference containment, EObject added) {
        if (containment.isMany()) {
            list(owner, containment).add(added);
        } else {
            owner.eSet(containment, added);
        }
    }

    private static String freeName(EObject owner, EReference containment, EClass type) {
        Set<String> taken = new LinkedHashSet<>();
        for (EObject sibling : owner.eContents()) {
            if (sibling instanceof NamedElement named) {
                taken.add(named.getName());
            }
        }
        String kind = Words.kind(type);
        if (!containment.isMany() && !taken.contains(kind)) {
            return kind;
        }
        int number = 1;
        while (taken.contains(kind + " " + number)) {
            number++;
        }
        return kind + " " + number;
    }

    /**
     * Removes elements or rows with all they contain. References to them are taken away; where such a reference is
     * required, as that of a roof's drain to its gutter, its holder goes too.
     */
    public void remove(Collection<? extends EObject> elements) {
        Set<EObject> doomed = doomed(elements);
        if (doomed.isEmpty()) {
            return;
        }
        EObject first = elements.iterator().next();
        String what = elements.size() == 1 ? Words.name(first) : elements.size() + " parts";
        run("Remove " + what, first, () -> {
            for (Setting setting : referencesInto(doomed)) {
                if (!within(doomed, setting.getEObject())) {
                    dropReference(setting, doomed);
                }
            }
            doomed.forEach(EcoreUtil::remove);
        });
    }

    /** What goes with these elements: holders of required references to them, and theirs. */
    private Set<EObject> doomed(Collection<? extends EObject> elements) {
        Set<EObject> doomed = new LinkedHashSet<>();
        elements.stream().filter(element -> element != site && EcoreUtil.isAncestor(site, element)).forEach(doomed::add);
        boolean grown = true;
        while (grown) {
            grown = false;
            for (Setting setting : referencesInto(doomed)) {
                EObject holder = setting.getEObject();
                if (setting.getEStructuralFeature().isRequired() && !within(doomed, holder)) {
                    grown |= doomed.add(holder);
                }
            }
        }
        return doomed;
    }

    private List<Setting> referencesInto(Set<EObject> doomed) {
        Map<EObject, Collection<Setting>> usages = EcoreUtil.CrossReferencer.find(List.of(site));
        List<Setting> into = new ArrayList<>();
        usages.forEach((target, settings) -> {
            if (within(doomed, target)) {
                settings.stream().filter(setting -> setting.getEStructuralFeature().isChangeable()
                        && !setting.getEStructuralFeature().isDerived()).forEach(into::add);
            }
        });
        return into;
    }

    private static boolean within(Set<EObject> trees, EObject object) {
        for (EObject up = object; up != null; up = up.eContainer()) {
            if (trees.contains(up)) {
                return true;
            }
        }
        return false;
    }

    private static void dropReference(Setting setting, Set<EObject> doomed) {
        EObject holder = setting.getEObject();
        EStructuralFeature feature = setting.getEStructuralFeature();
        if (feature.isMany()) {
            list(holder, feature).removeIf(target -> within(doomed, target));
        } else {
            holder.eUnset(feature);
        }
    }

    /** Whether an element or row can be moved by so many places among its neighbours. */
    public boolean canMove(EObject element, int places) {
        EReference containment = element.eContainmentFeature();
        if (containment == null || !containment.isMany()) {
            return false;
        }
        List<EObject> siblings = list(element.eContainer(), containment);
        int to = siblings.indexOf(element) + places;
        return places != 0 && to >= 0 && to < siblings.size();
    }

    /** Moves an element or row by so many places, up where negative. */
    public void move(EObject element, int places) {
        if (!canMove(element, places)) {
            return;
        }
        EList<EObject> siblings = list(element.eContainer(), element.eContainmentFeature());
        run("Move " + Words.name(element) + (places < 0 ? " up" : " down"), element,
                () -> siblings.move(siblings.indexOf(element) + places, element));
    }

    /** Whether there can be another like this one. */
    public boolean canDuplicate(EObject element) {
        return element.eContainmentFeature() != null && element.eContainmentFeature().isMany();
    }

    /**
     * Puts a copy after an element or row. The copy refers to the same parts and has identifiers of its own.
     *
     * @return the copy
     */
    public EObject duplicate(EObject element) {
        if (!canDuplicate(element)) {
            throw new IllegalArgumentException("there can be only one " + lower(Words.kind(element.eClass())));
        }
        EObject copy = EcoreUtil.copy(element);
        if (copy instanceof NamedElement named) {
            named.setName(Words.name(element) + " (copy)");
        }
        EList<EObject> siblings = list(element.eContainer(), element.eContainmentFeature());
        run("Duplicate " + Words.name(element), copy, () -> {
            siblings.add(siblings.indexOf(element) + 1, copy);
            identify(copy);
            copy.eAllContents().forEachRemaining(this::identify);
        });
        return copy;
    }

    private void identify(EObject object) {
        if (object instanceof Element element) {
            element.eUnset(SitePackage.Literals.ELEMENT__ID);
            element.setId(Ids.newId(site, element.eClass()));
        }
    }

    /** Runs several edits as one step; when one of them throws, none has happened. */
    public void compound(String label, EObject subject, Runnable edits) {
        if (inCompound) {
            edits.run();
            return;
        }
        run(label, subject, () -> {
            inCompound = true;
            try {
                edits.run();
            } finally {
                inCompound = false;
            }
        });
    }

    private void run(String label, EObject subject, Runnable edit) {
        if (inCompound) {
            edit.run();
        } else {
            commands.execute(new RecordedCommand(label, site, subject, edit));
        }
    }

    @SuppressWarnings("unchecked")
    private static EList<EObject> list(EObject owner, EStructuralFeature feature) {
        return (EList<EObject>) owner.eGet(feature);
    }

    private static String lower(String words) {
        return words.length() > 1 && Character.isUpperCase(words.charAt(1)) ? words
                : words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }
}
