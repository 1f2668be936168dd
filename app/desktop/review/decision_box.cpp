// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/review/decision_box.h"

#include "app/desktop/clock.h"
#include "app/desktop/core_words.h"
#include "app/desktop/page.h"
#include "app/desktop/review/review_view.h"

#include <QButtonGroup>
#include <QDoubleSpinBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace evenfall::desktop {

using workflow::OfficerSays;

DecisionBox::DecisionBox(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    auto* choices = new QHBoxLayout;
    choices->setSpacing(gap);
    choices->addWidget(heading(tr("Decide")));
    auto* group = new QButtonGroup(this);
    const QStringList names{tr("&Approve"), tr("&Decline"), tr("As&k for more"), tr("&Open again")};
    for (std::size_t i = 0; i < says_.size(); ++i) {
        says_[i] = new QPushButton(names[static_cast<qsizetype>(i)]);
        says_[i]->setCheckable(true);
        group->addButton(says_[i], static_cast<int>(i));
        choices->addWidget(says_[i]);
        connect(says_[i], &QPushButton::toggled, this, &DecisionBox::refresh);
    }
    choices->addStretch(1);
    take_ = new QPushButton(tr("&Reasons by the rules"));
    take_->setToolTip(tr("Puts the reasons that the rules give into the field, to go on from"));
    choices->addWidget(take_);
    column->addLayout(choices);

    reason_ = new QPlainTextEdit;
    reason_->setTabChangesFocus(true);
    reason_->setAccessibleName(tr("Reason"));
    reason_->setPlaceholderText(tr("Reason, for the applicant and the journal"));
    reason_->setFixedHeight(54);
    column->addWidget(reason_);
    auto* row = new QHBoxLayout;
    row->setSpacing(12);
    who_ = new QLineEdit(q(user_text()));
    amount_ = new QDoubleSpinBox;
    amount_->setRange(0.0, 1e9);
    amount_->setDecimals(2);
    amount_->setGroupSeparatorShown(true);
    write_ = new QPushButton(tr("&Write the decision"));
    write_->setObjectName(QStringLiteral("main"));
    trouble_ = new QLabel;
    trouble_->setObjectName(QStringLiteral("warn"));
    trouble_->setWordWrap(true);
    trouble_->setTextFormat(Qt::PlainText);
    auto* who_label = faint(tr("Who"));
    who_label->setBuddy(who_);
    who_->setAccessibleName(tr("Who decides"));
    auto* amount_label = faint(tr("Amount"));
    amount_label->setBuddy(amount_);
    amount_->setAccessibleName(tr("Amount approved"));
    row->addWidget(who_label);
    row->addWidget(who_, 2);
    row->addWidget(amount_label);
    row->addWidget(amount_, 1);
    row->addWidget(trouble_, 3);
    row->addWidget(write_);
    column->addLayout(row);
    connect(take_, &QPushButton::clicked, this, [this] {
        reason_->setPlainText(rule_reasons_);
        reason_->setFocus();
    });
    connect(write_, &QPushButton::clicked, this, &DecisionBox::write);
    connect(reason_, &QPlainTextEdit::textChanged, this, [this] { trouble_->clear(); });
    show_case(nullptr);
}

void DecisionBox::show_case(const workflow::ReviewedCase* c) {
    application_ = c ? c->application.code : std::string();
    status_ = c ? c->application.status() : review::Status::received;
    currency_ = c ? c->application.currency : std::string();
    rule_reasons_ = c ? reasons_of(*c) : QString();
    reason_->clear();
    trouble_->clear();
    amount_->setValue(c && c->review && c->review->payment ? c->review->payment->total : 0.0);
    amount_->setSuffix(currency_.empty() ? QString() : QChar(0xA0) + q(currency_));
    // An exclusive group keeps one button down for ever.
    QButtonGroup* group = says_[0]->group();
    group->setExclusive(false);
    for (QPushButton* b : says_) b->setChecked(false);
    group->setExclusive(true);
    refresh();
}

std::optional<OfficerSays> DecisionBox::chosen() const {
    for (std::size_t i = 0; i < says_.size(); ++i) {
        if (says_[i]->isChecked()) return static_cast<OfficerSays>(i);
    }
    return std::nullopt;
}

void DecisionBox::refresh() {
    const bool open = !application_.empty() && session_.can_write();
    for (std::size_t i = 0; i < says_.size(); ++i) {
        says_[i]->setEnabled(open && workflow::can_decide(status_, static_cast<OfficerSays>(i)));
    }
    const auto says = chosen();
    amount_->setEnabled(open && says == OfficerSays::approve);
    reason_->setEnabled(open);
    who_->setEnabled(open);
    take_->setEnabled(open && !rule_reasons_.isEmpty());
    write_->setEnabled(open && says.has_value());
    write_->setToolTip(session_.has_book() && !session_.can_write() ? session_.read_only_reason() : QString());
}

void DecisionBox::choose(OfficerSays says) {
    QPushButton* b = button(says);
    if (b->isEnabled()) b->setChecked(true);
}

void DecisionBox::write() {
    const auto says = chosen();
    if (!says || application_.empty()) return;
    if (reason_->toPlainText().trimmed().isEmpty()) {
        trouble_->setText(tr("Write the reason first."));
        reason_->setFocus();
        return;
    }
    if (who_->text().trimmed().isEmpty()) {
        trouble_->setText(tr("Write who decides."));
        who_->setFocus();
        return;
    }
    workflow::OfficerDecision d;
    d.application = application_;
    d.says = *says;
    d.reason = utf8(reason_->toPlainText().trimmed());
    d.who = utf8(who_->text().trimmed());
    d.at = now_text();
    if (*says == OfficerSays::approve) d.amount = amount_->value();
    try {
        workflow::decide(session_.book(), d);
    } catch (const std::exception& e) {
        trouble_->setText(error_words(e));
        return;
    }
    session_.say(tr("The decision on %1 is in the book.").arg(q(d.application)));
    Q_EMIT written();
}

QString DecisionBox::trouble() const { return trouble_->text(); }

}  // namespace evenfall::desktop
