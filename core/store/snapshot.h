// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book.h"

namespace evenfall::store {

/// While it lives, the book is read as it was at the first look, whatever another program writes:
/// for what is read in many steps and must agree with itself. Tests: tests/exchange/export_test.cpp
class Snapshot {
  public:
    explicit Snapshot(const Book& book);
    ~Snapshot();  ///< never throws
    Snapshot(const Snapshot&) = delete;
    Snapshot& operator=(const Snapshot&) = delete;

  private:
    const Book& book_;
};

}  // namespace evenfall::store
