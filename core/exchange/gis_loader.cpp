// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/gis_loader.h"

#include "core/exchange/utf8.h"
#include "core/site/shapes.h"
#include "core/units/number.h"

#include <algorithm>
#include <cstdlib>
#include <dlfcn.h>

namespace evenfall::exchange {
namespace {

constexpr const char* module_name = "evenfall-gis.so";

std::vector<std::filesystem::path> places() {
    std::vector<std::filesystem::path> all;
    if (const char* named = std::getenv("EVENFALL_MODULES")) all.emplace_back(named);
    std::error_code error;
    const auto program = std::filesystem::read_symlink("/proc/self/exe", error);
    if (!error) {
        all.push_back(program.parent_path());
        all.push_back(program.parent_path().parent_path() / "lib" / "evenfall");
    }
    return all;
}

const gis::Module* load() {
    for (const auto& folder : places()) {
        const auto file = folder / module_name;
        std::error_code error;
        if (!std::filesystem::is_regular_file(file, error)) continue;
        void* library = dlopen(file.c_str(), RTLD_NOW | RTLD_LOCAL);
        if (library == nullptr) continue;
        using Entry = const gis::Module* (*)();
        void* symbol = dlsym(library, "evenfall_gis_module");
        if (symbol == nullptr) continue;
        const gis::Module* module = reinterpret_cast<Entry>(symbol)();
        if (module->version() == gis::interface_version) return module;
    }
    return nullptr;
}

[[noreturn]] void fail(const std::string& file, const Sentence& expected) {
    const Place place{file, 0, ""};
    throw InputError(Issue{place, std::filesystem::path(file).filename().string(), expected});
}

/// Shared by sheets and outlines: cells kept as text, checked for UTF-8.
class TextRows : public RowSource {
  public:
    const std::string& file() const override { return file_; }
    const std::vector<std::string>& header() const override { return header_; }
    std::span<const std::string_view> cells() const override { return views_; }
    const std::optional<Issue>& row_issue() const override { return issue_; }

  protected:
    void show(const std::vector<std::string>& cells) {
        views_.assign(cells.begin(), cells.end());
        issue_.reset();
        for (std::size_t i = 0; i < views_.size() && !issue_; ++i) {
            if (first_bad_byte(views_[i]) == std::string_view::npos) continue;
            const Place place{file_, row(), header_[i]};
            issue_ = Issue{place, std::string(views_[i]), phrase("exchange", "UTF-8 text")};
        }
    }
    std::string file_;
    std::vector<std::string> header_;
    std::vector<std::string_view> views_;
    std::optional<Issue> issue_;
};

class WorkbookRows final : public TextRows {
  public:
    WorkbookRows(const std::filesystem::path& path, const std::string& sheet) {
        file_ = path.string();
        try {
            sheet_ = gis_module().open_sheet(file_, sheet);
        } catch (const gis::Failure& e) {
            fail(file_, e.sentence());
        }
        for (const std::string& h : sheet_->header()) {
            if (std::find(header_.begin(), header_.end(), h) != header_.end()) {
                fail(file_, {phrase("exchange", "each column once, and \"%1\" stands twice"), h});
            }
            header_.push_back(h);
        }
        if (header_.empty()) fail(file_, phrase("exchange", "a sheet with a header row"));
    }
    bool next() override {
        try {
            while (sheet_->next(cells_)) {
                const auto empty = [](const std::string& c) { return c.empty(); };
                if (std::all_of(cells_.begin(), cells_.end(), empty)) continue;
                show(cells_);
                return true;
            }
            return false;
        } catch (const gis::Failure& e) {
            const Place place{file_, sheet_->row(), ""};
            throw InputError(Issue{place, phrase("exchange", "a sheet that breaks off"), e.sentence()});
        }
    }
    std::size_t row() const override { return sheet_->row(); }
    double done() const override { return std::min(1.0, sheet_->done()); }

  private:
    std::unique_ptr<gis::Sheet> sheet_;
    std::vector<std::string> cells_;
};

std::string geojson(const std::vector<gis::Polygon>& polygons) {
    std::string out = R"({"type":"MultiPolygon","coordinates":[)";
    for (std::size_t p = 0; p < polygons.size(); ++p) {
        out += p == 0 ? "[" : ",[";
        for (std::size_t r = 0; r < polygons[p].size(); ++r) {
            out += r == 0 ? "[" : ",[";
            for (std::size_t i = 0; i < polygons[p][r].size(); ++i) {
                if (i != 0) out += ',';
                out.append("[").append(units::format_shortest(polygons[p][r][i][0]));
                out.append(",").append(units::format_shortest(polygons[p][r][i][1])).append("]");
            }
            out += ']';
        }
        out += ']';
    }
    return out + "]}";
}

class OutlineRows final : public TextRows {
  public:
    OutlineRows(const std::filesystem::path& path, const TableMap& map) {
        file_ = path.string();
        try {
            outlines_ = gis_module().read_outlines(file_, map.crs);
        } catch (const gis::Failure& e) {
            fail(file_, e.sentence());
        }
        if (!outlines_.geographic && !map.drawing_unit) {
            fail(file_, phrase("exchange", "a reference system: the file names none. Name \"crs\" in a map, or "
                        "\"drawing_unit\" when it is a plane drawing"));
        }
        if (map.drawing_unit) unit_ = map.drawing_unit->unit;
        choose_columns(map);
    }
    bool next() override {
        if (at_ == outlines_.features.size()) return false;
        const gis::Feature& feature = outlines_.features[at_++];
        cells_.assign(header_.size(), "");
        for (std::size_t i = 0; i < kept_.size(); ++i) {
            for (const auto& [name, text] : feature.attributes) {
                if (name == kept_[i]) cells_[i] = text;
            }
        }
        Sentence problem = feature.problem;
        if (problem.empty()) problem = measure(feature);
        show(cells_);
        if (!problem.empty()) {
            const Place place{file_, at_, ""};
            issue_ = Issue{place, cells_.front(), {phrase("exchange", "a valid outline; %1"), problem}};
        }
        return true;
    }
    std::size_t row() const override { return at_; }
    double done() const override {
        return static_cast<double>(at_) / static_cast<double>(outlines_.features.size());
    }
    std::vector<Sentence> notes() const override {
        if (left_out_.empty()) return {};
        return {Sentence(phrase("exchange", "%1: attributes that are no columns of the areas table were left out: %2"), file_,
                         left_out_)};
    }

  private:
    void choose_columns(const TableMap& map) {
        const KindSpec& areas = spec_of(Kind::areas);
        for (const gis::Feature& f : outlines_.features) {
            for (const auto& [name, text] : f.attributes) {
                if (std::find(seen_.begin(), seen_.end(), name) != seen_.end()) continue;
                seen_.push_back(name);
                const bool known = std::any_of(areas.columns.begin(), areas.columns.end(), [&](const auto& c) {
                    return c.name == column_key(name);
                });
                if (known || map.columns.contains(name)) {
                    kept_.push_back(name);
                } else {
                    left_out_ += (left_out_.empty() ? "" : ", ") + printable(name);
                }
            }
        }
        header_ = kept_;
        header_.emplace_back("outline");
        header_.emplace_back("outline_m2");
    }
    /// Fills in outline and size; says what is wrong with it otherwise.
    Sentence measure(const gis::Feature& feature) {
        try {
            const units::Area size = outlines_.geographic
                                         ? site::area_on_ellipsoid(feature.polygons)
                                         : site::area_on_plane(feature.polygons, unit_);
            cells_[kept_.size() + 1] = units::format_shortest(size.in(units::square_metre));
        } catch (const InputError& e) {
            return {phrase("exchange", "it has %1"), e.issues().front().found};
        }
        cells_[kept_.size()] = geojson(feature.polygons);
        return {};
    }

    gis::Outlines outlines_;
    units::Length unit_ = units::metre;
    std::size_t at_ = 0;
    std::vector<std::string> seen_;
    std::vector<std::string> kept_;
    std::string left_out_;
    std::vector<std::string> cells_;
};

}  // namespace

FileForm form_of(const std::filesystem::path& path) {
    const std::string ending = column_key(path.extension().string());
    if (ending == ".xlsx" || ending == ".ods") return FileForm::workbook;
    for (const char* known : {".geojson", ".shp", ".zip", ".kml", ".kmz", ".gpkg", ".dxf"}) {
        if (ending == known) return FileForm::map;
    }
    return FileForm::text;
}

const gis::Module& gis_module() {
    static const gis::Module* const module = load();
    if (module == nullptr) {
        throw InputError(module_name, phrase("exchange", "the module for workbooks and maps, installed beside the program"));
    }
    return *module;
}

std::unique_ptr<RowSource> workbook_rows(const std::filesystem::path& path, const std::string& sheet) {
    return std::make_unique<WorkbookRows>(path, sheet);
}

std::unique_ptr<RowSource> outline_rows(const std::filesystem::path& path, const TableMap& map) {
    return std::make_unique<OutlineRows>(path, map);
}

}  // namespace evenfall::exchange
