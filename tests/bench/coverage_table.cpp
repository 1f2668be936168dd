// SPDX-License-Identifier: GPL-3.0-or-later
// Counts how often 90 % intervals hold the truth on fields of known uniformity and prints the
// table that stands in tests/published/coverage.csv.
//
//     coverage_table [TESTS] [RESAMPLES]
#include "core/audit/resample.h"
#include "core/stats/parallel.h"
#include "tests/audit/known_fields.h"

#include <array>
#include <cstdio>
#include <cstdlib>

using namespace evenfall;
using namespace evenfall::audit;

namespace {

struct Hits {
    std::array<unsigned, 4> figure{};
    std::array<unsigned, 4> widened{};
    unsigned block = 0;
    unsigned blocks_made = 0;
    double width = 0.0;  ///< sum of the widths for DU_LQ
};

bool holds(const stats::Replicates& r, double level, double truth, double widening = 1.0) {
    const auto i = r.interval(level, widening);
    return i && i->low <= truth && truth <= i->high;
}

Hits run(const test::Field& field, std::size_t cans, std::size_t tests, std::size_t resamples) {
    std::vector<Hits> each(tests);
    stats::in_pieces(tests, 0, [&](std::size_t begin, std::size_t end) {
        for (std::size_t t = begin; t < end; ++t) {
            stats::SplitMix64 random = stats::generator_for(2026, t);
            const Sample sample = test::drawn_test(field, cans, random);
            const Resampling how{resamples, t + 1, 0.90, 1};
            const auto r = resample_cans(sample, QuarterRule::part_can, how);
            const std::size_t n = sample.cans.size();
            Hits& h = each[t];
            h.figure = {holds(r.du_lq, how.level, field.truth.du_lq),
                        holds(r.du_lh, how.level, field.truth.du_lh),
                        holds(r.cu, how.level, field.truth.cu),
                        holds(r.mean, how.level, field.truth.mean / 1000.0)};
            if (const auto i = r.du_lq.interval(how.level)) h.width = i->high - i->low;
            h.widened = {holds(r.du_lq, how.level, field.truth.du_lq, widening_for("du_lq", n)),
                         holds(r.du_lh, how.level, field.truth.du_lh, widening_for("du_lh", n)),
                         holds(r.cu, how.level, field.truth.cu, widening_for("cu", n)),
                         holds(r.mean, how.level, field.truth.mean / 1000.0, widening_for("mean", n))};
            if (field.placement != "grid") continue;
            if (const auto b = resample_blocks(sample, QuarterRule::part_can, how, std::nullopt)) {
                h.blocks_made = 1;
                h.block = holds(b->du_lq, how.level, field.truth.du_lq);
            }
        }
    });
    Hits sum;
    for (const Hits& h : each) {
        for (std::size_t k = 0; k < 4; ++k) {
            sum.figure[k] += h.figure[k];
            sum.widened[k] += h.widened[k];
        }
        sum.block += h.block;
        sum.blocks_made += h.blocks_made;
        sum.width += h.width;
    }
    return sum;
}

}  // namespace

int main(int argc, char** argv) {
    const std::size_t tests = argc > 1 ? std::strtoul(argv[1], nullptr, 10) : 4000;
    const std::size_t resamples = argc > 2 ? std::strtoul(argv[2], nullptr, 10) : 2000;
    std::printf("# CONSTRUCTED: share of %zu simulated tests whose 90 %% interval (BCa, %zu resamples, "
                "part-can quarter) holds the truth\n",
                tests, resamples);
    std::printf("field,placement,cans,true_du_lq,mean_width_du_lq,du_lq,du_lh,cu,mean,"
                "widened_du_lq,widened_du_lh,widened_cu,widened_mean,blocks_du_lq\n");
    for (const test::Field& field : test::known_fields()) {
        const bool grid = field.placement == "grid";
        for (const std::size_t cans : {grid ? 25U : 16U, 24U, 49U, 100U, 400U}) {
            if (grid && cans == 24) continue;
            const Hits h = run(field, cans, tests, resamples);
            const auto share = [&](unsigned hits) { return hits / static_cast<double>(tests); };
            std::printf("%s,%s,%zu,%.4f,%.4f", field.name.c_str(), field.placement.c_str(), cans,
                        field.truth.du_lq, h.width / static_cast<double>(tests));
            for (const unsigned hits : h.figure) std::printf(",%.3f", share(hits));
            for (const unsigned hits : h.widened) std::printf(",%.3f", share(hits));
            if (h.blocks_made == tests) std::printf(",%.3f\n", share(h.block));
            else std::printf(",\n");
            std::fflush(stdout);
        }
    }
    return 0;
}
