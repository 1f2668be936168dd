// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/task.h"

#include "app/desktop/core_words.h"

#include <QMetaObject>
#include <exception>
#include <mutex>
#include <utility>

namespace evenfall::desktop {

void TaskContext::check() const {
    if (stopped()) throw TaskStopped{};
}

void TaskContext::report(double share, const QString& what) const {
    if (sink_) sink_(share, what);
}

Task::Task(QString name, bool yields, QObject* parent)
    : QObject(parent), name_(std::move(name)), yields_(yields) {}

Task::~Task() {
    stop();
    if (thread_.joinable()) thread_.join();
}

void Task::stop() { context_.stop_->store(true); }

void Task::start(std::function<void(const TaskContext&)> work) {
    running_ = true;
    // Only the newest progress is of interest: while one is on its way no other is sent.
    auto pending = std::make_shared<std::atomic<bool>>(false);
    context_.sink_ = [this, pending](double share, const QString& what) {
        if (pending->exchange(true)) return;
        QMetaObject::invokeMethod(
            this,
            [this, pending, share, what] {
                pending->store(false);
                Q_EMIT progressed(share, what);
            },
            Qt::QueuedConnection);
    };
    thread_ = std::thread([this, work = std::move(work)] {
        QString error;
        bool by_user = false;
        try {
            work(context_);
        } catch (const TaskStopped&) {
            by_user = true;
        } catch (const std::exception& e) {
            error = error_words(e);
        }
        QMetaObject::invokeMethod(
            this,
            [this, error, by_user] {
                if (thread_.joinable()) thread_.join();
                running_ = false;
                if (by_user) {
                    Q_EMIT stopped_by_user();
                } else {
                    Q_EMIT finished(error);
                }
            },
            Qt::QueuedConnection);
    });
}

}  // namespace evenfall::desktop
