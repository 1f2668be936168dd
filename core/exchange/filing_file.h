// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/bag.h"
#include "core/review/filing.h"

#include <filesystem>
#include <optional>
#include <string>
#include <utility>
#include <vector>

/// A filing as the one file that is sent: a bag in a zip (bag.h) whose payload is
/// data/filing.json in canonical form (filing_canonical.h) and the attachments it lists.
///
/// What is frozen by what: the manifest holds a digest of filing.json and of every attachment; its
/// own digest, `sha256` below, names the filing. Nothing in a filing can change and keep that name.
/// A signed filing names its key inside filing.json, so a signature cannot be taken off or put in
/// by another key without changing the name too.
/// Tests: tests/exchange/filing_bag_test.cpp
namespace evenfall::exchange {

struct OpenedFiling {
    review::Filing filing;
    std::string json;     ///< data/filing.json as it stands
    std::string sha256;   ///< of the manifest: the filing's name
    bool is_signed = false;
};

/// Reads, verifies and checks against its own list of attachments. Writes nothing.
/// @throws InputError naming the place of anything that is not as it should be
OpenedFiling open_filing(const std::filesystem::path& file, const BagLimits& limits = {});

/// A file that goes along; what is known of it is worked out here.
struct AttachedFile {
    std::filesystem::path file;
    std::string kind;     ///< photo, invoice, report, other
    std::string note;
};

struct WrittenFiling {
    std::string sha256;
    std::string json;
};

/// Writes a filing. `filing.attachments` and `filing.signing_key` are filled in here; attachments
/// are stored as attachments/<their file name>. Invoices may name one of those paths.
/// The same input gives the same bytes.
/// @param key  the auditor's own, or null for an unsigned filing
/// @throws InputError as write_bag; nothing is left behind
WrittenFiling write_filing(const std::filesystem::path& file, review::Filing filing,
                           const std::vector<AttachedFile>& attached, const SigningKey* key);

}  // namespace evenfall::exchange
