// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/measure.h"

#include "core/input_error.h"

#include <array>

namespace evenfall::units {
namespace {

template <class Q>
std::string names_of_units() {
    std::string all;
    for (const auto& u : known_units<Q>()) {
        if (!all.empty()) all += ", ";
        all += u.name;
    }
    return all;
}

constexpr std::array lengths{NamedUnit<Length>{"m", metre}, NamedUnit<Length>{"ft", foot},
                             NamedUnit<Length>{"in", inch_length},
                             NamedUnit<Length>{"mm", Length::from_si(1e-3)},
                             NamedUnit<Length>{"cm", Length::from_si(1e-2)},
                             NamedUnit<Length>{"km", kilometre}};
constexpr std::array areas{NamedUnit<Area>{"m2", square_metre}, NamedUnit<Area>{"ft2", square_foot},
                           NamedUnit<Area>{"ac", acre}, NamedUnit<Area>{"ha", hectare},
                           NamedUnit<Area>{"cm2", square_centimetre},
                           NamedUnit<Area>{"in2", square_inch}};
constexpr std::array volumes{
    NamedUnit<Volume>{"gal", us_gallon},          NamedUnit<Volume>{"kgal", thousand_gallons},
    NamedUnit<Volume>{"hgal", hundred_gallons},   NamedUnit<Volume>{"ft3", cubic_foot},
    NamedUnit<Volume>{"ccf", hundred_cubic_feet}, NamedUnit<Volume>{"m3", cubic_metre},
    NamedUnit<Volume>{"l", litre},                NamedUnit<Volume>{"ml", millilitre},
    NamedUnit<Volume>{"acre_ft", acre_foot},      NamedUnit<Volume>{"acre_in", acre_inch}};
constexpr std::array depths{NamedUnit<Depth>{"mm", millimetre}, NamedUnit<Depth>{"in", inch},
                            NamedUnit<Depth>{"cm", Depth::from_si(1e-2)}};
constexpr std::array durations{
    NamedUnit<Duration>{"min", minute}, NamedUnit<Duration>{"s", second},
    NamedUnit<Duration>{"h", hour}, NamedUnit<Duration>{"d", day}};
constexpr std::array speeds{
    NamedUnit<Speed>{"m_s", metre_per_second},    NamedUnit<Speed>{"mph", mile_per_hour},
    NamedUnit<Speed>{"km_h", kilometre_per_hour}, NamedUnit<Speed>{"km_d", kilometre_per_day},
    NamedUnit<Speed>{"ft_min", foot_per_minute},  NamedUnit<Speed>{"m_h", metre_per_hour},
    NamedUnit<Speed>{"m_min", Speed::from_si(1.0 / 60.0)}};
constexpr std::array flows{
    NamedUnit<Flow>{"gpm", gallon_per_minute}, NamedUnit<Flow>{"l_min", litre_per_minute},
    NamedUnit<Flow>{"l_s", litre_per_second}, NamedUnit<Flow>{"m3_h", cubic_metre_per_hour}};
constexpr std::array pressures{NamedUnit<Pressure>{"psi", psi},
                               NamedUnit<Pressure>{"kpa", kilopascal},
                               NamedUnit<Pressure>{"bar", bar}};
constexpr std::array rates{NamedUnit<Rate>{"mm_h", millimetre_per_hour},
                           NamedUnit<Rate>{"in_h", inch_per_hour}};
/// w_m2 is the mean over a day: 0.0864 MJ/m2 for each W/m2.
constexpr std::array insolations{
    NamedUnit<Insolation>{"mj_m2", megajoule_per_m2}, NamedUnit<Insolation>{"langley", langley},
    NamedUnit<Insolation>{"w_m2", Insolation::from_si(86400.0)}};

}  // namespace

// clang-format off
template <> std::span<const NamedUnit<Length>> known_units() { return lengths; }
template <> std::span<const NamedUnit<Area>> known_units() { return areas; }
template <> std::span<const NamedUnit<Volume>> known_units() { return volumes; }
template <> std::span<const NamedUnit<Depth>> known_units() { return depths; }
template <> std::span<const NamedUnit<Duration>> known_units() { return durations; }
template <> std::span<const NamedUnit<Speed>> known_units() { return speeds; }
template <> std::span<const NamedUnit<Flow>> known_units() { return flows; }
template <> std::span<const NamedUnit<Pressure>> known_units() { return pressures; }
template <> std::span<const NamedUnit<Rate>> known_units() { return rates; }
template <> std::span<const NamedUnit<Insolation>> known_units() { return insolations; }
// clang-format on

template <class Q>
NamedUnit<Q> unit_named(std::string_view name) {
    for (const auto& u : known_units<Q>()) {
        if (u.name == name) return u;
    }
    throw InputError(name, {phrase("units", "one of the units %1"), names_of_units<Q>()});
}

template <class Q>
Typed<Q> parse_measure(std::string_view text) {
    std::size_t split = text.find_first_not_of("0123456789.+-");
    // An exponent belongs to the number: 1.5e3 m.
    if (split != std::string_view::npos && (text[split] == 'e' || text[split] == 'E')) {
        const std::size_t after = text.find_first_not_of("0123456789+-", split + 1);
        if (after != split + 1) split = after;
    }
    const std::string_view number = text.substr(0, split);
    std::string_view unit = split == std::string_view::npos ? "" : text.substr(split);
    while (!unit.empty() && unit.front() == ' ') unit.remove_prefix(1);
    const auto value = parse_number(number);
    if (!value || unit.empty()) {
        throw InputError(text, {phrase("units", "a number and a unit (%1), such as 12.5%2"), names_of_units<Q>(),
                                known_units<Q>().front().name});
    }
    return {*value, unit_named<Q>(unit)};
}

// clang-format off
#define EVENFALL_MEASURES(Q)                              \
    template NamedUnit<Q> unit_named<Q>(std::string_view); \
    template Typed<Q> parse_measure<Q>(std::string_view);
EVENFALL_MEASURES(Length) EVENFALL_MEASURES(Area) EVENFALL_MEASURES(Volume)
EVENFALL_MEASURES(Depth) EVENFALL_MEASURES(Duration) EVENFALL_MEASURES(Speed)
EVENFALL_MEASURES(Flow) EVENFALL_MEASURES(Pressure) EVENFALL_MEASURES(Rate)
EVENFALL_MEASURES(Insolation)
#undef EVENFALL_MEASURES
// clang-format on

}  // namespace evenfall::units
