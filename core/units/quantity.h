// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>

/// Units are types. A quantity is one double in SI, tagged with its dimension and, where two
/// things of one dimension must not mix (a distance and a depth of water), with a kind.
/// Numbers come in as `16.0 * inch` and go out as `depth.in(inch)`; there is no silent way.
/// Only the products in the closed list below exist: whatever is not there does not compile.
/// Tests: tests/units/quantity_test.cpp and tests/units/refused (calls that must not compile).
namespace evenfall::units {

/// @tparam L,T,M  powers of metre, second and kilogram
/// @tparam Kind   void, or a tag that keeps this quantity apart from others of its dimension
template <int L, int T, int M, class Kind = void>
class Quantity {
  public:
    constexpr Quantity() = default;
    static constexpr Quantity from_si(double value) { return Quantity(value); }
    constexpr double si() const { return value_; }

    constexpr double in(Quantity unit) const { return value_ / unit.value_; }

    constexpr auto operator<=>(const Quantity&) const = default;
    constexpr Quantity operator-() const { return Quantity(-value_); }
    constexpr Quantity& operator+=(Quantity o) { value_ += o.value_; return *this; }
    constexpr Quantity& operator-=(Quantity o) { value_ -= o.value_; return *this; }
    constexpr Quantity& operator*=(double k) { value_ *= k; return *this; }
    constexpr Quantity& operator/=(double k) { value_ /= k; return *this; }
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return a += b; }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return a -= b; }
    friend constexpr Quantity operator*(Quantity a, double k) { return a *= k; }
    friend constexpr Quantity operator*(double k, Quantity a) { return a *= k; }
    friend constexpr Quantity operator/(Quantity a, double k) { return a /= k; }
    /// A plain ratio of like quantities.
    friend constexpr double operator/(Quantity a, Quantity b) { return a.value_ / b.value_; }

  private:
    explicit constexpr Quantity(double v) : value_(v) {}
    double value_ = 0.0;
};

struct WaterDepth;  ///< kind: water as a depth over ground, never a distance

using Length = Quantity<1, 0, 0>;
using Area = Quantity<2, 0, 0>;
using Volume = Quantity<3, 0, 0>;
using Duration = Quantity<0, 1, 0>;
using Speed = Quantity<1, -1, 0>;
using Flow = Quantity<3, -1, 0>;
using Pressure = Quantity<-1, -2, 1>;
using Energy = Quantity<2, -2, 1>;
using Insolation = Quantity<0, -2, 1>;  ///< energy per area over a stated period (day or hour)
using Depth = Quantity<1, 0, 0, WaterDepth>;
using Rate = Quantity<1, -1, 0, WaterDepth>;  ///< application or infiltration rate

// The closed list of products.
constexpr Area operator*(Length a, Length b) { return Area::from_si(a.si() * b.si()); }
constexpr Length operator/(Area a, Length b) { return Length::from_si(a.si() / b.si()); }
constexpr Volume operator*(Depth d, Area a) { return Volume::from_si(d.si() * a.si()); }
constexpr Volume operator*(Area a, Depth d) { return d * a; }
constexpr Depth operator/(Volume v, Area a) { return Depth::from_si(v.si() / a.si()); }
constexpr Area operator/(Volume v, Depth d) { return Area::from_si(v.si() / d.si()); }
constexpr Rate operator/(Flow q, Area a) { return Rate::from_si(q.si() / a.si()); }
constexpr Flow operator*(Rate r, Area a) { return Flow::from_si(r.si() * a.si()); }
constexpr Flow operator*(Area a, Rate r) { return r * a; }
constexpr Depth operator*(Rate r, Duration t) { return Depth::from_si(r.si() * t.si()); }
constexpr Depth operator*(Duration t, Rate r) { return r * t; }
constexpr Rate operator/(Depth d, Duration t) { return Rate::from_si(d.si() / t.si()); }
constexpr Duration operator/(Depth d, Rate r) { return Duration::from_si(d.si() / r.si()); }
constexpr Volume operator*(Flow q, Duration t) { return Volume::from_si(q.si() * t.si()); }
constexpr Volume operator*(Duration t, Flow q) { return q * t; }
constexpr Flow operator/(Volume v, Duration t) { return Flow::from_si(v.si() / t.si()); }
constexpr Duration operator/(Volume v, Flow q) { return Duration::from_si(v.si() / q.si()); }
constexpr Length operator*(Speed v, Duration t) { return Length::from_si(v.si() * t.si()); }
constexpr Speed operator/(Length l, Duration t) { return Speed::from_si(l.si() / t.si()); }
/// Pumping: pressure times volume is work.
constexpr Energy operator*(Pressure p, Volume v) { return Energy::from_si(p.si() * v.si()); }

// Units. Exact by definition: NIST SP 811 (2008) appendix B; Handbook 44 appendix C.
// Foot and acre are the international ones; the survey foot ended with 2022.
inline constexpr Length metre = Length::from_si(1.0);
inline constexpr Length kilometre = Length::from_si(1000.0);
inline constexpr Length foot = Length::from_si(0.3048);
inline constexpr Length inch_length = Length::from_si(0.0254);

inline constexpr Area square_metre = Area::from_si(1.0);
inline constexpr Area square_centimetre = Area::from_si(1e-4);
inline constexpr Area hectare = Area::from_si(10000.0);
inline constexpr Area square_inch = Area::from_si(0.0254 * 0.0254);
inline constexpr Area square_foot = Area::from_si(0.3048 * 0.3048);
inline constexpr Area acre = Area::from_si(43560.0 * 0.3048 * 0.3048);

inline constexpr Volume cubic_metre = Volume::from_si(1.0);
inline constexpr Volume litre = Volume::from_si(1e-3);
inline constexpr Volume millilitre = Volume::from_si(1e-6);
inline constexpr Volume us_gallon = Volume::from_si(231.0 * 0.0254 * 0.0254 * 0.0254);
inline constexpr Volume hundred_gallons = 100.0 * us_gallon;
inline constexpr Volume thousand_gallons = 1000.0 * us_gallon;
inline constexpr Volume cubic_foot = Volume::from_si(0.3048 * 0.3048 * 0.3048);
inline constexpr Volume hundred_cubic_feet = 100.0 * cubic_foot;
inline constexpr Volume acre_foot = 43560.0 * cubic_foot;
inline constexpr Volume acre_inch = 3630.0 * cubic_foot;

inline constexpr Duration second = Duration::from_si(1.0);
inline constexpr Duration minute = Duration::from_si(60.0);
inline constexpr Duration hour = Duration::from_si(3600.0);
inline constexpr Duration day = Duration::from_si(86400.0);

inline constexpr Depth millimetre = Depth::from_si(1e-3);
inline constexpr Depth inch = Depth::from_si(0.0254);

inline constexpr Rate millimetre_per_hour = millimetre / hour;
inline constexpr Rate inch_per_hour = inch / hour;

inline constexpr Speed metre_per_second = Speed::from_si(1.0);
inline constexpr Speed mile_per_hour = Speed::from_si(0.44704);
inline constexpr Speed kilometre_per_hour = Speed::from_si(1.0 / 3.6);
inline constexpr Speed kilometre_per_day = Speed::from_si(1000.0 / 86400.0);
inline constexpr Speed foot_per_minute = Speed::from_si(0.3048 / 60.0);
inline constexpr Speed metre_per_hour = Speed::from_si(1.0 / 3600.0);

inline constexpr Flow cubic_metre_per_hour = cubic_metre / hour;
inline constexpr Flow litre_per_minute = litre / minute;
inline constexpr Flow litre_per_second = litre / second;
inline constexpr Flow gallon_per_minute = us_gallon / minute;

inline constexpr Pressure kilopascal = Pressure::from_si(1000.0);
inline constexpr Pressure bar = Pressure::from_si(1e5);
/// lbf per square inch: 0.45359237 kg x 9.80665 m/s2 over 0.0254 m squared.
inline constexpr Pressure psi = Pressure::from_si(0.45359237 * 9.80665 / (0.0254 * 0.0254));

inline constexpr Energy joule = Energy::from_si(1.0);
inline constexpr Energy kilowatt_hour = Energy::from_si(3.6e6);

inline constexpr Insolation megajoule_per_m2 = Insolation::from_si(1e6);
/// 1 langley as the weather networks and FAO-56 annex 1 take it: 0.041868 MJ/m2
/// (international table calorie; the thermochemical one would be 0.04184).
inline constexpr Insolation langley = Insolation::from_si(0.041868e6);

}  // namespace evenfall::units
