// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/field_sheet/field_sheet.h"

#include "app/desktop/core_words.h"
#include "core/audit/resample.h"
#include "core/audit/sample.h"
#include "core/input_error.h"

#include <algorithm>
#include <utility>

namespace evenfall::desktop {

class SwapCan : public QUndoCommand {
  public:
    SwapCan(FieldSheet& sheet, std::size_t index, SheetCan can, const QString& what)
        : QUndoCommand(what), sheet_(sheet), index_(index), can_(std::move(can)) {}
    void redo() override {
        std::swap(sheet_.data_.cans[index_], can_);
        Q_EMIT sheet_.can_changed(index_);
        sheet_.analyse();
    }
    void undo() override { redo(); }

  private:
    FieldSheet& sheet_;
    std::size_t index_;
    SheetCan can_;
};

class SwapAll : public QUndoCommand {
  public:
    SwapAll(FieldSheet& sheet, SheetData data, const QString& what)
        : QUndoCommand(what), sheet_(sheet), data_(std::move(data)) {}
    void redo() override {
        std::swap(sheet_.data_, data_);
        Q_EMIT sheet_.shape_changed();
        Q_EMIT sheet_.head_changed();
        sheet_.analyse();
    }
    void undo() override { redo(); }

  private:
    FieldSheet& sheet_;
    SheetData data_;
};

FieldSheet::FieldSheet(SheetData data, QObject* parent) : QObject(parent), data_(std::move(data)) {
    pause_.setSingleShot(true);
    pause_.setInterval(150);
    connect(&pause_, &QTimer::timeout, this, &FieldSheet::estimate);
    analyse();
}

FieldSheet::~FieldSheet() {
    if (estimating_.joinable()) estimating_.join();
}

void FieldSheet::set_can(std::size_t index, SheetCan can, const QString& what) {
    if (data_.cans.at(index) == can) return;
    undo_.push(new SwapCan(*this, index, std::move(can), what));
}

void FieldSheet::reshape(const SheetData& shape, const QString& what) {
    SheetData next = shape;
    lay_out(next);
    undo_.push(new SwapAll(*this, std::move(next), what));
}

void FieldSheet::replace(SheetData data) {
    data_ = std::move(data);
    undo_.clear();
    Q_EMIT shape_changed();
    Q_EMIT head_changed();
    analyse();
}

std::size_t FieldSheet::cans_read() const {
    return static_cast<std::size_t>(std::count_if(
        data_.cans.begin(), data_.cans.end(), [](const SheetCan& c) { return c.reading.has_value(); }));
}

void FieldSheet::analyse() {
    ++round_;
    result_.reset();
    interval_.reset();
    problem_.clear();
    pause_.start();
    try {
        result_ = audit::analyse_uniformity(to_catch_test(data_), data_.quarter_rule);
    } catch (const InputError& e) {
        problem_ = core_words(e.issues().front().sentence());
        if (e.issues().size() > 1) {
            problem_ += QLatin1Char(' ') +
                        tr("(and %n more)", nullptr, static_cast<int>(e.issues().size()) - 1);
        }
    }
    Q_EMIT changed();
}

void FieldSheet::estimate() {
    if (!result_) return;
    if (busy_) {
        pause_.start();
        return;
    }
    if (estimating_.joinable()) estimating_.join();
    busy_ = true;
    estimating_ = std::thread([this, test = to_catch_test(data_), rule = data_.quarter_rule, round = round_] {
        std::optional<stats::Interval> found;
        try {
            const audit::Sample sample = audit::sample_of(test, audit::usual_choices());
            auto how = audit::usual_resampling();
            how.threads = 1;
            const auto figures = audit::resample_cans(sample, rule, how);
            found = figures.du_lq.interval(how.level, audit::widening_for("du_lq", sample.cans.size()));
        } catch (const InputError&) {
            // Too few cans for an interval: none is shown.
        }
        QMetaObject::invokeMethod(
            this,
            [this, found, round] {
                busy_ = false;
                if (round != round_ || !found) return;
                interval_ = found;
                Q_EMIT interval_ready();
            },
            Qt::QueuedConnection);
    });
}

}  // namespace evenfall::desktop
