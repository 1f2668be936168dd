// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_run.h"

#include "core/exchange/bag_digest.h"
#include "core/store/journal_store.h"
#include "core/units/number.h"

#include <fstream>
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

/// A value as it is listed and compared: on one line, and short. Two long ones that begin alike differ
/// in their digest.
std::string shown_value(const std::string& text) {
    constexpr std::size_t longest = 1000;
    constexpr std::size_t digest = 16;
    std::string shown = printable(text, longest);
    if (shown.size() > longest) shown += " (SHA-256 " + sha256_of(text).substr(0, digest) + ")";
    return shown;
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
        throw InputError(impl_->path.string(), phrase("exchange", "a file for refused rows that can be written"));
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
    for (Sentence& n : rows.notes()) note(std::move(n));
    if (result.read == 0) {
        throw InputError(Issue{{rows.file(), 0, ""}, phrase("exchange", "a header and nothing below it"),
                               phrase("exchange", "at least one row")});
    }
    if (options.progress) options.progress({result.file, result.read, 1.0});
}

store::Stands ImportRun::general_choice(Before before) const {
    switch (options.conflicts) {
        case ConflictChoice::refuse:
            return before == Before::nothing ? store::Stands::undecided : store::Stands::in_book;
        case ConflictChoice::keep: return store::Stands::in_book;
        case ConflictChoice::replace: break;
    }
    return before == Before::replaced ? store::Stands::in_book : store::Stands::in_file;
}

Before ImportRun::known_before(const Conflict& c) const {
    Before before = settled_before(book, c.record, c.in_book, c.in_file);
    if (before != Before::nothing || choices == nullptr) return before;
    // Whatever the order of the files: it was set aside before the table changed the book.
    const auto in_book = choices->before(c.record, c.in_book);
    return in_book ? settled_before(book, c.record, *in_book, c.in_file) : before;
}

bool ImportRun::settle(const Place& place, const std::string& record, const std::string& book_text,
                       const std::string& file_text, bool superseded) {
    using store::Stands;
    Conflict conflict{place, record, shown_value(book_text), shown_value(file_text), Stands::undecided};
    const Stands named =
        choices == nullptr ? Stands::undecided : choices->of(record, conflict.in_book, conflict.in_file);
    const Before before = superseded ? Before::replaced : known_before(conflict);
    conflict.stands = named != Stands::undecided ? named : general_choice(before);
    const bool old_news = before != Before::nothing && conflict.stands == Stands::in_book;
    list(conflict, old_news ? Stands::in_book : named);
    if (old_news) {
        ++result.decided_before;
        return false;
    }
    ++result.conflicts;
    if (conflict.stands == Stands::undecided) {
        ++result.open;
        return false;
    }
    write_journal(conflict, named != Stands::undecided);
    if (conflict.stands == Stands::in_file) ++result.replaced;
    return conflict.stands == Stands::in_file;
}

void ImportRun::list(Conflict conflict, store::Stands chosen) {
    if (listed != nullptr) {
        listed->add({conflict.place.file, conflict.place.row, conflict.place.column, conflict.record,
                     conflict.in_book, conflict.in_file, chosen});
    }
    // Those that wait have room of their own: they are what a refusal is about.
    const bool waits = conflict.stands == store::Stands::undecided;
    const std::size_t alike = waits ? result.open : result.conflicts + result.decided_before - result.open;
    if (alike < most_listed) result.conflict_list.push_back(std::move(conflict));
}

void ImportRun::write_journal(const Conflict& c, bool one_by_one) {
    const std::string file = std::filesystem::path(c.place.file).filename().string();
    store::add_journal_entry(book, {options.at, options.who,
                                    c.stands == store::Stands::in_file
                                        ? "A value from a file took the place of the one in the book"
                                        : "A value from a file was set aside; the one in the book stands",
                                    c.record,
                                    choice_detail(c.in_book, c.in_file, file, c.place.row, c.stands, one_by_one)});
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
    return settle(place, record, old_text, new_text);
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
