// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/field_sheet/sheet_data.h"
#include "core/audit/uniformity.h"
#include "core/stats/bca.h"

#include <QObject>
#include <QString>
#include <QTimer>
#include <QUndoStack>
#include <optional>
#include <thread>
#include <type_traits>
#include <utility>

/// The field sheet as a document: its data, its undo steps, and what the core makes of it.
/// Every edit is one command that swaps an old value with a new one, so that undo and redo are the
/// same code.
/// Tests: tests/app/desktop_field_sheet_test.cpp
namespace evenfall::desktop {

class FieldSheet : public QObject {
    Q_OBJECT

  public:
    explicit FieldSheet(SheetData data, QObject* parent = nullptr);
    /// Waits for the interval that is being worked out.
    ~FieldSheet() override;

    const SheetData& data() const { return data_; }
    QUndoStack& undo_stack() { return undo_; }

    /// One can; `what` names the step in the undo list.
    void set_can(std::size_t index, SheetCan can, const QString& what);
    /// One field of the sheet's head. The same value again is no step.
    template <class T>
    void set(T SheetData::* field, T value, const QString& what);
    /// Layout, rows, columns or spacing: lays the cans out anew, in one step.
    void reshape(const SheetData& shape, const QString& what);
    /// Another sheet; its past is forgotten.
    void replace(SheetData data);

    /// What the core makes of the cans read so far; empty with problem() set when it cannot.
    const std::optional<audit::UniformityResult>& result() const { return result_; }
    const QString& problem() const { return problem_; }
    std::size_t cans_read() const;
    /// How far DU of the low quarter can be trusted; worked out beside the window a moment
    /// after the last entry, so that typing never waits for it. Empty until then.
    const std::optional<stats::Interval>& interval() const { return interval_; }

  Q_SIGNALS:
    void can_changed(std::size_t index);
    void head_changed();
    void shape_changed();
    /// After any of the above, when result() is up to date.
    void changed();
    void interval_ready();

  private:
    template <class T>
    friend class SwapField;
    friend class SwapCan;
    friend class SwapAll;
    void analyse();
    void estimate();

    SheetData data_;
    QUndoStack undo_;
    std::optional<audit::UniformityResult> result_;
    QString problem_;
    std::optional<stats::Interval> interval_;
    QTimer pause_;
    std::thread estimating_;
    bool busy_ = false;  ///< estimating_ has not reported yet
    int round_ = 0;      ///< of analyses: an interval of an earlier one is of no use
};

/// Swaps one field of the head. The step in the undo list carries the field's name.
template <class T>
class SwapField : public QUndoCommand {
  public:
    SwapField(FieldSheet& sheet, T SheetData::* field, T value, const QString& what)
        : QUndoCommand(what), sheet_(sheet), field_(field), value_(std::move(value)) {}
    void redo() override {
        std::swap(sheet_.data_.*field_, value_);
        Q_EMIT sheet_.head_changed();
        sheet_.analyse();
    }
    void undo() override { redo(); }
    /// Steps that follow each other while the same text is typed are one; value_ then still holds
    /// the text from before the first of them.
    int id() const override { return std::is_same_v<T, std::string> ? 1 : -1; }
    bool mergeWith(const QUndoCommand* next) override {
        const auto* other = dynamic_cast<const SwapField<T>*>(next);
        return other && other->field_ == field_;
    }

  private:
    FieldSheet& sheet_;
    T SheetData::* field_;
    T value_;
};

template <class T>
void FieldSheet::set(T SheetData::* field, T value, const QString& what) {
    if constexpr (requires { value == value; }) {
        if (data_.*field == value) return;
    }
    undo_.push(new SwapField<T>(*this, field, std::move(value), what));
}

}  // namespace evenfall::desktop
