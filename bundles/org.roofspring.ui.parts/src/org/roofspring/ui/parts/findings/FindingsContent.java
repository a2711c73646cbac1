package org.roofspring.ui.parts.findings;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

import org.eclipse.jface.viewers.ITreeContentProvider;
import org.roofspring.ui.session.FindingKey;

/** Calculations and below them their findings. */
final class FindingsContent implements ITreeContentProvider {
    private final Supplier<List<FindingLine>> lines;

    FindingsContent(Supplier<List<FindingLine>> lines) {
        this.lines = lines;
    }

    @Override
    public Object[] getElements(Object input) {
        return lines.get().toArray();
    }

    @Override
    public Object[] getChildren(Object parent) {
        return ((FindingLine) parent).children().toArray();
    }

    @Override
    public Object getParent(Object child) {
        return all(lines.get()).filter(line -> line.children().contains(child)).findFirst().orElse(null);
    }

    @Override
    public boolean hasChildren(Object parent) {
        return !((FindingLine) parent).children().isEmpty();
    }

    private static Stream<FindingLine> all(List<FindingLine> lines) {
        return lines.stream().flatMap(line -> Stream.concat(Stream.of(line), all(line.children())));
    }

    static Optional<FindingLine> find(List<FindingLine> lines, FindingKey finding) {
        return all(lines).filter(line -> line.finding() != null && line.finding().equals(finding)).findFirst();
    }
}
