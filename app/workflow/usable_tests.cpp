// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/usable_tests.h"

#include "core/audit/uniformity.h"
#include "core/input_error.h"

#include <utility>

namespace evenfall::workflow {

UsableTests usable_tests(std::vector<audit::CatchTest> all, audit::QuarterRule rule) {
    UsableTests out;
    for (audit::CatchTest& test : all) {
        try {
            static_cast<void>(audit::analyse_uniformity(test, rule));
        } catch (const InputError& e) {
            const Issue& first = e.issues().front();
            out.left_out.push_back({{phrase("workflow", "catch test %1"), test.code},
                                    {phrase("workflow", "Not used, because it cannot be worked out: %1."),
                                     Issue{{}, first.found, first.expected}.sentence()}});
            continue;
        }
        out.tests.push_back(std::move(test));
    }
    return out;
}

}  // namespace evenfall::workflow
