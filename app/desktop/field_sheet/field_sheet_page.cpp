// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/field_sheet/field_sheet_page.h"

#include "app/desktop/core_words.h"
#include "app/desktop/field_sheet/can_grid.h"
#include "app/desktop/field_sheet/depth_map.h"
#include "app/desktop/field_sheet/sheet_figures.h"
#include "app/desktop/field_sheet/sheet_lists.h"
#include "app/desktop/field_sheet/sheet_model.h"
#include "app/desktop/figure.h"
#include "core/input_error.h"

#include <QComboBox>
#include <QDateEdit>
#include <QDoubleSpinBox>
#include <QFrame>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSpinBox>
#include <QStyle>
#include <QTabWidget>
#include <QVBoxLayout>

namespace evenfall::desktop {
namespace {

QDate qt_date(calendar::Date date) {
    const std::chrono::year_month_day d{date};
    return {static_cast<int>(d.year()), static_cast<int>(static_cast<unsigned>(d.month())),
            static_cast<int>(static_cast<unsigned>(d.day()))};
}

template <class E>
void choose(QComboBox* box, E value) {
    const QSignalBlocker quiet(box);
    box->setCurrentIndex(box->findData(static_cast<int>(value)));
}

void mark_bad(QLineEdit* line, const QString& wrong) {
    const bool bad = !wrong.isEmpty();
    line->setToolTip(wrong);
    line->setAccessibleDescription(wrong);
    if (line->property("bad").toBool() == bad) return;
    line->setProperty("bad", bad);
    line->style()->unpolish(line);
    line->style()->polish(line);
}

template <class Q>
QString wrong_measure(const std::string& text) {
    if (text.empty()) return {};
    try {
        (void)units::parse_measure<Q>(text);
        return {};
    } catch (const InputError& e) {
        return core_words(e.issues().front().sentence());
    }
}

}  // namespace

FieldSheetPage::FieldSheetPage(Session& session, QWidget* parent)
    : Page(session, tr("Field sheet"),
           tr("Type each catch and press Enter: the next can of your walk is waiting. Arrows move over the ground."),
           parent),
      sheet_(session.sheet()),
      model_(new SheetModel(sheet_, this)) {
    connect(add_action(tr("New test")), &QPushButton::clicked, this, &FieldSheetPage::new_test);
    connect(add_action(tr("Open a test…")), &QPushButton::clicked, this, &FieldSheetPage::open_test);
    save_ = add_action(tr("Save to the book"), true);
    connect(save_, &QPushButton::clicked, this, &FieldSheetPage::save);

    auto* columns = new QHBoxLayout;
    columns->setSpacing(12);
    auto* left = new QVBoxLayout;
    left->setSpacing(12);
    left->addWidget(make_head());
    auto* cans = new QVBoxLayout;
    grid_ = new CanGrid(*model_);
    auto* can_page = new QWidget;
    auto* can_column = new QVBoxLayout(can_page);
    can_column->setContentsMargins(0, gap, 0, 0);
    can_column->addWidget(grid_, 1);
    problem_ = new QLabel;
    problem_->setObjectName(QStringLiteral("warn"));
    problem_->setTextFormat(Qt::PlainText);
    problem_->setWordWrap(true);
    progress_ = faint({});
    can_column->addWidget(progress_);
    can_column->addWidget(problem_);
    tabs_ = new QTabWidget;
    tabs_->addTab(can_page, tr("Cans"));
    tabs_->addTab(make_pressure_table(sheet_, this), tr("Pressures"));
    tabs_->addTab(make_findings(sheet_, this), tr("Findings"));
    tabs_->addTab(make_notes(sheet_, this), tr("Notes and photos"));
    cans->addWidget(tabs_);
    left->addWidget(card(cans), 1);
    columns->addLayout(left, 11);
    columns->addWidget(make_right(), 8);
    body()->addLayout(columns, 1);

    connect(&sheet_, &FieldSheet::head_changed, this, &FieldSheetPage::show_head);
    connect(&sheet_, &FieldSheet::changed, this, &FieldSheetPage::show_results);
    connect(&sheet_, &FieldSheet::interval_ready, this, &FieldSheetPage::show_results);
    connect(map_, &DepthMap::can_clicked, this, [this](std::size_t can) {
        const SheetCan& c = sheet_.data().cans[can];
        grid_->setCurrentIndex(model_->index(c.row, c.column));
        grid_->setFocus();
    });
    book_changed();
    show_head();
    show_results();
    setFocusProxy(grid_);
}

QLineEdit* FieldSheetPage::text_field(const QString& name, std::string SheetData::* field, const QString& hint) {
    auto* line = new QLineEdit;
    line->setPlaceholderText(hint);
    fields_.insert(line, field);
    connect(line, &QLineEdit::textEdited, this, [this, field, name](const QString& text) {
        sheet_.set(field, utf8(text.trimmed()), name);
    });
    return line;
}

QWidget* FieldSheetPage::make_head() {
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(6);
    area_ = new QComboBox;
    area_->setEditable(true);
    connect(area_, &QComboBox::currentTextChanged, this, [this](const QString& text) {
        if (!showing_) sheet_.set(&SheetData::area, utf8(text.trimmed()), tr("Area"));
    });
    date_ = new QDateEdit;
    date_->setDisplayFormat(QStringLiteral("yyyy-MM-dd"));
    date_->setCalendarPopup(true);
    connect(date_, &QDateEdit::dateChanged, this, [this](const QDate& d) {
        if (showing_ || !d.isValid()) return;
        sheet_.set(&SheetData::date, calendar::make_date(d.year(), static_cast<unsigned>(d.month()),
                                                         static_cast<unsigned>(d.day())), tr("Date"));
    });
    layout_ = new QComboBox;
    layout_->addItem(tr("grid"), static_cast<int>(audit::Layout::grid));
    layout_->addItem(tr("pivot, along a radius"), static_cast<int>(audit::Layout::pivot));
    layout_->addItem(tr("lateral, along the machine"), static_cast<int>(audit::Layout::lateral));
    layout_->addItem(tr("hose reel or traveller"), static_cast<int>(audit::Layout::traveller));
    layout_->addItem(tr("irregular"), static_cast<int>(audit::Layout::irregular));
    connect(layout_, &QComboBox::activated, this, [this] {
        change_layout(static_cast<audit::Layout>(layout_->currentData().toInt()));
    });
    unit_ = new QComboBox;
    unit_->addItem(tr("millilitres"), static_cast<int>(audit::CatchUnit::millilitre));
    unit_->addItem(tr("millimetres"), static_cast<int>(audit::CatchUnit::millimetre));
    unit_->addItem(tr("inches"), static_cast<int>(audit::CatchUnit::inch));
    connect(unit_, &QComboBox::activated, this, [this] {
        sheet_.set(&SheetData::catch_unit, static_cast<audit::CatchUnit>(unit_->currentData().toInt()),
                   tr("Unit of the catches"));
    });
    rule_ = new QComboBox;
    for (const auto rule : {audit::QuarterRule::whole_cans, audit::QuarterRule::nearest,
                            audit::QuarterRule::round_up, audit::QuarterRule::part_can}) {
        rule_->addItem(short_words_of(rule), static_cast<int>(rule));
        rule_->setItemData(rule_->count() - 1, words_of(rule), Qt::ToolTipRole);
    }
    connect(rule_, &QComboBox::activated, this, [this] {
        sheet_.set(&SheetData::quarter_rule, static_cast<audit::QuarterRule>(rule_->currentData().toInt()),
                   tr("Low quarter"));
    });
    code_ = text_field(tr("Test"), &SheetData::code, tr("T-NORTH-25"));
    grid->addWidget(labelled(tr("&Test"), code_), 0, 0);
    grid->addWidget(labelled(tr("&Area"), area_), 0, 1);
    grid->addWidget(labelled(tr("&Date"), date_), 0, 2);
    grid->addWidget(labelled(tr("&Layout"), layout_), 0, 3);
    grid->addWidget(labelled(tr("&Catches in"), unit_), 1, 0);
    grid->addWidget(labelled(tr("T&hroat area"), text_field(tr("Throat area"), &SheetData::throat_area,
                                                          tr("16.61 in2"))), 1, 1);
    grid->addWidget(labelled(tr("Run time, &minutes"), text_field(tr("Run time"), &SheetData::minutes, {})), 1, 2);
    grid->addWidget(labelled(tr("&Wind"), text_field(tr("Wind"), &SheetData::wind, tr("3 mph"))), 1, 3);
    grid->addWidget(make_shape_row(), 2, 0, 1, 4);
    for (int c = 0; c < 4; ++c) grid->setColumnStretch(c, 1);
    return card(grid);
}

QWidget* FieldSheetPage::make_shape_row() {
    auto* box = new QWidget;
    auto* row = new QHBoxLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(12);
    rows_ = new QSpinBox;
    rows_->setRange(1, 60);
    columns_ = new QSpinBox;
    columns_->setRange(1, 60);
    spacing_ = new QDoubleSpinBox;
    spacing_->setRange(0.1, 1000.0);
    spacing_->setDecimals(2);
    position_unit_ = new QComboBox;
    for (const auto& unit : units::known_units<units::Length>()) position_unit_->addItem(q(unit.name));
    walk_ = new QComboBox;
    walk_->addItem(tr("back and forth"), static_cast<int>(Walk::back_and_forth));
    walk_->addItem(tr("row by row"), static_cast<int>(Walk::row_by_row));
    for (QSpinBox* spin : {rows_, columns_}) {
        spin->setKeyboardTracking(false);
        connect(spin, &QSpinBox::valueChanged, this, &FieldSheetPage::apply_shape);
    }
    spacing_->setKeyboardTracking(false);
    connect(spacing_, &QDoubleSpinBox::valueChanged, this, &FieldSheetPage::apply_shape);
    connect(position_unit_, &QComboBox::activated, this, &FieldSheetPage::apply_shape);
    connect(walk_, &QComboBox::activated, this, [this] {
        sheet_.set(&SheetData::walk, static_cast<Walk>(walk_->currentData().toInt()), tr("Walk"));
    });
    row->addWidget(labelled(tr("&Rows"), rows_));
    row->addWidget(labelled(tr("C&olumns"), columns_));
    row->addWidget(labelled(tr("Can &spacing"), spacing_));
    row->addWidget(labelled(tr("&Unit"), position_unit_));
    row->addWidget(labelled(tr("Wal&k"), walk_), 1);
    lane_ = text_field(tr("Lane spacing"), &SheetData::lane_spacing, tr("220 ft"));
    auto* lane_box = labelled(tr("La&ne spacing"), lane_);
    lane_label_ = lane_box->findChild<QLabel*>();
    row->addWidget(lane_box, 1);
    row->addWidget(labelled(tr("Low &quarter"), rule_), 2);
    rule_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    rule_->setMinimumContentsLength(12);
    return box;
}

QWidget* FieldSheetPage::make_right() {
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(12);
    figures_ = new FigureGrid(2);
    column->addWidget(figures_);
    auto* map_column = new QVBoxLayout;
    map_column->addWidget(heading(tr("Where the water fell")));
    map_ = new DepthMap(sheet_);
    map_->set_units(session().units());
    map_column->addWidget(map_, 1);
    column->addWidget(card(map_column), 1);
    return box;
}

void FieldSheetPage::show_head() {
    showing_ = true;
    const SheetData& d = sheet_.data();
    for (auto it = fields_.begin(); it != fields_.end(); ++it) {
        const QString text = q(d.*it.value());
        if (it.key()->text().trimmed() != text) it.key()->setText(text);
        QString wrong;
        if (it.value() == &SheetData::throat_area) wrong = wrong_measure<units::Area>(d.throat_area);
        if (it.value() == &SheetData::wind) wrong = wrong_measure<units::Speed>(d.wind);
        if (it.value() == &SheetData::lane_spacing) wrong = wrong_measure<units::Length>(d.lane_spacing);
        if (it.value() == &SheetData::minutes && !d.minutes.empty() && !units::parse_number(d.minutes)) {
            wrong = tr("found \"%1\", expected a number of minutes").arg(text);
        }
        mark_bad(it.key(), wrong);
    }
    if (area_->currentText() != q(d.area)) area_->setCurrentText(q(d.area));
    date_->setDate(qt_date(d.date));
    choose(layout_, d.layout);
    choose(unit_, d.catch_unit);
    choose(rule_, d.quarter_rule);
    choose(walk_, d.walk);
    const QSignalBlocker a(rows_);
    const QSignalBlocker b(columns_);
    const QSignalBlocker c(spacing_);
    rows_->setValue(d.rows);
    columns_->setValue(d.columns);
    spacing_->setValue(d.spacing);
    position_unit_->setCurrentText(q(d.position_unit.name));
    const bool traveller = d.layout == audit::Layout::traveller;
    columns_->setEnabled(!traveller);
    lane_->parentWidget()->setVisible(traveller);
    // Cans at measured positions keep them: rows and columns only show their order.
    const bool fixed = d.layout == audit::Layout::irregular;
    for (QWidget* w : {static_cast<QWidget*>(rows_), static_cast<QWidget*>(spacing_)}) w->setEnabled(!fixed);
    if (fixed) columns_->setEnabled(false);
    showing_ = false;
}

void FieldSheetPage::show_results() {
    figures_->set_figures(sheet_figures(sheet_, session().units()));
    progress_->setText(tr("%1 of %2 cans read").arg(sheet_.cans_read()).arg(sheet_.data().cans.size()));
    // While the first cans are being typed there is nothing wrong yet.
    const bool started = sheet_.cans_read() >= 4;
    problem_->setText(started ? sheet_.problem() : QString());
    problem_->setVisible(!problem_->text().isEmpty());
}

void FieldSheetPage::change_layout(audit::Layout layout) {
    SheetData shape = sheet_.data();
    shape.layout = layout;
    if (layout == audit::Layout::traveller) {
        shape.rows = 15;
        shape.first = shape.spacing / 2.0;
    }
    if (layout == audit::Layout::pivot || layout == audit::Layout::lateral) shape.first = shape.spacing;
    if (layout != audit::Layout::traveller && shape.columns < 3) shape.columns = 6;
    sheet_.reshape(shape, tr("Layout"));
}

void FieldSheetPage::apply_shape() {
    if (showing_) return;
    SheetData shape = sheet_.data();
    shape.rows = rows_->value();
    shape.columns = columns_->value();
    shape.spacing = spacing_->value();
    shape.position_unit = units::unit_named<units::Length>(utf8(position_unit_->currentText()));
    sheet_.reshape(shape, tr("Rows, columns and spacing"));
}

QUndoStack* FieldSheetPage::undo_stack() { return &sheet_.undo_stack(); }

void FieldSheetPage::units_changed() {
    map_->set_units(session().units());
    show_results();
}

}  // namespace evenfall::desktop
