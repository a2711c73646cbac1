package org.roofspring.ui.parts.form;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Display;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;
import org.roofspring.site.SitePackage;
import org.roofspring.site.edit.Words;
import org.roofspring.ui.field.FeatureText;
import org.roofspring.ui.session.Drafts;
import org.roofspring.ui.session.SiteSession;

/** The cells of one column. A text that could not be taken over is shown as typed, in the colour of errors. */
final class CellLabels extends ColumnLabelProvider {
    private final SiteSession session;
    private final EStructuralFeature feature;
    private final boolean withUnit;

    /** @param withUnit whether the unit stands in the cell rather than in the heading */
    CellLabels(SiteSession session, EStructuralFeature feature, boolean withUnit) {
        this.session = session;
        this.feature = feature;
        this.withUnit = withUnit;
    }

    @Override
    public String getText(Object row) {
        EObject object = (EObject) row;
        return draft(object).map(Drafts.Draft::text).orElseGet(() -> text(object));
    }

    private String text(EObject object) {
        if (feature == SitePackage.Literals.NAMED_ELEMENT__NAME) {
            return Words.name(object);
        }
        if (!(feature instanceof EAttribute attribute)) {
            return switch (object.eGet(feature)) {
                case null -> "";
                case List<?> many -> many.stream().map(each -> Words.name((EObject) each)).collect(Collectors.joining(", "));
                case EObject target -> Words.name(target);
                default -> throw new IllegalStateException(feature.getName() + " holds no object");
            };
        }
        if (object.eGet(feature) instanceof Boolean flag) {
            return flag ? "yes" : "no";
        }
        FeatureText codec = FeatureText.of(attribute, session.site());
        Optional<Unit> unit = codec.unit();
        if (!withUnit && unit.isPresent() && object.eGet(feature) instanceof Quantity quantity) {
            return session.format().number(quantity.in(unit.get()));
        }
        return codec.of(object);
    }

    private Optional<Drafts.Draft> draft(EObject object) {
        return session.drafts().get(object, feature);
    }

    @Override
    public Color getForeground(Object row) {
        return draft((EObject) row).isPresent() ? Display.getCurrent().getSystemColor(org.eclipse.swt.SWT.COLOR_RED) : null;
    }
}
