// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/catch_test.h"
#include "core/exchange/row_reader.h"
#include "core/meter/meter.h"
#include "core/meter/screens.h"
#include "core/site/site.h"
#include "core/store/weather_store.h"
#include "core/weather/hour_sheet.h"

#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

/// One row of each kind of table as a record. Each function notes every issue of the row in the
/// reader; a record is only good when `row.ok()` holds afterwards.
/// Tests: tests/exchange/import_test.cpp, plain_files_test.cpp
namespace evenfall::exchange {

site::Site read_site(RowReader& row);
/// `size` is the one typed, else that of the shapes, else that of the outline.
site::Area read_area(RowReader& row);
meter::Meter read_meter(RowReader& row);
store::WeatherStation read_station(RowReader& row);
meter::Bill read_bill(RowReader& row);

struct ExchangeRow {
    std::string meter;
    WrittenTime time;  ///< on the site's clock, or with an offset
    meter::Exchange exchange;  ///< `at` is filled in when the site's clock is known
};
ExchangeRow read_exchange(RowReader& row);

/// Units of a weather table, from its columns.
/// @throws InputError when temperatures stand in two units
weather::SheetUnits sheet_units(const ColumnIndex& columns, const std::string& file);
weather::SheetRow read_weather_day(RowReader& row);
/// Without the time: tables mark it in several ways. The temperature of the period stands in `tmean`,
/// or is the mean of `tmax` and `tmin`; its humidity in `rhmean`.
weather::SheetHour read_weather_hour(RowReader& row);

/// Puts the rows of a catch table together to tests. The columns of a test (area, date, throat
/// area ...) may stand in each of its rows or in the first one only, but must agree.
class CatchTableReader {
  public:
    /// @param in_book  test, area and date are needed
    CatchTableReader(const ColumnIndex& columns, std::string file, bool in_book);
    void add(RowReader& row);
    /// Tests in the order in which they begin in the file.
    std::vector<audit::CatchTest> take() { return std::move(tests_); }

  private:
    audit::CatchTest& test_of(RowReader& row);
    void read_test_fields(RowReader& row, audit::CatchTest& test, bool first);
    void read_can(RowReader& row, audit::CatchTest& test);

    const ColumnIndex& columns_;
    std::string file_;
    bool in_book_;
    std::vector<audit::CatchTest> tests_;
    std::unordered_map<std::string, std::size_t> by_code_;
};

}  // namespace evenfall::exchange
