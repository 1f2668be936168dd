// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"

#include <memory>
#include <string>
#include <vector>

/// Plane geometry of outlines, by Boost.Geometry (kept in outline.cpp for compile time).
/// Coordinates are in whatever unit the caller uses throughout.
/// Tests: tests/plan/profile_test.cpp
namespace evenfall::plan {

struct Box {
    double x0 = 0.0, y0 = 0.0, x1 = 0.0, y1 = 0.0;
};

/// Why a polygon cannot be used ("crosses itself near 12, 7"), or empty when it is sound: at least
/// three points per ring, no ring that crosses itself, holes inside, some area.
Sentence outline_fault(const Polygon& polygon);

/// Area with the holes taken off.
double outline_area(const Polygon& polygon);

/// Smallest box along the axes. @pre at least one point
Box box_of(const std::vector<Polygon>& polygons);

/// Answers "is this point on the ground?" for many points, in time that hardly grows with the
/// number of corners.
class Ground {
  public:
    /// @param polygons  sound ones, see outline_fault
    explicit Ground(const std::vector<Polygon>& polygons);
    ~Ground();
    Ground(const Ground&) = delete;
    Ground& operator=(const Ground&) = delete;

    /// Inside one of the polygons and not in its holes, or no farther than `slack` from a line.
    bool covers(Point p, double slack) const;

  private:
    struct Index;
    std::unique_ptr<Index> index_;
};

}  // namespace evenfall::plan
