// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <filesystem>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>

/// SHA-256 (FIPS 180-4) and Ed25519 (RFC 8032), by OpenSSL.
/// Tests: tests/exchange/filing_bag_test.cpp
namespace evenfall::exchange {

/// Fed piece by piece.
class Sha256 {
  public:
    Sha256();
    ~Sha256();
    Sha256(Sha256&&) noexcept;
    Sha256& operator=(Sha256&&) noexcept;
    void add(std::span<const std::byte> bytes);
    void add(std::string_view text);
    /// 64 lower-case hexadecimal digits; the object is used up.
    std::string hex();

  private:
    struct Impl;
    std::unique_ptr<Impl> impl_;
};

std::string sha256_of(std::string_view text);
/// Read in pieces. @throws InputError when the file cannot be read
std::string sha256_of_file(const std::filesystem::path& file);

/// An Ed25519 key as its owner keeps it: a PEM file with a private key (PKCS #8), such as
/// `openssl genpkey -algorithm ed25519` makes.
class SigningKey {
  public:
    /// @throws InputError for a file that is no such key, or one under a passphrase
    explicit SigningKey(const std::filesystem::path& pem);
    ~SigningKey();
    SigningKey(SigningKey&&) noexcept;
    /// The public key as PEM (SubjectPublicKeyInfo, RFC 8410).
    const std::string& public_pem() const { return public_pem_; }
    /// The 32 bytes of the public key in hexadecimal.
    const std::string& public_hex() const { return public_hex_; }
    /// 64 bytes.
    std::string sign(std::string_view text) const;

  private:
    struct Impl;
    std::unique_ptr<Impl> impl_;
    std::string public_pem_;
    std::string public_hex_;
};

/// Reads a public key; nothing when the text is no Ed25519 public key in PEM.
std::optional<std::string> public_key_hex(std::string_view pem);
/// Whether `signature` (64 bytes) is that of `text` by the key in `pem`.
bool signature_holds(std::string_view pem, std::string_view text, std::string_view signature);

}  // namespace evenfall::exchange
