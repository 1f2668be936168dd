// SPDX-License-Identifier: GPL-3.0-or-later
// The import page: saying what the shown file's columns and formats are, by hand or by a map file.
#include "app/desktop/import/import_page.h"
#include "app/desktop/core_words.h"
#include "core/input_error.h"
#include "core/store/meter_store.h"

#include <QComboBox>
#include <QFile>
#include <QFileDialog>
#include <QHeaderView>
#include <QInputDialog>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMessageBox>
#include <QPushButton>
#include <QSignalBlocker>
#include <QTableWidget>
#include <algorithm>
#include <memory>
#include <stdexcept>

namespace evenfall::desktop {
namespace {

/// "size, in ac": a column's group and unit, in words.
QString words_of(const exchange::ColumnSpec& column) {
    QString group = q(column.group);
    group.replace(QLatin1Char('_'), QLatin1Char(' '));
    if (column.unit.empty()) return group;
    return ImportPage::tr("%1, in %2").arg(group, q(column.unit).replace(QLatin1Char('_'), QLatin1Char('/')));
}

QStringList joined(const std::vector<std::string>& words) {
    QStringList out;
    for (const std::string& w : words) out << q(w);
    return out;
}

}  // namespace

void ImportPage::connect_choices() {
    connect(kind_, &QComboBox::activated, this, [this] {
        if (ImportPlan* plan = shown(); plan && kind_->currentData().toInt() >= 0) {
            set_kind(*plan, static_cast<exchange::Kind>(kind_->currentData().toInt()));
            show_plan();
        }
    });
    connect(dates_, &QComboBox::currentIndexChanged, this, [this] {
        if (ImportPlan* plan = shown()) plan->date_order = static_cast<exchange::DateOrder>(dates_->currentData().toInt());
        show_state();
    });
    connect(decimals_, &QComboBox::currentIndexChanged, this, [this] {
        if (ImportPlan* plan = shown()) plan->decimal_mark = decimals_->currentData().toChar().toLatin1();
        show_state();
    });
    connect(delimiter_, &QComboBox::activated, this, &ImportPage::read_again);
    connect(missing_, &QLineEdit::textEdited, this, [this](const QString& text) {
        ImportPlan* plan = shown();
        if (!plan) return;
        plan->missing_words.clear();
        for (const QString& word : text.split(QLatin1Char(';'), Qt::SkipEmptyParts)) {
            if (!word.trimmed().isEmpty()) plan->missing_words.push_back(utf8(word.trimmed()));
        }
    });
    connect(constant_, &QPushButton::clicked, this, &ImportPage::ask_for_constant);
    const auto guarded = [this](auto action) {
        try {
            action();
        } catch (const std::exception& e) {
            QMessageBox::warning(this, tr("This did not work"), error_words(e));
        }
    };
    connect(load_, &QPushButton::clicked, this, [this, guarded] {
        const QString path = QFileDialog::getOpenFileName(this, tr("Load a map…"), QString(), tr("Maps of columns (*.json)"));
        if (!path.isEmpty()) guarded([&] { load_map(path); });
    });
    connect(save_, &QPushButton::clicked, this, [this, guarded] {
        const QString path = QFileDialog::getSaveFileName(this, tr("Save as a map…"), QStringLiteral("map.json"),
                                                          tr("Maps of columns (*.json)"));
        if (!path.isEmpty()) guarded([&] { save_map(path); });
    });
}

void ImportPage::show_plan() {
    const ImportPlan* plan = shown();
    for (QWidget* w : {static_cast<QWidget*>(kind_), static_cast<QWidget*>(dates_), static_cast<QWidget*>(decimals_),
                       static_cast<QWidget*>(delimiter_), static_cast<QWidget*>(missing_),
                       static_cast<QWidget*>(remove_), static_cast<QWidget*>(load_)}) {
        w->setEnabled(plan != nullptr);
    }
    constant_->setEnabled(plan && plan->kind && !plan->wide());
    save_->setEnabled(plan && plan->kind);
    if (plan) {
        const QSignalBlocker quiet_dates(dates_);
        const QSignalBlocker quiet_decimals(decimals_);
        kind_->setCurrentIndex(kind_->findData(plan->kind ? static_cast<int>(*plan->kind) : -1));
        dates_->setCurrentIndex(dates_->findData(static_cast<int>(plan->date_order)));
        decimals_->setCurrentIndex(plan->decimal_mark == ',' ? 1 : 0);
        delimiter_->setCurrentIndex(std::max(
            0, plan->delimiter ? delimiter_->findData(QString(QLatin1Char(*plan->delimiter))) : 0));
        missing_->setText(joined(plan->missing_words).join(QStringLiteral("; ")));
    }
    show_rows();
    show_state();
}

void ImportPage::show_state() {
    const ImportPlan* plan = shown();
    QStringList words;
    bool ready = !plans_.empty();
    for (const ImportPlan& p : plans_) ready = ready && missing(p).isEmpty();
    if (!plan) {
        words << tr("Choose files or drop them here.");
    } else {
        words = missing(*plan);
        for (const auto& [name, text] : plan->constants) words << tr("In every row: %1 = %2").arg(q(name), q(text));
        if (missing(*plan).isEmpty()) words << tr("This file is ready.");
    }
    state_->setText(words.join(QLatin1Char('\n')));
    state_->setObjectName(plan && !missing(*plan).isEmpty() ? QStringLiteral("warn") : QStringLiteral("faint"));
    state_->setStyleSheet(QString());
    const bool writable = session().can_write();
    try_->setEnabled(ready && writable);
    import_->setEnabled(ready && writable);
    const QString why = session().has_book() ? session().read_only_reason() : tr("Open or make a book first.");
    try_->setToolTip(writable ? QString() : why);
    import_->setToolTip(writable ? QString() : why);
}

QMenu* ImportPage::make_column_menu(int column) {
    const ImportPlan* plan = shown();
    if (!plan || !plan->kind || column < 0 || column >= static_cast<int>(plan->header.size())) return nullptr;
    const auto at = static_cast<std::size_t>(column);
    auto* menu = new QMenu(this);
    menu->setAccessibleName(tr("What column %1 holds").arg(q(plan->header[at])));
    menu->addAction(tr("not used"), this, [this, column] { point_at(column, {}); });
    menu->addSeparator();
    const auto& columns = exchange::spec_of(*plan->kind).columns;
    QMenu* group_menu = nullptr;
    std::string_view group;
    for (const auto& known : columns) {
        const auto in_group = std::count_if(columns.begin(), columns.end(),
                                            [&known](const auto& c) { return c.group == known.group; });
        if (known.group != group) {
            QString name = q(known.group);
            group_menu = in_group > 1 ? menu->addMenu(name.replace(QLatin1Char('_'), QLatin1Char(' '))) : nullptr;
            group = known.group;
        }
        const QString name = q(known.name);
        QAction* action = (group_menu ? group_menu : menu)->addAction(words_of(known), this, [this, column, name] {
            point_at(column, name);
        });
        action->setData(name);
        action->setCheckable(true);
        action->setChecked(plan->meaning[at] == known.name);
    }
    if (*plan->kind == exchange::Kind::readings) meter_menu(*menu, column);
    return menu;
}

void ImportPage::meter_menu(QMenu& menu, int column) {
    menu.addSeparator();
    menu.addAction(tr("the register of one meter…"), this, [this, column] { ask_for_meter(column, false); });
    menu.addAction(tr("the volumes of one meter…"), this, [this, column] { ask_for_meter(column, true); });
}

void ImportPage::column_menu(int column) {
    const std::unique_ptr<QMenu> menu(make_column_menu(column));
    if (!menu) return;
    menu->exec(preview_->mapToGlobal(QPoint(preview_->columnViewportPosition(column) + preview_->verticalHeader()->width(),
                                            preview_->horizontalHeader()->height())));
}

void ImportPage::ask_for_meter(int column, bool volumes) {
    ImportPlan* plan = shown();
    if (!plan) return;
    QStringList codes;
    if (session().has_book()) {
        for (const auto& meter : store::meters(session().book(), {})) codes << q(meter.code);
    }
    bool ok = false;
    const QString code = QInputDialog::getItem(this, tr("Meter"),
                                               tr("The meter whose readings stand in column %1")
                                                   .arg(q(plan->header[static_cast<std::size_t>(column)])),
                                               codes, 0, true, &ok);
    if (!ok || code.trimmed().isEmpty()) return;
    std::optional<double> minutes;
    if (volumes) {
        minutes = QInputDialog::getDouble(this, tr("Volumes"), tr("Minutes that each volume covers, up to the time of its row"),
                                          plan->volume_minutes.value_or(60.0), 0.1, 527040.0, 1, &ok);
        if (!ok) return;
    }
    set_meter(*plan, static_cast<std::size_t>(column), utf8(code.trimmed()), minutes);
    show_plan();
}

void ImportPage::ask_for_constant() {
    ImportPlan* plan = shown();
    if (!plan || !plan->kind) return;
    QStringList names;
    for (const auto& known : exchange::spec_of(*plan->kind).columns) names << q(known.name);
    bool ok = false;
    const QString name = QInputDialog::getItem(this, tr("Same in every row…"), tr("What is the same in every row?"),
                                               names, 0, false, &ok);
    if (!ok) return;
    QStringList known;
    if (name == QStringLiteral("meter") && session().has_book()) {
        for (const auto& meter : store::meters(session().book(), {})) known << q(meter.code);
    }
    const auto before = plan->constants.find(utf8(name));
    if (before != plan->constants.end()) known.prepend(q(before->second));
    const QString text = QInputDialog::getItem(this, tr("Same in every row…"), tr("%1 in every row (empty: no such thing)").arg(name),
                                               known, 0, true, &ok);
    if (!ok) return;
    set_constant(*plan, utf8(name), utf8(text.trimmed()));
    show_plan();
}

void ImportPage::point_at(int column, const QString& name) {
    ImportPlan* plan = shown();
    if (!plan) return;
    set_meaning(*plan, static_cast<std::size_t>(column), utf8(name));
    show_plan();
}

void ImportPage::load_map(const QString& path) {
    ImportPlan* plan = shown();
    if (!plan) return;
    apply_map(*plan, exchange::read_table_map(path.toStdString()));
    show_plan();
}

void ImportPage::save_map(const QString& path) {
    const ImportPlan* plan = shown();
    if (!plan) return;
    QFile file(path);
    const QByteArray text = map_json(*plan);
    if (!file.open(QIODevice::WriteOnly | QIODevice::Truncate) || file.write(text) != text.size() || !file.flush()) {
        throw std::runtime_error(utf8(file.errorString()));
    }
    session().say(tr("The map is in %1.").arg(path));
}

}  // namespace evenfall::desktop
