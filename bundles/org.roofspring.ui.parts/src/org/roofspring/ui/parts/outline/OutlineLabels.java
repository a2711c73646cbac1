package org.roofspring.ui.parts.outline;

import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider.IStyledLabelProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.swt.graphics.Image;
import org.roofspring.site.Component;
import org.roofspring.site.Site;
import org.roofspring.site.edit.Words;
import org.roofspring.ui.look.Icons;

/** Names, counts and icons of the outline. */
final class OutlineLabels extends LabelProvider implements IStyledLabelProvider {
    @Override
    public StyledString getStyledText(Object line) {
        OutlineNode node = (OutlineNode) line;
        if (node.group() != null) {
            return new StyledString(Words.feature(node.group()))
                    .append("  " + OutlineContent.elements(node.element(), node.group()).size(), StyledString.COUNTER_STYLER);
        }
        StyledString text = new StyledString(Words.name(node.element()));
        if (node.element() instanceof Component part && !part.isInUse()) {
            text.append("  not in use", StyledString.QUALIFIER_STYLER);
        }
        return text;
    }

    @Override
    public String getText(Object line) {
        return getStyledText(line).getString();
    }

    @Override
    public Image getImage(Object line) {
        OutlineNode node = (OutlineNode) line;
        if (node.group() != null) {
            return Icons.image("group");
        }
        return node.element() instanceof Site ? Icons.image("site") : Icons.of(node.element().eClass());
    }
}
