// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/review/application_dialog.h"

#include "app/desktop/clock.h"
#include "app/desktop/core_words.h"
#include "app/desktop/page.h"
#include "core/store/site_store.h"

#include <QComboBox>
#include <QDateEdit>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace evenfall::desktop {
namespace {

QDate day_of(calendar::Date d) { return QDate::fromString(q(calendar::format_date(d)), Qt::ISODate); }

/// UTC, as everything that the journal holds.
QDate day_now() { return QDate::fromString(q(now_text()).left(10), Qt::ISODate); }

}  // namespace

ApplicationDialog::ApplicationDialog(Session& session, const workflow::KnownPrograms& known,
                                     const workflow::WaitingFiling* waiting, QWidget* parent)
    : QDialog(parent), session_(session) {
    setWindowTitle(tr("New application"));
    resize(560, 0);
    auto* grid = new QGridLayout(this);
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(gap);
    grid->setColumnStretch(0, 3);
    grid->setColumnStretch(1, 2);
    auto* words = faint(waiting ? tr("Opened by hand for the filing %1. It is reviewed at once.").arg(q(printable(waiting->filing.code)))
                                : tr("Opened by hand, for what came on paper. Filings can be put into it later."));
    words->setWordWrap(true);
    grid->addWidget(words, 0, 0, 1, 2);
    number_ = new QLineEdit;
    received_ = new QDateEdit(day_now());
    received_->setCalendarPopup(true);
    received_->setDisplayFormat(QStringLiteral("yyyy-MM-dd"));
    received_->setMaximumDate(day_now());
    applicant_ = new QLineEdit;
    site_ = new QComboBox;
    site_->setEditable(true);
    site_->setInsertPolicy(QComboBox::NoInsert);
    program_ = new QComboBox;
    program_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    program_->setMinimumContentsLength(24);
    note_ = new QLineEdit;
    who_ = new QLineEdit(q(user_text()));
    grid->addWidget(labelled(tr("&Number"), number_), 1, 0);
    grid->addWidget(labelled(tr("&Received on"), received_), 1, 1);
    grid->addWidget(labelled(tr("&Applicant"), applicant_), 2, 0);
    grid->addWidget(labelled(tr("&Site, its code"), site_), 2, 1);
    grid->addWidget(labelled(tr("&Program"), program_), 3, 0, 1, 2);
    grid->addWidget(labelled(tr("N&ote, for the history and the journal"), note_), 4, 0, 1, 2);
    grid->addWidget(labelled(tr("&Who opens it"), who_), 5, 0);
    trouble_ = new QLabel;
    trouble_->setObjectName(QStringLiteral("warn"));
    trouble_->setWordWrap(true);
    trouble_->setTextFormat(Qt::PlainText);
    grid->addWidget(trouble_, 6, 0, 1, 2);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    open_ = buttons->addButton(tr("Open the application"), QDialogButtonBox::AcceptRole);
    open_->setObjectName(QStringLiteral("main"));
    grid->addWidget(buttons, 7, 0, 1, 2);
    connect(buttons, &QDialogButtonBox::accepted, this, &ApplicationDialog::write);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);

    for (const auto& name : review::built_in_rebate_names()) programs_.push_back(review::built_in_rebate(name));
    programs_.insert(programs_.end(), known.begin(), known.end());
    for (const auto& p : programs_) program_->addItem(core_words(p.title), q(p.name));
    for (const auto& site : store::sites(session.book())) site_->addItem(q(site.code));
    fill(waiting);
    number_->setFocus();
}

void ApplicationDialog::fill(const workflow::WaitingFiling* waiting) {
    site_->setCurrentIndex(-1);
    site_->clearEditText();
    if (!waiting) return;
    filings_ = {waiting->filing.sha256};
    applicant_->setText(q(waiting->reviewed.application.applicant));
    site_->setEditText(q(waiting->filing.site));
    // A filing goes into an application of its own site only.
    site_->setEnabled(false);
    if (waiting->reviewed.review) number_->setText(q(waiting->reviewed.review->application));
    const int program = program_->findData(q(waiting->reviewed.application.program));
    if (program >= 0) program_->setCurrentIndex(program);
    if (const auto came = calendar::parse_date(waiting->filing.at.substr(0, 10))) received_->setDate(day_of(*came));
}

void ApplicationDialog::write() {
    trouble_->clear();
    workflow::OpenedByHand opened;
    opened.number = utf8(number_->text());
    opened.applicant = utf8(applicant_->text());
    opened.site = utf8(site_->currentText());
    opened.program = programs_.at(static_cast<std::size_t>(program_->currentIndex()));
    const QDate day = received_->date();
    opened.received = calendar::make_date(day.year(), static_cast<unsigned>(day.month()), static_cast<unsigned>(day.day()));
    opened.note = utf8(note_->text());
    opened.filings = filings_;
    opened.who = utf8(who_->text());
    opened.at = now_text();
    QString number;
    try {
        number = q(workflow::open_application(session_.book(), opened).code);
    } catch (const std::exception& e) {
        trouble_->setText(error_words(e));
        return;
    }
    session_.say(tr("Application %1 is in the book.").arg(number));
    accept();
    Q_EMIT opened_in_book(number);
}

QString ApplicationDialog::trouble() const { return trouble_->text(); }

}  // namespace evenfall::desktop
