// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <span>
#include <string>
#include <variant>
#include <vector>

/// Zip files from strangers, by libzip, and zip files of our own whose bytes do not depend on when,
/// where or by whom they are made. Reading never writes anything anywhere: entries are handed over
/// in pieces.
/// Tests: tests/exchange/filing_hostile_test.cpp, tests/exchange/filing_hostile_test.cpp
namespace evenfall::exchange {

/// What is accepted. Checked in the directory of the zip before anything is unpacked, and again
/// while unpacking.
struct ZipLimits {
    std::uint64_t file = std::uint64_t{128} << 20U;      ///< bytes of the zip itself
    std::uint64_t unpacked = std::uint64_t{256} << 20U;  ///< bytes of all entries together
    std::uint64_t entries = 500;
    std::size_t name = 200;                              ///< bytes of a name
    std::uint64_t ratio = 200;                           ///< unpacked to packed, over 1 MiB
};

/// Whether a name may stand in a zip: relative, below one folder or more, UTF-8, printable, no "..",
/// no "\" or ":", no segment that is empty or starts or ends with a blank or ends with a dot.
/// @return  what is wrong with it, or empty text
Sentence name_problem(const std::string& name, std::size_t longest);

class ZipReader {
  public:
    struct Entry {
        std::string name;
        std::uint64_t size = 0;
    };

    /// @throws InputError, naming file and entry, for: what is no zip, cut, inconsistent, has
    ///   something before or behind it, spans volumes or is larger than the limits; encrypted
    ///   entries, methods other than stored and deflated, links and devices, names as above, names
    ///   that occur twice or differ only in capitals, sizes beyond the limits
    explicit ZipReader(const std::filesystem::path& file, ZipLimits limits = {});
    ~ZipReader();

    const std::filesystem::path& file() const { return file_; }
    /// Regular files, in the order of the zip.
    const std::vector<Entry>& entries() const { return entries_; }

    using Sink = std::function<void(std::span<const std::byte>)>;
    /// Unpacks one entry in pieces of at most 64 KiB.
    /// @throws InputError for data that do not unpack to the stated size and checksum
    void read(std::size_t index, const Sink& sink) const;

  private:
    struct Impl;
    std::filesystem::path file_;
    std::unique_ptr<Impl> impl_;
    std::vector<Entry> entries_;
};

struct ZipSource {
    std::string name;
    std::variant<std::string, std::filesystem::path> content;  ///< bytes, or a file to copy
};

/// Writes the entries in the order given, deflated, all dated 1980-01-01 00:00. The file appears
/// under its name only when it is whole. The same entries give the same bytes with the same
/// version of zlib.
/// @throws InputError when the file is already there, or a source or the target cannot be used
void write_zip(const std::filesystem::path& file, const std::vector<ZipSource>& sources);

}  // namespace evenfall::exchange
