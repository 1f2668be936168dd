// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/plan_store.h"

#include "core/plan/assumption.h"
#include "core/plan/check_plan.h"
#include "core/store/database.h"

#include <algorithm>

namespace evenfall::store {
namespace {

using plan::Plan;
using plan::Polygon;

enum class Ground : int { turf = 1, no_water = 2, obstacle = 3 };  ///< stored: frozen
enum class Line : int { pipe = 1, lane = 2, pivot = 3 };           ///< stored: frozen

class Writer {
  public:
    Writer(SQLite::Database& db, std::int64_t id) : db_(db), id_(id) {}

    void write(const Plan& p) {
        outlines(Ground::turf, p.turf);
        outlines(Ground::no_water, p.no_water);
        outlines(Ground::obstacle, p.obstacles);
        heads(p.heads);
        nozzles(p.nozzles);
        profiles(p.profiles);
        lines(p);
        SQLite::Statement add(db_, "INSERT INTO design_assumed VALUES (?,?,?)");
        for (std::size_t i = 0; i < p.assumed.size(); ++i) {
            start(add);
            add.bind(2, static_cast<std::int64_t>(i + 1));
            add.bind(3, p.assumed[i].english());
            add.exec();
        }
    }

  private:
    void start(SQLite::Statement& s) const {
        s.reset();
        s.clearBindings();
        s.bind(1, id_);
    }

    void outlines(Ground kind, const std::vector<Polygon>& polygons) {
        SQLite::Statement add(db_, "INSERT INTO design_outline VALUES (?,?,?,?,?,?,?)");
        for (std::size_t p = 0; p < polygons.size(); ++p) {
            for (std::size_t r = 0; r < polygons[p].size(); ++r) {
                for (std::size_t i = 0; i < polygons[p][r].size(); ++i) {
                    start(add);
                    add.bind(2, static_cast<int>(kind));
                    add.bind(3, static_cast<std::int64_t>(p));
                    add.bind(4, static_cast<std::int64_t>(r));
                    add.bind(5, static_cast<std::int64_t>(i));
                    add.bind(6, polygons[p][r][i].x);
                    add.bind(7, polygons[p][r][i].y);
                    add.exec();
                }
            }
        }
    }

    void heads(const std::vector<plan::Head>& all) {
        SQLite::Statement add(db_, "INSERT INTO design_head VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?)");
        for (std::size_t i = 0; i < all.size(); ++i) {
            const plan::Head& h = all[i];
            start(add);
            add.bind(2, static_cast<std::int64_t>(i + 1));
            add.bind(3, h.id);
            add.bind(4, h.x);
            add.bind(5, h.y);
            bind_number(add, 6, h.radius);
            bind_number(add, 7, h.flow);
            bind_text(add, 8, h.nozzle);
            bind_number(add, 9, h.pressure);
            add.bind(10, h.arc);
            add.bind(11, h.facing);
            bind_text(add, 12, h.station);
            add.bind(13, h.profile);
            add.exec();
        }
    }

    void nozzles(const std::vector<plan::Nozzle>& all) {
        SQLite::Statement add(db_, "INSERT INTO design_nozzle VALUES (?,?,?,?)");
        SQLite::Statement add_row(db_, "INSERT INTO design_nozzle_row VALUES (?,?,?,?,?)");
        for (const plan::Nozzle& n : all) {
            start(add);
            add.bind(2, n.name);
            bind_number(add, 3, n.lowest);
            bind_number(add, 4, n.highest);
            add.exec();
            for (const plan::NozzleRow& r : n.rows) {
                start(add_row);
                add_row.bind(2, n.name);
                add_row.bind(3, r.pressure);
                add_row.bind(4, r.radius);
                add_row.bind(5, r.flow);
                add_row.exec();
            }
        }
    }

    void profiles(const std::vector<plan::MeasuredLeg>& all) {
        SQLite::Statement add(db_, "INSERT INTO design_profile VALUES (?,?,?,?)");
        for (const plan::MeasuredLeg& leg : all) {
            for (const auto& r : leg.readings) {
                start(add);
                add.bind(2, leg.name);
                add.bind(3, r.distance);
                add.bind(4, r.rate);
                add.exec();
            }
        }
    }

    void line_point(Line kind, std::size_t number, std::size_t point, const std::string& name, const std::string& size,
                    double x, std::optional<double> y) {
        SQLite::Statement add(db_, "INSERT INTO design_line VALUES (?,?,?,?,?,?,?,?)");
        start(add);
        add.bind(2, static_cast<int>(kind));
        add.bind(3, static_cast<std::int64_t>(number));
        add.bind(4, static_cast<std::int64_t>(point));
        bind_text(add, 5, name);
        bind_text(add, 6, size);
        add.bind(7, x);
        bind_number(add, 8, y);
        add.exec();
    }

    void lines(const Plan& p) {
        for (std::size_t n = 0; n < p.pipes.size(); ++n) {
            const auto& path = p.pipes[n].path;
            for (std::size_t i = 0; i < path.size(); ++i) line_point(Line::pipe, n, i, p.pipes[n].id, p.pipes[n].size, path[i].x, path[i].y);
        }
        for (std::size_t n = 0; n < p.lanes.size(); ++n) {
            const auto& path = p.lanes[n].path;
            for (std::size_t i = 0; i < path.size(); ++i) line_point(Line::lane, n, i, p.lanes[n].id, "", path[i].x, path[i].y);
        }
        for (std::size_t n = 0; n < p.pivots.size(); ++n) {
            const plan::Pivot& v = p.pivots[n];
            line_point(Line::pivot, n, 0, v.id, "", v.centre.x, v.centre.y);
            for (std::size_t i = 0; i < v.spans.size(); ++i) line_point(Line::pivot, n, i + 1, v.id, "", v.spans[i], std::nullopt);
        }
    }

    SQLite::Database& db_;
    std::int64_t id_;
};

class Reader {
  public:
    Reader(SQLite::Database& db, std::int64_t id) : db_(db), id_(id) {}

    void read(Plan& p) {
        outlines(p);
        heads(p);
        nozzles(p);
        profiles(p);
        lines(p);
        SQLite::Statement rows(db_, "SELECT sentence FROM design_assumed WHERE plan = ? ORDER BY number");
        rows.bind(1, id_);
        while (rows.executeStep()) p.assumed.push_back(plan::kept_assumption(text_in(rows.getColumn(0))));
    }

  private:
    void outlines(Plan& p) {
        SQLite::Statement rows(db_, "SELECT kind, polygon, ring, x, y FROM design_outline WHERE plan = ?"
                                    " ORDER BY kind, polygon, ring, point");
        rows.bind(1, id_);
        while (rows.executeStep()) {
            const auto kind = static_cast<Ground>(rows.getColumn(0).getInt());
            auto& polygons = kind == Ground::turf ? p.turf : kind == Ground::no_water ? p.no_water : p.obstacles;
            // Numbers run on from 0: a polygon or ring that is not there yet is the next one.
            if (static_cast<std::size_t>(rows.getColumn(1).getInt64()) >= polygons.size()) polygons.emplace_back();
            Polygon& polygon = polygons.back();
            if (static_cast<std::size_t>(rows.getColumn(2).getInt64()) >= polygon.size()) polygon.emplace_back();
            polygon.back().push_back({rows.getColumn(3).getDouble(), rows.getColumn(4).getDouble()});
        }
    }

    void heads(Plan& p) {
        SQLite::Statement rows(db_, "SELECT head, x, y, radius, flow, nozzle, pressure, arc, facing, station, profile"
                                    " FROM design_head WHERE plan = ? ORDER BY number");
        rows.bind(1, id_);
        while (rows.executeStep()) {
            plan::Head h;
            h.id = text_in(rows.getColumn(0));
            h.x = rows.getColumn(1).getDouble();
            h.y = rows.getColumn(2).getDouble();
            h.radius = number_in(rows.getColumn(3));
            h.flow = number_in(rows.getColumn(4));
            h.nozzle = text_in(rows.getColumn(5));
            h.pressure = number_in(rows.getColumn(6));
            h.arc = rows.getColumn(7).getDouble();
            h.facing = rows.getColumn(8).getDouble();
            h.station = text_in(rows.getColumn(9));
            h.profile = text_in(rows.getColumn(10));
            p.heads.push_back(std::move(h));
        }
    }

    void nozzles(Plan& p) {
        SQLite::Statement rows(db_, "SELECT n.nozzle, n.lowest, n.highest, r.pressure, r.radius, r.flow FROM design_nozzle n"
                                    " JOIN design_nozzle_row r ON r.plan = n.plan AND r.nozzle = n.nozzle"
                                    " WHERE n.plan = ? ORDER BY n.nozzle, r.pressure");
        rows.bind(1, id_);
        while (rows.executeStep()) {
            const std::string name = text_in(rows.getColumn(0));
            if (p.nozzles.empty() || p.nozzles.back().name != name) {
                p.nozzles.push_back({name, {}, number_in(rows.getColumn(1)), number_in(rows.getColumn(2))});
            }
            p.nozzles.back().rows.push_back(
                {rows.getColumn(3).getDouble(), rows.getColumn(4).getDouble(), rows.getColumn(5).getDouble()});
        }
    }

    void profiles(Plan& p) {
        SQLite::Statement rows(db_, "SELECT profile, distance, rate FROM design_profile WHERE plan = ? ORDER BY profile, distance");
        rows.bind(1, id_);
        while (rows.executeStep()) {
            const std::string name = text_in(rows.getColumn(0));
            if (p.profiles.empty() || p.profiles.back().name != name) p.profiles.push_back({name, {}});
            p.profiles.back().readings.push_back({rows.getColumn(1).getDouble(), rows.getColumn(2).getDouble()});
        }
    }

    void lines(Plan& p) {
        SQLite::Statement rows(db_, "SELECT kind, point, line, size, x, y FROM design_line WHERE plan = ? ORDER BY kind, number, point");
        rows.bind(1, id_);
        while (rows.executeStep()) {
            const auto kind = static_cast<Line>(rows.getColumn(0).getInt());
            const bool first = rows.getColumn(1).getInt64() == 0;
            const std::string name = text_in(rows.getColumn(2));
            const double x = rows.getColumn(4).getDouble();
            const double y = rows.getColumn(5).isNull() ? 0.0 : rows.getColumn(5).getDouble();
            if (kind == Line::pipe) {
                if (first) p.pipes.push_back({name, {}, text_in(rows.getColumn(3))});
                p.pipes.back().path.push_back({x, y});
            } else if (kind == Line::lane) {
                if (first) p.lanes.push_back({name, {}});
                p.lanes.back().path.push_back({x, y});
            } else if (first) {
                p.pivots.push_back({name, {x, y}, {}});
            } else {
                p.pivots.back().spans.push_back(x);
            }
        }
    }

    SQLite::Database& db_;
    std::int64_t id_;
};

}  // namespace

std::vector<std::string> plan_codes(const Book& book, const std::string& site) {
    return in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement rows(db, "SELECT DISTINCT p.code FROM design_plan p JOIN site s ON s.id = p.site"
                                   " WHERE ?1 = '' OR s.code = ?1 ORDER BY p.code");
        rows.bind(1, site);
        std::vector<std::string> codes;
        while (rows.executeStep()) codes.push_back(text_in(rows.getColumn(0)));
        return codes;
    });
}

std::optional<StoredPlan> find_plan(const Book& book, const std::string& code) {
    return in_book(book, [&](SQLite::Database& db) -> std::optional<StoredPlan> {
        SQLite::Statement row(db, "SELECT p.id, s.code, p.revision, p.name, p.length_unit, p.flow_unit, p.pressure_unit"
                                  " FROM design_plan p JOIN site s ON s.id = p.site WHERE p.code = ?"
                                  " ORDER BY p.revision DESC LIMIT 1");
        row.bind(1, code);
        if (!row.executeStep()) return std::nullopt;
        StoredPlan out;
        out.code = code;
        out.site = text_in(row.getColumn(1));
        out.revision = row.getColumn(2).getInt();
        out.plan.name = text_in(row.getColumn(3));
        out.plan.units = {units::unit_named<units::Length>(text_in(row.getColumn(4))),
                          units::unit_named<units::Flow>(text_in(row.getColumn(5))),
                          units::unit_named<units::Pressure>(text_in(row.getColumn(6)))};
        Reader(db, row.getColumn(0).getInt64()).read(out.plan);
        return out;
    });
}

int add_plan(Book& book, const std::string& code, const std::string& site, const Plan& plan,
             std::optional<std::int64_t> import) {
    plan::require_sound(plan);
    const std::int64_t site_id = required_id(book, "site", site);
    return in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement last(db, "SELECT site, revision FROM design_plan WHERE code = ? ORDER BY revision DESC LIMIT 1");
        last.bind(1, code);
        int revision = 0;
        if (last.executeStep()) {
            if (last.getColumn(0).getInt64() != site_id) {
                throw BookError({phrase("store", "The plan %1 belongs to another site; take another code."), code});
            }
            revision = last.getColumn(1).getInt() + 1;
        }
        SQLite::Statement add(db, "INSERT INTO design_plan (code, revision, site, name, length_unit, flow_unit, pressure_unit,"
                                  " import) VALUES (?,?,?,?,?,?,?,?)");
        add.bind(1, code);
        add.bind(2, revision);
        add.bind(3, site_id);
        bind_text(add, 4, plan.name);
        add.bind(5, std::string(plan.units.length.name));
        add.bind(6, std::string(plan.units.flow.name));
        add.bind(7, std::string(plan.units.pressure.name));
        bind_id(add, 8, import);
        add.exec();
        Writer(db, db.getLastInsertRowid()).write(plan);
        return revision;
    });
}

}  // namespace evenfall::store
