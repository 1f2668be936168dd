// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"
#include "core/store/book.h"

#include <ostream>

namespace evenfall::cli {

int run(const NewOptions& o, Streams& streams) {
    store::Book::create(o.book);
    streams.out << "Made the empty book " << o.book << ".\n";
    return done;
}

}  // namespace evenfall::cli
