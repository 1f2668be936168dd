// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"

#include <string_view>
#include <vector>

/// How the rate of a head falls off from the head to the end of its throw.
///
/// A profile p(u) is piecewise linear in u = r / R from 0 to 1 and zero beyond. Only its shape
/// counts. A head of flow q, radius R and arc a (degrees) applies at distance r inside its arc
///     rate(r) = q p(r / R) / ( (a / 360) R^2 V ),   V = integral 0..1 of 2 pi u p(u) du
/// so that the field integrates to q: a quarter circle applies four times the rate of a full
/// circle of equal flow.
///   cone: p = 1 - u, V = pi / 3.   flat: p = 1, V = pi.
///   measured: the readings of one leg; before the first reading the rate is that of the first,
///   after the last it is zero; the distance of the last reading is laid on R.
/// Source: conservation of volume (derived). Part-circle rule seen in teaching slides "Sprinkler
/// Precipitation Rates". Tests: tests/plan/profile_test.cpp
namespace evenfall::plan {

class RadialProfile {
  public:
    struct Knot {
        double u = 0.0;
        double p = 0.0;
    };
    static RadialProfile cone();
    static RadialProfile flat();
    /// @throws InputError  fewer than two readings, distances not rising, a rate below zero, or no
    ///                     water at all
    static RadialProfile measured(const MeasuredLeg& leg);

    /// p(u); zero beyond 1. @pre u >= 0
    double at(double u) const;
    /// V, exact for the straight pieces.
    double volume() const { return volume_; }
    const std::vector<Knot>& knots() const { return knots_; }

  private:
    explicit RadialProfile(std::vector<Knot> knots);
    std::vector<Knot> knots_;  ///< first at u = 0, last at u = 1
    double volume_ = 0.0;
};

/// Integral from a to b of 2 pi u p(u) du where p runs straight from pa to pb.
double ring_volume(double a, double pa, double b, double pb);

}  // namespace evenfall::plan
