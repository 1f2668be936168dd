// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/file_digest.h"

#include "core/input_error.h"

#include <array>
#include <fstream>
#include <memory>
#include <openssl/evp.h>
#include <vector>

namespace evenfall::exchange {

std::string sha256_of_file(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    if (!in) throw InputError(path.string(), "a file that can be read");
    const std::unique_ptr<EVP_MD_CTX, decltype(&EVP_MD_CTX_free)> context(EVP_MD_CTX_new(),
                                                                         &EVP_MD_CTX_free);
    EVP_DigestInit_ex(context.get(), EVP_sha256(), nullptr);
    std::vector<char> buffer(std::size_t{1} << 18U);
    while (in) {
        in.read(buffer.data(), static_cast<std::streamsize>(buffer.size()));
        EVP_DigestUpdate(context.get(), buffer.data(), static_cast<std::size_t>(in.gcount()));
    }
    std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
    unsigned int length = 0;
    EVP_DigestFinal_ex(context.get(), digest.data(), &length);
    static constexpr std::array<char, 17> digits{"0123456789abcdef"};
    std::string text;
    for (unsigned int i = 0; i < length; ++i) {
        text += digits[digest[i] >> 4U];
        text += digits[digest[i] & 0x0FU];
    }
    return text;
}

}  // namespace evenfall::exchange
