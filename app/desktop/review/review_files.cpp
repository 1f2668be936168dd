// SPDX-License-Identifier: GPL-3.0-or-later
// Files of the review page: filings that come in, memo and letter that go out.
#include "app/desktop/clock.h"
#include "app/desktop/core_words.h"
#include "app/desktop/review/add_filings_task.h"
#include "app/desktop/review/review_page.h"
#include "app/desktop/task.h"
#include "core/input_error.h"

#include <QApplication>
#include <QDir>
#include <memory>

namespace evenfall::desktop {

void ReviewPage::add_filings(const QStringList& files) {
    if (files.isEmpty() || !session().can_write()) return;
    Task* task = session().start(tr("Reviewing the filings"));
    if (!task) return;
    AddFilingsOrder order;
    order.book = session().book_path().toStdString();
    for (const QString& file : files) order.files.emplace_back(file.toStdString());
    order.program = queue_panel_->program();
    order.known = queue_panel_->sources();
    order.at = now_text();
    order.who = user_text();
    auto found = std::make_shared<AddedFilings>();
    connect(task, &Task::stopped_by_user, this, [this] { queue_panel_->say(tr("Stopped; the book is as it was."), false); });
    connect(task, &Task::finished, this, [this, found](const QString& error) {
        reload();
        if (!error.isEmpty()) {
            queue_panel_->say(error, true);
        } else {
            QStringList words{tr("%1 new in the book, %2 refused.").arg(found->added).arg(found->refused)};
            for (const auto& item : found->items) {
                const QString file = q(printable(item.file));
                if (!item.review) {
                    words << file + QStringLiteral(": ") + core_words(item.refused);
                } else if (item.review->application.empty()) {
                    words << tr("%1 carries no application number; it stands below the applications.").arg(file);
                } else if (item.review->program.empty()) {
                    words << tr("%1 names no program that is known here; it stands below the applications.").arg(file);
                }
            }
            queue_panel_->say(words.join(QLatin1Char('\n')), found->refused > 0);
        }
        Q_EMIT filings_added();
    });
    task->start([found, order](const TaskContext& context) { *found = desktop::add_filings(order, context); });
}

void ReviewPage::write_papers(const QString& folder, const std::vector<std::string>& formats) {
    const auto& c = shown_case();
    if (!c || !c->review) return;
    Task* task = session().start(tr("Writing memo and letter"));
    if (!task) return;
    const workflow::ReviewPapers papers{folder.toStdString(), formats, session().units(), now_text(),
                                        "Evenfall " + utf8(QApplication::applicationVersion()), print_program_};
    connect(task, &Task::finished, this, [this, folder](const QString& error) {
        queue_panel_->say(error.isEmpty() ? tr("Memo and letter are in %1.").arg(QDir::toNativeSeparators(folder)) : error, !error.isEmpty());
        Q_EMIT papers_written();
    });
    task->start([papers, review = *c->review, letter = workflow::case_letter(*c)](const TaskContext& context) {
        context.check();
        workflow::write_review_papers(review, letter, papers);
    });
}

}  // namespace evenfall::desktop
