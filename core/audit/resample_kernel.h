// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/quarter_rule.h"
#include "core/audit/sample.h"

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace evenfall::audit {

/// The figures of one draw; not finite where undefined (a draw of dry cans only).
struct DrawnFigures {
    double mean;
    double du_lq;
    double du_lh;
    double cu;
    double driest_can;
};

/// Works out the figures of a draw from how often each can was taken.
/// Tests: tests/audit/resample_test.cpp compares it with analyse_sample on repeated cans.
class ResampleKernel {
  public:
    ResampleKernel(const Sample& sample, QuarterRule rule);

    std::size_t size() const { return value_.size(); }
    /// Place in `times` of the can at that place in the sample.
    std::span<const std::size_t> rank() const { return rank_; }

    /// @param times  how often each can was taken, driest first
    /// @param draws  their sum, at least one
    DrawnFigures figures(std::span<const std::int32_t> times, std::size_t draws) const;

  private:
    DrawnFigures equal(std::span<const std::int32_t> times, std::size_t draws) const;
    DrawnFigures weighted(std::span<const std::int32_t> times) const;

    QuarterRule rule_;
    bool equal_weights_;
    std::vector<double> value_;
    std::vector<double> weight_;
    std::vector<std::size_t> rank_;
};

}  // namespace evenfall::audit
