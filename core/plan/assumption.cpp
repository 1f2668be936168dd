// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/assumption.h"

namespace evenfall::plan {

Sentence kept_assumption(const std::string& text) {
    for (const Phrase& known : {full_circles_assumed, cones_assumed}) {
        if (text == known.english()) return known;
    }
    return text;
}

}  // namespace evenfall::plan
