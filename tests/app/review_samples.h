// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/filing_file.h"
#include "tests/exchange/filing_temporary.h"
#include "tests/review/sample_filing.h"

namespace evenfall::tests {

/// A folder with sample filings F-1 to F-n, each with an invoice of its own.
inline void write_samples(const TemporaryFolder& folder, std::uint64_t n) {
    for (std::uint64_t seed = 1; seed <= n; ++seed) {
        SampleChoices choices;
        choices.seed = seed;
        const auto invoice = folder / "invoice.pdf";
        write_bytes(invoice, "invoice of " + std::to_string(seed));
        std::string name = "f";
        name += std::to_string(100 + seed);
        name += ".zip";
        exchange::write_filing(folder / name, sample_filing(choices), {{invoice, "invoice", ""}}, nullptr);
        std::filesystem::remove(invoice);
    }
}

}  // namespace evenfall::tests
