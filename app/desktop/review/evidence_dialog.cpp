// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/review/evidence_dialog.h"

#include "app/desktop/appearance.h"
#include "app/desktop/figure_table.h"
#include "app/desktop/page.h"
#include "app/desktop/review/review_view.h"

#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace evenfall::desktop {
namespace {

/// Context of the strings of this file.
struct EvidenceDialog {
    Q_DECLARE_TR_FUNCTIONS(EvidenceDialog)
};

}  // namespace

QDialog* evidence_dialog(const review::Filing& filing, const QString& evidence, QWidget* parent) {
    const auto tables = evidence_tables(filing, evidence);
    if (tables.empty()) return nullptr;
    auto* dialog = new QDialog(parent);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setWindowTitle(EvidenceDialog::tr("Evidence in the filing"));
    dialog->resize(820, 560);
    auto* column = new QVBoxLayout(dialog);
    auto* where = faint(EvidenceDialog::tr("Where it stands: %1").arg(evidence));
    where->setWordWrap(true);
    column->addWidget(where);
    auto* row = new QHBoxLayout;
    row->setSpacing(wide_gap);
    for (const TitledRows& one : tables) {
        auto* side = new QVBoxLayout;
        side->addWidget(heading(one.title));
        auto* table = new FigureTable(one.title);
        table->fill(one.heads, one.rows);
        side->addWidget(table, 1);
        row->addLayout(side, static_cast<int>(one.heads.size()));
    }
    column->addLayout(row, 1);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    QObject::connect(buttons, &QDialogButtonBox::rejected, dialog, &QDialog::reject);
    column->addWidget(buttons);
    return dialog;
}

}  // namespace evenfall::desktop
