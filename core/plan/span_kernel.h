// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The inner loops of the rate field: adding one head to a run of cells in one row.
///
/// Two loops through a short buffer, first all distances, then all table look-ups: only this form
/// is vectorised by the compiler, and it gives the same bits as one loop. Compiled twice from one
/// source, for any processor and for those with 256-bit vectors (x86-64-v3); the choice is made
/// when the program runs. Both give the same bits: a float square root is correctly rounded and
/// contraction is off. This file and its source include no header with inline functions, since the
/// linker may keep the copy that only newer processors can run.
/// Tests: tests/plan/rate_field_test.cpp. Measured in tests/bench/overlap_bench.cpp.
namespace evenfall::plan {

/// A head as the loops see it. Distances in table steps; `steps` of them are the reach.
struct SpanHead {
    float fraction;      ///< of the column in which the head's centre lies
    float scale;         ///< table values times this are mm/h
    const float* table;  ///< steps + 2 values, the last ones zero
};

/// The row of cells relative to a head: the pattern offset of cell k is
///     (u0 + ux (offset + k - fraction), v0 + vx (offset + k - fraction)).
/// In still air u0 = 0 and vx = 0; then add_upright is used.
struct SpanRow {
    float* cells;   ///< of the first cell of the run
    int offset;     ///< its column minus the head's column
    int count;
    float ux, u0, vx, v0;
};

struct SpanKernel {
    void (*add_upright)(const SpanHead&, const SpanRow&);
    void (*add_slanted)(const SpanHead&, const SpanRow&);
    void (*count)(unsigned short* cells, int count);
    const char* name;
};

/// The one that suits this processor.
const SpanKernel& span_kernel();
/// The one that runs everywhere; for comparison.
const SpanKernel& plain_span_kernel();

/// Distance steps of a profile table.
inline constexpr int table_steps = 256;

}  // namespace evenfall::plan
