// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/session.h"

#include <QWidget>

class QBoxLayout;
class QFrame;
class QHBoxLayout;
class QLabel;
class QPrinter;
class QPushButton;
class QUndoStack;
class QVBoxLayout;

namespace evenfall::desktop {

/// One page of the paper trail: a title, one sentence about it, actions at its right, a body.
class Page : public QWidget {
    Q_OBJECT

  public:
    Page(Session& session, const QString& title, const QString& sentence, QWidget* parent = nullptr);

    /// The steps that undo and redo work on while the page is shown; null when it has none.
    virtual QUndoStack* undo_stack() { return nullptr; }
    /// Whether what the page holds may go; asks where it would be lost.
    virtual bool may_close() { return true; }
    virtual void units_changed() {}
    virtual void book_changed() {}
    virtual void theme_changed() { update(); }
    /// Whether there is anything to print now.
    virtual bool can_print() const { return false; }
    /// Draws what the page shows on paper; false when it has nothing to print.
    virtual bool print(QPrinter&) { return false; }
    /// Puts what is chosen on the page on the clipboard; false when there is nothing.
    virtual bool copy() { return false; }

  protected:
    Session& session() { return session_; }
    QVBoxLayout* body() { return body_; }
    QPushButton* add_action(const QString& text, bool main = false);
    void set_sentence(const QString& sentence);

  private:
    Session& session_;
    QVBoxLayout* body_;
    QHBoxLayout* actions_;
    QLabel* sentence_;
};

/// A white frame with a margin; `layout` becomes its content.
QFrame* card(QLayout* layout);
QLabel* heading(const QString& text);
QLabel* faint(const QString& text);
/// A label above a field, tied to it for the keyboard and for screen readers.
QWidget* labelled(const QString& label, QWidget* field);
void copy_text(const QString& text);

}  // namespace evenfall::desktop
