// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plan/plan_page.h"

#include "app/desktop/core_words.h"
#include "app/desktop/figure.h"
#include "app/desktop/plan/audit_panel.h"
#include "app/desktop/plan/plan_scene.h"

#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QDoubleSpinBox>
#include <QFileDialog>
#include <QFrame>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPrinter>
#include <QPushButton>
#include <QTabWidget>
#include <QVBoxLayout>
#include <cmath>

namespace evenfall::desktop {
namespace {

/// What a first look at the page shows: a rectangle with heads on a square, so that there is
/// something to move about. Invented.
plan::Plan first_plan() {
    plan::Plan p;
    p.name = "first draft";
    p.units.length = units::unit_named<units::Length>("ft");
    p.units.flow = units::unit_named<units::Flow>("gpm");
    p.units.pressure = units::unit_named<units::Pressure>("psi");
    p.turf = {{{{0, 0}, {90, 0}, {90, 60}, {0, 60}}}};
    const auto arc_of = [](int edges) { return edges == 2 ? 90.0 : edges == 1 ? 180.0 : 360.0; };
    for (int row = 0; row < 3; ++row) {
        for (int column = 0; column < 4; ++column) {
            const double dx = column == 0 ? 1.0 : column == 3 ? -1.0 : 0.0;
            const double dy = row == 0 ? 1.0 : row == 2 ? -1.0 : 0.0;
            plan::Head h;
            h.id = std::string(1, static_cast<char>('A' + row));
            h.id += std::to_string(column + 1);
            h.x = 30.0 * column;
            h.y = 30.0 * row;
            h.radius = 30.0;
            h.arc = arc_of((dx != 0.0) + (dy != 0.0));
            h.flow = 4.0 * h.arc / 360.0;
            double facing = 0.0;
            if (dx != 0.0 && dy != 0.0) facing = dx > 0 ? (dy > 0 ? 45.0 : 135.0) : (dy > 0 ? 315.0 : 225.0);
            else if (dx != 0.0) facing = dx > 0 ? 90.0 : 270.0;
            else if (dy < 0.0) facing = 180.0;
            h.facing = facing;
            h.station = "1";
            p.heads.push_back(std::move(h));
        }
    }
    return p;
}

}  // namespace

PlanPage::PlanPage(Session& session, QWidget* parent)
    : Page(session, tr("Plan"), tr("What a design should do when all heads run: move a head and see. "
                                   "A prediction knows neither wear nor leaks; a catch test does."), parent) {
    connect(add_action(tr("Open a plan…")), &QPushButton::clicked, this, [this] {
        const QString path = QFileDialog::getOpenFileName(this, tr("Open a plan"), QString(), tr("Plans (*.json)"));
        if (!path.isEmpty()) open_plan(path);
    });
    of_book_ = add_action(tr("Plan of the book…"));
    connect(of_book_, &QPushButton::clicked, this, &PlanPage::choose_plan_of_book);
    connect(add_action(tr("Save as a file…")), &QPushButton::clicked, this, &PlanPage::save);
    keep_ = add_action(tr("Keep in the book…"), true);
    connect(keep_, &QPushButton::clicked, this, &PlanPage::keep_as);
    scene_ = new PlanScene(document_, {theme(), 1.0, 0.0}, this);
    view_ = new PlanView(*scene_);
    auto* columns = new QHBoxLayout;
    columns->setSpacing(12);
    auto* drawing = new QVBoxLayout;
    title_ = heading({});
    title_->setTextFormat(Qt::PlainText);
    title_->setWordWrap(true);
    state_ = faint({});
    state_->setWordWrap(true);
    drawing->addWidget(title_);
    drawing->addWidget(state_);
    drawing->addWidget(view_, 1);
    auto* shows = new QHBoxLayout;
    auto* field = new QCheckBox(tr("Predicted rate"));
    field->setChecked(true);
    auto* dry = new QCheckBox(tr("Mark turf that gets less than half the mean"));
    shows->addWidget(field);
    shows->addWidget(dry);
    shows->addStretch(1);
    auto* add = new QPushButton(tr("&Add a head"));
    shows->addWidget(add);
    drawing->addLayout(shows);
    auto* keys = faint(tr("+ − zoom, 0 fits, N and P choose a head, arrows move it"));
    keys->setWordWrap(true);
    drawing->addWidget(keys);
    columns->addWidget(card(drawing), 7);

    tabs_ = new QTabWidget;
    tabs_->addTab(build_design(), tr("Design"));
    audit_ = new AuditPanel(session, document_);
    tabs_->addTab(audit_, tr("Against a catch test"));
    auto* right = new QVBoxLayout;
    right->addWidget(tabs_);
    columns->addWidget(card(right), 5);
    body()->addLayout(columns, 1);

    connect(add, &QPushButton::clicked, this, &PlanPage::add_head);
    connect(field, &QCheckBox::toggled, scene_, &PlanScene::set_field_shown);
    connect(dry, &QCheckBox::toggled, scene_, &PlanScene::set_dry_shown);
    connect(scene_, &PlanScene::head_chosen, this, &PlanPage::show_head);
    connect(&document_, &PlanDocument::predicted, this, &PlanPage::show_figures);
    connect(&document_, &PlanDocument::head_changed, this, [this] { show_head(scene_->chosen()); });
    connect(&document_, &PlanDocument::renamed, this, &PlanPage::show_home);
    connect(&document_.undo_stack(), &QUndoStack::cleanChanged, this, &PlanPage::show_home);
    connect(audit_, &AuditPanel::answered, this, &PlanPage::show_cans);
    connect(audit_, &AuditPanel::head_chosen, this, [this](int index) { scene_->choose(index); });
    connect(tabs_, &QTabWidget::currentChanged, this, &PlanPage::show_cans);
    setFocusProxy(view_);
    build_actions();
    document_.replace(first_plan());
    show_head(-1);
    book_changed();
}

QWidget* PlanPage::build_design() {
    auto* design = new QWidget;
    auto* right = new QVBoxLayout(design);
    right->setContentsMargins(0, gap, 0, 0);
    right->setSpacing(12);
    figures_ = new FigureGrid(2);
    right->addWidget(figures_);
    problem_ = new QLabel;
    problem_->setObjectName(QStringLiteral("warn"));
    problem_->setWordWrap(true);
    problem_->setTextFormat(Qt::PlainText);
    right->addWidget(problem_);
    auto* head = new QGridLayout;
    head->setHorizontalSpacing(12);
    head->setColumnStretch(0, 1);
    head->setColumnStretch(1, 1);
    head_name_ = heading({});
    head->addWidget(head_name_, 0, 0, 1, 2);
    x_ = number(-1e6, 1e6, tr("East"));
    y_ = number(-1e6, 1e6, tr("North"));
    radius_ = number(0.1, 1000.0, tr("Radius"));
    flow_ = number(0.01, 10000.0, tr("Flow"));
    arc_ = number(1.0, 360.0, tr("Arc, °"));
    facing_ = number(0.0, 360.0, tr("Facing, ° from north"));
    int n = 0;
    for (QDoubleSpinBox* box : {x_, y_, radius_, flow_, arc_, facing_}) {
        head->addWidget(labelled(box->accessibleName(), box), 1 + n / 2, n % 2);
        ++n;
    }
    station_ = new QLineEdit;
    connect(station_, &QLineEdit::editingFinished, this, &PlanPage::edit_head);
    head->addWidget(labelled(tr("Station"), station_), 4, 0);
    head_box_ = new QWidget;
    head->setContentsMargins(0, 0, 0, 0);
    head_box_->setLayout(head);
    right->addWidget(head_box_);
    right->addStretch(1);
    return design;
}

QDoubleSpinBox* PlanPage::number(double low, double high, const QString& name) {
    auto* box = new QDoubleSpinBox;
    box->setRange(low, high);
    box->setDecimals(2);
    box->setKeyboardTracking(false);
    box->setAccessibleName(name);
    connect(box, &QDoubleSpinBox::valueChanged, this, &PlanPage::edit_head);
    return box;
}

void PlanPage::units_changed() {
    show_figures();
    audit_->units_changed();
}

void PlanPage::show_audit() { tabs_->setCurrentWidget(audit_); }

/// The cans lie over the drawing while the comparison is looked at.
void PlanPage::show_cans() {
    const bool shown_now = tabs_->currentWidget() == audit_ && audit_->answer();
    const auto marks = shown_now ? can_marks(*audit_->answer(), session().units()) : std::vector<CanMark>{};
    scene_->set_cans(marks);
    // The ground that was tested, with a good margin around it.
    QPolygonF places;
    for (const CanMark& mark : marks) places << mark.place;
    QRectF part = places.boundingRect();
    const double margin = 0.4 * std::max(part.width(), part.height());
    view_->set_part(marks.empty() ? QRectF() : part.adjusted(-margin, -margin, margin, margin));
}

void PlanPage::add_head() {
    const QPointF centre = view_->mapToScene(view_->viewport()->rect().center());
    plan::Head h;
    std::string id = "H";
    id += std::to_string(document_.plan().heads.size() + 1);
    h.id = id;
    h.x = std::round(centre.x());
    h.y = std::round(-centre.y());
    h.radius = document_.plan().heads.empty() ? 30.0 : document_.radius(0);
    h.flow = document_.plan().heads.empty() ? std::optional(4.0) : document_.plan().heads.front().flow;
    if (!h.flow) h.flow = 4.0;
    document_.add_head(h);
    scene_->choose(static_cast<int>(document_.plan().heads.size()) - 1);
}

void PlanPage::show_head(int index) {
    head_box_->setEnabled(index >= 0);
    if (index < 0) {
        head_name_->setText(tr("No head is chosen"));
        return;
    }
    filling_ = true;
    const plan::Head& h = document_.plan().heads[static_cast<std::size_t>(index)];
    head_name_->setText(tr("Head %1, in %2 and %3").arg(q(h.id), q(document_.plan().units.length.name),
                                                        q(document_.plan().units.flow.name)));
    x_->setValue(h.x);
    y_->setValue(h.y);
    radius_->setValue(h.radius.value_or(document_.radius(static_cast<std::size_t>(index))));
    flow_->setValue(h.flow.value_or(0.0));
    // With a nozzle table radius and flow follow from it.
    radius_->setEnabled(h.nozzle.empty());
    flow_->setEnabled(h.nozzle.empty());
    arc_->setValue(h.arc);
    facing_->setValue(h.facing);
    station_->setText(q(h.station));
    filling_ = false;
}

void PlanPage::edit_head() {
    const int index = scene_->chosen();
    if (filling_ || index < 0) return;
    plan::Head h = document_.plan().heads[static_cast<std::size_t>(index)];
    h.x = x_->value();
    h.y = y_->value();
    if (h.nozzle.empty()) {
        h.radius = radius_->value();
        h.flow = flow_->value();
    }
    h.arc = arc_->value();
    h.facing = facing_->value();
    h.station = utf8(station_->text());
    document_.set_head(static_cast<std::size_t>(index), h, tr("Change head %1").arg(q(h.id)));
}

void PlanPage::show_figures() {
    const UnitsShown units = session().units();
    problem_->setText(document_.problem());
    problem_->setVisible(!document_.problem().isEmpty());
    const plan::Prediction* p = document_.overlap() ? &document_.overlap()->prediction : nullptr;
    const QString none = QStringLiteral("–");
    std::vector<Figure> figures;
    const auto add = [&](const char* key, const QString& name, const QString& value, const QString& formula,
                         const QStringList& inputs) {
        Figure f;
        f.key = QLatin1String(key);
        f.name = name;
        f.value = value;
        f.why.formula = formula;
        f.why.inputs = inputs;
        if (p) {
            f.why.inputs << tr("%1 heads on %2, from the plan").arg(p->heads).arg(shown(p->turf, units));
            f.why.method = core_words(p->method);
            f.why.convention = core_words(p->convention);
            f.why.source = core_words(p->source);
            f.why.assumed = !p->assumed.empty();
            for (const auto& a : p->assumed) f.why.inputs << QStringLiteral("* ") + core_words(a);
        }
        figures.push_back(std::move(f));
    };
    add("du_lq", tr("DU, low quarter"), p && p->du_lq ? shown_percent(p->du_lq->value()) : none,
        tr("mean of the lowest quarter of the turf ÷ mean"), {});
    add("cu", tr("Uniformity coefficient"), p && p->cu ? shown_percent(p->cu->value()) : none,
        tr("1 − mean distance from the mean ÷ mean"), {});
    add("rate", tr("Mean rate"), p ? shown(p->mean_rate, units) : none, tr("water on the turf ÷ turf"),
        p ? QStringList{tr("lowest: %1").arg(shown(p->lowest_rate, units)), tr("highest: %1").arg(shown(p->highest_rate, units))}
          : QStringList{});
    add("off", tr("Off target"), p ? shown_percent(p->off_target_share.value()) : none,
        tr("water outside the turf or on paving ÷ all water"), {});
    add("none", tr("Turf no head reaches"), p ? shown_percent(p->coverage.none.value()) : none,
        tr("turf reached by no head ÷ turf"),
        p ? QStringList{tr("by one: %1").arg(shown_percent(p->coverage.one.value())),
                        tr("by two or more: %1").arg(shown_percent(p->coverage.two_or_more.value())),
                        tr("by three or more: %1").arg(shown_percent(p->coverage.three_or_more.value()))}
          : QStringList{});
    add("flow", tr("Flow of all heads"), p ? shown(p->total_flow, units) : none, tr("sum over the heads"), {});
    figures_->set_figures(figures);
}

void PlanPage::theme_changed() { scene_->restyle(theme()); }

bool PlanPage::copy() {
    if (tabs_->currentWidget() == audit_ && !view_->hasFocus() && audit_->copy()) return true;
    // The part that is seen, with twice the dots of the screen.
    QImage picture(view_->viewport()->size() * 2, QImage::Format_RGB32);
    picture.fill(Qt::white);
    QPainter painter(&picture);
    scene_->draw_on_paper(painter, picture.rect(), view_->mapToScene(view_->viewport()->rect()).boundingRect(), 2.0);
    painter.end();
    QApplication::clipboard()->setImage(picture);
    return true;
}

bool PlanPage::print(QPrinter& printer) {
    QPainter painter(&printer);
    scene_->draw_on_paper(painter, printer.pageRect(QPrinter::DevicePixel).translated(-printer.pageRect(QPrinter::DevicePixel).topLeft()),
                          scene_->sceneRect(), printer.resolution() / 96.0);
    return true;
}

}  // namespace evenfall::desktop
