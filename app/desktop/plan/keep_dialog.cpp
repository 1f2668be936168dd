// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plan/keep_dialog.h"

#include "app/desktop/clock.h"
#include "app/desktop/page.h"
#include "core/store/plan_store.h"
#include "core/store/site_store.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace evenfall::desktop {

KeepDialog::KeepDialog(Session& session, QWidget* parent) : QDialog(parent), session_(session) {
    setWindowTitle(tr("Keep the plan in the book"));
    resize(520, 0);
    auto* grid = new QGridLayout(this);
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(gap);
    grid->setColumnStretch(0, 1);
    grid->setColumnStretch(1, 1);
    name_ = new QLineEdit;
    code_ = new QLineEdit;
    code_->setPlaceholderText(tr("a short name of its own, such as P-NORTH"));
    site_ = new QComboBox;
    for (const auto& site : store::sites(session.book())) {
        site_->addItem(site.name.empty() ? q(site.code) : tr("%1, %2").arg(q(site.code), q(site.name)), q(site.code));
    }
    who_ = new QLineEdit(q(user_text()));
    grid->addWidget(labelled(tr("&Name"), name_), 0, 0, 1, 2);
    grid->addWidget(labelled(tr("&Code"), code_), 1, 0);
    grid->addWidget(labelled(tr("&Site"), site_), 1, 1);
    grid->addWidget(labelled(tr("&Who keeps it"), who_), 2, 0);
    outlook_ = faint({});
    outlook_->setWordWrap(true);
    grid->addWidget(outlook_, 3, 0, 1, 2);
    trouble_ = new QLabel;
    trouble_->setObjectName(QStringLiteral("warn"));
    trouble_->setWordWrap(true);
    trouble_->setTextFormat(Qt::PlainText);
    grid->addWidget(trouble_, 4, 0, 1, 2);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    keep_ = buttons->addButton(tr("Keep it"), QDialogButtonBox::AcceptRole);
    keep_->setObjectName(QStringLiteral("main"));
    grid->addWidget(buttons, 5, 0, 1, 2);
    connect(buttons, &QDialogButtonBox::accepted, this, &KeepDialog::press);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(code_, &QLineEdit::textChanged, this, &KeepDialog::code_typed);
    code_typed();
}

void KeepDialog::fill(const std::string& name, const std::string& code, const std::string& site) {
    name_->setText(q(name));
    code_->setText(q(code));
    const int at = site_->findData(q(site));
    if (at >= 0) site_->setCurrentIndex(at);
    (code.empty() ? code_ : name_)->setFocus();
}

/// Of a code that is there, the site is settled and a revision is added.
void KeepDialog::code_typed() {
    trouble_->clear();
    const auto there = store::find_plan(session_.book(), plan_code());
    site_->setEnabled(!there);
    if (!there) {
        outlook_->setText(tr("A new plan of the book."));
        return;
    }
    site_->setCurrentIndex(site_->findData(q(there->site)));
    outlook_->setText(tr("Revision %1 of the plan %2; the earlier ones stay.").arg(there->revision + 1).arg(q(there->code)));
}

void KeepDialog::press() {
    trouble_->clear();
    if (plan_code().empty()) {
        say(tr("Give the plan a code first."));
        code_->setFocus();
    } else if (plan_site().empty()) {
        say(tr("There is no site in the book; import one first."));
    } else if (by_whom().empty()) {
        say(tr("Write who keeps it."));
        who_->setFocus();
    } else {
        Q_EMIT keep_wanted();
    }
}

void KeepDialog::say(const QString& trouble) { trouble_->setText(trouble); }
std::string KeepDialog::plan_name() const { return utf8(name_->text().trimmed()); }
std::string KeepDialog::plan_code() const { return utf8(code_->text().trimmed()); }
std::string KeepDialog::plan_site() const { return utf8(site_->currentData().toString()); }
std::string KeepDialog::by_whom() const { return utf8(who_->text().trimmed()); }
QString KeepDialog::trouble() const { return trouble_->text(); }
QString KeepDialog::outlook() const { return outlook_->text(); }

}  // namespace evenfall::desktop
