// SPDX-License-Identifier: GPL-3.0-or-later
// A batch of filings on two threads: filings per second, and the ratio to the bare work on the same
// files in the same run: unzip, parse the JSON, digest every file, on two threads.
// usage: bench_review_batch [FILINGS]
#include "app/workflow/review_batch.h"
#include "core/exchange/filing_file.h"
#include "tests/exchange/filing_temporary.h"
#include "tests/review/sample_filing.h"

#include <nlohmann/json.hpp>
#include <openssl/evp.h>
#include <sys/resource.h>
#include <zip.h>

#include <atomic>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <thread>

using namespace evenfall;

namespace {

double seconds_since(std::chrono::steady_clock::time_point start) {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

double peak_mib() {
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return static_cast<double>(usage.ru_maxrss) / 1024.0;
}

/// libzip, nlohmann::json and OpenSSL, and nothing else.
std::size_t bare(const std::filesystem::path& file) {
    std::size_t total = 0;
    zip_t* zip = zip_open(file.c_str(), ZIP_RDONLY, nullptr);
    std::string bytes;
    for (zip_int64_t i = 0; i < zip_get_num_entries(zip, 0); ++i) {
        zip_stat_t stat;
        zip_stat_index(zip, static_cast<zip_uint64_t>(i), 0, &stat);
        bytes.resize(stat.size);
        zip_file_t* in = zip_fopen_index(zip, static_cast<zip_uint64_t>(i), 0);
        zip_fread(in, bytes.data(), bytes.size());
        zip_fclose(in);
        unsigned char digest[32];
        EVP_Digest(bytes.data(), bytes.size(), digest, nullptr, EVP_sha256(), nullptr);
        total += digest[0];
        if (std::string_view(stat.name).ends_with("data/filing.json")) total += nlohmann::json::parse(bytes).size();
    }
    zip_discard(zip);
    return total;
}

}  // namespace

int main(int argc, char** argv) {
    const int count = argc > 1 ? std::atoi(argv[1]) : 1000;
    const tests::TemporaryFolder folder;
    std::vector<std::filesystem::path> files;
    std::uintmax_t bytes = 0;
    for (int i = 0; i < count; ++i) {
        tests::SampleChoices choices;
        choices.seed = static_cast<std::uint64_t>(i) + 1;
        tests::write_bytes(folder / "invoice.pdf", std::string(20000, static_cast<char>('a' + i % 26)) + std::to_string(i));
        files.push_back(folder / ("f" + std::to_string(i) + ".zip"));
        exchange::write_filing(files.back(), tests::sample_filing(choices), {{folder / "invoice.pdf", "invoice", ""}}, nullptr);
        bytes += std::filesystem::file_size(files.back());
    }
    std::printf("%d filings, %.1f kB each on average\n", count, static_cast<double>(bytes) / count / 1000.0);

    auto start = std::chrono::steady_clock::now();
    std::atomic<std::size_t> next{0};
    std::atomic<std::size_t> sum{0};
    {
        const auto work = [&] {
            for (std::size_t i = next++; i < files.size(); i = next++) sum += bare(files[i]);
        };
        const std::jthread other(work);
        work();
    }
    const double bare_s = seconds_since(start);
    const double before = peak_mib();

    workflow::ReviewOrder order{files, "rebate-sport-heads", false, 2, {}};
    start = std::chrono::steady_clock::now();
    const auto batch = workflow::review_batch(order, nullptr, {});
    const double whole_s = seconds_since(start);
    std::printf("bare unzip, parse, digest: %.2f s, %.0f filings/s (%zu)\n", bare_s, count / bare_s, sum.load());
    std::printf("review: %.2f s, %.0f filings/s, ratio %.2f; approve %zu, decline %zu, send more %zu, refused %zu\n", whole_s,
                count / whole_s, whole_s / bare_s, batch.approve, batch.decline, batch.send_more, batch.refused);
    std::printf("peak memory %.0f MiB before the review, %.0f MiB after\n", before, peak_mib());
}
