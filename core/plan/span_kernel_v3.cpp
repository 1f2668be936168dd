// SPDX-License-Identifier: GPL-3.0-or-later
// Compiled for x86-64-v3; only called where the processor has it.
#include "core/plan/span_kernel.h"

namespace evenfall::plan {

#include "core/plan/span_loops.inc"

const SpanKernel& span_kernel_v3();

const SpanKernel& span_kernel_v3() {
    static constexpr SpanKernel kernel{add_upright_loops, add_slanted_loops, count_loop, "x86-64-v3"};
    return kernel;
}

}  // namespace evenfall::plan
