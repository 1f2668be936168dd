// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/filing_file.h"

#include "core/exchange/bag_digest.h"
#include "core/exchange/filing_json.h"
#include "core/input_error.h"

#include <algorithm>
#include <system_error>

namespace evenfall::exchange {
namespace {

const std::string json_path = "data/filing.json";

[[noreturn]] void refuse(const std::filesystem::path& file, const std::string& inside,
                         const Sentence& found, const Sentence& expected) {
    throw InputError(Issue{{file.filename().string() + ": " + printable(inside, 200), 0, ""}, found, expected});
}

/// The filing's own list must be the payload, no more and no less.
void check_attachments(const std::filesystem::path& file, const review::Filing& filing,
                       const OpenedBag& bag) {
    for (const BagFile& stored : bag.payload) {
        if (stored.path == json_path) continue;
        const auto listed = std::find_if(
            filing.attachments.begin(), filing.attachments.end(),
            [&](const review::Attachment& a) { return "data/" + a.path == stored.path; });
        if (listed == filing.attachments.end()) {
            refuse(file, stored.path, phrase("exchange", "a file that the filing does not list"),
                   phrase("exchange", "listed attachments only"));
        }
        if (listed->sha256 != stored.sha256 || listed->size != stored.size) {
            refuse(file, stored.path, phrase("exchange", "a file other than the one the filing lists"),
                   Sentence("SHA-256 " + printable(listed->sha256)));
        }
    }
    for (const review::Attachment& a : filing.attachments) {
        const bool there = std::any_of(bag.payload.begin(), bag.payload.end(), [&](const BagFile& stored) {
            return stored.path == "data/" + a.path;
        });
        if (!there) {
            refuse(file, "data/" + a.path, phrase("exchange", "no such file"),
                   phrase("exchange", "the attachment that the filing lists"));
        }
    }
}

void check_key(const std::filesystem::path& file, const review::Filing& filing, const OpenedBag& bag) {
    const std::string signed_by = bag.public_key.value_or("");
    if (filing.signing_key == signed_by) return;
    if (signed_by.empty()) {
        refuse(file, "signature/signature.bin", phrase("exchange", "no signature"),
               {phrase("exchange", "one by the key that the filing names, %1"), printable(filing.signing_key)});
    }
    refuse(file, "signature/public-key.pem", {phrase("exchange", "the key %1"), signed_by},
           filing.signing_key.empty()
               ? Sentence(phrase("exchange", "no signature: the filing names no key"))
               : Sentence(phrase("exchange", "the key that the filing names, %1"), printable(filing.signing_key)));
}

}  // namespace

OpenedFiling open_filing(const std::filesystem::path& file, const BagLimits& limits) {
    OpenedBag bag = open_bag(file, {json_path}, limits);
    const auto held = bag.held.find(json_path);
    if (held == bag.held.end()) refuse(file, json_path, phrase("exchange", "no such file"), phrase("exchange", "a filing"));
    OpenedFiling opened;
    opened.filing = read_filing_json(held->second, file.filename().string() + ": " + json_path);
    if (opened.filing.code != bag.folder) {
        refuse(file, bag.folder, {phrase("exchange", "a folder named %1"), printable(bag.folder)},
               {phrase("exchange", "the filing's code, %1"), printable(opened.filing.code)});
    }
    check_attachments(file, opened.filing, bag);
    check_key(file, opened.filing, bag);
    opened.json = std::move(held->second);
    opened.sha256 = bag.manifest_sha256;
    opened.is_signed = bag.public_key.has_value();
    return opened;
}

WrittenFiling write_filing(const std::filesystem::path& file, review::Filing filing,
                           const std::vector<AttachedFile>& attached, const SigningKey* key) {
    std::vector<PayloadSource> payload;
    filing.attachments.clear();
    for (const AttachedFile& a : attached) {
        std::error_code error;
        const std::uint64_t size = std::filesystem::file_size(a.file, error);
        if (error || !std::filesystem::is_regular_file(a.file, error)) {
            throw InputError(Issue{{a.file.string(), 0, ""}, phrase("exchange", "nothing that can be attached"),
                                   phrase("exchange", "a regular file")});
        }
        const std::string path = "attachments/" + a.file.filename().string();
        filing.attachments.push_back({path, a.kind, sha256_of_file(a.file), size, a.note});
        payload.push_back({path, a.file});
    }
    std::sort(filing.attachments.begin(), filing.attachments.end(),
              [](const review::Attachment& a, const review::Attachment& b) { return a.path < b.path; });
    filing.signing_key = key == nullptr ? "" : key->public_hex();

    WrittenFiling written;
    written.json = write_filing_json(filing);
    // What cannot be read back must not leave the house.
    read_filing_json(written.json, file.filename().string() + ": " + json_path);
    payload.push_back({"filing.json", written.json});
    const auto day = std::chrono::floor<std::chrono::days>(filing.written);
    std::vector<std::pair<std::string, std::string>> info{
        {"Bag-Software-Agent", filing.software},
        {"Bagging-Date", calendar::format_date(day)},
        {"External-Identifier", filing.code}};
    if (!filing.applicant.organisation.empty()) {
        info.insert(info.begin(), {"Source-Organization", filing.applicant.organisation});
    }
    written.sha256 = write_bag(file, filing.code, info, std::move(payload), key);
    return written;
}

}  // namespace evenfall::exchange
