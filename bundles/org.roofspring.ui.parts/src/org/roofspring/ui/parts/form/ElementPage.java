package org.roofspring.ui.parts.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.events.ExpansionAdapter;
import org.eclipse.ui.forms.events.ExpansionEvent;
import org.eclipse.ui.forms.events.HyperlinkAdapter;
import org.eclipse.ui.forms.events.HyperlinkEvent;
import org.eclipse.ui.forms.widgets.ExpandableComposite;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.Hyperlink;
import org.eclipse.ui.forms.widgets.ScrolledForm;
import org.eclipse.ui.forms.widgets.Section;
import org.roofspring.site.SitePackage;
import org.roofspring.site.edit.Catalogue;
import org.roofspring.site.edit.FormPlan;
import org.roofspring.site.edit.Words;
import org.roofspring.site.meta.FeatureFacts;
import org.roofspring.ui.field.Field;
import org.roofspring.ui.field.FieldContext;
import org.roofspring.ui.field.Fields;
import org.roofspring.ui.look.Icons;
import org.roofspring.ui.look.Palette;
import org.roofspring.ui.part.SelectionActions;
import org.roofspring.ui.session.SiteSession;

/** The fields of one element, in sections; tables of its rows; links to the parts it is made of. */
final class ElementPage implements FormPage {
    /** A meaning that is hardly longer than the name, such as "A tank.", says nothing more. */
    private static final int SHORTEST_MEANING = 6;

    private final SiteSession session;
    private final EObject element;
    private final FormToolkit toolkit;
    private final ScrolledForm form;
    private final Map<String, Boolean> openSections;
    private final List<Field> fields = new ArrayList<>();
    private final List<ObjectTable> tables = new ArrayList<>();
    private final Map<EStructuralFeature, Control> places = new LinkedHashMap<>();
    private Composite parts;

    ElementPage(SiteSession session, EObject element, FormToolkit toolkit, ScrolledForm form, Map<String, Boolean> openSections) {
        this.session = session;
        this.element = element;
        this.toolkit = toolkit;
        this.form = form;
        this.openSections = openSections;
        describe();
        List<FormPlan.Section> sections = FormPlan.of(element.eClass()).sections();
        for (FormPlan.Section section : sections) {
            create(section, section == sections.getFirst());
        }
        int labelWidth = fields.stream().mapToInt(Field::labelWidth).max().orElse(0);
        fields.forEach(field -> field.setLabelWidth(labelWidth));
        createParts();
    }

    private void describe() {
        Label what = toolkit.createLabel(form.getBody(), kindLine(), SWT.WRAP);
        what.setForeground(Palette.of(what).muted());
        GridDataFactory.fillDefaults().grab(true, false).hint(320, SWT.DEFAULT).applyTo(what);
    }

    private String kindLine() {
        String meaning = FeatureFacts.documentation(element.eClass());
        String kind = Words.kind(element.eClass());
        boolean says = meaning.length() > kind.length() + SHORTEST_MEANING;
        return says ? kind + ": " + meaning.substring(0, 1).toLowerCase(Locale.ROOT) + meaning.substring(1) : kind + ".";
    }

    private void create(FormPlan.Section plan, boolean first) {
        String key = element.eClass().getName() + "/" + plan.title();
        boolean open = openSections.getOrDefault(key, first || plan.features().stream().anyMatch(element::eIsSet));
        Section section = toolkit.createSection(form.getBody(),
                ExpandableComposite.TITLE_BAR | ExpandableComposite.TWISTIE | (open ? ExpandableComposite.EXPANDED : 0));
        section.setText(plan.title());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(section);
        Composite client = toolkit.createComposite(section);
        GridLayoutFactory.swtDefaults().numColumns(Field.COLUMNS).margins(4, 6).spacing(10, 6).applyTo(client);
        FieldContext context = new FieldContext(session, element, toolkit);
        for (EStructuralFeature feature : plan.features()) {
            if (feature instanceof EReference reference && reference.isContainment()) {
                ObjectTable table = ObjectTable.create(session, element, reference, toolkit, client, true);
                GridDataFactory.fillDefaults().grab(true, false).span(Field.COLUMNS, 1).applyTo(table.control());
                tables.add(table);
                places.put(feature, table.control());
            } else {
                Field field = Fields.create(context, client, feature);
                fields.add(field);
                places.put(feature, field.control());
            }
        }
        section.setClient(client);
        section.addExpansionListener(new ExpansionAdapter() {
            @Override
            public void expansionStateChanged(ExpansionEvent event) {
                openSections.put(key, event.getState());
                form.reflow(true);
            }
        });
    }

    /** Links to single parts, and for the site to the groups of its elements. */
    private void createParts() {
        List<EReference> kinds = Catalogue.parts(element.eClass()).stream()
                .filter(part -> !part.isMany() || element.eClass() == SitePackage.Literals.SITE).toList();
        if (kinds.isEmpty()) {
            return;
        }
        Section section = toolkit.createSection(form.getBody(), ExpandableComposite.TITLE_BAR | ExpandableComposite.EXPANDED);
        section.setText("Parts");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(section);
        parts = toolkit.createComposite(section);
        GridLayoutFactory.swtDefaults().numColumns(4).margins(4, 6).spacing(10, 4).applyTo(parts);
        section.setClient(parts);
        fillParts(kinds);
    }

    private void fillParts(List<EReference> kinds) {
        for (EReference kind : kinds) {
            Label icon = toolkit.createLabel(parts, "");
            icon.setImage(Icons.of(kind));
            Object value = element.eGet(kind);
            boolean many = kind.isMany();
            int count = many ? ((List<?>) value).size() : value == null ? 0 : 1;
            String words = Words.feature(kind) + (many ? " (" + count + ")" : "");
            Hyperlink link = toolkit.createHyperlink(parts, count > 0 ? words : SelectionActions.addWords(kind), SWT.NONE);
            link.setToolTipText(FeatureFacts.documentation(kind));
            link.addHyperlinkListener(new HyperlinkAdapter() {
                @Override
                public void linkActivated(HyperlinkEvent event) {
                    open(kind);
                }
            });
            GridDataFactory.fillDefaults().grab(true, false).applyTo(link);
            places.put(kind, link);
        }
    }

    private void open(EReference kind) {
        Object value = element.eGet(kind);
        if (value == null || value instanceof List<?> many && many.isEmpty()) {
            SelectionActions.add(session, element, kind);
        } else if (kind.isMany()) {
            session.select(session.selection().to(element, kind));
        } else {
            session.select(session.selection().to((EObject) value));
        }
    }

    @Override
    public void refresh() {
        fields.forEach(Field::refresh);
        tables.forEach(ObjectTable::refresh);
        if (parts != null) {
            List<EReference> kinds = places.keySet().stream().filter(EReference.class::isInstance).map(EReference.class::cast)
                    .filter(kind -> places.get(kind) instanceof Hyperlink).toList();
            for (Control child : parts.getChildren()) {
                child.dispose();
            }
            fillParts(kinds);
            parts.layout();
        }
    }

    @Override
    public void takeOver() {
        fields.forEach(Field::takeOver);
        tables.forEach(ObjectTable::takeOver);
    }

    @Override
    public void reveal(EStructuralFeature feature) {
        Control place = places.get(feature);
        if (place == null || place.isDisposed()) {
            return;
        }
        for (Composite up = place.getParent(); up != null && up != form; up = up.getParent()) {
            if (up instanceof Section section && !section.isExpanded()) {
                section.setExpanded(true);
                form.reflow(true);
            }
        }
        FormToolkit.ensureVisible(place);
        place.setFocus();
    }
}
