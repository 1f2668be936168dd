// SPDX-License-Identifier: GPL-3.0-or-later
// An import that is killed, runs out of disk or meets a folder it may not write: the book holds
// all of it or nothing, and is sound. All CONSTRUCTED.
#include "core/exchange/import.h"
#include "core/store/meter_store.h"
#include "core/units/number.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>

#include <csignal>
#include <cstdint>
#include <functional>
#include <thread>

#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace evenfall;
using namespace evenfall::exchange;
using tests::bytes_of;
using tests::Scratch;
using Path = std::filesystem::path;

namespace {

constexpr int rows = 6000;
constexpr int kills_wanted = 200;

void import_into(const Path& book_file, const Path& table) {
    auto book = store::Book::open(book_file, store::Access::read_write);
    ImportOptions options;
    options.at = "2026-01-01T00:00:00Z";
    const std::vector<Path> files{table};
    require_accepted(import_files(book, files, options));
}

/// A book with two meters and nothing read yet, and a table of readings for it.
struct Setting {
    Setting() : book(scratch / "b.evenfall"), table(scratch / "readings.csv") {
        { store::Book::create(book); }
        import_into(book, scratch.write("sites.csv", "site,name,latitude,elevation_m\nS,Site,40,1\n"));
        import_into(book, scratch.write("meters.csv", "meter,site,unit\nA,S,m3\nB,S,m3\n"));
        std::string text = "meter,time,register\n";
        for (int i = 0; i < rows / 2; ++i) {
            const auto at = *calendar::parse_instant("2024-01-01T00:00:00Z") + std::chrono::hours{i};
            for (const char* meter : {"A,", "B,"}) {
                text += meter + calendar::format_instant(at) + "," + std::to_string(i) + "\n";
            }
        }
        scratch.write("readings.csv", text);
    }
    std::int64_t count() const {
        const auto opened = store::Book::open(book, store::Access::read_write);
        CHECK(opened.integrity_problems().empty());
        return store::count_readings(opened, "A") + store::count_readings(opened, "B");
    }
    Scratch scratch;
    Path book;
    Path table;
};

/// Runs `work` in another process; 0 done, 1 BookError, 2 another error.
pid_t apart(const std::function<void()>& work) {
    const pid_t child = fork();
    if (child != 0) return child;
    try {
        work();
        ::_exit(0);
    } catch (const store::BookError& e) {
        ::_exit(std::string(e.what()).empty() ? 2 : 1);
    } catch (...) {
        ::_exit(2);
    }
}

int status_of(pid_t child) {
    int status = 0;
    ::waitpid(child, &status, 0);
    return status;
}

void copy_book(const Path& from, const Path& to) {
    for (const char* tail : {"", "-wal", "-shm"}) {
        std::filesystem::remove(to.string() + tail);
    }
    std::filesystem::copy_file(from, to);
}

}  // namespace

TEST_CASE("two hundred kills in the middle of an import", "[exchange][constructed][kill]") {
    Setting s;
    const Path clean = s.scratch / "clean.evenfall";
    std::filesystem::copy_file(s.book, clean);
    const auto start = std::chrono::steady_clock::now();
    REQUIRE(status_of(apart([&] { import_into(s.book, s.table); })) == 0);
    auto whole = std::chrono::duration_cast<std::chrono::microseconds>(
                     std::chrono::steady_clock::now() - start).count();
    REQUIRE(s.count() == rows);

    std::uint64_t state = 20240817;
    int killed = 0;
    int none = 0;
    int all = 0;
    for (int trial = 0; killed < kills_wanted && trial < 20 * kills_wanted; ++trial) {
        copy_book(clean, s.book);
        const pid_t child = apart([&] { import_into(s.book, s.table); });
        state = state * 6364136223846793005ULL + 1442695040888963407ULL;
        const auto wait = static_cast<std::int64_t>(state >> 33U) % (whole + 1);
        std::this_thread::sleep_for(std::chrono::microseconds{wait});
        ::kill(child, SIGKILL);
        const int status = status_of(child);
        if (WIFSIGNALED(status)) {
            ++killed;
        } else {
            whole = whole * 9 / 10 + 1;  // it ended first: aim earlier
        }
        const std::int64_t found = s.count();
        CAPTURE(trial, wait, found);
        REQUIRE((found == 0 || found == rows));
        (found == 0 ? none : all) += 1;
    }
    CHECK(killed == kills_wanted);
    CHECK(none > 0);
    // What a kill left behind does not stop the import from being done again.
    if (s.count() == 0) import_into(s.book, s.table);
    CHECK(s.count() == rows);
}

TEST_CASE("a full disk leaves the book as it was", "[exchange][constructed]") {
    Setting s;
    const auto before = bytes_of(s.book);
    for (const int room_kib : {8, 32, 64}) {
        const pid_t child = apart([&] {
            // Writing past this size fails in this process as it would on a full disk.
            std::signal(SIGXFSZ, SIG_IGN);
            const rlimit limit{static_cast<rlim_t>(room_kib) * 1024, static_cast<rlim_t>(room_kib) * 1024};
            ::setrlimit(RLIMIT_FSIZE, &limit);
            import_into(s.book, s.table);
        });
        const int status = status_of(child);
        REQUIRE(WIFEXITED(status));
        CAPTURE(room_kib);
        CHECK(WEXITSTATUS(status) == 1);  // a BookError, with a sentence
        CHECK(s.count() == 0);
        const bool same = bytes_of(s.book) == before;
        CHECK(same);
    }
    import_into(s.book, s.table);
    CHECK(s.count() == rows);
}

TEST_CASE("a folder that cannot be written", "[exchange][constructed]") {
    Setting s;
    const auto before = bytes_of(s.book);
    ::chmod(s.book.c_str(), 0444);
    ::chmod(s.scratch.folder().c_str(), 0555);
    const auto as_nobody = [](const std::function<void()>& work) {
        return status_of(apart([&] {
            // The administrator may write anywhere, so the test steps down first.
            if (::geteuid() == 0 && (::setgid(65534) != 0 || ::setuid(65534) != 0)) ::_exit(3);
            work();
        }));
    };
    const int write = as_nobody([&] { import_into(s.book, s.table); });
    REQUIRE(WIFEXITED(write));
    CHECK(WEXITSTATUS(write) == 1);
    const int read = as_nobody([&] {
        const auto book = store::Book::open(s.book, store::Access::read_only);
        if (store::meters(book, "").size() != 2) ::_exit(4);
    });
    REQUIRE(WIFEXITED(read));
    CHECK(WEXITSTATUS(read) == 0);
    const int make = as_nobody([&] { store::Book::create(s.scratch / "new.evenfall"); });
    CHECK(WEXITSTATUS(make) == 1);
    ::chmod(s.scratch.folder().c_str(), 0755);
    ::chmod(s.book.c_str(), 0644);
    const bool same = bytes_of(s.book) == before;
    CHECK(same);
}
