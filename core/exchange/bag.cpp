// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/bag.h"

#include "core/exchange/bag_digest.h"
#include "core/exchange/utf8.h"
#include "core/input_error.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <system_error>

namespace evenfall::exchange {
namespace {

constexpr std::string_view declaration =
    "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n";
constexpr std::string_view manifest_name = "manifest-sha256.txt";
constexpr std::string_view tag_manifest_name = "tagmanifest-sha256.txt";
constexpr std::string_view key_name = "signature/public-key.pem";
constexpr std::string_view signed_name = "signature/signed-text.txt";
constexpr std::string_view signature_name = "signature/signature.bin";
constexpr std::array signed_tags{std::string_view("bag-info.txt"), std::string_view("bagit.txt"),
                                 manifest_name};

using Digests = std::map<std::string, std::string>;  // path below the bag's folder -> digest

/// Messages about one bag, each naming the file inside.
class Complaint {
  public:
    explicit Complaint(const std::filesystem::path& file) : file_(file.filename().string()) {}
    [[noreturn]] void operator()(const std::string& inside, std::size_t line, Sentence found,
                                 Sentence expected) const {
        throw InputError(Issue{{inside.empty() ? file_ : file_ + ": " + printable(inside, 200), line, ""},
                               printable_sentence(found, 160), std::move(expected)});
    }

  private:
    std::string file_;
};

std::vector<std::string_view> lines_of(std::string_view text) {
    std::vector<std::string_view> lines;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        std::string_view line = text.substr(0, end);
        if (!line.empty() && line.back() == '\r') line.remove_suffix(1);
        lines.push_back(line);
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return lines;
}

bool is_digest(std::string_view text) {
    return text.size() == 64 && std::all_of(text.begin(), text.end(), [](char c) {
               return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f') || (c >= 'A' && c <= 'F');
           });
}

std::string lower_hex(std::string_view text) {
    std::string out(text);
    for (char& c : out) {
        if (c >= 'A' && c <= 'F') c = static_cast<char>(c - 'A' + 'a');
    }
    return out;
}

/// RFC 8493, 2.1.3: digest, white space, path.
Digests read_manifest(std::string_view name, std::string_view text, const Complaint& complain) {
    Digests digests;
    std::size_t number = 0;
    for (const std::string_view line : lines_of(text)) {
        ++number;
        const std::size_t blank = std::min(line.find_first_of(" \t"), line.size());
        const std::size_t path = std::min(line.find_first_not_of(" \t", blank), line.size());
        if (!is_digest(line.substr(0, blank)) || path == line.size()) {
            complain(std::string(name), number, std::string(line), phrase("exchange", "a SHA-256 digest, blanks and a path"));
        }
        if (!digests.emplace(line.substr(path), lower_hex(line.substr(0, blank))).second) {
            complain(std::string(name), number, std::string(line.substr(path)), phrase("exchange", "each path once"));
        }
    }
    return digests;
}

std::map<std::string, std::string> read_info(std::string_view text, const Complaint& complain) {
    std::map<std::string, std::string> info;
    std::string label;
    std::size_t number = 0;
    for (const std::string_view line : lines_of(text)) {
        ++number;
        if (!line.empty() && (line.front() == ' ' || line.front() == '\t') && !label.empty()) {
            info[label] += " " + std::string(line.substr(std::min(line.find_first_not_of(" \t"), line.size())));
            continue;
        }
        const std::size_t colon = line.find(':');
        if (colon == std::string_view::npos || colon == 0) {
            complain("bag-info.txt", number, std::string(line), phrase("exchange", "a label, a colon and a value"));
        }
        label = line.substr(0, colon);
        const std::size_t value = std::min(line.find_first_not_of(" \t", colon + 1), line.size());
        if (!info.emplace(label, line.substr(value)).second) {
            complain("bag-info.txt", number, label, phrase("exchange", "each label once"));
        }
    }
    return info;
}

bool is_payload(std::string_view path) { return path.substr(0, 5) == "data/"; }

/// One pass over a bag: what every file is, what it digests to, and the few that are kept.
struct Contents {
    std::string folder;
    std::map<std::string, BagFile> files;
    std::map<std::string, std::string> tags;
    std::map<std::string, std::string> held;
};

Contents digest_all(const ZipReader& zip, const std::vector<std::string>& keep,
                    const BagLimits& limits, const Complaint& complain) {
    Contents contents;
    for (std::size_t i = 0; i < zip.entries().size(); ++i) {
        const ZipReader::Entry& entry = zip.entries()[i];
        const std::size_t slash = entry.name.find('/');
        if (slash == std::string::npos) {
            complain(entry.name, 0, phrase("exchange", "a file beside the bag's folder"),
                     phrase("exchange", "one folder at the top"));
        }
        const std::string folder = entry.name.substr(0, slash);
        if (contents.folder.empty()) contents.folder = folder;
        if (folder != contents.folder) {
            complain(entry.name, 0, phrase("exchange", "a second folder"), phrase("exchange", "one folder at the top"));
        }
        const std::string path = entry.name.substr(slash + 1);
        const bool tag = !is_payload(path);
        const bool kept = tag || std::find(keep.begin(), keep.end(), path) != keep.end();
        const std::uint64_t most = tag ? limits.tag_file : limits.held_file;
        if (kept && entry.size > most) {
            complain(path, 0, {phrase("exchange", "%1 bytes"), entry.size}, {phrase("exchange", "at most %1"), most});
        }
        Sha256 digest;
        std::string bytes;
        zip.read(i, [&](std::span<const std::byte> piece) {
            digest.add(piece);
            if (kept) bytes.append(reinterpret_cast<const char*>(piece.data()), piece.size());
        });
        contents.files[path] = {path, entry.size, digest.hex()};
        if (kept) (tag ? contents.tags : contents.held)[path] = std::move(bytes);
    }
    return contents;
}

const std::string& tag_file(const Contents& contents, std::string_view name, const Complaint& complain) {
    const auto found = contents.tags.find(std::string(name));
    if (found == contents.tags.end()) {
        complain(std::string(name), 0, phrase("exchange", "no such file"), phrase("exchange", "a bag with this file"));
    }
    if (name != signature_name && first_bad_byte(found->second) != std::string_view::npos) {
        complain(std::string(name), 0, phrase("exchange", "text that is not UTF-8"), "UTF-8");
    }
    return found->second;
}

void compare(const Contents& contents, const Digests& listed, std::string_view manifest, bool payload,
             const Complaint& complain) {
    for (const auto& [path, digest] : listed) {
        const auto found = contents.files.find(path);
        if (found == contents.files.end() || is_payload(path) != payload) {
            complain(path, 0, phrase("exchange", "no such file"), {phrase("exchange", "the file that %1 lists"), manifest});
        }
        if (found->second.sha256 != digest) {
            complain(path, 0, {phrase("exchange", "a changed file: SHA-256 %1"), found->second.sha256},
                     {phrase("exchange", "%1 as in %2"), digest, manifest});
        }
    }
    for (const auto& [path, file] : contents.files) {
        if (is_payload(path) != payload || path == tag_manifest_name) continue;
        if (listed.count(path) == 0) {
            complain(path, 0, {phrase("exchange", "a file that %1 does not list"), manifest},
                     phrase("exchange", "only listed files"));
        }
    }
}

std::string manifest_line(const std::string& path, const std::string& digest) {
    return digest + "  " + path + "\n";
}

std::string text_to_sign(const Digests& tags) {
    std::string text = "Evenfall signed bag 1\n";
    for (const std::string_view name : signed_tags) {
        text += manifest_line(std::string(name), tags.at(std::string(name)));
    }
    return text;
}

std::optional<std::string> check_signature(const Contents& contents, const Digests& tags,
                                           const Complaint& complain) {
    const bool any = std::any_of(contents.tags.begin(), contents.tags.end(), [](const auto& tag) {
        return tag.first.substr(0, 10) == "signature/";
    });
    if (!any) return std::nullopt;
    const std::string& pem = tag_file(contents, key_name, complain);
    const std::string& text = tag_file(contents, signed_name, complain);
    const std::string& signature = tag_file(contents, signature_name, complain);
    const auto key = public_key_hex(pem);
    if (!key) complain(std::string(key_name), 0, phrase("exchange", "no Ed25519 public key"), phrase("exchange", "a key in PEM"));
    if (text != text_to_sign(tags)) {
        complain(std::string(signed_name), 0, phrase("exchange", "a text that does not fit this bag"),
                 phrase("exchange", "the digests of bag-info.txt, bagit.txt and manifest-sha256.txt"));
    }
    if (!signature_holds(pem, text, signature)) {
        complain(std::string(signature_name), 0, phrase("exchange", "a signature that this key did not make"),
                 {phrase("exchange", "a signature by the key %1"), *key});
    }
    return key;
}

/// RFC 8493, 2.2.2: octets and number of payload files.
std::string oxum(std::uint64_t bytes, std::size_t files) {
    return std::to_string(bytes) + "." + std::to_string(files);
}

}  // namespace

OpenedBag open_bag(const std::filesystem::path& file, const std::vector<std::string>& keep,
                   const BagLimits& limits) {
    const Complaint complain(file);
    const ZipReader zip(file, limits.zip);
    Contents contents = digest_all(zip, keep, limits, complain);
    const auto declared = lines_of(tag_file(contents, "bagit.txt", complain));
    const auto wanted = lines_of(declaration);
    if (declared != wanted) {
        complain("bagit.txt", 0, declared.empty() ? Sentence(phrase("exchange", "an empty file")) : Sentence(declared.front()),
                 phrase("exchange", "BagIt-Version: 1.0 and UTF-8"));
    }
    if (contents.files.count("fetch.txt") != 0) {
        complain("fetch.txt", 0, phrase("exchange", "files to be fetched elsewhere"),
                 phrase("exchange", "a bag that holds all its files"));
    }
    for (const auto& [path, bytes] : contents.tags) {
        const bool manifest = path.substr(0, 9) == "manifest-" || path.substr(0, 12) == "tagmanifest-";
        if (manifest && path != manifest_name && path != tag_manifest_name) {
            complain(path, 0, phrase("exchange", "a manifest of another kind"), phrase("exchange", "SHA-256 manifests only"));
        }
    }
    const std::string& manifest = tag_file(contents, manifest_name, complain);
    const Digests tags = read_manifest(
        tag_manifest_name, tag_file(contents, tag_manifest_name, complain), complain);
    compare(contents, tags, tag_manifest_name, false, complain);
    compare(contents, read_manifest(manifest_name, manifest, complain), manifest_name, true, complain);
    for (const std::string_view name : signed_tags) {
        if (tags.count(std::string(name)) == 0) {
            complain(std::string(name), 0, phrase("exchange", "no such file"), phrase("exchange", "a bag with this file"));
        }
    }

    OpenedBag bag;
    bag.folder = contents.folder;
    bag.info = read_info(tag_file(contents, "bag-info.txt", complain), complain);
    bag.manifest_sha256 = contents.files.at(std::string(manifest_name)).sha256;
    bag.public_key = check_signature(contents, tags, complain);
    std::uint64_t total = 0;
    for (const auto& [path, entry] : contents.files) {
        if (!is_payload(path)) continue;
        total += entry.size;
        bag.payload.push_back(entry);
    }
    if (const auto stated = bag.info.find("Payload-Oxum");
        stated != bag.info.end() && stated->second != oxum(total, bag.payload.size())) {
        complain("bag-info.txt", 0, "Payload-Oxum: " + stated->second, oxum(total, bag.payload.size()));
    }
    bag.held = std::move(contents.held);
    return bag;
}

namespace {

void check_source_names(const std::filesystem::path& file, const std::string& folder,
                        const std::vector<PayloadSource>& payload) {
    const Complaint complain(file);
    const bool plain = !folder.empty() && std::all_of(folder.begin(), folder.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
               c == '-' || c == '_' || c == '.';
    });
    if (!plain || folder.front() == '.' || folder.back() == '.') {
        complain("", 0, folder, phrase("exchange", "a name of letters, digits, \"-\", \"_\" and \".\""));
    }
    for (const PayloadSource& source : payload) {
        const Sentence problem = name_problem(folder + "/data/" + source.path, ZipLimits{}.name);
        if (!problem.empty()) complain(source.path, 0, problem, phrase("exchange", "a plain relative path"));
    }
    for (std::size_t i = 1; i < payload.size(); ++i) {
        if (payload[i].path == payload[i - 1].path) {
            complain(payload[i].path, 0, phrase("exchange", "a path twice"), phrase("exchange", "each path once"));
        }
    }
}

struct Digested {
    std::string sha256;
    std::uint64_t size = 0;
};

Digested digested(const PayloadSource& source) {
    if (const auto* bytes = std::get_if<std::string>(&source.content)) {
        return {sha256_of(*bytes), bytes->size()};
    }
    const auto& file = std::get<std::filesystem::path>(source.content);
    std::string digest = sha256_of_file(file);
    std::error_code error;
    const std::uint64_t size = std::filesystem::file_size(file, error);
    if (error) {
        throw InputError(Issue{{file.string(), 0, ""}, phrase("exchange", "a file without a size"),
                               phrase("exchange", "a regular file")});
    }
    return {std::move(digest), size};
}

std::string info_text(const std::filesystem::path& file,
                      const std::vector<std::pair<std::string, std::string>>& info) {
    const Complaint complain(file);
    std::string text;
    for (const auto& [label, value] : info) {
        for (const std::string& part : {label, value}) {
            const bool unfit = std::any_of(part.begin(), part.end(), [](char c) {
                return static_cast<unsigned char>(c) < 0x20 || c == 0x7F;
            });
            if (unfit || first_bad_byte(part) != std::string_view::npos) {
                complain("bag-info.txt", 0, part, phrase("exchange", "UTF-8 text on one line"));
            }
        }
        text += label + ": " + value + "\n";
    }
    return text;
}

}  // namespace

std::string write_bag(const std::filesystem::path& file, const std::string& folder,
                      const std::vector<std::pair<std::string, std::string>>& info,
                      std::vector<PayloadSource> payload, const SigningKey* key) {
    std::sort(payload.begin(), payload.end(),
              [](const PayloadSource& a, const PayloadSource& b) { return a.path < b.path; });
    check_source_names(file, folder, payload);
    std::string manifest;
    std::uint64_t total = 0;
    for (const PayloadSource& source : payload) {
        const Digested d = digested(source);
        manifest += manifest_line("data/" + source.path, d.sha256);
        total += d.size;
    }
    auto lines = info;
    lines.emplace_back("Payload-Oxum", oxum(total, payload.size()));
    std::map<std::string, std::string> tags{{"bagit.txt", std::string(declaration)},
                                            {"bag-info.txt", info_text(file, lines)},
                                            {std::string(manifest_name), manifest}};
    Digests digests;
    for (const auto& [path, bytes] : tags) digests[path] = sha256_of(bytes);
    if (key != nullptr) {
        const std::string text = text_to_sign(digests);
        tags[std::string(key_name)] = key->public_pem();
        tags[std::string(signed_name)] = text;
        tags[std::string(signature_name)] = key->sign(text);
        for (const std::string_view name : {key_name, signed_name, signature_name}) {
            digests[std::string(name)] = sha256_of(tags.at(std::string(name)));
        }
    }
    std::string tag_manifest;
    for (const auto& [path, digest] : digests) tag_manifest += manifest_line(path, digest);

    std::vector<ZipSource> sources;
    const auto add = [&](const std::string& path, auto content) {
        sources.push_back({folder + "/" + path, std::move(content)});
    };
    add("bagit.txt", tags.at("bagit.txt"));
    for (const auto& [path, bytes] : tags) {
        if (path != "bagit.txt") add(path, bytes);
    }
    add(std::string(tag_manifest_name), tag_manifest);
    for (PayloadSource& source : payload) {
        sources.push_back({folder + "/data/" + source.path, std::move(source.content)});
    }
    write_zip(file, sources);
    return digests.at(std::string(manifest_name));
}

}  // namespace evenfall::exchange
