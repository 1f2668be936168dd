// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"
#include "core/units/quantity.h"
#include "core/units/ratio.h"

#include <array>
#include <string_view>

/// Where the metered water went, by the multiplier method.
///
/// Unevenly spread water has to run longer: to give the dry half of an area its need N, about
/// M N must be applied, M being the run-time multiplier. What is applied beyond N is then
///   unavoidable  up to the multiplier T that the program takes as attainable,
///   avoidable    from there up to the multiplier M that the area achieved,
///   over-scheduled  beyond M N: no unevenness explains it.
///
///     off target = o (U - L)            R = U - L - off target
///     used       = min(R, N)            E = R - used
///     uneven, unavoidable = min(E, N (min(M, T) - 1))
///     uneven, avoidable   = min(E - unavoidable, N (M - min(M, T)))
///     over-scheduled      = the rest of E
///     short               = max(0, N - R), a line of its own
///
///   U  metered volume             L  leak in it, L <= U
///   N  need of the turf           o  share that falls outside the area, 0 to 1
///   M  achieved multiplier, >= 1  T  target multiplier, >= 1
///
/// The parts but `short` add up to U. Months are never netted: a sum of accounts keeps the waste
/// of one month beside the shortage of another.
/// Source: derived from the definition of the run-time multiplier (DEVELOPERS.md, Sources).
/// Tests: tests/budget/waste_account_test.cpp
namespace evenfall::budget {

struct WasteInputs {
    units::Volume use;                ///< U
    units::Volume need;               ///< N
    units::Volume leak;               ///< L; more than U is taken as U
    units::Share off_target;          ///< o
    units::Multiplier achieved;       ///< M
    units::Multiplier target;         ///< T
};

struct WasteAccount {
    units::Volume used_by_turf;
    units::Volume uneven_unavoidable;
    units::Volume uneven_avoidable;
    units::Volume off_target;
    units::Volume leak;
    units::Volume over_scheduled;
    units::Volume short_of_need;      ///< water the turf did not get; not a part of the use

    /// The parts but `short_of_need`: the metered volume.
    units::Volume use() const;
    /// Everything but `used_by_turf`, unavoidable unevenness included.
    units::Volume not_used() const { return use() - used_by_turf; }
    /// What better equipment, repair or timing can save: avoidable unevenness, off target, leak
    /// and over-scheduling.
    units::Volume avoidable() const;

    WasteAccount& operator+=(const WasteAccount& other);
    WasteAccount& operator*=(double share);
    bool operator==(const WasteAccount&) const = default;
};

/// The lines in the order of every table, with the stable key that files use (a unit such as
/// "_gal" is appended) and the words for a person.
struct WasteLine {
    std::string_view key;
    Phrase words;
    units::Volume WasteAccount::* part;
    bool in_use;  ///< false for the shortage, which is not a part of the metered volume
};
const std::array<WasteLine, 7>& waste_lines();

/// @throws InputError for a volume below zero or not finite, or a multiplier below 1
WasteAccount waste_account(const WasteInputs& inputs);

}  // namespace evenfall::budget
