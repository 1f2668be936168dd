// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/weather_scan.h"

#include "core/store/database.h"

#include <array>

namespace evenfall::store {
namespace {

using weather::SheetRow;
using weather::SheetUnits;

struct Value {
    const char* column;
    std::optional<double> SheetRow::* member;
};
constexpr std::array values{
    Value{"tmax", &SheetRow::tmax},     Value{"tmin", &SheetRow::tmin},
    Value{"tmean", &SheetRow::tmean},   Value{"tdew", &SheetRow::tdew},
    Value{"rhmax", &SheetRow::rhmax},   Value{"rhmin", &SheetRow::rhmin},
    Value{"rhmean", &SheetRow::rhmean}, Value{"ea_kpa", &SheetRow::ea_kpa},
    Value{"solar", &SheetRow::solar},   Value{"sunshine_h", &SheetRow::sunshine_h},
    Value{"wind", &SheetRow::wind},     Value{"rain", &SheetRow::rain},
    Value{"reference_et", &SheetRow::reference_et}};

constexpr std::array unit_columns{"temperature", "radiation", "wind", "rain", "reference_et"};

/// Station, date, units, values; of the rows of one day the one that stands.
std::string all_days() {
    std::string sql = "SELECT s.code, d.date";
    for (const char* unit : unit_columns) sql += std::string(", u.") + unit;
    for (const Value& v : values) sql += std::string(", d.") + v.column;
    return sql + " FROM weather_station s JOIN weather_day d ON d.station = s.id"
                 " JOIN weather_units u ON u.id = d.units"
                 " WHERE NOT EXISTS (SELECT 1 FROM weather_day n WHERE n.station = d.station AND n.date = d.date"
                 " AND n.revision > d.revision) ORDER BY s.code, d.date";
}

}  // namespace

void for_each_typed_day(const Book& book, const TakeTypedDay& take) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement rows(db, all_days());
        while (rows.executeStep()) {
            const std::string station = text_in(rows.getColumn(0));
            const auto date = calendar::parse_date(text_in(rows.getColumn(1)));
            if (!date) throw BookError({phrase("store", "A weather day of station %1 has no date that can be read."), station});
            int column = 2;
            SheetUnits units;
            for (std::string* unit : {&units.temperature, &units.radiation, &units.wind, &units.rain, &units.reference_et}) {
                *unit = text_in(rows.getColumn(column++));
            }
            SheetRow day;
            day.date = *date;
            for (const Value& v : values) day.*v.member = number_in(rows.getColumn(column++));
            take(station, units, day);
        }
    });
}

}  // namespace evenfall::store
