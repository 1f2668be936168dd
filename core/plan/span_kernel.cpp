// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/span_kernel.h"

namespace evenfall::plan {

#include "core/plan/span_loops.inc"

#ifdef EVENFALL_SPAN_V3
const SpanKernel& span_kernel_v3();
#endif

const SpanKernel& plain_span_kernel() {
    static constexpr SpanKernel kernel{add_upright_loops, add_slanted_loops, count_loop, "plain"};
    return kernel;
}

const SpanKernel& span_kernel() {
#ifdef EVENFALL_SPAN_V3
    // Everything of x86-64-v3 that the compiler may use in these loops.
    static const bool wide = __builtin_cpu_supports("avx2") && __builtin_cpu_supports("fma") &&
                             __builtin_cpu_supports("bmi") && __builtin_cpu_supports("bmi2") &&
                             __builtin_cpu_supports("popcnt");
    if (wide) return span_kernel_v3();
#endif
    return plain_span_kernel();
}

}  // namespace evenfall::plan
