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
    const QStringList names{tr("&Approve"), tr("&Decline"), tr("As&k for more"), tr("&Open again"),
                            tr("&Take up"), tr("Back to re&ceived"), tr("Pa&id")};
    const QStringList tips{{}, {}, {}, {}, tr("Under review from now on"), tr("What was missing has come"), tr("The amount was paid out")};
    for (std::size_t i = 0; i < says_.size(); ++i) {
        says_[i] = new QPushButton(names[static_cast<qsizetype>(i)]);
        says_[i]->setCheckable(true);
        says_[i]->setToolTip(tips[static_cast<qsizetype>(i)]);
        group->addButton(says_[i], static_cast<int>(i));
        choices->addWidget(says_[i]);
        connect(says_[i], &QPushButton::toggled, this, &DecisionBox::answer_chosen);
    }
    over_ = faint(tr("Nothing may follow from here."));
    choices->addWidget(over_);
    choices->addStretch(1);
    column->addLayout(choices);
    take_ = new QPushButton(tr("&Reasons by the rules"));
    take_->setToolTip(tr("Puts the reasons that the rules give into the field, to go on from"));

    reason_ = new QPlainTextEdit;
    reason_->setTabChangesFocus(true);
    reason_->setAccessibleName(tr("Reason"));
    reason_->setPlaceholderText(tr("Reason, for the applicant and the journal"));
    reason_->setFixedHeight(54);
    auto* why = new QHBoxLayout;
    why->setSpacing(gap);
    why->addWidget(reason_, 1);
    why->addWidget(take_, 0, Qt::AlignTop);
    column->addLayout(why);
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
    amount_->setAccessibleName(tr("Amount approved or paid"));
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
    by_the_rules_ = c && c->review && c->review->payment ? c->review->payment->total : 0.0;
    approved_ = c && !c->application.history.empty() ? c->application.history.back().amount : std::nullopt;
    amount_->setValue(by_the_rules_);
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

/// What was approved is what is paid, unless somebody says otherwise.
void DecisionBox::answer_chosen() {
    if (chosen() == OfficerSays::pay) amount_->setValue(approved_.value_or(0.0));
    if (chosen() == OfficerSays::approve) amount_->setValue(by_the_rules_);
    refresh();
}

void DecisionBox::refresh() {
    const bool any = !application_.empty();
    const bool open = any && session_.can_write();
    bool follows = false;
    for (std::size_t i = 0; i < says_.size(); ++i) {
        const auto says = static_cast<OfficerSays>(i);
        const bool can = workflow::can_decide(status_, says);
        says_[i]->setVisible(can);
        says_[i]->setEnabled(open && can);
        follows = follows || can;
    }
    over_->setVisible(any && !follows);
    const auto says = chosen();
    amount_->setEnabled(open && says && workflow::needs_amount(*says));
    reason_->setEnabled(open && follows);
    who_->setEnabled(open && follows);
    take_->setEnabled(open && follows && !rule_reasons_.isEmpty());
    write_->setEnabled(open && says.has_value());
    write_->setToolTip(session_.has_book() && !session_.can_write() ? session_.read_only_reason() : tr("Ctrl+Return"));
}

void DecisionBox::take_focus() {
    for (QPushButton* b : says_) {
        if (b->isEnabled() && !b->isHidden()) {
            b->setFocus(Qt::ShortcutFocusReason);
            return;
        }
    }
}

void DecisionBox::choose(OfficerSays says) {
    QPushButton* b = button(says);
    if (b->isEnabled()) b->setChecked(true);
}

void DecisionBox::write() {
    const auto says = chosen();
    if (!says || application_.empty()) return;
    if (workflow::needs_reason(*says) && reason_->toPlainText().trimmed().isEmpty()) {
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
    if (workflow::needs_amount(*says)) d.amount = amount_->value();
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
