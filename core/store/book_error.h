// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <stdexcept>

namespace evenfall::store {

/// A book that cannot be used: missing, not ours, newer than this program, damaged, in use or not
/// writable. The message is a whole sentence for the user; the command line exits with status 4.
class BookError : public std::runtime_error {
  public:
    using std::runtime_error::runtime_error;
};

}  // namespace evenfall::store
