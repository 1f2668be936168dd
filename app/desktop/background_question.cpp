// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/background_question.h"

namespace evenfall::desktop {

BackgroundQuestion::BackgroundQuestion(Session& session, std::function<void()> ask)
    : session_(session), ask_(std::move(ask)) {}

bool BackgroundQuestion::free() {
    if (!asking_) return true;
    again_ = true;
    return false;
}

void BackgroundQuestion::forget() {
    again_ = false;
    unwanted_ = asking_;
}

void BackgroundQuestion::start(const QString& name, const QString& words, std::function<void(const store::Book&)> work,
                               std::function<void(const QString& error)> take) {
    const std::string path = session_.book_path().toStdString();
    Task* task = session_.start(name);
    if (!task) {
        Q_EMIT said(tr("Other work is going on; choose again when it has ended."));
        return;
    }
    asking_ = true;
    unwanted_ = false;
    Q_EMIT said(words);
    connect(task, &Task::stopped_by_user, this, [this] {
        asking_ = again_ = false;
        Q_EMIT said(tr("Stopped."));
    });
    connect(task, &Task::finished, this, [this, take = std::move(take)](const QString& error) { ended(take, error); });
    task->start([path, work = std::move(work)](const TaskContext& context) {
        const auto book = store::Book::open(path, store::Access::read_only);
        context.check();
        work(book);
        context.check();
    });
}

void BackgroundQuestion::ended(const std::function<void(const QString&)>& take, const QString& error) {
    asking_ = false;
    if (std::exchange(again_, false)) {
        ask_();
    } else if (!std::exchange(unwanted_, false)) {
        take(error);
    }
}

}  // namespace evenfall::desktop
