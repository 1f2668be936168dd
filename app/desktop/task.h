// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>
#include <atomic>
#include <functional>
#include <memory>
#include <thread>

/// Long work beside the window, with progress and a way to stop it.
/// Tests: tests/app/desktop_session_test.cpp
namespace evenfall::desktop {

/// Thrown by TaskContext::check() when the user has stopped the work.
struct TaskStopped {};

/// What the work sees. Used from its own thread.
class TaskContext {
  public:
    /// @throws TaskStopped when the user has asked to stop
    void check() const;
    bool stopped() const { return stop_->load(); }
    /// Share done, 0 to 1, and what is being done. Cheap enough to call for each row.
    void report(double share, const QString& what = {}) const;

  private:
    friend class Task;
    std::shared_ptr<std::atomic<bool>> stop_ = std::make_shared<std::atomic<bool>>(false);
    std::function<void(double, const QString&)> sink_;
};

/// One piece of work. The functions given run: `work` in a thread of its own, all others in the
/// thread that made the task.
class Task : public QObject {
    Q_OBJECT

  public:
    /// @param yields  gives way to other work that wants to start, see Session::start
    explicit Task(QString name, bool yields, QObject* parent = nullptr);
    /// Asks the work to stop and waits for it.
    ~Task() override;

    void start(std::function<void(const TaskContext&)> work);
    void stop();
    bool running() const { return running_; }
    bool yields() const { return yields_; }
    const QString& name() const { return name_; }

  Q_SIGNALS:
    void progressed(double share, const QString& what);
    /// The work ended by itself. `error` is empty when it went well.
    void finished(const QString& error);
    /// The user stopped it; what it did until then is undone by the work itself.
    void stopped_by_user();

  private:
    QString name_;
    bool yields_;
    TaskContext context_;
    std::thread thread_;
    bool running_ = false;
};

}  // namespace evenfall::desktop
