// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/session.h"
#include "app/desktop/task.h"
#include "core/store/book.h"

#include <QObject>
#include <QString>
#include <functional>
#include <memory>
#include <optional>
#include <utility>

/// A question of a page to the book, answered beside the window.
/// Tests: tests/app/desktop_question_test.cpp
namespace evenfall::desktop {

/// One at a time. What is asked while an answer is being worked out is asked when it is there, and
/// only the last of it; the answer that came meanwhile is of no use then.
class BackgroundQuestion : public QObject {
    Q_OBJECT

  public:
    /// @param ask  puts the question as things stand by then, through put()
    BackgroundQuestion(Session& session, std::function<void()> ask);

    /// Whether a question can be put now. When not, `ask` is called as soon as one can.
    bool free();
    /// The answer that is being worked out is not wanted any more.
    void forget();
    /// @param name  of the work, for the window
    /// @param words  said to the reader meanwhile
    /// @param work  run in a thread of its own, with a book of its own: one connection must not be shared
    /// @param take  gets the answer, or nothing and why
    template <class Answer>
    void put(const QString& name, const QString& words, std::function<Answer(const store::Book&)> work,
             std::function<void(std::optional<Answer>, const QString& error)> take);

  Q_SIGNALS:
    /// What is going on, in words.
    void said(const QString& words);

  private:
    void start(const QString& name, const QString& words, std::function<void(const store::Book&)> work,
               std::function<void(const QString& error)> take);
    void ended(const std::function<void(const QString&)>& take, const QString& error);

    Session& session_;
    std::function<void()> ask_;
    bool asking_ = false;
    bool again_ = false;
    bool unwanted_ = false;
};

template <class Answer>
void BackgroundQuestion::put(const QString& name, const QString& words, std::function<Answer(const store::Book&)> work,
                             std::function<void(std::optional<Answer>, const QString& error)> take) {
    auto found = std::make_shared<std::optional<Answer>>();
    start(
        name, words, [found, work = std::move(work)](const store::Book& book) { *found = work(book); },
        [found, take = std::move(take)](const QString& error) { take(std::move(*found), error); });
}

}  // namespace evenfall::desktop
