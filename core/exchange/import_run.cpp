// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_run.h"

#include "core/store/journal_store.h"
#include "core/units/number.h"

#include <fstream>
#include <nlohmann/json.hpp>
#include <set>
#include <unistd.h>

namespace evenfall::exchange {
namespace {

constexpr std::size_t most_listed = 200;
constexpr std::size_t rows_per_report = 20'000;

/// A cell that a spreadsheet would take for a formula gets an apostrophe in front; a plain number
/// with its sign does not.
std::string harmless(std::string_view cell) {
    if (cell.empty() || std::string_view("=+-@\t\r").find(cell[0]) == std::string_view::npos) {
        return std::string(cell);
    }
    if (units::parse_number(cell)) return std::string(cell);
    std::string out(1, '\'');
    out += cell;
    return out;
}

std::string csv_cell(std::string_view raw) {
    const std::string cell = harmless(printable(std::string(raw), 4000));
    if (cell.find_first_of(",\"\r\n") == std::string::npos) return cell;
    std::string out = "\"";
    for (char c : cell) {
        if (c == '"') out += '"';
        out += c;
    }
    return out + "\"";
}

template <class T>
std::string measure_text(const std::optional<units::Typed<T>>& value) {
    return value ? value->text() : std::string();
}

std::string number_text(const std::optional<double>& value) {
    return value ? units::format_shortest(*value) : std::string();
}

std::string date_text(const std::optional<calendar::Date>& date) {
    return date ? calendar::format_date(*date) : std::string();
}

/// The issues of one row, without the file and row that all of them share.
std::string reason_of(std::span<const Issue> issues) {
    std::string reason;
    for (const Issue& i : issues) {
        if (!reason.empty()) reason += "; ";
        const Place place{"", 0, i.place.column};
        reason += Issue{place, i.found, i.expected}.text();
    }
    return reason;
}

}  // namespace

struct RejectsWriter::Impl {
    std::filesystem::path path;
    std::filesystem::path draft;
    std::ofstream out;
    std::set<std::string> begun;
};

RejectsWriter::RejectsWriter(const std::filesystem::path& path) : impl_(std::make_unique<Impl>()) {
    impl_->path = path;
    impl_->draft = path;
    impl_->draft += ".new-" + std::to_string(::getpid());
}

RejectsWriter::~RejectsWriter() {
    if (!impl_->out.is_open()) return;
    impl_->out.close();
    std::error_code ignored;
    std::filesystem::remove(impl_->draft, ignored);
}

void RejectsWriter::add(const RowSource& rows, std::size_t row, std::span<const std::string_view> cells,
                        const std::string& reason) {
    if (!impl_->out.is_open()) impl_->out.open(impl_->draft, std::ios::binary);
    if (impl_->begun.insert(rows.file()).second) {
        impl_->out << "# refused rows of " << printable(rows.file(), 300) << "\n";
        for (const std::string& h : rows.header()) impl_->out << csv_cell(h) << ',';
        impl_->out << "row,reason\n";
    }
    for (const std::string_view cell : cells) impl_->out << csv_cell(cell) << ',';
    impl_->out << row << ',' << csv_cell(reason) << '\n';
}

void RejectsWriter::finish() {
    if (!impl_->out.is_open()) return;
    impl_->out.close();
    std::error_code error;
    if (!impl_->out.fail()) std::filesystem::rename(impl_->draft, impl_->path, error);
    if (impl_->out.fail() || error) {
        std::error_code ignored;
        std::filesystem::remove(impl_->draft, ignored);
        throw InputError(impl_->path.string(), "a file for refused rows that can be written");
    }
}

void ImportRun::refuse_row(const std::vector<Issue>& issues) {
    ++result.rejected;
    for (const Issue& i : issues) {
        if (result.issues.size() < most_listed) result.issues.push_back(i);
    }
    if (rejects != nullptr) rejects->add(rows, rows.row(), rows.cells(), reason_of(issues));
}

KeptRow ImportRun::keep_row() const {
    KeptRow kept{rows.row()};
    if (rejects != nullptr) {
        const auto cells = rows.cells();
        kept.cells.assign(cells.begin(), cells.end());
    }
    return kept;
}

void ImportRun::refuse_later(std::span<const KeptRow> kept, Issue issue) {
    write_kept(kept, reason_of(std::span(&issue, 1)));
    if (result.issues.size() < most_listed) result.issues.push_back(std::move(issue));
}

void ImportRun::leave_out(std::span<const KeptRow> kept, const std::string& reason) {
    write_kept(kept, reason);
}

void ImportRun::write_kept(std::span<const KeptRow> kept, const std::string& reason) {
    result.rejected += kept.size();
    if (rejects == nullptr) return;
    for (const KeptRow& k : kept) {
        const std::vector<std::string_view> cells(k.cells.begin(), k.cells.end());
        rejects->add(rows, k.row, cells, reason);
    }
}

void ImportRun::each_row(const std::function<void(RowReader&)>& use) {
    RowReader row(rows, columns, format);
    std::size_t until_report = rows_per_report;
    while (rows.next()) {
        ++result.read;
        row.start();
        if (rows.row_issue()) {
            refuse_row({*rows.row_issue()});
        } else {
            use(row);
            if (!row.ok()) refuse_row(row.issues());
        }
        if (--until_report == 0) {
            until_report = rows_per_report;
            if (options.progress) options.progress({result.file, result.read, rows.done()});
        }
    }
    for (std::string& n : rows.notes()) note(std::move(n));
    if (result.read == 0) {
        throw InputError(Issue{{rows.file(), 0, ""}, "a header and nothing below it",
                               "at least one row"});
    }
    if (options.progress) options.progress({result.file, result.read, 1.0});
}

bool ImportRun::settle(const Place& place, const std::string& record, const std::string& in_book,
                       const std::string& in_file) {
    ++result.conflicts;
    if (result.conflict_list.size() < most_listed) {
        result.conflict_list.push_back({place, record, in_book, in_file});
    }
    if (options.conflicts == ConflictChoice::refuse) return false;
    const bool replace = options.conflicts == ConflictChoice::replace;
    const nlohmann::json detail{{"in_book", in_book},
                                {"in_file", in_file},
                                {"file", std::filesystem::path(place.file).filename().string()},
                                {"row", place.row},
                                {"stands", replace ? "in_file" : "in_book"}};
    store::add_journal_entry(
        book, {options.at, options.who,
               replace ? "A value from a file took the place of the one in the book"
                       : "A value from a file was set aside; the one in the book stands",
               record, detail.dump(-1, ' ', false, nlohmann::json::error_handler_t::replace)});
    if (replace) ++result.replaced;
    return replace;
}

std::optional<bool> ImportRun::settle_fields(const Place& place, const std::string& record,
                                             const Fields& in_book, const Fields& in_file) {
    if (in_book == in_file) return std::nullopt;
    std::string old_text;
    std::string new_text;
    for (std::size_t i = 0; i < in_book.size() || i < in_file.size(); ++i) {
        const auto text = [&](const Fields& f) {
            if (i >= f.size()) return std::string("(nothing)");
            std::string field = f[i].first;
            field += ' ';
            field += f[i].second.empty() ? std::string("not recorded") : f[i].second;
            return field;
        };
        if (i < in_book.size() && i < in_file.size() && in_book[i] == in_file[i]) continue;
        if (!old_text.empty()) old_text += ", ";
        if (!new_text.empty()) new_text += ", ";
        old_text += text(in_book);
        new_text += text(in_file);
    }
    return settle(place, record, printable(old_text, 1000), printable(new_text, 1000));
}

Fields fields_of(const site::Site& s) {
    return {{"name", s.name},
            {"organisation", s.organisation},
            {"latitude", units::format_shortest(s.latitude)},
            {"longitude", number_text(s.longitude)},
            {"elevation", measure_text(s.elevation)},
            {"time_zone", s.time_zone},
            {"weather", s.weather},
            {"weather_power", number_text(s.weather_power)}};
}

Fields fields_of(const site::Area& a) {
    return {{"site", a.site},
            {"name", a.name},
            {"size", a.size.text()},
            {"plant", a.plant},
            {"coefficient", number_text(a.coefficient)},
            {"head_type", a.head_type},
            {"soil", a.soil},
            {"root_depth", measure_text(a.root_depth)},
            {"slope_percent", number_text(a.slope_percent)},
            {"meter", a.meter},
            {"share", number_text(a.share)}};
}

Fields fields_of(const meter::Meter& m) {
    return {{"site", m.site},
            {"unit", std::string(m.unit.name)},
            {"multiplier", units::format_shortest(m.multiplier)},
            {"digits", m.digits ? std::to_string(*m.digits) : std::string()},
            {"parent", m.parent},
            {"installed", date_text(m.installed)},
            {"removed", date_text(m.removed)},
            {"replaces", m.replaces},
            {"rated_flow", measure_text(m.rated_flow)},
            {"size", measure_text(m.size)}};
}

Fields fields_of(const meter::Exchange& x) {
    return {{"final", units::format_shortest(x.final_value)},
            {"first", units::format_shortest(x.first_value)},
            {"unit", x.unit ? std::string(x.unit->name) : std::string()},
            {"multiplier", number_text(x.multiplier)},
            {"digits", x.digits ? std::to_string(*x.digits) : std::string()}};
}

Fields fields_of(const store::WeatherStation& s) {
    return {{"latitude", number_text(s.latitude)},
            {"longitude", number_text(s.longitude)},
            {"elevation", measure_text(s.elevation)},
            {"wind_height_m", number_text(s.wind_height_m)}};
}

Fields fields_of(const audit::CatchTest& t) {
    Fields fields{{"area", t.area},
                  {"date", calendar::format_date(t.date)},
                  {"layout", std::to_string(static_cast<int>(t.layout))},
                  {"throat_area", measure_text(t.throat_area)},
                  {"minutes", number_text(t.minutes)},
                  {"wind", measure_text(t.wind)},
                  {"lane_spacing", measure_text(t.lane_spacing)},
                  {"opposite_pulls", t.opposite_pulls ? "yes" : "no"},
                  {"position_unit", std::string(t.position_unit.name)},
                  {"catch_unit", std::to_string(static_cast<int>(t.catch_unit))},
                  {"can_size", measure_text(t.can_size)},
                  {"flow", measure_text(t.flow)},
                  {"travel_speed", measure_text(t.travel_speed)},
                  {"edge_offset", measure_text(t.edge_offset)}};
    for (const audit::StationRun& s : t.stations) {
        fields.emplace_back("station " + s.station, units::format_shortest(s.minutes));
    }
    for (const audit::Catch& c : t.catches) {
        std::string text = units::format_shortest(c.reading);
        for (const auto& part : {c.x, c.y, c.distance}) {
            text += ' ';
            text += number_text(part);
        }
        if (c.side) text += *c.side == audit::Side::left ? " left" : " right";
        for (const audit::StationCatch& s : c.by_station) {
            text.append(" ").append(s.station).append(":").append(units::format_shortest(s.reading));
        }
        fields.emplace_back("can " + c.can, text + (c.excluded.empty() ? "" : " left out: " + c.excluded));
    }
    return fields;
}

}  // namespace evenfall::exchange
