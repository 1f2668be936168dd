// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/demo/desk.h"

#include "app/demo/random.h"
#include "app/workflow/review_batch.h"
#include "app/workflow/whole_file.h"
#include "core/audit/uniformity.h"
#include "core/exchange/filing_file.h"
#include "core/store/journal_store.h"
#include "core/store/plan_store.h"
#include "core/units/number.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <stdexcept>
#include <system_error>

namespace evenfall::demo {
namespace {

namespace fs = std::filesystem;

constexpr const char* program = "rebate-sport-heads";
constexpr double mean_ml = 58.0;

struct Applicant {
    const char* number;
    const char* code;
    const char* name;
    const char* organisation;
    const char* site;
    double acres;
    double nozzles;
    const char* invoice;
    double cost;
    double before, after;   ///< spread of the catches about their mean
    bool copied;            ///< the second sheet is the first
    double claim_more;      ///< added to the DU after the work
    std::uint64_t seed;
};

constexpr std::array<Applicant, 3> applicants{
    Applicant{"TR-118", "F-118", "L. Abernathy", "Fennimore Middle School", "FENNIMORE", 1.9, 96, "4471", 3310.0, 0.30, 0.10, false, 0.0, 501},
    Applicant{"TR-121", "F-121", "D. Quill", "Saltbrook Athletic Association", "SALTBROOK", 3.1, 150, "4502", 5240.0, 0.34, 0.33, false, 0.14, 502},
    Applicant{"TR-125", "F-125", "M. Oyelaran", "Carrow Street Park", "CARROW", 0.8, 44, "4519", 1490.0, 0.24, 0.24, true, 0.0, 503}};

/// A folder of its own that is gone afterwards.
class Folder {
  public:
    Folder() {
        std::string name = (fs::temp_directory_path() / "evenfall-desk-XXXXXX").string();
        if (::mkdtemp(name.data()) == nullptr) throw std::runtime_error("no folder for the filings of the demo");
        path_ = name;
    }
    ~Folder() {
        std::error_code ignored;
        fs::remove_all(path_, ignored);
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    fs::path operator/(const std::string& name) const { return path_ / name; }
    const fs::path& path() const { return path_; }

  private:
    fs::path path_;
};

std::string numbered(const char* prefix, std::size_t n) {
    std::string text = prefix;
    text += std::to_string(n);
    return text;
}

audit::CatchTest sheet(const Applicant& a, const std::string& code, const char* date, double spread, std::uint64_t seed) {
    Random random(seed);
    audit::CatchTest test;
    test.code = code;
    test.area = std::string(a.site) + "-FIELD";
    test.date = *calendar::parse_date(date);
    test.layout = audit::Layout::grid;
    test.throat_area = units::parse_measure<units::Area>("16.61in2");
    test.minutes = 30.0;
    if (!a.copied) test.wind = units::parse_measure<units::Speed>("3mph");
    test.position_unit = units::unit_named<units::Length>("ft");
    test.catch_unit = audit::CatchUnit::millilitre;
    for (std::size_t i = 0; i < 24; ++i) {
        audit::Catch c;
        c.can = numbered("", i + 1);
        c.x = 5.0 + 10.0 * static_cast<double>(i % 6);
        c.y = 5.0 + 10.0 * static_cast<double>(i / 6);
        c.reading = std::round(mean_ml * (1.0 + spread * std::clamp(random.bell(), -2.2, 2.2)));
        test.catches.push_back(std::move(c));
    }
    return test;
}

review::Filing filing_of(const Applicant& a) {
    review::Filing f;
    f.code = a.code;
    f.written = *calendar::parse_instant("2025-11-14T18:00:00Z");
    f.software = "Evenfall demo";
    f.applicant = {a.name, a.organisation, ""};
    f.auditor = {"S. Marchetti", "X-20417", calendar::parse_date("2026-12-31")};
    f.site.code = a.site;
    f.site.name = a.organisation;
    f.site.latitude = 38.5;
    f.site.longitude = -121.2;
    review::FiledArea area;
    area.area.code = std::string(a.site) + "-FIELD";
    area.area.site = a.site;
    area.area.name = "Field";
    area.area.size = units::parse_measure<units::Area>(units::format_fixed(a.acres, 1) + "ac");
    area.area.head_type = "rotor";
    area.sector = "sport";
    f.areas.push_back(std::move(area));
    const std::string before = std::string(a.number) + "-A";
    const std::string after = std::string(a.number) + "-B";
    f.tests.push_back({sheet(a, before, "2025-05-20", a.before, a.seed), review::Phase::before});
    f.tests.push_back({sheet(a, after, "2025-10-16", a.after, a.copied ? a.seed : a.seed + 100), review::Phase::after});
    for (const review::FiledTest& t : f.tests) {
        double du = audit::analyse_uniformity(t.test, f.conventions.quarter_rule).du_lq.value();
        if (t.phase == review::Phase::after) du += a.claim_more;
        f.claims.push_back({"du_lq", t.test.code, units::format_fixed(du, 2), "", ""});
    }
    f.claims.push_back({"cost", "", units::format_fixed(a.cost, 2), "USD", ""});
    f.claims.push_back({"devices", "nozzle", units::format_fixed(a.nozzles, 0), "", ""});
    f.request.application = a.number;
    f.request.program = program;
    f.request.change = calendar::parse_date("2025-09-05");
    f.request.devices = {{"nozzle", a.nozzles}};
    const std::string paper = "attachments/invoice-" + std::string(a.invoice) + ".txt";
    f.request.invoices = {{a.invoice, "Bright Basin Supply", calendar::parse_date("2025-09-02"), a.cost, "USD", paper}};
    return f;
}

void add_plan(store::Book& book, const std::string& at, const std::string& who) {
    const plan::Plan drawn = playing_field_plan();
    store::Transaction all(book);
    store::add_plan(book, "P-PLAY", "AV", drawn, std::nullopt);
    store::add_journal_entry(book, {at, who, "kept a design plan of " + std::to_string(drawn.heads.size()) + " heads, revision 0", "plan P-PLAY", ""});
    all.commit();
}

}  // namespace

plan::Plan playing_field_plan() {
    constexpr double spacing = 55.0;
    constexpr int low = -2, high = 4;
    constexpr double flow_gpm = 10.8;   // 13 mm/h under the head, a cone of 44 ft
    constexpr double west = low * spacing, east = high * spacing;
    plan::Plan p;
    p.name = "Playing field, as drawn";
    p.units.length = units::unit_named<units::Length>("ft");
    p.units.flow = units::unit_named<units::Flow>("gpm");
    p.units.pressure = units::unit_named<units::Pressure>("psi");
    p.turf = {{{{west, west}, {east, west}, {east, east}, {west, east}}}};
    for (int row = low; row <= high; ++row) {
        for (int column = low; column <= high; ++column) {
            const int dx = column == low ? 1 : column == high ? -1 : 0;
            const int dy = row == low ? 1 : row == high ? -1 : 0;
            plan::Head h;
            h.id = std::string(1, static_cast<char>('A' + row - low));
            h.id += std::to_string(column - low + 1);
            h.x = spacing * column;
            h.y = spacing * row;
            h.radius = 44.0;
            h.arc = dx != 0 && dy != 0 ? 90.0 : dx != 0 || dy != 0 ? 180.0 : 360.0;
            h.flow = flow_gpm * h.arc / 360.0;
            // The middle of the arc, clockwise from north.
            if (dx != 0 && dy != 0) h.facing = dx > 0 ? (dy > 0 ? 45.0 : 135.0) : (dy > 0 ? 315.0 : 225.0);
            else if (dx != 0) h.facing = dx > 0 ? 90.0 : 270.0;
            else if (dy < 0) h.facing = 180.0;
            h.station = std::string(1, static_cast<char>('1' + (row - low) / 2));
            p.heads.push_back(std::move(h));
        }
    }
    return p;
}

std::vector<review::Filing> desk_filings() {
    std::vector<review::Filing> filings;
    for (const Applicant& a : applicants) filings.push_back(filing_of(a));
    return filings;
}

void add_desk(store::Book& book, const std::string& at, const std::string& who) {
    add_plan(book, at, who);
    const Folder folder;
    workflow::ReviewOrder order{{}, program, false, 1, {}};
    for (const review::Filing& f : desk_filings()) {
        const review::Invoice& bill = f.request.invoices.front();
        const fs::path paper = folder / fs::path(bill.attachment).filename().string();
        workflow::write_whole_file(paper, "Invoice " + bill.number + "\n" + bill.vendor + "\n" + f.applicant.organisation + "\n" +
                                              units::format_fixed(bill.amount, 2) + " " + bill.currency + "\n(invented)\n");
        order.files.push_back(folder / (f.code + ".zip"));
        exchange::write_filing(order.files.back(), f, {{paper, "invoice", ""}}, nullptr);
    }
    workflow::store_batch(book, workflow::review_batch(order, &book, {}), order, at, who);
}

}  // namespace evenfall::demo
