// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/bag_digest.h"

#include "core/input_error.h"
#include "core/sentence_error.h"

#include <openssl/bio.h>
#include <openssl/evp.h>
#include <openssl/pem.h>

#include <array>
#include <cstdio>
#include <new>
#include <stdexcept>
#include <vector>

namespace evenfall::exchange {
namespace {

struct Free {
    void operator()(EVP_MD_CTX* p) const noexcept { EVP_MD_CTX_free(p); }
    void operator()(EVP_PKEY* p) const noexcept { EVP_PKEY_free(p); }
    void operator()(BIO* p) const noexcept { BIO_free(p); }
    void operator()(std::FILE* p) const noexcept { std::fclose(p); }
};
template <class T>
using Owned = std::unique_ptr<T, Free>;

/// What the library refuses to do for us is a lack of memory or a broken installation.
void must(bool ok) {
    if (!ok) throw SentenceError(phrase("exchange", "the cryptographic library reported a failure"));
}

std::string hex_of(std::span<const unsigned char> bytes) {
    static constexpr std::string_view digits = "0123456789abcdef";
    std::string out;
    for (const unsigned char b : bytes) {
        out += digits[b >> 4U];
        out += digits[b & 15U];
    }
    return out;
}

const unsigned char* bytes_of(std::string_view text) {
    return reinterpret_cast<const unsigned char*>(text.data());
}

Owned<BIO> reader(std::string_view text) {
    Owned<BIO> bio(BIO_new_mem_buf(text.data(), static_cast<int>(text.size())));
    must(bio != nullptr);
    return bio;
}

std::string raw_public_hex(EVP_PKEY* key) {
    std::array<unsigned char, 32> raw{};
    std::size_t size = raw.size();
    must(EVP_PKEY_get_raw_public_key(key, raw.data(), &size) == 1 && size == raw.size());
    return hex_of(raw);
}

/// A key under a passphrase is refused instead of asking on the terminal.
int no_passphrase(char*, int, int, void*) { return -1; }

/// PEM of a public key; null for anything else. Certificates and longer texts are not looked at.
Owned<EVP_PKEY> public_key(std::string_view pem) {
    if (pem.size() > 4096) return nullptr;
    const Owned<BIO> bio = reader(pem);
    Owned<EVP_PKEY> key(PEM_read_bio_PUBKEY(bio.get(), nullptr, no_passphrase, nullptr));
    if (key && EVP_PKEY_id(key.get()) != EVP_PKEY_ED25519) key.reset();
    return key;
}

}  // namespace

struct Sha256::Impl {
    Owned<EVP_MD_CTX> context{EVP_MD_CTX_new()};
};

Sha256::Sha256() : impl_(std::make_unique<Impl>()) {
    must(impl_->context != nullptr &&
         EVP_DigestInit_ex(impl_->context.get(), EVP_sha256(), nullptr) == 1);
}
Sha256::~Sha256() = default;
Sha256::Sha256(Sha256&&) noexcept = default;
Sha256& Sha256::operator=(Sha256&&) noexcept = default;

void Sha256::add(std::span<const std::byte> bytes) {
    must(EVP_DigestUpdate(impl_->context.get(), bytes.data(), bytes.size()) == 1);
}

void Sha256::add(std::string_view text) {
    must(EVP_DigestUpdate(impl_->context.get(), text.data(), text.size()) == 1);
}

std::string Sha256::hex() {
    std::array<unsigned char, 32> digest{};
    unsigned int size = 0;
    must(EVP_DigestFinal_ex(impl_->context.get(), digest.data(), &size) == 1 && size == digest.size());
    return hex_of(digest);
}

std::string sha256_of(std::string_view text) {
    Sha256 digest;
    digest.add(text);
    return digest.hex();
}

std::string sha256_of_file(const std::filesystem::path& file) {
    const Owned<std::FILE> in(std::fopen(file.c_str(), "rb"));
    if (!in) {
        throw InputError(Issue{{file.string(), 0, ""}, phrase("exchange", "a file that cannot be opened"),
                               phrase("exchange", "a file that can be read")});
    }
    Sha256 digest;
    std::vector<std::byte> piece(std::size_t{1} << 16U);
    while (const std::size_t n = std::fread(piece.data(), 1, piece.size(), in.get())) {
        digest.add(std::span(piece).first(n));
    }
    if (std::ferror(in.get()) != 0) {
        throw InputError(Issue{{file.string(), 0, ""}, phrase("exchange", "a file that cannot be read to its end"),
                               phrase("exchange", "a file that can be read")});
    }
    return digest.hex();
}

struct SigningKey::Impl {
    Owned<EVP_PKEY> key;
};

SigningKey::SigningKey(const std::filesystem::path& pem) : impl_(std::make_unique<Impl>()) {
    const auto refuse = [&](Phrase found) {
        throw InputError(Issue{{pem.string(), 0, ""}, found,
                               phrase("exchange", "an Ed25519 private key in PEM, without a passphrase")});
    };
    const Owned<std::FILE> in(std::fopen(pem.c_str(), "rb"));
    if (!in) refuse(phrase("exchange", "a file that cannot be opened"));
    impl_->key.reset(PEM_read_PrivateKey(in.get(), nullptr, no_passphrase, nullptr));
    if (!impl_->key) refuse(phrase("exchange", "something that is not read as a private key"));
    if (EVP_PKEY_id(impl_->key.get()) != EVP_PKEY_ED25519) refuse(phrase("exchange", "a key of another kind"));
    public_hex_ = raw_public_hex(impl_->key.get());
    const Owned<BIO> out(BIO_new(BIO_s_mem()));
    must(out != nullptr && PEM_write_bio_PUBKEY(out.get(), impl_->key.get()) == 1);
    char* text = nullptr;
    const long size = BIO_get_mem_data(out.get(), &text);
    public_pem_.assign(text, static_cast<std::size_t>(size));
}
SigningKey::~SigningKey() = default;
SigningKey::SigningKey(SigningKey&&) noexcept = default;

std::string SigningKey::sign(std::string_view text) const {
    const Owned<EVP_MD_CTX> context(EVP_MD_CTX_new());
    std::array<unsigned char, 64> signature{};
    std::size_t size = signature.size();
    must(context != nullptr &&
         EVP_DigestSignInit(context.get(), nullptr, nullptr, nullptr, impl_->key.get()) == 1 &&
         EVP_DigestSign(context.get(), signature.data(), &size, bytes_of(text), text.size()) == 1 &&
         size == signature.size());
    return {reinterpret_cast<const char*>(signature.data()), signature.size()};
}

std::optional<std::string> public_key_hex(std::string_view pem) {
    const Owned<EVP_PKEY> key = public_key(pem);
    if (!key) return std::nullopt;
    return raw_public_hex(key.get());
}

bool signature_holds(std::string_view pem, std::string_view text, std::string_view signature) {
    const Owned<EVP_PKEY> key = public_key(pem);
    if (!key || signature.size() != 64) return false;
    const Owned<EVP_MD_CTX> context(EVP_MD_CTX_new());
    must(context != nullptr &&
         EVP_DigestVerifyInit(context.get(), nullptr, nullptr, nullptr, key.get()) == 1);
    return EVP_DigestVerify(context.get(), bytes_of(signature), signature.size(), bytes_of(text),
                            text.size()) == 1;
}

}  // namespace evenfall::exchange
