// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/bag_zip.h"

#include "core/exchange/utf8.h"
#include "core/input_error.h"

#include <zip.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <set>
#include <string_view>
#include <system_error>

namespace evenfall::exchange {
namespace {

constexpr std::uint64_t small_entry = std::uint64_t{1} << 20U;
constexpr std::size_t end_record_size = 22;  // APPNOTE 6.3, 4.3.16, without a comment

[[noreturn]] void refuse(const std::filesystem::path& file, const std::string& entry,
                         Sentence found, Sentence expected) {
    std::string where = file.filename().string();
    if (!entry.empty()) where += ": " + printable(entry, 200);
    throw InputError(Issue{{std::move(where), 0, ""}, std::move(found), std::move(expected)});
}

struct EndRecord {
    std::uint64_t entries = 0;
};

/// Reads the record that closes a zip. It must be the last thing in the file and the directory
/// must stand right before it, so that no two programs can see different contents.
EndRecord end_record(const std::filesystem::path& file, std::uint64_t size) {
    std::array<unsigned char, end_record_size> r{};
    struct Close {
        void operator()(std::FILE* f) const noexcept { std::fclose(f); }
    };
    const std::unique_ptr<std::FILE, Close> in(std::fopen(file.c_str(), "rb"));
    if (!in || size < r.size() ||
        std::fseek(in.get(), static_cast<long>(size - r.size()), SEEK_SET) != 0 ||
        std::fread(r.data(), 1, r.size(), in.get()) != r.size()) {
        refuse(file, "", phrase("exchange", "a file that is too short or cannot be read"), phrase("exchange", "a zip file"));
    }
    const auto number = [&](std::size_t at, std::size_t bytes) {
        std::uint64_t value = 0;
        for (std::size_t i = bytes; i-- > 0;) value = value << 8U | r[at + i];
        return value;
    };
    if (number(0, 4) != 0x06054b50U || number(20, 2) != 0) {
        refuse(file, "", phrase("exchange", "no end record at the end of the file"),
               phrase("exchange", "a whole zip file without anything behind it"));
    }
    if (number(4, 2) != 0 || number(6, 2) != 0 || number(8, 2) != number(10, 2) ||
        number(10, 2) == 0xFFFFU || number(16, 4) == 0xFFFFFFFFU) {
        refuse(file, "", phrase("exchange", "a zip of several volumes or with 64-bit fields"),
               phrase("exchange", "a plain zip file"));
    }
    if (number(16, 4) + number(12, 4) + r.size() != size) {
        refuse(file, "", phrase("exchange", "a directory that does not end where the file ends"),
               phrase("exchange", "a zip file without gaps, nothing before or behind it"));
    }
    return {number(10, 2)};
}

std::string lower_case(std::string text) {
    for (char& c : text) {
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    }
    return text;
}

/// Unix file type of an entry that some Unix program packed; 0 when it does not say.
unsigned unix_type(zip_t* zip, zip_uint64_t i) {
    zip_uint8_t system = 0;
    zip_uint32_t attributes = 0;
    if (zip_file_get_external_attributes(zip, i, 0, &system, &attributes) != 0) return 0;
    return attributes >> 16U & 0170000U;
}

}  // namespace

Sentence name_problem(const std::string& name, std::size_t longest) {
    if (name.empty()) return phrase("exchange", "an empty name");
    if (name.size() > longest) return {phrase("exchange", "a name of %1 bytes"), name.size()};
    if (first_bad_byte(name) != std::string_view::npos) return phrase("exchange", "a name that is not UTF-8");
    for (const char c : name) {
        const auto u = static_cast<unsigned char>(c);
        if (u < 0x20 || u == 0x7F) return phrase("exchange", "a control character in a name");
        if (c == '\\' || c == ':' || c == '%') {
            return {phrase("exchange", "the character %1 in a name"), std::string(1, c)};
        }
    }
    if (name.front() == '/') return phrase("exchange", "an absolute path");
    std::size_t begin = 0;
    while (begin <= name.size()) {
        const std::size_t end = std::min(name.find('/', begin), name.size());
        const std::string_view part = std::string_view(name).substr(begin, end - begin);
        if (part.empty()) return phrase("exchange", "an empty part of a path");
        if (part == "." || part == "..") return phrase("exchange", "a path that leaves its folder");
        if (part.front() == ' ' || part.back() == ' ' || part.back() == '.') {
            return phrase("exchange", "a blank or a dot at the edge of a name");
        }
        begin = end + 1;
    }
    return {};
}

struct ZipReader::Impl {
    zip_t* zip = nullptr;
    std::vector<zip_uint64_t> index;
    ~Impl() {
        if (zip != nullptr) zip_discard(zip);
    }
};

ZipReader::ZipReader(const std::filesystem::path& file, ZipLimits limits)
    : file_(file), impl_(std::make_unique<Impl>()) {
    std::error_code error;
    const std::uint64_t size = std::filesystem::file_size(file, error);
    if (error || !std::filesystem::is_regular_file(file, error)) {
        refuse(file, "", phrase("exchange", "nothing that can be read"), phrase("exchange", "a zip file"));
    }
    if (size > limits.file) {
        refuse(file, "", {phrase("exchange", "%1 bytes"), size}, {phrase("exchange", "at most %1"), limits.file});
    }
    const EndRecord end = end_record(file, size);
    if (end.entries > limits.entries) {
        refuse(file, "", {phrase("exchange", "%1 entries"), end.entries},
               {phrase("exchange", "at most %1"), limits.entries});
    }
    int code = 0;
    impl_->zip = zip_open(file.c_str(), ZIP_RDONLY | ZIP_CHECKCONS, &code);
    if (impl_->zip == nullptr) {
        zip_error_t e;
        zip_error_init_with_code(&e, code);
        const std::string text = zip_error_strerror(&e);
        zip_error_fini(&e);
        refuse(file, "", {phrase("exchange", "a zip that cannot be opened (%1)"), text}, phrase("exchange", "a sound zip file"));
    }
    const auto count = static_cast<std::uint64_t>(zip_get_num_entries(impl_->zip, 0));
    if (count != end.entries) {
        refuse(file, "", phrase("exchange", "a directory that can be read in two ways"),
               phrase("exchange", "a zip file with one directory"));
    }
    std::uint64_t total = 0;
    std::set<std::string> seen;
    for (zip_uint64_t i = 0; i < count; ++i) {
        zip_stat_t stat;
        zip_stat_init(&stat);
        const char* raw = zip_get_name(impl_->zip, i, ZIP_FL_ENC_RAW);
        if (raw == nullptr || zip_stat_index(impl_->zip, i, 0, &stat) != 0) {
            refuse(file, "", phrase("exchange", "an entry that cannot be read"), phrase("exchange", "a sound zip file"));
        }
        std::string name = raw;
        const bool folder = !name.empty() && name.back() == '/';
        if (folder) name.pop_back();
        if (const Sentence problem = name_problem(name, limits.name); !problem.empty()) {
            refuse(file, name, problem, phrase("exchange", "a plain relative path below the bag's folder"));
        }
        if (!seen.insert(lower_case(name)).second) {
            refuse(file, name, phrase("exchange", "a name that occurs twice"),
                   phrase("exchange", "each name once, capitals not counting"));
        }
        const unsigned type = unix_type(impl_->zip, i);
        if (type != 0 && type != (folder ? 0040000U : 0100000U)) {
            refuse(file, name, phrase("exchange", "a link or a special file"),
                   phrase("exchange", "regular files and folders only"));
        }
        if (stat.encryption_method != ZIP_EM_NONE) {
            refuse(file, name, phrase("exchange", "an encrypted entry"), phrase("exchange", "entries that anyone can read"));
        }
        if (stat.comp_method != ZIP_CM_STORE && stat.comp_method != ZIP_CM_DEFLATE) {
            refuse(file, name, {phrase("exchange", "compression method %1"), stat.comp_method},
                   phrase("exchange", "stored or deflated"));
        }
        if (folder && stat.size != 0) {
            refuse(file, name, phrase("exchange", "a folder with contents of its own"), phrase("exchange", "a folder"));
        }
        if (stat.size > limits.unpacked || total + stat.size > limits.unpacked) {
            refuse(file, name, {phrase("exchange", "%1 bytes unpacked"), stat.size},
                   {phrase("exchange", "at most %1 in all entries together"), limits.unpacked});
        }
        if (stat.size > small_entry && stat.size / limits.ratio > stat.comp_size) {
            refuse(file, name,
                   {phrase("exchange", "%1 bytes that unpack to %2"), stat.comp_size, stat.size},
                   {phrase("exchange", "at most %1 times as much"), limits.ratio});
        }
        total += stat.size;
        if (folder) continue;
        impl_->index.push_back(i);
        entries_.push_back({std::move(name), stat.size});
    }
}

ZipReader::~ZipReader() = default;

void ZipReader::read(std::size_t index, const Sink& sink) const {
    const Entry& entry = entries_.at(index);
    struct Close {
        void operator()(zip_file_t* f) const noexcept { zip_fclose(f); }
    };
    const std::unique_ptr<zip_file_t, Close> in(
        zip_fopen_index(impl_->zip, impl_->index[index], 0));
    if (!in) {
        refuse(file_, entry.name, phrase("exchange", "an entry that cannot be opened"), phrase("exchange", "a sound zip file"));
    }
    std::vector<std::byte> piece(std::size_t{1} << 16U);
    std::uint64_t total = 0;
    for (;;) {
        const zip_int64_t n = zip_fread(in.get(), piece.data(), piece.size());
        if (n < 0) {
            refuse(file_, entry.name,
                   {phrase("exchange", "damaged data (%1)"), zip_file_strerror(in.get())},
                   phrase("exchange", "data that match their checksum in the zip"));
        }
        if (n == 0) break;
        total += static_cast<std::uint64_t>(n);
        if (total > entry.size) break;
        sink(std::span(piece).first(static_cast<std::size_t>(n)));
    }
    if (total != entry.size) {
        refuse(file_, entry.name, phrase("exchange", "data of another length than stated"),
               {phrase("exchange", "%1 bytes"), entry.size});
    }
}

void write_zip(const std::filesystem::path& file, const std::vector<ZipSource>& sources) {
    int code = 0;
    zip_t* zip = zip_open(file.c_str(), ZIP_CREATE | ZIP_EXCL, &code);
    if (zip == nullptr) {
        refuse(file, "",
               code == ZIP_ER_EXISTS ? phrase("exchange", "a file that is already there") : phrase("exchange", "a place that cannot be written"),
               phrase("exchange", "a new file"));
    }
    try {
        for (const ZipSource& source : sources) {
            const auto* bytes = std::get_if<std::string>(&source.content);
            zip_source_t* content =
                bytes != nullptr
                    ? zip_source_buffer(zip, bytes->data(), bytes->size(), 0)
                    : zip_source_file(zip, std::get<std::filesystem::path>(source.content).c_str(), 0, -1);
            if (content == nullptr) refuse(file, source.name, zip_strerror(zip), phrase("exchange", "a readable source"));
            const zip_int64_t i = zip_file_add(zip, source.name.c_str(), content, ZIP_FL_ENC_UTF_8);
            if (i < 0) {
                zip_source_free(content);
                refuse(file, source.name, zip_strerror(zip), phrase("exchange", "a name that is free"));
            }
            const auto at = static_cast<zip_uint64_t>(i);
            // 1980-01-01 00:00 in DOS form, and a regular file with mode 0644 on Unix.
            if (zip_file_set_dostime(zip, at, 0, 1U << 5U | 1U, 0) != 0 ||
                zip_set_file_compression(zip, at, ZIP_CM_DEFLATE, 6) != 0 ||
                zip_file_set_external_attributes(zip, at, 0, ZIP_OPSYS_UNIX, 0100644U << 16U) != 0) {
                refuse(file, source.name, zip_strerror(zip), phrase("exchange", "an entry that can be written"));
            }
        }
    } catch (...) {
        zip_discard(zip);
        throw;
    }
    if (zip_close(zip) != 0) {
        const std::string text = zip_strerror(zip);
        zip_discard(zip);
        refuse(file, "", {phrase("exchange", "a file that could not be written (%1)"), text},
               phrase("exchange", "room and the right to write"));
    }
}

}  // namespace evenfall::exchange
