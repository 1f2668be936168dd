// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/site/site.h"

#include <algorithm>

namespace evenfall::site {

std::vector<std::string> weather_codes(const Site& site) {
    std::vector<std::string> codes;
    for (std::size_t at = 0; at < site.weather.size();) {
        const std::size_t end = std::min(site.weather.find(';', at), site.weather.size());
        std::string code = site.weather.substr(at, end - at);
        const std::size_t first = code.find_first_not_of(' ');
        code = first == std::string::npos ? "" : code.substr(first, code.find_last_not_of(' ') - first + 1);
        if (!code.empty() && std::find(codes.begin(), codes.end(), code) == codes.end()) codes.push_back(code);
        at = end + 1;
    }
    return codes;
}

}  // namespace evenfall::site
