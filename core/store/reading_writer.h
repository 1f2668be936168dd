// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/meter/meter.h"
#include "core/store/book.h"

#include <cstdint>
#include <memory>
#include <optional>

namespace evenfall::store {

/// Adds readings by the million. Use within a Transaction, and hand readings over sorted by meter
/// and time where possible: rows that land side by side in the tree cost a fraction of scattered
/// ones. Tests: tests/exchange/import_test.cpp; speed: tests/bench/import_bench.cpp
class ReadingWriter {
  public:
    enum class Outcome { added, unchanged, superseded, conflict, replaced };

    ReadingWriter(Book& book, std::optional<std::int64_t> import);
    ~ReadingWriter();
    ReadingWriter(const ReadingWriter&) = delete;
    ReadingWriter& operator=(const ReadingWriter&) = delete;

    /// @param meter    id from meter_id()
    /// @param correct  a value other than the latest revision's becomes the next one; else it is
    ///   only reported
    /// unchanged: the latest revision has this value and kind. superseded: an earlier one has, and
    ///   was corrected since. conflict: the book never had it. For both see in_book().
    Outcome add(std::int64_t meter, const meter::Reading& reading, bool correct);

    /// The book's own reading that the last conflict or replacement was about.
    const meter::Reading& in_book() const;

  private:
    struct Impl;
    std::unique_ptr<Impl> impl_;
};

}  // namespace evenfall::store
