// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/field_sheet/sheet_lists.h"

#include "app/desktop/appearance.h"
#include "app/desktop/core_words.h"
#include "app/desktop/field_sheet/sheet_notes.h"
#include "app/desktop/shown.h"
#include "app/desktop/table_words.h"
#include "core/audit/finding.h"

#include <QCheckBox>
#include <QCoreApplication>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QImageReader>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace evenfall::desktop {
namespace {

/// Context of the strings of this file.
struct SheetLists {
    Q_DECLARE_TR_FUNCTIONS(SheetLists)
};

/// What is wrong in that column, of the issues of one row; columns by the names that issues give them.
QString wrong_in(const std::vector<Issue>& issues, const QStringList& columns, int column) {
    for (Issue issue : issues) {
        if (q(issue.place.column) != columns.value(column)) continue;
        issue.place = {};
        return core_words(issue.sentence());
    }
    return {};
}

SheetPressure pressure_of(const QStringList& r) {
    return {utf8(r.value(0)), utf8(r.value(1)), utf8(r.value(2)), utf8(r.value(3))};
}

SheetFinding finding_of(const QStringList& r) {
    return {utf8(r.value(0)), utf8(r.value(1)), utf8(r.value(2)), utf8(r.value(3)), utf8(r.value(4)), utf8(r.value(5))};
}

/// Its name, and how it looks where it is still there; the book keeps only where it lies.
QListWidgetItem* photo_item(const QString& path) {
    auto* item = new QListWidgetItem(QFileInfo(path).fileName());
    item->setToolTip(path);
    QImageReader reader(path);
    reader.setAutoTransform(true);
    QSize size = reader.size();
    if (size.isValid()) reader.setScaledSize(size.scaled(128, 96, Qt::KeepAspectRatio));
    const QImage picture = reader.read();
    if (picture.isNull()) item->setText(SheetLists::tr("%1 (not found)").arg(item->text()));
    else item->setIcon(QIcon(QPixmap::fromImage(picture)));
    return item;
}

/// Reading pictures takes time, and this is called at every key: those that are shown are left alone.
void show_photos(QListWidget& list, const std::vector<std::string>& photos) {
    QStringList wanted;
    for (const auto& p : photos) wanted << q(p);
    QStringList shown;
    for (int i = 0; i < list.count(); ++i) shown << list.item(i)->toolTip();
    if (wanted == shown) return;
    list.clear();
    for (const QString& path : wanted) list.addItem(photo_item(path));
}

TextTable* make_finding_table(FieldSheet& sheet, QWidget* parent) {
    auto* table = new TextTable({SheetLists::tr("What was seen"), SheetLists::tr("Where"), SheetLists::tr("How many"),
                                 SheetLists::tr("How bad"), SheetLists::tr("Put right"), SheetLists::tr("Remark")},
                                SheetLists::tr("Findings"), parent);
    table->keep_narrow({0, 2, 3, 4});
    Choices kinds;
    for (const auto& kind : audit::finding_kinds()) kinds.emplace_back(q(kind.key), key_words(kind.name));
    table->set_choices(0, std::move(kinds));
    Choices severities;
    for (const auto s : {audit::Severity::minor, audit::Severity::moderate, audit::Severity::severe}) {
        severities.emplace_back(q(std::string(audit::text_of(s))), key_words(audit::text_of(s)));
    }
    table->set_choices(3, std::move(severities));
    table->set_choices(4, {{QStringLiteral("yes"), SheetLists::tr("yes, before the test")}});
    table->set_check([](int column, const QStringList& row) {
        static const QStringList columns{QStringLiteral("what was seen"), QString(), QStringLiteral("how many"),
                                         QStringLiteral("how bad")};
        return wrong_in(issues_of(finding_of(row), 0), columns, column);
    });
    const auto show = [&sheet, table] {
        std::vector<QStringList> rows;
        for (const auto& f : sheet.data().findings) {
            rows.push_back({q(f.what), q(f.place), q(f.count), q(f.severity), q(f.corrected), q(f.note)});
        }
        table->set_rows(rows);
    };
    show();
    QObject::connect(&sheet, &FieldSheet::head_changed, table, show);
    QObject::connect(table, &TextTable::edited, &sheet, [&sheet, table] {
        std::vector<SheetFinding> out;
        for (const QStringList& r : table->rows()) out.push_back(finding_of(r));
        sheet.set(&SheetData::findings, out, SheetLists::tr("Findings"));
    });
    return table;
}

}  // namespace

TextTable* make_pressure_table(FieldSheet& sheet, QWidget* parent) {
    auto* table = new TextTable({SheetLists::tr("Where measured"), SheetLists::tr("Pressure, with unit"),
                                 SheetLists::tr("Nozzle from"), SheetLists::tr("Nozzle to")},
                                SheetLists::tr("Pressures"), parent);
    table->set_check([](int column, const QStringList& row) {
        static const QStringList columns{QStringLiteral("place"), QStringLiteral("pressure"),
                                         QStringLiteral("nozzle from"), QStringLiteral("nozzle to")};
        return wrong_in(issues_of(pressure_of(row), 0), columns, column);
    });
    const auto show = [&sheet, table] {
        std::vector<QStringList> rows;
        for (const auto& p : sheet.data().pressures) {
            rows.push_back({q(p.place), q(p.value), q(p.nozzle_low), q(p.nozzle_high)});
        }
        table->set_rows(rows);
    };
    show();
    QObject::connect(&sheet, &FieldSheet::head_changed, table, show);
    QObject::connect(table, &TextTable::edited, &sheet, [&sheet, table] {
        std::vector<SheetPressure> out;
        for (const QStringList& r : table->rows()) out.push_back(pressure_of(r));
        sheet.set(&SheetData::pressures, out, SheetLists::tr("Pressures"));
    });
    return table;
}

QWidget* make_findings(FieldSheet& sheet, QWidget* parent) {
    auto* page = new QWidget(parent);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(make_finding_table(sheet, page), 1);
    auto* inspected = new QCheckBox(SheetLists::tr("The ground was looked over, whatever was found"));
    column->addWidget(inspected);
    const auto show = [&sheet, inspected] {
        const QSignalBlocker quiet(inspected);
        inspected->setChecked(sheet.data().inspected || !sheet.data().findings.empty());
        inspected->setEnabled(sheet.data().findings.empty());
    };
    show();
    QObject::connect(&sheet, &FieldSheet::head_changed, page, show);
    QObject::connect(inspected, &QCheckBox::toggled, &sheet,
                     [&sheet](bool on) { sheet.set(&SheetData::inspected, on, SheetLists::tr("Inspection")); });
    return page;
}

QWidget* make_notes(FieldSheet& sheet, QWidget* parent) {
    auto* page = new QWidget(parent);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, gap, 0, 0);
    auto* notes = new QPlainTextEdit;
    notes->setAccessibleName(SheetLists::tr("Notes"));
    notes->setPlaceholderText(SheetLists::tr("Weather, soil, what to look at next time"));
    notes->setTabChangesFocus(true);
    column->addWidget(notes, 1);
    auto* photos = new QListWidget;
    photos->setAccessibleName(SheetLists::tr("Photos"));
    photos->setIconSize(QSize(64, 48));
    photos->setMaximumHeight(130);
    auto* row = new QHBoxLayout;
    auto* add = new QPushButton(SheetLists::tr("Add photos…"));
    auto* remove = new QPushButton(SheetLists::tr("Remove from the list"));
    row->addWidget(add);
    row->addWidget(remove);
    row->addStretch(1);
    column->addWidget(photos);
    column->addLayout(row);
    const auto show = [&sheet, notes, photos, remove] {
        if (utf8(notes->toPlainText()) != sheet.data().notes) notes->setPlainText(q(sheet.data().notes));
        show_photos(*photos, sheet.data().photos);
        remove->setEnabled(photos->count() > 0);
    };
    show();
    QObject::connect(&sheet, &FieldSheet::head_changed, page, show);
    // A step per text when the field is left would lose words in a crash: a step per change, and
    // steps that follow each other in the same text are one.
    QObject::connect(notes, &QPlainTextEdit::textChanged, &sheet, [&sheet, notes] {
        sheet.set(&SheetData::notes, utf8(notes->toPlainText()), SheetLists::tr("Notes"));
    });
    QObject::connect(add, &QPushButton::clicked, page, [&sheet, page] {
        const QStringList files = QFileDialog::getOpenFileNames(
            page, SheetLists::tr("Add photos"), QString(), SheetLists::tr("Pictures (*.jpg *.jpeg *.png)"));
        if (files.isEmpty()) return;
        auto list = sheet.data().photos;
        for (const QString& f : files) list.push_back(utf8(f));
        sheet.set(&SheetData::photos, list, SheetLists::tr("Photos"));
    });
    QObject::connect(remove, &QPushButton::clicked, page, [&sheet, photos] {
        const int n = photos->currentRow();
        if (n < 0) return;
        auto list = sheet.data().photos;
        list.erase(list.begin() + n);
        sheet.set(&SheetData::photos, list, SheetLists::tr("Photos"));
    });
    return page;
}

}  // namespace evenfall::desktop
