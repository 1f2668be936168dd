// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table_map.h"

#include "core/exchange/json_screen.h"
#include "core/units/number.h"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace evenfall::exchange {
namespace {

using nlohmann::json;

constexpr std::size_t largest_map = std::size_t{1} << 20U;

/// Reads the members of one object and refuses those it was not asked for.
class Members {
  public:
    Members(const json& object, std::string file, std::string path)
        : object_(object), file_(std::move(file)), path_(std::move(path)) {
        if (!object.is_object()) fail("", object.dump().substr(0, 60), phrase("exchange", "an object { ... }"));
    }

    const json* find(const std::string& key) {
        known_.push_back(key);
        const auto it = object_.find(key);
        return it == object_.end() ? nullptr : &*it;
    }
    std::optional<std::string> text(const std::string& key) {
        const json* v = find(key);
        if (v == nullptr) return std::nullopt;
        if (!v->is_string()) fail(key, v->dump().substr(0, 60), phrase("exchange", "a text in quotes"));
        return v->get<std::string>();
    }
    std::map<std::string, std::string> texts(const std::string& key) {
        std::map<std::string, std::string> out;
        const json* v = find(key);
        if (v == nullptr) return out;
        if (!v->is_object()) fail(key, v->dump().substr(0, 60), phrase("exchange", "an object of texts"));
        for (const auto& [name, value] : v->items()) {
            if (!value.is_string()) fail(key + "." + name, value.dump().substr(0, 60), phrase("exchange", "a text in quotes"));
            out[name] = value.get<std::string>();
        }
        return out;
    }
    std::vector<std::string> list(const std::string& key) {
        std::vector<std::string> out;
        const json* v = find(key);
        if (v == nullptr) return out;
        if (!v->is_array()) fail(key, v->dump().substr(0, 60), phrase("exchange", "a list of texts"));
        for (const json& value : *v) {
            if (!value.is_string()) fail(key, value.dump().substr(0, 60), phrase("exchange", "a text in quotes"));
            out.push_back(value.get<std::string>());
        }
        return out;
    }
    void finish() {
        for (const auto& [key, value] : object_.items()) {
            if (std::find(known_.begin(), known_.end(), key) != known_.end()) continue;
            const std::vector<std::string_view> names(known_.begin(), known_.end());
            const std::string_view near = nearest_name(key, names);
            fail(key, key, near.empty() ? Sentence(phrase("exchange", "a key of a map file"))
                                        : Sentence(phrase("exchange", "a key of a map file; the nearest is %1"), near));
        }
    }
    [[noreturn]] void fail(const std::string& key, Sentence found, Sentence expected) const {
        std::string path = path_;
        if (!key.empty()) path += (path_.empty() ? "" : ".") + key;
        throw InputError(Issue{{file_, 0, std::move(path)}, std::move(found), std::move(expected)});
    }

  private:
    const json& object_;
    std::string file_;
    std::string path_;
    std::vector<std::string> known_;
};

DateOrder date_order(Members& members) {
    const auto name = members.text("date_order");
    if (!name || *name == "iso") return DateOrder::iso;
    if (*name == "day_month_year") return DateOrder::day_month_year;
    if (*name == "month_day_year") return DateOrder::month_day_year;
    if (*name == "year_month_day") return DateOrder::year_month_day;
    members.fail("date_order", *name, phrase("exchange", "iso, day_month_year, month_day_year or year_month_day"));
}

std::optional<char> one_of(Members& members, const std::string& key, std::string_view known,
                           const Sentence& expected) {
    const auto text = members.text(key);
    if (!text) return std::nullopt;
    if (text->size() != 1 || known.find((*text)[0]) == std::string_view::npos) {
        members.fail(key, *text, expected);
    }
    return (*text)[0];
}

WideTable wide_table(const json& object, const std::string& file) {
    Members members(object, file, "wide");
    WideTable wide;
    const auto time = members.text("time");
    if (!time) members.fail("time", phrase("exchange", "nothing"), phrase("exchange", "the name of the column with the time"));
    wide.time = *time;
    wide.value = members.text("value").value_or("register");
    if (wide.value != "register" && wide.value != "volume") {
        members.fail("value", wide.value, phrase("exchange", "register or volume"));
    }
    if (const json* minutes = members.find("minutes")) {
        if (!minutes->is_number() || !(minutes->get<double>() > 0)) {
            members.fail("minutes", minutes->dump().substr(0, 60), phrase("exchange", "a number of minutes above zero"));
        }
        wide.minutes = minutes->get<double>();
    }
    if ((wide.value == "volume") != wide.minutes.has_value()) {
        members.fail("minutes", wide.minutes ? Sentence("minutes") : Sentence(phrase("exchange", "nothing")),
                     phrase("exchange", "minutes with volumes, and none with registers"));
    }
    wide.meters = members.texts("meters");
    if (wide.meters.empty()) {
        members.fail("meters", phrase("exchange", "nothing"), phrase("exchange", "at least one column and its meter"));
    }
    members.finish();
    return wide;
}

/// Where a column of theirs stands. Compared without regard to case and blanks at the ends.
std::size_t position_of(const RowSource& rows, const std::string& name) {
    const auto& header = rows.header();
    for (std::size_t i = 0; i < header.size(); ++i) {
        if (column_key(header[i]) == column_key(name)) return i;
    }
    std::vector<std::string_view> names(header.begin(), header.end());
    const std::string_view near = nearest_name(name, names);
    const Place place{rows.file(), rows.row(), name};
    throw InputError(Issue{place, phrase("exchange", "no such column"),
                           near.empty() ? Sentence(phrase("exchange", "the column that the map names"))
                                        : Sentence(phrase("exchange", "the column that the map names; the nearest is %1"), near)});
}

/// Columns under other names, without some, and with constant ones.
class RenamedRows : public RowSource {
  public:
    RenamedRows(std::unique_ptr<RowSource> base, const TableMap& map) : base_(std::move(base)) {
        std::map<std::size_t, std::string> names;
        for (const auto& [theirs, ours] : map.columns) names[position_of(*base_, theirs)] = ours;
        std::vector<bool> left_out(base_->header().size());
        for (const std::string& name : map.ignore) left_out[position_of(*base_, name)] = true;
        for (std::size_t i = 0; i < base_->header().size(); ++i) {
            if (left_out[i]) continue;
            const auto renamed = names.find(i);
            header_.push_back(renamed == names.end() ? base_->header()[i] : renamed->second);
            from_.push_back(i);
        }
        for (const auto& [ours, text] : map.constants) {
            header_.push_back(ours);
            constants_.push_back(text);
        }
    }
    const std::string& file() const override { return base_->file(); }
    const std::vector<std::string>& header() const override { return header_; }
    bool next() override {
        if (!base_->next()) return false;
        cells_.clear();
        if (base_->row_issue()) return true;
        for (std::size_t i : from_) cells_.push_back(base_->cells()[i]);
        for (const std::string& c : constants_) cells_.emplace_back(c);
        return true;
    }
    std::span<const std::string_view> cells() const override {
        return base_->row_issue() ? base_->cells() : std::span<const std::string_view>(cells_);
    }
    std::size_t row() const override { return base_->row(); }
    std::string column_name(std::size_t i) const override {
        return i < from_.size() ? base_->column_name(from_[i]) : header_[i];
    }
    const std::optional<Issue>& row_issue() const override { return base_->row_issue(); }
    double done() const override { return base_->done(); }
    std::vector<Sentence> notes() const override { return base_->notes(); }

  private:
    std::unique_ptr<RowSource> base_;
    std::vector<std::string> header_;
    std::vector<std::size_t> from_;
    std::vector<std::string> constants_;
    std::vector<std::string_view> cells_;
};

/// A table with a column for each meter as one with a row for each reading. An empty cell is no
/// reading.
class LongRows : public RowSource {
  public:
    LongRows(std::unique_ptr<RowSource> base, const TableMap& map)
        : base_(std::move(base)), missing_(map.format.missing) {
        const WideTable& wide = *map.wide;
        time_ = position_of(*base_, wide.time);
        std::vector<bool> used(base_->header().size());
        used[time_] = true;
        for (const auto& [theirs, code] : wide.meters) {
            const std::size_t at = position_of(*base_, theirs);
            used[at] = true;
            meters_.push_back({at, code});
        }
        std::sort(meters_.begin(), meters_.end());
        for (const std::string& name : map.ignore) used[position_of(*base_, name)] = true;
        for (std::size_t i = 0; i < used.size(); ++i) {
            if (used[i]) continue;
            const Place place{base_->file(), base_->row(), base_->header()[i]};
            throw InputError(Issue{place, base_->header()[i],
                                   phrase("exchange", "a column that the map gives a meter or ignores")});
        }
        header_ = {"meter", "time", wide.value};
        if (wide.minutes) {
            header_.emplace_back("minutes");
            minutes_ = units::format_shortest(*wide.minutes);
            if (map.format.decimal_mark == ',') std::replace(minutes_.begin(), minutes_.end(), '.', ',');
        }
        at_ = meters_.size();
    }
    const std::string& file() const override { return base_->file(); }
    const std::vector<std::string>& header() const override { return header_; }
    bool next() override {
        while (true) {
            if (++at_ >= meters_.size()) {
                if (!base_->next()) return false;
                at_ = 0;
                if (base_->row_issue()) {
                    at_ = meters_.size();
                    return true;
                }
            }
            const std::string_view cell = base_->cells()[meters_[at_].first];
            if (is_missing(cell)) continue;
            cells_ = {meters_[at_].second, base_->cells()[time_], cell};
            if (!minutes_.empty()) cells_.emplace_back(minutes_);
            return true;
        }
    }
    std::span<const std::string_view> cells() const override {
        return base_->row_issue() ? base_->cells() : std::span<const std::string_view>(cells_);
    }
    std::size_t row() const override { return base_->row(); }
    std::string column_name(std::size_t i) const override {
        if (i == 1) return base_->column_name(time_);
        return i == 2 ? base_->column_name(meters_[at_].first) : header_[i];
    }
    const std::optional<Issue>& row_issue() const override { return base_->row_issue(); }
    double done() const override { return base_->done(); }
    std::vector<Sentence> notes() const override { return base_->notes(); }

  private:
    bool is_missing(std::string_view cell) const {
        const std::size_t first = cell.find_first_not_of(" \t");
        if (first == std::string_view::npos) return true;
        const std::string_view text = cell.substr(first, cell.find_last_not_of(" \t") - first + 1);
        return std::find(missing_.begin(), missing_.end(), text) != missing_.end();
    }

    std::unique_ptr<RowSource> base_;
    std::vector<std::string> missing_;
    std::size_t time_ = 0;
    std::vector<std::pair<std::size_t, std::string>> meters_;
    std::vector<std::string> header_;
    std::string minutes_;
    std::size_t at_ = 0;
    std::vector<std::string_view> cells_;
};

}  // namespace

TableMap read_table_map(const std::filesystem::path& path) {
    const std::string file = path.string();
    const std::string text = read_text_file(path, largest_map, phrase("exchange", "a map file of at most 1 MiB"));
    screen_json(text, file, {JsonLimit{"", 20'000}});
    const json document = json::parse(text);
    Members members(document, file, "");
    const json* version = members.find("evenfall_map");
    if (version == nullptr || !version->is_number_integer() || version->get<int>() != 1) {
        members.fail("evenfall_map",
                     version == nullptr ? Sentence(phrase("exchange", "nothing")) : Sentence(version->dump().substr(0, 60)),
                     phrase("exchange", "1, the version of map files that this program knows"));
    }
    TableMap map;
    if (const auto kind = members.text("kind")) map.kind = kind_named(*kind);
    map.delimiter = one_of(members, "delimiter", ",;\t|", phrase("exchange", "a comma, semicolon, tab or |"));
    map.format.decimal_mark =
        one_of(members, "decimal_mark", ".,", phrase("exchange", "a point or a comma")).value_or('.');
    map.format.date_order = date_order(members);
    map.format.missing = members.list("missing");
    map.sheet = members.text("sheet").value_or("");
    map.columns = members.texts("columns");
    map.constants = members.texts("constants");
    map.ignore = members.list("ignore");
    map.crs = members.text("crs").value_or("");
    if (const auto unit = members.text("drawing_unit")) {
        map.drawing_unit = units::unit_named<units::Length>(*unit);
    }
    if (const json* wide = members.find("wide")) map.wide = wide_table(*wide, file);
    members.finish();
    if (map.wide && map.kind && *map.kind != Kind::readings) {
        members.fail("kind", std::string(name_of(*map.kind)), phrase("exchange", "readings for a wide table"));
    }
    if (map.wide && (!map.columns.empty() || !map.constants.empty())) {
        members.fail("wide", phrase("exchange", "wide beside columns or constants"), phrase("exchange", "one of the two shapes"));
    }
    return map;
}

std::unique_ptr<RowSource> mapped(std::unique_ptr<RowSource> rows, const TableMap& map) {
    if (map.wide) return std::make_unique<LongRows>(std::move(rows), map);
    if (map.columns.empty() && map.constants.empty() && map.ignore.empty()) return rows;
    return std::make_unique<RenamedRows>(std::move(rows), map);
}

}  // namespace evenfall::exchange
