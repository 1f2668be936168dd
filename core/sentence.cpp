// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sentence.h"

#include <ostream>

namespace evenfall {

void Sentence::put_together() {
    if (phrase_.form == nullptr) {
        for (std::size_t i = 0; i < values_.size(); ++i) english_ += (i == 0 ? "" : between_) + values_[i].english_;
        return;
    }
    const std::string_view form = phrase_.english();
    for (std::size_t i = 0; i < form.size(); ++i) {
        const bool place = form[i] == '%' && i + 1 < form.size() && form[i + 1] >= '1' && form[i + 1] <= '9';
        if (place) {
            english_ += values_[static_cast<std::size_t>(form[++i] - '1')].english_;
        } else {
            english_ += form[i];
        }
    }
}

Sentence Sentence::joined(std::vector<Sentence> parts, std::string_view between) {
    Sentence all;
    all.between_ = between;
    all.values_ = std::move(parts);
    all.put_together();
    return all;
}

Sentence Sentence::with(std::vector<Sentence> values) const {
    Sentence other;
    other.phrase_ = phrase_;
    other.between_ = between_;
    other.values_ = std::move(values);
    other.put_together();
    return other;
}

std::ostream& operator<<(std::ostream& out, const Sentence& sentence) { return out << sentence.english(); }

}  // namespace evenfall
