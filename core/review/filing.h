// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/catch_test.h"
#include "core/audit/quarter_rule.h"
#include "core/calendar/date.h"
#include "core/meter/meter.h"
#include "core/site/site.h"
#include "core/weather/weather_sheet.h"

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

/// What an auditor or an applicant sends: the raw data as typed, how they were worked out, what
/// came out and what is claimed. Frozen: nothing in it is computed again when it is read, and
/// everything in it can be computed again by whoever reads it.
/// As a file: core/exchange/filing_file.h. The form of data/filing.json: schemas/filing/filing.md.
namespace evenfall::review {

/// Which side of the change that is applied for. Stored as words.
enum class Phase { before, after, none };

struct Person {
    std::string name;
    std::string organisation;
    std::string contact;
};

struct Auditor {
    std::string name;
    std::string certification;               ///< number, as typed
    std::optional<calendar::Date> expires;   ///< of the certification
};

struct FiledArea {
    site::Area area;
    std::string sector;                      ///< such as sport, sod farm, campus, home; as typed
    /// Ring of longitude and latitude in degrees, not closed; empty when no outline was drawn.
    std::vector<std::pair<double, double>> outline;
};

struct FiledTest {
    audit::CatchTest test;
    Phase phase = Phase::none;
};

struct FiledMeter {
    meter::Meter meter;
    std::string type;                        ///< such as turbine, magnetic, pump hours; as typed
    std::vector<meter::Reading> readings;    ///< sorted by time
};

/// Weather as typed, see core/weather/weather_sheet.h.
struct FiledWeather {
    std::string station;                     ///< code; empty when the filing has no weather
    std::optional<double> latitude;
    std::optional<units::Typed<units::Length>> elevation;
    std::optional<units::Typed<units::Length>> wind_height;
    weather::SheetUnits units;
    std::vector<weather::SheetRow> days;     ///< sorted by date
};

/// A figure that the sender stands for, as typed: "0.72" and "0.720" differ in what they promise.
struct Claim {
    std::string name;      ///< key, see core/review/recompute.h
    std::string subject;   ///< code of the test, area or meter; empty for the whole filing
    std::string text;      ///< the number as typed
    std::string unit;      ///< empty for a plain ratio; "%" for per cent
    std::string quarter_rule;  ///< as typed; empty when not said
    bool operator==(const Claim&) const = default;
};

/// What Evenfall found when the filing was made.
struct FiledResult {
    std::string name;
    std::string subject;
    double value = 0.0;
    std::string unit;
    std::optional<double> low, high, confidence;   ///< interval, where there is one
    std::string method;
    std::string version;   ///< of the program that worked it out
    std::string convention;
    std::string source;
    bool assumed = false;
    bool operator==(const FiledResult&) const = default;
};

struct Device {
    std::string kind;      ///< such as nozzle, controller, pressure regulator
    double count = 0.0;
    bool operator==(const Device&) const = default;
};

struct Invoice {
    std::string number;
    std::string vendor;
    std::optional<calendar::Date> date;
    double amount = 0.0;
    std::string currency;
    std::string attachment;  ///< path below data/; empty when none came along
    bool operator==(const Invoice&) const = default;
};

/// What is asked for in a rebate application.
struct Request {
    std::string application;   ///< the applicant's or officer's number; empty when there is none
    std::string program;       ///< name of the program applied to
    std::optional<calendar::Date> change;  ///< when the work was done
    std::vector<Device> devices;
    std::vector<Invoice> invoices;
    std::string note;
};

struct Attachment {
    std::string path;      ///< below data/, such as attachments/invoice-1.pdf
    std::string kind;      ///< photo, invoice, report, other
    std::string sha256;
    std::uint64_t size = 0;
    std::string note;
    bool operator==(const Attachment&) const = default;
};

/// How the figures were worked out; named so that they can be worked out again.
struct Conventions {
    audit::QuarterRule quarter_rule = audit::QuarterRule::whole_cans;
    std::string rain = "nrcs";             ///< see weather::parse_rain_rule
};

struct Filing {
    std::string code;          ///< letters, digits, "-", "_", "."; names the bag
    calendar::Instant written;
    std::string software;      ///< program and version
    Person applicant;
    Auditor auditor;
    std::string signing_key;   ///< hexadecimal public key of the auditor; empty for an unsigned filing
    site::Site site;
    std::vector<FiledArea> areas;
    std::vector<FiledTest> tests;
    std::vector<FiledMeter> meters;
    FiledWeather weather;
    Conventions conventions;
    std::vector<FiledResult> results;
    std::vector<Claim> claims;
    Request request;
    std::vector<Attachment> attachments;
};

/// Several filings of one site as one case: the first one's words, everyone's data. A test, area or
/// meter that occurs twice is taken once when it is the same and is an error when it is not.
/// @throws InputError for an empty list, unlike sites, or records of one code that disagree
Filing together(const std::vector<Filing>& filings);

}  // namespace evenfall::review
