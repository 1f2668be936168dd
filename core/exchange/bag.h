// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/bag_zip.h"

#include <cstdint>
#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <vector>

/// A bag as RFC 8493 (BagIt 1.0) describes it, in a zip with one folder at its top:
///
///     NAME/bagit.txt                    BagIt-Version: 1.0, Tag-File-Character-Encoding: UTF-8
///     NAME/bag-info.txt                 Label: value lines
///     NAME/manifest-sha256.txt          a digest for every file below data/
///     NAME/tagmanifest-sha256.txt       a digest for every other file but itself
///     NAME/data/...                     the payload
///     NAME/signature/public-key.pem     } only in a signed bag: key, the text that was signed,
///     NAME/signature/signed-text.txt    } and its 64 bytes of Ed25519 signature
///     NAME/signature/signature.bin      }
///
/// The signed text is the line "Evenfall signed bag 1" and then the lines of the tag manifest for
/// bag-info.txt, bagit.txt and manifest-sha256.txt, in that order. Through the manifest it covers
/// every byte of the payload. Without Evenfall it is checked by
///
///     openssl pkeyutl -verify -pubin -inkey public-key.pem -rawin
///         -in signed-text.txt -sigfile signature.bin       (one line)
///
/// Stricter than the RFC, so that nothing can be slipped in: every tag file must be in the tag
/// manifest, the only digest is SHA-256, nothing is fetched (fetch.txt), and "%" is not used in
/// names.
/// Tests: tests/exchange/filing_bag_test.cpp, tests/exchange/filing_hostile_test.cpp
namespace evenfall::exchange {

struct BagFile {
    std::string path;    ///< below the bag's folder, such as data/photos/head-3.jpg
    std::uint64_t size = 0;
    std::string sha256;
};

/// A bag whose every file was read and matched its digest.
struct OpenedBag {
    std::string folder;
    std::map<std::string, std::string> info;   ///< bag-info.txt; a label that occurs twice is refused
    std::vector<BagFile> payload;              ///< in alphabetical order
    std::map<std::string, std::string> held;   ///< bytes of the payload files that were asked for
    std::string manifest_sha256;               ///< digest of manifest-sha256.txt: stands for the payload
    std::optional<std::string> public_key;     ///< hexadecimal; the signature by it was checked
};

struct BagLimits {
    ZipLimits zip;
    std::uint64_t tag_file = std::uint64_t{1} << 20U;    ///< bytes of one tag file
    std::uint64_t held_file = std::uint64_t{16} << 20U;  ///< bytes of one payload file that is kept
};

/// Reads and verifies a bag. Files of the payload are digested in pieces and not kept, except
/// those in `keep`.
/// @param keep  paths such as data/filing.json
/// @throws InputError naming file and entry for everything that ZipReader refuses, for more than
///   one folder at the top, a missing or malformed tag file, a file that is listed and missing,
///   there and not listed, or changed, and for a signature that does not hold
OpenedBag open_bag(const std::filesystem::path& file, const std::vector<std::string>& keep,
                   const BagLimits& limits = {});

struct PayloadSource {
    std::string path;  ///< below data/, such as photos/head-3.jpg
    std::variant<std::string, std::filesystem::path> content;
};

class SigningKey;

/// Writes a bag. The same input gives the same bytes.
/// @param folder  the name of the bag: letters, digits, "-", "_" and "."
/// @param info    lines of bag-info.txt in this order, without Payload-Oxum, which is added
/// @return        digest of manifest-sha256.txt
/// @throws InputError for names that open_bag would refuse, double paths, files that cannot be read
///   or written, and when `file` is already there
std::string write_bag(const std::filesystem::path& file, const std::string& folder,
                      const std::vector<std::pair<std::string, std::string>>& info,
                      std::vector<PayloadSource> payload, const SigningKey* key);

}  // namespace evenfall::exchange
