// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

/// The bare loops that the rate field is measured against: full circles of one radius on a square
/// raster, one table, nothing else. Both fill `cells` (columns x rows) and give the same field.
namespace evenfall::bench {

struct BareHead {
    float x, y;  ///< in cells
};

struct BareJob {
    std::vector<BareHead> heads;  ///< sorted by y
    float radius = 0.0F;          ///< in cells
    std::vector<float> table;     ///< 41 values from the head to the radius, then one zero
    int columns = 0;
    int rows = 0;
};

/// Box, square root, look-up, branch for each cell.
void naive_overlap(const BareJob& job, float* cells, int threads);
/// Row spans, two loops through a buffer.
void span_overlap(const BareJob& job, float* cells, int threads);

}  // namespace evenfall::bench
