// SPDX-License-Identifier: GPL-3.0-or-later
// How fast readings go into a book, against the sqlite3 shell loading the same rows into the same
// keyed table in the same run, and how fast monthly use comes out, against one SQL scan.
// Usage: import_bench [meters] [readings for each meter] [folder]
// Needs the program sqlite3 (Debian package sqlite3) on the path.
#include "core/exchange/import.h"
#include "core/meter/use.h"
#include "core/store/meter_store.h"
#include "core/units/number.h"

#include <SQLiteCpp/SQLiteCpp.h>

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <functional>
#include <iostream>
#include <string>
#include <vector>

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace evenfall;

namespace {

/// Processor seconds, user and system, of this process and of those it has waited for: on a busy
/// machine the clock on the wall says more about the neighbours than about the work.
double processor_seconds() {
    double sum = 0.0;
    for (const int who : {RUSAGE_SELF, RUSAGE_CHILDREN}) {
        rusage usage{};
        getrusage(who, &usage);
        for (const timeval& t : {usage.ru_utime, usage.ru_stime}) {
            sum += static_cast<double>(t.tv_sec) + 1e-6 * static_cast<double>(t.tv_usec);
        }
    }
    return sum;
}

double seconds_of(const std::function<void()>& work) {
    const double start = processor_seconds();
    work();
    return processor_seconds() - start;
}

/// Runs `work` in a process of its own, so that its peak memory is its own.
double seconds_apart(const std::function<void()>& work, long& peak_kib) {
    return seconds_of([&] {
        const pid_t child = fork();
        if (child == 0) {
            try {
                work();
                std::_Exit(0);
            } catch (const std::exception& e) {
                std::cerr << e.what() << '\n';
                std::_Exit(1);
            }
        }
        int status = 0;
        rusage usage{};
        wait4(child, &status, 0, &usage);
        peak_kib = usage.ru_maxrss;
        if (status != 0) std::exit(1);
    });
}

struct Size {
    int meters;
    int each;
};

/// Time order, as a logger writes: all meters of one hour, then the next hour.
void write_tables(const std::filesystem::path& folder, Size size) {
    std::ofstream(folder / "sites.csv")
        << "site,name,latitude,elevation_m\nS,Bench,38.5,20\n";
    std::ofstream meters(folder / "meters.csv");
    meters << "meter,site,unit\n";
    for (int m = 0; m < size.meters; ++m) meters << "M" << 10000 + m << ",S,m3\n";
    std::ofstream readings(folder / "readings.csv");
    std::ofstream plain(folder / "plain.csv");  // the shell converts nothing, so its keys are numbers
    readings << "meter,time,register\n";
    const calendar::Instant start = *calendar::parse_instant("2015-01-01T00:00:00Z");
    const bool daily = size.each < 5000;
    for (int i = 0; i < size.each; ++i) {
        const calendar::Instant at = daily ? start + std::chrono::days{i} : start + std::chrono::hours{i};
        const std::string time = calendar::format_instant(at);
        for (int m = 0; m < size.meters; ++m) {
            const std::string value = units::format_fixed(1000 + 0.37 * i + 0.01 * (m % 7), 2);
            readings << 'M' << 10000 + m << ',' << time << ',' << value << '\n';
            plain << m + 1 << ',' << at.time_since_epoch().count() << ",0,0," << value << ",1,1\n";
        }
    }
}

void run_shell(const std::filesystem::path& folder, const std::string& cache) {
    const auto db = folder / "shell.db";
    std::filesystem::remove(db);
    const std::string command =
        "sqlite3 " + db.string() + " 'pragma journal_mode=wal' 'pragma synchronous=full' " + cache +
        " 'CREATE TABLE reading (meter INTEGER NOT NULL, at INTEGER NOT NULL, span INTEGER NOT NULL,"
        " revision INTEGER NOT NULL, value REAL NOT NULL, kind INTEGER NOT NULL, import INTEGER,"
        " PRIMARY KEY (meter, at, span, revision)) STRICT, WITHOUT ROWID;' '.mode csv'"
        " '.import " + (folder / "plain.csv").string() + " reading' > /dev/null";
    if (std::system(command.c_str()) != 0) std::exit(1);
}

void import_tables(const std::filesystem::path& folder) {
    std::filesystem::remove(folder / "bench.evenfall");
    auto book = store::Book::create(folder / "bench.evenfall");
    const std::vector<std::filesystem::path> files{folder / "sites.csv", folder / "meters.csv",
                                                   folder / "readings.csv"};
    exchange::ImportOptions options;
    options.at = "2026-01-01T00:00:00Z";
    options.who = "bench";
    exchange::require_accepted(exchange::import_files(book, files, options));
}

/// Monthly use of every meter over ten years, from the book.
std::size_t monthly(const std::filesystem::path& file, double& sum) {
    const auto book = store::Book::open(file, store::Access::read_only);
    const calendar::TimeZone zone;
    std::size_t months = 0;
    for (const meter::Meter& m : store::meters(book, "")) {
        const auto readings = store::all_readings(book, m.code);
        for (const auto& use : meter::monthly_use(m, readings, zone, std::chrono::year{2015} / 1,
                                                  std::chrono::year{2024} / 12)) {
            if (!use.volume) continue;
            sum += use.volume->si();
            ++months;
        }
    }
    return months;
}

}  // namespace

int main(int argc, char** argv) {
    const Size size{argc > 1 ? std::atoi(argv[1]) : 500, argc > 2 ? std::atoi(argv[2]) : 2000};
    const std::filesystem::path folder =
        argc > 3 ? argv[3] : std::filesystem::temp_directory_path() / "evenfall-bench";
    std::filesystem::create_directories(folder);
    write_tables(folder, size);
    const double rows = static_cast<double>(size.meters) * size.each;
    std::cout << units::format_grouped(rows, 0) << " readings, "
              << std::filesystem::file_size(folder / "readings.csv") / 1'000'000 << " MB of CSV; times are processor seconds\n";

    long peak = 0;
    const double ours = seconds_apart([&] { import_tables(folder); }, peak);
    const double shell = seconds_of([&] { run_shell(folder, ""); });
    const double shell_cached = seconds_of([&] { run_shell(folder, "'pragma cache_size=-65536'"); });
    std::cout << "import:              " << ours << " s, " << rows / ours / 1e6 << " M rows/s, peak "
              << peak / 1024 << " MiB\n"
              << "sqlite3 shell:       " << shell << " s; our rate / its rate " << shell / ours << "\n"
              << "shell, 64 MiB cache: " << shell_cached << " s; our rate / its rate "
              << shell_cached / ours << "\n";

    double sum = 0.0;
    std::size_t months = 0;
    const double use = seconds_of([&] { months = monthly(folder / "bench.evenfall", sum); });
    double total = 0.0;
    const double scan = seconds_of([&] {
        SQLite::Database db((folder / "bench.evenfall").string());
        SQLite::Statement s(db, "SELECT meter, max(value) - min(value), count(*) FROM reading GROUP BY meter");
        while (s.executeStep()) total += s.getColumn(1).getDouble();
    });
    std::cout << "monthly use:         " << use << " s for " << months << " months of " << size.meters
              << " meters (" << sum << " m3)\n"
              << "one SQL scan:        " << scan << " s; ratio " << use / scan << "\n";
    std::filesystem::remove_all(folder);
    return 0;
}
