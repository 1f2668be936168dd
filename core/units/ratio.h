// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"

#include <compare>

/// Dimensionless figures that must not be mixed up: a uniformity is not an efficiency.
/// Each has a tag of its own; to use one as another takes a visible `.value()`.
/// Tests: tests/units/ratio_test.cpp
namespace evenfall::units {

/// Throws InputError when `value` is not finite or lies outside [low, high].
double checked_ratio(double value, double low, double high, Phrase name);

/// A share in [0, 1]. `Tag::name` is used in messages.
template <class Tag>
class Fraction {
  public:
    /// @throws InputError outside [0, 1] or not finite
    static Fraction of(double value) { return Fraction(checked_ratio(value, 0.0, 1.0, Tag::name)); }
    /// @throws InputError outside [0, 100] or not finite
    static Fraction of_percent(double value) { return of(value / 100.0); }
    double value() const { return value_; }
    double percent() const { return value_ * 100.0; }
    auto operator<=>(const Fraction&) const = default;

  private:
    explicit Fraction(double v) : value_(v) {}
    double value_;
};

/// A finite figure with no bounds; Christiansen's coefficient can be negative.
template <class Tag>
class Ratio {
  public:
    /// @throws InputError when not finite
    static Ratio of(double value) { return Ratio(checked_ratio(value, -1e300, 1e300, Tag::name)); }
    double value() const { return value_; }
    double percent() const { return value_ * 100.0; }
    auto operator<=>(const Ratio&) const = default;

  private:
    explicit Ratio(double v) : value_(v) {}
    double value_;
};

struct LowQuarterTag {
    static constexpr Phrase name = phrase("units", "low-quarter distribution uniformity");
};
struct LowHalfTag {
    static constexpr Phrase name = phrase("units", "low-half distribution uniformity");
};
struct ChristiansenTag {
    static constexpr Phrase name = phrase("units", "Christiansen coefficient");
};
struct VariationTag {
    static constexpr Phrase name = phrase("units", "coefficient of variation");
};
struct StatisticalTag {
    static constexpr Phrase name = phrase("units", "statistical uniformity");
};
struct EfficiencyTag {
    static constexpr Phrase name = phrase("units", "irrigation efficiency");
};
struct CoefficientTag {
    static constexpr Phrase name = phrase("units", "landscape coefficient");
};
struct MultiplierTag {
    static constexpr Phrase name = phrase("units", "run-time multiplier");
};
struct SchedulingTag {
    static constexpr Phrase name = phrase("units", "scheduling coefficient");
};
struct ShareTag {
    static constexpr Phrase name = phrase("units", "share");
};

using LowQuarterDu = Fraction<LowQuarterTag>;    ///< DU_LQ
using LowHalfDu = Fraction<LowHalfTag>;          ///< DU_LH
using ChristiansenCu = Ratio<ChristiansenTag>;   ///< CU; may be negative
using Variation = Ratio<VariationTag>;           ///< CV
using StatisticalUniformity = Ratio<StatisticalTag>;  ///< 1 - CV
using Efficiency = Fraction<EfficiencyTag>;
using LandscapeCoefficient = Ratio<CoefficientTag>;
using Multiplier = Ratio<MultiplierTag>;         ///< run-time multiplier, 1 or more
using SchedulingCoefficient = Ratio<SchedulingTag>;
using Share = Fraction<ShareTag>;

}  // namespace evenfall::units
