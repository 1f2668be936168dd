// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/system_words.h"

#include <cerrno>
#include <cstring>

namespace evenfall::exchange {

Sentence system_words(int error) {
    switch (error) {
        case ENOENT: return phrase("exchange", "No such file or directory");
        case EACCES: return phrase("exchange", "Permission denied");
        case EIO: return phrase("exchange", "Input/output error");
        case ENOSPC: return phrase("exchange", "No space left on device");
        default: return std::strerror(error);
    }
}

}  // namespace evenfall::exchange
