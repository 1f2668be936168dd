// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/sample.h"
#include "core/units/ratio.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// Scheduling coefficient: mean depth over the mean depth of the driest spot. The literature means
/// different things by "spot", so every result names its definition:
///
///     driest window  a contiguous window that covers a given share of the ground (1, 2, 5, 10 % are
///                    usual) and slides over it; Colorado Water Conservation Board, hydrologic
///                    models inventory, p. I-16
///     driest can     the single lowest catch; New Mexico State University, Soils 456, problem 5.10
///     low quarter    the driest quarter of the cans wherever they are, 1 / DU_LQ; what Dong, Kelley
///                    & Anderson 2023 print
///
/// A can stands for its rectangle of the ground. The window has the shape of the ground and slides
/// without steps: because the depth is constant inside each rectangle, the driest place is one where
/// window edges lie on rectangle edges, so it is found exactly. On a line the window is a stretch.
/// At irregular positions or in a grid with gaps it is the driest group of a can with its nearest
/// neighbours that together stand for the share; the last one counts in part.
///
/// Tests: tests/audit/scheduling_coefficient_test.cpp
namespace evenfall::audit {

enum class DrySpot : int { window = 1, can = 2, low_quarter = 3 };
std::string_view text_of(DrySpot spot);

struct SchedulingResult {
    DrySpot spot;
    std::optional<double> window_share;  ///< of the ground; absent for the low quarter
    std::optional<units::SchedulingCoefficient> value;  ///< absent when the spot stayed dry
    units::Depth spot_mean;
    std::string where;  ///< "x 3.0 to 9.0 m, y ..." or the can's label
    std::string how;    ///< "sliding window", "can with its nearest neighbours" ...
};

/// A window of given size in cells over a full grid, the first row at the top: the lowest mean and
/// the place of its upper left corner, in cells.
struct GridWindow {
    double mean;
    double column;
    double row;
};
/// @pre 0 < width <= columns, 0 < height <= rows, cells.size() == columns x rows
/// @param wrap  the pattern repeats beyond its edges
GridWindow driest_window(std::span<const double> cells, std::size_t columns, double width,
                         double height, bool wrap);

/// Driest can, low quarter, and a window for each share. Without positions no windows.
/// @throws InputError for a share outside (0, 1)
std::vector<SchedulingResult> scheduling_coefficients(const Sample& sample, units::LowQuarterDu du_lq,
                                                      std::span<const double> shares);

/// 1, 2, 5 and 10 %, from schemas/reference/scheduling_windows.csv.
std::vector<double> usual_window_shares();

}  // namespace evenfall::audit
