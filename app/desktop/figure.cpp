// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/figure.h"

#include "app/desktop/appearance.h"

#include <QApplication>
#include <QClipboard>
#include <QFrame>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QScreen>
#include <QVBoxLayout>
#include <utility>

namespace evenfall::desktop {

FigureCard::FigureCard(QWidget* parent) : QAbstractButton(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    connect(this, &QAbstractButton::clicked, this, [this] { show_explanation(this, figure_); });
}

void FigureCard::set_figure(const Figure& figure) {
    const bool same = figure.name == figure_.name && figure.value == figure_.value &&
                      figure.why.assumed == figure_.why.assumed;
    figure_ = figure;
    if (same) return;
    setObjectName(QStringLiteral("figure_") + figure.key);
    setAccessibleName(tr("%1: %2").arg(figure.name, figure.value));
    setAccessibleDescription(tr("Press Space to see how this figure came about"));
    setToolTip(figure.name);
    update();
}

QSize FigureCard::sizeHint() const { return {150, 54}; }
QSize FigureCard::minimumSizeHint() const { return {96, 50}; }

void FigureCard::paintEvent(QPaintEvent*) {
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    const Look& l = look();
    const bool lit = hasFocus() || underMouse();
    p.setPen(QPen(lit ? l.accent : l.rule, hasFocus() ? 2.0 : 1.0));
    p.setBrush(l.surface);
    p.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 6, 6);
    QFont small = font();
    small.setPointSizeF(font().pointSizeF() * 0.88);
    p.setFont(small);
    p.setPen(l.faint);
    const QRect inside = rect().adjusted(10, 6, -10, -6);
    const QFontMetrics fm(small);
    p.drawText(inside, Qt::AlignLeft | Qt::AlignTop,
               fm.elidedText(figure_.name, Qt::ElideRight, inside.width()));
    QFont big = font();
    big.setPointSizeF(font().pointSizeF() * 1.22);
    big.setWeight(QFont::DemiBold);
    p.setFont(big);
    p.setPen(l.ink);
    const QString value = figure_.value + (figure_.why.assumed ? QStringLiteral(" *") : QString());
    p.drawText(inside, Qt::AlignLeft | Qt::AlignBottom,
               QFontMetrics(big).elidedText(value, Qt::ElideRight, inside.width()));
}

FigureGrid::FigureGrid(int columns, QWidget* parent)
    : QWidget(parent), columns_(columns), layout_(new QGridLayout(this)) {
    layout_->setContentsMargins(0, 0, 0, 0);
    layout_->setSpacing(gap);
    for (int c = 0; c < columns; ++c) layout_->setColumnStretch(c, 1);
}

void FigureGrid::set_figures(const std::vector<Figure>& figures) {
    while (cards_.size() > figures.size()) {
        delete cards_.back();
        cards_.pop_back();
    }
    while (cards_.size() < figures.size()) {
        const int n = static_cast<int>(cards_.size());
        cards_.push_back(new FigureCard(this));
        layout_->addWidget(cards_.back(), n / columns_, n % columns_);
    }
    for (std::size_t i = 0; i < figures.size(); ++i) cards_[i]->set_figure(figures[i]);
}

FigureCard* FigureGrid::card(const QString& key) const {
    for (FigureCard* card : cards_) {
        if (card->figure().key == key) return card;
    }
    return nullptr;
}

QString explanation_text(const Figure& figure) {
    const Explanation& why = figure.why;
    QStringList lines{FigureCard::tr("%1: %2").arg(figure.name, figure.value)};
    const auto add = [&lines](const QString& head, const QString& text) {
        if (!text.isEmpty()) lines << head + QStringLiteral(": ") + text;
    };
    add(FigureCard::tr("Formula"), why.formula);
    for (const QString& input : why.inputs) add(FigureCard::tr("Input"), input);
    add(FigureCard::tr("Method"), why.method);
    add(FigureCard::tr("Convention"), why.convention);
    add(FigureCard::tr("Source"), why.source);
    if (why.assumed) lines << FigureCard::tr("* Rests on an assumed or estimated input.");
    return lines.join(QLatin1Char('\n'));
}

void show_explanation(QWidget* anchor, const Figure& figure) {
    auto* popup = new QFrame(anchor->window(), Qt::Popup);
    popup->setAttribute(Qt::WA_DeleteOnClose);
    popup->setObjectName(QStringLiteral("card"));
    popup->setAccessibleName(FigureCard::tr("How %1 came about").arg(figure.name));
    auto* column = new QVBoxLayout(popup);
    column->setContentsMargins(wide_gap, wide_gap, wide_gap, wide_gap);
    auto* title = new QLabel(FigureCard::tr("%1: %2").arg(figure.name, figure.value));
    title->setObjectName(QStringLiteral("heading"));
    title->setTextFormat(Qt::PlainText);
    column->addWidget(title);
    auto* lines = new QGridLayout;
    lines->setHorizontalSpacing(wide_gap);
    lines->setColumnStretch(1, 1);
    const auto add = [lines](const QString& head, const QString& text) {
        if (text.isEmpty()) return;
        const int row = lines->rowCount();
        auto* left = new QLabel(head);
        left->setObjectName(QStringLiteral("faint"));
        auto* right = new QLabel(text);
        right->setTextFormat(Qt::PlainText);
        right->setWordWrap(true);
        right->setMinimumWidth(330);
        right->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
        lines->addWidget(left, row, 0, Qt::AlignTop);
        lines->addWidget(right, row, 1);
    };
    const Explanation& why = figure.why;
    add(FigureCard::tr("Formula"), why.formula);
    add(FigureCard::tr("Inputs"), why.inputs.join(QLatin1Char('\n')));
    add(FigureCard::tr("Method"), why.method);
    add(FigureCard::tr("Convention"), why.convention);
    add(FigureCard::tr("Source"), why.source);
    if (why.assumed) add(QStringLiteral("*"), FigureCard::tr("Rests on an assumed or estimated input."));
    column->addLayout(lines);
    auto* copy = new QPushButton(FigureCard::tr("Copy"));
    QObject::connect(copy, &QPushButton::clicked, popup, [popup, figure] {
        QApplication::clipboard()->setText(explanation_text(figure));
        popup->close();
    });
    column->addWidget(copy, 0, Qt::AlignRight);
    popup->adjustSize();
    const QRect screen = anchor->screen()->availableGeometry();
    QPoint at = anchor->mapToGlobal(QPoint(0, anchor->height() + 2));
    at.setX(std::max(screen.left(), std::min(at.x(), screen.right() - popup->width())));
    if (at.y() + popup->height() > screen.bottom()) {
        at.setY(std::max(screen.top(), anchor->mapToGlobal(QPoint(0, 0)).y() - popup->height() - 2));
    }
    popup->move(at);
    popup->show();
    copy->setFocus();
}

}  // namespace evenfall::desktop
