package org.roofspring.ui.parts.workings;

import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.TableWrapData;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.ValueWords;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.quantity.Unit;

/** What there is to a value besides the few words of its heading: the rows of a table, the reasons of a verdict. */
final class ValueDetail {
    private static final int MOST_ROWS_HIGH = 14;
    private static final int WIDEST_COLUMN = 420;
    private final FormToolkit toolkit;
    private final QuantityFormat format;

    ValueDetail(FormToolkit toolkit, QuantityFormat format) {
        this.toolkit = toolkit;
        this.format = format;
    }

    /**
     * Shows the detail.
     *
     * @param line takes a sentence
     * @return whether there is any
     */
    boolean show(FindingValue value, Composite body, Consumer<String> line) {
        return switch (value) {
            case FindingValue.Verdict verdict -> {
                verdict.reasons().forEach(reason -> line.accept("\u2022  " + reason));
                yield !verdict.reasons().isEmpty();
            }
            case FindingValue.Table table -> {
                table(table, body);
                yield true;
            }
            case FindingValue.Daily daily -> {
                line.accept("From " + daily.firstDay() + " to " + daily.firstDay().plusDays(daily.days() - 1L) + ": "
                        + range(daily.values(), daily.unit()));
                yield true;
            }
            case FindingValue.Curve curve -> {
                line.accept(curve.xTitle() + " " + range(curve.x(), curve.xUnit()) + "; value " + range(curve.y(), curve.yUnit()));
                yield true;
            }
            case FindingValue.Number number -> false;
            case FindingValue.Flag flag -> false;
            case FindingValue.Text text -> false;
        };
    }

    private String range(double[] values, Unit unit) {
        if (values.length == 0) {
            return "no values";
        }
        return "from " + format.format(Quantity.of(Arrays.stream(values).min().orElseThrow(), unit)) + " to "
                + format.format(Quantity.of(Arrays.stream(values).max().orElseThrow(), unit));
    }

    private void table(FindingValue.Table content, Composite body) {
        Table table = toolkit.createTable(body, SWT.FULL_SELECTION | SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL);
        table.setHeaderVisible(true);
        table.setLinesVisible(true);
        for (int i = 0; i < content.columns().size(); i++) {
            new TableColumn(table, alignment(content, i)).setText(content.columns().get(i));
        }
        for (List<Object> row : content.rows()) {
            new TableItem(table, SWT.NONE).setText(row.stream().map(cell -> ValueWords.ofCell(cell, format)).toArray(String[]::new));
        }
        for (TableColumn column : table.getColumns()) {
            column.pack();
            column.setWidth(Math.min(WIDEST_COLUMN, column.getWidth()));
        }
        TableWrapData data = new TableWrapData(TableWrapData.FILL_GRAB);
        data.heightHint = table.getHeaderHeight() + table.getItemHeight() * Math.clamp(content.rows().size() + 1, 2, MOST_ROWS_HIGH);
        data.maxWidth = 10;
        table.setLayoutData(data);
    }

    private static int alignment(FindingValue.Table content, int column) {
        return content.rows().stream().map(row -> row.get(column)).anyMatch(Quantity.class::isInstance) ? SWT.RIGHT : SWT.LEFT;
    }
}
