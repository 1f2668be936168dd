// SPDX-License-Identifier: GPL-3.0-or-later
// However a sequence of readings is cut into files, in whatever order and however often they
// come in, the book holds the same. CONSTRUCTED, from a fixed seed.
#include "core/calendar/date.h"
#include "core/exchange/import.h"
#include "core/units/number.h"
#include "tests/support/book_rows.h"
#include "tests/support/draw.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cstdint>
#include <string>
#include <vector>

using namespace evenfall;
using namespace evenfall::exchange;
using tests::Scratch;
using Path = std::filesystem::path;
using tests::Draw;

namespace {

struct Line {
    bool logged;
    std::string text;
};

/// Registers and logged volumes of three meters, some estimated, some at the same moment.
std::vector<Line> lines(Draw& draw) {
    std::vector<Line> out;
    for (const char* meter : {"A", "B", "C"}) {
        double value = 100;
        calendar::Instant at = *calendar::parse_instant("2024-03-08T00:00:00Z");
        for (int i = 0; i < 40; ++i) {
            at += std::chrono::minutes{15 * static_cast<int>(1 + draw.below(200))};
            value += static_cast<double>(draw.below(1000)) / 8;
            const std::string end = calendar::format_instant(at);
            out.push_back({false, std::string(meter) + "," + end + "," + units::format_shortest(value) +
                                      (draw.below(5) == 0 ? ",estimated" : ",measured")});
            if (draw.below(3) == 0) {
                out.push_back({true, std::string(meter) + "," +
                                         calendar::format_instant(at - std::chrono::minutes{15}) + "," +
                                         end + "," + std::to_string(draw.below(50)) + ",measured"});
            }
        }
    }
    return out;
}

class Desk {
  public:
    Desk() : book_(store::Book::create(scratch_ / "b.evenfall")) {
        put({scratch_.write("s.csv", "site,name,latitude,elevation_m,time_zone\nS,S,40,1,\"MST7MDT,M3.2.0,M11.1.0\"\n"),
             scratch_.write("m.csv", "meter,site,unit\nA,S,gal\nB,S,m3\nC,S,ccf\n")});
    }
    void put(const std::vector<Path>& files) {
        ImportOptions options;
        options.at = "2026-01-01T00:00:00Z";
        require_accepted(import_files(book_, files, options));
    }
    Path file(const std::vector<Line>& some, bool logged) {
        std::string text = logged ? "meter,start,end,volume,kind\n" : "meter,time,register,kind\n";
        for (const Line& l : some) {
            if (l.logged == logged) text += l.text + "\n";
        }
        return scratch_.write(std::to_string(next_++) + ".csv", text);
    }
    /// Everything in the book, whatever the files it came in.
    std::string all() const { return tests::book_rows(book_.file()); }
    bool sound() const { return book_.integrity_problems().empty(); }

  private:
    Scratch scratch_;
    store::Book book_;
    int next_ = 0;
};

bool any(const std::vector<Line>& some, bool logged) {
    for (const Line& l : some) {
        if (l.logged == logged) return true;
    }
    return false;
}

}  // namespace

TEST_CASE("any split, order and repeat of readings gives the same book", "[exchange][constructed]") {
    Draw draw(7);
    for (int trial = 0; trial < 12; ++trial) {
        CAPTURE(trial);
        const std::vector<Line> whole = lines(draw);
        Desk once;
        once.put({once.file(whole, false), once.file(whole, true)});
        const auto expected = once.all();
        REQUIRE(std::count(expected.begin(), expected.end(), '\n') >= 3 * 40 + 4);

        Desk pieces;
        std::vector<std::vector<Line>> parts(1 + draw.below(6));
        for (const Line& l : whole) {
            parts[draw.below(parts.size())].push_back(l);
            while (draw.below(4) == 0) parts[draw.below(parts.size())].push_back(l);  // and again
        }
        std::vector<Path> files;
        for (auto& part : parts) {
            draw.shuffle(part);
            for (bool logged : {false, true}) {
                if (any(part, logged)) files.push_back(pieces.file(part, logged));
            }
        }
        draw.shuffle(files);
        if (draw.below(2) == 0) {
            pieces.put(files);
        } else {
            for (const Path& f : files) pieces.put({f});
        }
        if (draw.below(2) == 0) pieces.put({files.front(), files.back()});
        const bool same = pieces.all() == expected;  // apart, so that a failure does not print the books
        CHECK(same);
        CHECK(pieces.sound());
    }
}
